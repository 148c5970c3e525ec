import { html, LitElement, nothing, svg, type PropertyValues, type TemplateResult } from 'lit';

import type { Figures } from '../words/kinds.js';
import { DRAWN } from '../words/part-words.js';
import { show } from '../words/quantity.js';
import { afterFrame } from './frame.js';
import { abreast, arrange, LARGEST } from './arrange.js';
import { drawingStyle } from './drawing-style.js';
import { draw } from './draw.js';
import type { Netlist, Placed } from './kinds.js';
import { measurer, type Measure } from './measure.js';
import { render } from './render.js';
import type { State } from './state.js';
import type { TagText } from './tag.js';

/** Volts to ground over which a wire is live. */
const LIVE = 60;
const UNITS: Readonly<Record<string, string>> = { resistor: 'Ω', potentiometer: 'Ω', capacitor: 'F', coil: 'H', source: 'V' };
/** The paper's width in pixels: a printed drawing has its panels abreast whatever the screen's width. */
const PRINTED = 700;

/** What `ts-open` carries: the field to open, and the part that was touched. */
export interface OpenDetail {
  readonly field: string;
  readonly reference: string;
}

/**
 * `<ts-drawing>`: a calculator's schematic, drawn from the netlist of its answers, as the face of its form.
 *
 * Fires `ts-open` with an {@link OpenDetail} when a part is touched, `ts-probe` with a node's name when its answer is, and
 * `ts-danger` when the bolt mark is; all bubble and leave the shadow root. Its inks are the custom properties `--plate --ink --ink-2 --edge --rule --copper --live
 * --touch --wash`.
 */
export class TsDrawing extends LitElement {
  static override styles = drawingStyle;
  static override properties = {
    calculator: {}, circuit: { attribute: false }, texts: { attribute: false }, answers: { attribute: false }, tags: { attribute: false },
    linked: { attribute: false }, labels: { attribute: false }, open: { attribute: false }, refused: { attribute: false },
    stale: { type: Boolean, reflect: true }, boxes: { type: Boolean }, room: { state: true },
  };

  declare calculator: string;
  declare circuit: Netlist | null;
  declare texts: ReadonlyMap<string, string>;
  /** What a calculator without a circuit has to show: `marking` its bands and codes. */
  declare answers: Figures;
  declare tags: ReadonlyMap<string, TagText>;
  declare linked: ReadonlyMap<string, string>;
  declare labels: ReadonlyMap<string, string>;
  declare open: string | null;
  declare refused: ReadonlySet<string>;
  declare stale: boolean;
  /** Resistors as boxes instead of zigzags. */
  declare boxes: boolean;
  declare room: number;

  private watcher: ResizeObserver | null = null;
  private measure: Measure | null = null;

  constructor() {
    super();
    this.calculator = '';
    this.circuit = null;
    this.texts = new Map();
    this.answers = {};
    this.tags = new Map();
    this.linked = new Map();
    this.labels = new Map();
    this.open = null;
    this.refused = new Set();
    this.stale = false;
    this.boxes = false;
    this.room = 0;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.room = this.clientWidth || 360;
    this.watcher = new ResizeObserver((entries) => {
      const width = entries.at(-1)?.contentRect.width ?? 0;
      if (width > 0) this.room = Math.round(width);
    });
    this.watcher.observe(this);
    window.addEventListener('beforeprint', this.printing);
    window.addEventListener('afterprint', this.printed);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watcher?.disconnect();
    window.removeEventListener('beforeprint', this.printing);
    window.removeEventListener('afterprint', this.printed);
  }

  private readonly printing = (): void => {
    this.room = Math.max(PRINTED, this.room);
    this.performUpdate();
  };

  private readonly printed = (): void => {
    this.room = this.clientWidth || this.room;
  };

  /** The echo and the answers first; the drawing follows with the next frame, but the first one: it would push away what is read. */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.renderRoot?.querySelector('svg')) await afterFrame();
    super.scheduleUpdate();
  }

  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    return changed.size > 0;
  }

  protected override render(): TemplateResult | typeof nothing {
    const { texts, answers } = this;
    const drawing = draw(this.calculator, this.circuit, { boxes: this.boxes }, { texts, answers });
    if (drawing === null) return nothing;
    const arrangement = arrange(drawing, abreast(this.room, drawing.panels.length));
    const { width, height } = arrangement;
    const most = Math.min(this.room, width * LARGEST);
    return html`<svg viewBox="0 0 ${width} ${height}" width=${most} height=${(most / width) * height} role="group"
      aria-label=${DRAWN.schematic}>${svg`${render(arrangement, this.state(this.circuit?.nodes ?? []))}`}</svg>`;
  }

  private state(nodes: Netlist['nodes']): State {
    this.measure ??= measurer();
    const live = nodes.filter(({ volts }) => volts !== null && Math.abs(volts) > LIVE);
    const most = Math.max(0, ...live.map(({ volts }) => Math.abs(volts ?? 0)));
    const { texts, tags, linked, labels, open, refused, stale, measure } = this;
    return {
      texts, tags, linked, labels, open, refused, stale, measure,
      live: new Set(live.map(({ name }) => name)),
      figure,
      touch: (part) => {
        const detail: OpenDetail = { field: part.field, reference: part.reference };
        this.dispatchEvent(new CustomEvent('ts-open', { detail, bubbles: true, composed: true }));
      },
      probe: (node) => { this.dispatchEvent(new CustomEvent('ts-probe', { detail: node, bubbles: true, composed: true })); },
      danger: () => { this.dispatchEvent(new CustomEvent('ts-danger', { bubbles: true, composed: true })); },
      dangerName: live.length === 0 ? '' : DRAWN.danger(show(most, 'V')),
    };
  }
}

/** A part's figure from the netlist, for where no text was typed. */
function figure(part: Placed): string {
  if (typeof part.value === 'string') return part.value;
  if (typeof part.value !== 'number') return '';
  return part.kind === 'switch' ? String(part.value) : show(part.value, UNITS[part.kind] ?? '');
}

customElements.define('ts-drawing', TsDrawing);

declare global {
  interface HTMLElementTagNameMap {
    'ts-drawing': TsDrawing;
  }
}
