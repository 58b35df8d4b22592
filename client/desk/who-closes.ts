import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { PersonId } from '../../shared/kernel/index.ts';
import type { WhoList } from '../../shared/protocol/index.ts';
import type { Person, Refusal } from '../../shared/view/index.ts';
import { closingWords, sayRefusal } from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';
import '../parts/choice-strip.ts';
import '../parts/digit-keys.ts';
import { Part } from '../parts/part.ts';
import type { WhoDoors } from '../shell/who-doors.ts';
import { base } from '../theme/index.ts';
import { KeepsFocus } from './keeps-focus.ts';

const MOST_DIGITS = 12;

/**
 * Who closes the day: a name, the PIN where that person has one, and once more whether it is meant.
 * Tells `close-day` with the person.
 */
@customElement('who-closes')
export class WhoCloses extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap);
      }
      p {
        font-weight: 700;
      }
      .wrong {
        font-weight: 800;
        border-bottom: var(--heavy) solid var(--ink);
      }
      .keys {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 8px;
      }
      output {
        font-size: var(--figure);
        min-width: 6ch;
        border-bottom: var(--heavy) solid var(--ink);
      }
    `,
  ];

  @property({ attribute: false }) doors!: WhoDoors;
  @property({ attribute: false }) people: readonly Person[] = [];
  /** What is asked once more when it is to be closed; null where nothing is. */
  @property({ attribute: false }) question: () => string | null = () => null;
  @state() private closer: Person | null = null;
  @state() private pin: string | null = null;
  @state() private asks: string | null = null;
  @state() private wrong: Refusal | 'away' | null = null;
  /** Null where nobody can be asked: then the hub says what it lacks when it hears the tap. */
  @state() private who: WhoList | null = null;

  constructor() {
    super();
    new KeepsFocus(this);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#look();
  }

  protected override draw() {
    const { closer } = this;
    const words = closingWords[this.say.language];
    const wrong = this.wrong && this.#why(this.wrong);
    return html`${wrong ? html`<p class="wrong" role="alert">${wrong}</p>` : nothing}
      ${
        closer === null
          ? html`<p>${words.whoCloses}</p>
              ${this.#strip(words.whoCloses, this.#names())}`
          : this.pin === null
            ? this.#meant(closer)
            : this.#pinPad(closer, this.pin)
      }`;
  }

  #why(wrong: Refusal | 'away'): string {
    if (wrong === 'away') return closingWords[this.say.language].hubAway;
    return sayRefusal(wrong, this.say);
  }

  /** Who is on shift first; once anybody has a PIN, only they can sign. */
  #names(): readonly Choice[] {
    const signs = this.#asksPins ? this.people.filter(({ id }) => this.#hasPin(id)) : this.people;
    const here = [...signs].sort((a, b) => Number(b.onShift) - Number(a.onShift));
    return here.map((person) => ({
      label: person.name,
      choose: () => void this.#pick(person),
    }));
  }

  #meant(closer: Person) {
    const words = closingWords[this.say.language];
    const leave = { label: this.words.leaveIt, choose: () => this.#leave(), leaves: true };
    const label = words.closeAs(closer.name);
    if (this.asks !== null) {
      const close = { label, choose: () => this.#close(closer), takes: true };
      // A finger that taps twice by a slip leaves it.
      return html`<p role="alert">${this.asks}</p>
        ${this.#strip(this.asks, [leave, close])}`;
    }
    const ask = () => {
      this.asks = this.question();
      if (this.asks === null) this.#close(closer);
    };
    return html`<p>${words.afterwards(closer.name)}</p>
      ${this.#strip(words.closing, [{ label, choose: ask, takes: true }, leave])}`;
  }

  #close(closer: Person): void {
    this.tell('close-day', closer.id);
    this.#leave();
  }

  #pinPad(closer: Person, pin: string) {
    const words = closingWords[this.say.language];
    const typed = ({ detail }: CustomEvent<string>) => {
      this.pin = detail;
    };
    return html`<p>
        ${words.typePin(closer.name)} <output>${'•'.repeat(pin.length) || '–'}</output>
      </p>
      <div class="keys">
        <digit-keys
          .say=${this.say}
          .typed=${pin}
          .most=${MOST_DIGITS}
          @typed=${typed}
          @leave=${() => this.#leave()}
        ></digit-keys>
        ${this.#strip(words.typePin(closer.name), [
          { label: words.iAmHere, choose: () => void this.#prove(closer.id, pin), takes: true },
          { label: this.words.leaveIt, choose: () => this.#leave(), leaves: true },
        ])}
      </div>`;
  }

  #strip(name: string, choices: readonly Choice[]) {
    return html`<choice-strip .say=${this.say} .name=${name} .choices=${choices}></choice-strip>`;
  }

  async #pick(person: Person): Promise<void> {
    this.wrong = null;
    await this.#look();
    const isAsked = this.#asksPins && this.who?.present !== person.id;
    this.pin = isAsked ? '' : null;
    this.closer = person;
  }

  get #asksPins(): boolean {
    return this.who?.isOpen === false && this.who.people.some(({ hasPin }) => hasPin);
  }

  #hasPin(person: PersonId): boolean {
    return this.who?.people.some(({ id, hasPin }) => id === person && hasPin) ?? false;
  }

  async #look(): Promise<void> {
    try {
      const answer = await this.doors.list();
      this.who = answer.ok ? answer.who : null;
    } catch {
      this.who = null;
    }
  }

  async #prove(person: PersonId, pin: string): Promise<void> {
    this.pin = '';
    try {
      const answer = await this.doors.prove({ person, pin });
      this.wrong = answer.ok ? null : answer.refusal;
      if (answer.ok) this.pin = null;
    } catch {
      this.wrong = 'away';
    }
  }

  #leave(): void {
    this.closer = null;
    this.asks = null;
    this.pin = null;
    this.wrong = null;
  }
}
