import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { PersonId } from '../../shared/kernel/index.ts';
import type { ListedPerson, WhoList } from '../../shared/protocol/index.ts';
import { LANGUAGES, type Language, whoWords } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';
import { pinField } from './who-present.ts';
import type { Wish } from './who-screens.ts';
import { whoStyle } from './who-style.ts';

/** Who has a PIN, which an open hub asks nobody for, and what each reads. Tells `wish`. */
@customElement('who-people')
export class WhoPeople extends Part {
  static override styles = [
    base,
    formStyle,
    whoStyle,
    css`
      /* Read down a column as a list of names is. */
      ul {
        columns: 17em;
        column-gap: calc(2 * var(--edge));
      }
      .asked {
        columns: 32em;
      }
      li {
        break-inside: avoid;
      }
      li > .name {
        flex: 0 0 6em;
      }
    `,
  ];

  @property({ attribute: false }) list!: WhoList;
  @state() private setting: PersonId | null = null;

  private get said() {
    return whoWords[this.say.language];
  }

  protected override draw() {
    const { said } = this;
    return html`<section aria-label=${said.people}>
      <h2>${said.people}</h2>
      <p class="row soft">${said.whatEachReads}</p>
      <ul class=${this.list.isOpen ? '' : 'asked'}>
        ${this.list.people.map((each) => this.#person(each))}
      </ul>
    </section>`;
  }

  #person(person: ListedPerson) {
    return html`<li>
      <span class="name">${person.name}</span>
      ${this.#reads(person)} ${this.list.isOpen ? nothing : this.#pin(person)}
    </li>`;
  }

  #reads({ id, name, language }: ListedPerson) {
    const { said } = this;
    const choose = ({ target }: Event) => {
      const { value } = target as HTMLSelectElement;
      const chosen = value === '' ? null : (value as Language);
      this.#wish((doors) => doors.setLanguage({ person: id, language: chosen }));
    };
    // What was refused is not what they read: the field goes back to that.
    return html`<label>
      ${said.reads}
      <select .value=${live(language ?? '')} aria-label=${said.whatReads(name)} @change=${choose}>
        <option value="">${said.asScreen}</option>
        <option value="en" lang="en">${LANGUAGES.en}</option>
        <option value="es" lang="es">${LANGUAGES.es}</option>
      </select>
    </label>`;
  }

  #pin(person: ListedPerson) {
    const { said } = this;
    const { id, hasPin, isOwner } = person;
    const has = isOwner ? said.isOwner : hasPin ? said.hasPin : said.noPin;
    const clear = () =>
      this.#wish((doors) => doors.setPin({ person: id, pin: null, isOwner: false }));
    return html`<span class="soft">${has}</span>
      ${this.setting === id ? this.#setter(person) : this.#setButton(id)}
      ${hasPin ? html`<button @click=${clear}>${said.clearPin}</button>` : nothing}`;
  }

  #setButton(id: PersonId) {
    const open = () => {
      this.setting = id;
    };
    return html`<button @click=${open}>${this.said.setPin}</button>`;
  }

  #setter({ id, isOwner }: ListedPerson) {
    const { said } = this;
    const close = () => {
      this.setting = null;
    };
    const keep = (event: SubmitEvent) => {
      event.preventDefault();
      const typed = new FormData(event.target as HTMLFormElement);
      const asked = { person: id, pin: String(typed.get('pin')), isOwner: typed.has('owner') };
      close();
      this.#wish((doors) => doors.setPin(asked));
    };
    return html`<form @submit=${keep}>
      ${pinField(said)}
      <label>
        <input type="checkbox" name="owner" ?checked=${isOwner || !this.list.needsOwner} />
        ${said.answersForHub}
      </label>
      <button class="takes">${said.keep}</button>
      <button type="button" class="leaves" @click=${close}>${said.leaveIt}</button>
    </form>`;
  }

  #wish(wish: Wish): void {
    this.tell('wish', wish);
  }
}
