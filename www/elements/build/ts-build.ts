import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { SAY } from '../../words/index.js';
import { PAGE } from '../../words/page-words.js';
import { tell } from '../shared/events.js';
import { controls, ground, type } from '../shared/look.js';
import type { Desk } from '../state/desk.js';
import type { Lug } from '../state/kinds.js';
import { lugLine } from '../state/lug-line.js';
import { ear, lastEar, lugPicture, markPicture } from '../strip/pictures.js';
import '../disclosure/ts-disclosure.js';
import '../preferences/ts-preferences.js';
import '../lasting/ts-lasting.js';
import '../share/ts-share.js';
import { buildStyle } from './style.js';

/** `<ts-build>`: the strip as a page. Lugs are added, named and taken off here; the whole is kept, opened, sent on. */
export class TsBuild extends LitElement {
  static override styles = [ground, type, controls, buildStyle];

  static override properties = { desk: { attribute: false }, tick: {}, naming: { state: true }, adding: { state: true }, aside: { type: Boolean } };
  desk: Desk | null = null;
  tick = 0;
  /** A build was put aside and can be brought back. */
  aside = false;
  private naming = '';
  private adding = false;

  protected override render(): unknown {
    const { desk } = this;
    if (desk === null) return nothing;
    const { lugs, name } = desk.build;
    if (lugs.length === 0 && desk.removed === null) return this.#front(desk);
    return html`
      <header><h1>${SAY.strip.build}</h1><label class="name"><span class="aside">${PAGE.buildName}</span>
        <input type="text" maxlength="80" placeholder="" autocomplete="off" .value=${live(name)} @input=${(event: Event) => { desk.nameBuild((event.target as HTMLInputElement).value); }}></label></header>
      <div class="grid">
        <div class="board">
          <div class="end">${ear()}</div>
          <ul>${repeat(lugs, ({ id }) => id, (lug) => this.#lug(desk, lug))}</ul>
          <div class="end">${lastEar()}</div>
        </div>
        <div class="beside">
          <p class="sentence">${this.#sentence(desk)}</p>
          ${desk.removed === null ? nothing : html`<p class="removed">${SAY.strip.removed(desk.removed.lug.id)} <button class="link" @click=${() => { desk.putBack(); }}><span>${SAY.strip.undo}</span></button></p>`}
          <div class="add"><button aria-expanded=${this.adding ? 'true' : 'false'} @click=${() => { this.adding = !this.adding; }}>${SAY.strip.add}</button>
            ${this.adding ? this.#shelf(desk) : nothing}</div>
          ${this.#keep(desk)}
        </div>
      </div>`;
  }

  /** An empty bench: what this is, and where to begin. */
  #front(desk: Desk): TemplateResult {
    return html`
      <header><h1>${SAY.site}</h1><p class="book">${SAY.siteLine}</p></header>
      <p class="sentence">${SAY.siteText}</p>
      <p class="row"><button class="link" @click=${() => { tell(this, 'ts-example'); }}><span>${PAGE.example}</span></button></p>
      <div class="grid">
        <div class="add"><h2>${SAY.begin}</h2>${this.#shelf(desk)}</div>
        <div class="beside"><p class="sentence">${PAGE.noneYet}</p>${this.#keep(desk)}</div>
      </div>`;
  }

  #keep(desk: Desk): TemplateResult {
    return html`<section><h2>${PAGE.keep}</h2><ts-share></ts-share><ts-lasting></ts-lasting>
        ${this.aside ? html`<p class="row"><button class="link" @click=${() => { tell(this, 'ts-bring-back'); }}><span>${PAGE.bringBack}</span></button></p>` : nothing}
        ${desk.build.lugs.length === 0 ? nothing : html`<p class="row"><button class="link" @click=${() => { tell(this, 'ts-example'); }}><span>${PAGE.example}</span></button></p>`}
      </section>
      <ts-disclosure .heading=${SAY.settings.title}><ts-preferences .preferences=${desk.preferences}></ts-preferences></ts-disclosure>`;
  }

  #lug(desk: Desk, lug: Lug): TemplateResult {
    const { figure, state } = lugLine(desk, lug);
    const title = desk.calculator(lug.calculator)?.title ?? lug.calculator;
    return html`<li>
      <div class="picture">${lugPicture(false)}</div>
      <div class="lug">
        <div class="first"><a href=${`#${lug.id}`} @click=${(event: Event) => { event.preventDefault(); tell(this, 'ts-choose', lug.id); }}><span>${lug.id}</span></a><b>${figure}</b></div>
        ${state === null ? nothing : html`<p class="state">${markPicture(state)} ${state === 'limit' ? SAY.strip.exceeded : SAY.strip.refused}</p>`}
        <div class="second"><span class="small">${title}</span><span class="row">
          <button class="link" aria-expanded=${this.naming === lug.id ? 'true' : 'false'} @click=${() => { this.naming = this.naming === lug.id ? '' : lug.id; }}><span>${SAY.strip.rename}<i class="aside">, ${lug.id}</i></span></button>
          <button class="link" @click=${() => { desk.remove(lug.id); }}><span>${SAY.strip.remove}<i class="aside">, ${lug.id}</i></span></button></span></div>
        ${this.naming === lug.id ? html`<label class="rename">${PAGE.lugName} <input type="text" maxlength="24" autocomplete="off" .value=${lug.id} @change=${(event: Event) => { this.#rename(desk, lug.id, event); }}></label>` : nothing}
      </div></li>`;
  }

  #rename(desk: Desk, id: string, event: Event): void {
    this.naming = '';
    desk.rename(id, (event.target as HTMLInputElement).value);
  }

  #shelf(desk: Desk): TemplateResult {
    return html`<ul class="shelf">${desk.catalogue.map(({ id, title, summary }) => html`<li><button @click=${() => { this.adding = false; tell(this, 'ts-add', id); }}>
      <b>${title}</b><span>${summary}</span></button></li>`)}</ul>`;
  }

  /** "Three lugs. One wants a look: supply." */
  #sentence(desk: Desk): unknown {
    const { lugs } = desk.build;
    const wants = lugs.filter((lug) => lugLine(desk, lug).state !== null).map(({ id }) => id);
    const look = PAGE.wantLook(wants);
    return html`${PAGE.onStrip(lugs.length)} ${look === '' ? PAGE.allWell : html`<b>${look}</b>`}`;
  }
}

customElements.define('ts-build', TsBuild);
