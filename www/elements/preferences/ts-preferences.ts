import { css, html, LitElement } from 'lit';
import { SAY } from '../../words/index.js';
import { tell } from '../shared/events.js';
import { ground } from '../shared/look.js';
import { CHOICES, USUAL, type Preferences } from '../state/preferences.js';

const NAMES: Readonly<Record<keyof Preferences, string>> = {
  theme: SAY.settings.look, length: SAY.settings.length, wire: SAY.settings.wire, mains: SAY.settings.mains,
  tube: SAY.settings.tube, supply: SAY.settings.supply, decimal: SAY.settings.decimal, resistor: SAY.settings.resistor,
};

/** `<ts-preferences>`: light or dark, units, the trade's words. Fires `ts-prefer` with the whole set. */
export class TsPreferences extends LitElement {
  static override styles = [ground, css`
    :host { display: grid; gap: 16px; }
    fieldset { border: 0; margin: 0; padding: 0; min-width: 0; }
    legend { padding: 0 0 5px; font-size: 1rem; }
    .choices { display: flex; border: 1.5px solid var(--touch); border-radius: 3px; overflow: hidden; width: fit-content; max-width: 100%; flex-wrap: wrap; }
    label { position: relative; display: flex; align-items: center; justify-content: center; min-height: 44px; min-width: 64px; padding: 6px 14px; color: var(--touch); background: var(--plate); font: 700 1rem/1.2 var(--instrument); cursor: pointer; }
    label + label { border-left: 1.5px solid var(--touch); }
    label.current { background: var(--touch); color: var(--plate); }
    input { position: absolute; inset: 0; width: 100%; height: 100%; margin: 0; opacity: 0; cursor: pointer; }
    label:has(:focus-visible) { outline: 3px solid var(--ink); outline-offset: -4px; }
    @media (min-width: 720px) { :host { grid-template-columns: repeat(auto-fill, minmax(270px, 1fr)); } }
    @media (forced-colors: active) { label.current { forced-color-adjust: none; background: Highlight; color: HighlightText; } }
  `];

  static override properties = { preferences: {} };
  preferences: Preferences = USUAL;

  protected override render(): unknown {
    return (Object.keys(CHOICES) as (keyof Preferences)[]).map((key) => html`<fieldset><legend>${NAMES[key]}</legend>
      <div class="choices">${CHOICES[key].map((choice) => html`<label class=${this.preferences[key] === choice ? 'current' : ''}>
        <input type="radio" name=${key} .checked=${this.preferences[key] === choice} @change=${() => { this.#choose(key, choice); }}>${wordsFor(choice)}</label>`)}</div>
    </fieldset>`);
  }

  #choose(key: keyof Preferences, choice: unknown): void {
    tell(this, 'ts-prefer', { ...this.preferences, [key]: choice });
  }
}

function wordsFor(choice: string | number): string {
  const { system, light, dark, choices } = SAY.settings;
  const words: Readonly<Record<string, string>> = { ...choices, system, light, dark };
  return words[String(choice)] ?? String(choice);
}

customElements.define('ts-preferences', TsPreferences);
