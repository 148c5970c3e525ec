import { css, html, LitElement, nothing, svg } from 'lit';
import { baseWords, electrodeWords, joinWords, USUAL_WAY, type Way } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { ground, type } from '../shared/look.js';
import { polarised } from '../../words/part-words.js';
import type { Netlist, WiringStep } from '../state/kinds.js';
import type { Tube } from '../state/from-words.js';

/** Places round the circle, and how far pin 1 lies from the key or gap. */
const SLOTS: Readonly<Record<string, readonly [number, number]>> = { octal: [8, 0.5], noval: [10, 1], miniature_7: [8, 1] };

/** `<ts-wiring>`: the joins in the order of work, and each socket as it is seen from below. */
export class TsWiring extends LitElement {
  static override styles = [ground, type, css`
    figure { margin: 0 0 18px; }
    figcaption { font: italic 400 1rem/1.4 var(--book); }
    .socket { max-width: 380px; width: 100%; height: auto; }
    text { font: 500 13px var(--instrument); fill: var(--ink); }
    .pin { font-weight: 700; }
    ol { counter-reset: join; }
    li { counter-increment: join; display: grid; grid-template-columns: 2.2em minmax(0, 1fr); padding: 9px 0; border-bottom: 1px solid var(--rule); }
    li::before { content: counter(join); font-weight: 700; }
    :host([paper]) figure { break-inside: avoid; margin: 0 0 2mm; }
    :host([paper]) { font-size: 9.5pt; }
    :host([paper]) figure { break-inside: avoid; margin: 0 0 2mm; }
    :host([paper]) .socket { width: 64mm; }
    :host([paper]) li { padding: 0.7mm 0; break-inside: avoid; border-color: #000; }
  `];

  static override properties = { steps: {}, circuit: {}, way: {} };
  steps: readonly WiringStep[] = [];
  circuit: Netlist | null = null;
  way: Way = USUAL_WAY;

  protected override render(): unknown {
    const { circuit } = this;
    const plus = (reference: string | null | undefined) => (polarised(circuit?.parts.find((part) => part.reference === reference)) ? 'from' : null);
    return html`${circuit?.tubes?.map((tube) => this.#socket(tube))}
      <ol>${this.steps.map(({ from, to, part }) => html`<li>${joinWords(from, to, part, this.way, plus(part))}</li>`)}</ol>`;
  }

  /** The pins of a socket from below: clockwise from the key or gap, which lies at the foot of the picture. */
  #socket({ reference, type: kind, base, pins }: Tube): unknown {
    if (pins === undefined || pins.length === 0 || base === undefined) return nothing;
    // An octal base has its key between pins 8 and 1; a miniature one has a gap as wide as a pin there.
    const [slots, first] = SLOTS[base] ?? [pins.length + 1, 1];
    const at = (pin: string): { x: number; y: number; angle: number } => {
      const angle = ((Number(pin) - 1 + first) / slots) * 2 * Math.PI;
      return { x: 150 - 46 * Math.sin(angle), y: 92 + 46 * Math.cos(angle), angle };
    };
    return html`<figure><svg class="socket" viewBox="-40 0 380 184" role="img" aria-label=${PAGE.socket(kind ?? '')}>${svg`
      <circle cx="150" cy="92" r="62" fill="var(--plate)" stroke="var(--ink)" stroke-width="2.2"></circle>
      ${base === 'octal' ? svg`<circle cx="150" cy="92" r="16" fill="none" stroke="var(--ink)" stroke-width="1.5"></circle><path d="M146 108v6h8v-6" fill="var(--ink)"></path>` : nothing}
      ${pins.map(({ pin, electrode }) => {
        const { x, y, angle } = at(pin);
        const [dx, dy] = [150 - 72 * Math.sin(angle), 96 + 72 * Math.cos(angle)];
        const anchor = Math.abs(Math.sin(angle)) < 0.2 ? 'middle' : Math.sin(angle) > 0 ? 'end' : 'start';
        return svg`<circle cx=${x} cy=${y} r="11" fill="var(--paper)" stroke="var(--ink)" stroke-width="1.6"></circle>
          <text class="pin" x=${x} y=${y + 4.5} text-anchor="middle">${pin}</text><text x=${dx} y=${dy} text-anchor=${anchor}>${electrodeWords(electrode)}</text>`;
      })}`}</svg>
      <figcaption>${PAGE.socketCaption(reference, kind ?? '', baseWords(base))}</figcaption></figure>`;
  }
}

customElements.define('ts-wiring', TsWiring);
