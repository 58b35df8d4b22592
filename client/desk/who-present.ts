import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PersonId } from '../../shared/kernel/index.ts';
import type { WhoList } from '../../shared/protocol/index.ts';
import { type WhoWords, whoWords } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';
import type { Wish } from './who-screens.ts';
import { whoStyle } from './who-style.ts';

/** Who has proved to be at the desk, or may. Tells `wish`. */
@customElement('who-present')
export class WhoPresent extends Part {
  static override styles = [base, formStyle, whoStyle];

  @property({ attribute: false }) list!: WhoList;

  private get said() {
    return whoWords[this.say.language];
  }

  protected override draw() {
    const { said } = this;
    const { needsOwner } = this.list;
    return html`<section aria-label=${said.atTheDesk}>
      <h2>${said.atTheDesk}</h2>
      ${needsOwner ? nothing : html`<p class="row">${said.noOwner}</p>`} ${this.#present()}
    </section>`;
  }

  #present() {
    const { said } = this;
    const { people, present } = this.list;
    const here = people.find(({ id }) => id === present);
    if (here) {
      return html`<p class="row">
        <strong>${here.name}</strong>
        <button @click=${() => this.#wish((doors) => doors.leave())}>${said.leave}</button>
      </p>`;
    }
    const known = people.filter(({ hasPin }) => hasPin);
    if (known.length === 0) return html`<p class="row soft">${said.nobody}</p>`;
    return html`<form class="row" @submit=${this.#prove}>
      <select name="person" aria-label=${said.people}>
        ${known.map(({ id, name }) => html`<option value=${id}>${name}</option>`)}
      </select>
      ${pinField(said)}
      <button class="takes">${said.iAmHere}</button>
    </form>`;
  }

  readonly #prove = (event: SubmitEvent): void => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const typed = new FormData(form);
    const person = String(typed.get('person')) as PersonId;
    const pin = String(typed.get('pin'));
    form.reset();
    this.#wish((doors) => doors.prove({ person, pin }));
  };

  #wish(wish: Wish): void {
    this.tell('wish', wish);
  }
}

/** Where a PIN is typed, and not shown. */
export function pinField(said: WhoWords) {
  return html`<label>
      ${said.pin}
      <input
        name="pin"
        type="password"
        inputmode="numeric"
        autocomplete="off"
        required
        size="8"
        maxlength="12"
      />
    </label>`;
}
