import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Kilograms } from '../../shared/kernel/index.ts';
import { fromPounds, kilograms } from '../../shared/kernel/index.ts';
import type { PullRow } from '../../shared/view/index.ts';
import { deliveryTyped, MOST_KG, MOST_PIECES, oddDelivery } from '../../shared/view/index.ts';
import { deliveryWords, oddWords, sayOdd, textIn, weight } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import '../parts/digit-keys.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';

type Field = 'pieces' | 'weight';

/**
 * What came of one cut: pieces, weight, or both; what is not typed follows from the list and is
 * drawn soft. Tells `came` with both, and with `isSo` where that was asked, or `close`.
 */
@customElement('delivery-pad')
export class DeliveryPad extends Part {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        gap: var(--gap);
        padding: var(--gap) 0;
      }
      .fields,
      .keys {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap);
      }
      .field {
        display: flex;
        align-items: baseline;
        justify-content: space-between;
        gap: 0.6em;
        min-width: 9em;
        padding: 0 0.5em;
        border-bottom: var(--line) solid var(--pencil);
      }
      .field[aria-pressed='true'] {
        border-bottom: var(--heavy) solid var(--ink);
      }
      output {
        font-size: var(--figure);
        font-weight: 800;
        white-space: nowrap;
      }
      .follows {
        color: var(--soft);
        font-weight: 600;
      }
      p {
        font-size: var(--small);
        color: var(--soft);
      }
      .wrong {
        color: var(--ink);
        font-weight: 800;
      }
    `,
  ];

  @property({ attribute: false }) row!: PullRow;
  @state() private field: Field = 'pieces';
  /** What is asked once more of what was typed: it is seldom so. */
  @state() private odd: string | null = null;
  @state() private typed: Readonly<Record<Field, string>> = { pieces: '', weight: '' };

  override connectedCallback(): void {
    super.connectedCallback();
    this.role = 'group';
  }

  protected override firstUpdated(): void {
    // On a low screen the keys would lie under its edge.
    this.scrollIntoView({ block: 'nearest' });
  }

  protected override willUpdate(): void {
    this.ariaLabel = deliveryWords[this.say.language].whatCame(textIn(this.row.name, this.say));
  }

  protected override draw() {
    const { say, row } = this;
    const words = deliveryWords[say.language];
    const wrong = this.#wrong() ?? this.odd;
    const leave = {
      label: this.words.leaveIt,
      choose: () => this.tell('close', null),
      leaves: true,
    };
    const take = (label: string) => ({ label, choose: () => this.#keep(), takes: true });
    // A finger that taps twice by a slip leaves it.
    const choices =
      this.odd === null
        ? [take(words.keepIt), leave]
        : [leave, take(oddWords[say.language].itIsSo)];
    return html`<div class="fields">
        ${this.#field('pieces', words.pieces, `${this.#came.pieces}`)}
        ${this.#field('weight', words.weight, weight(this.#came.weightKg, say))}
        <p class=${wrong ? 'wrong' : ''} role="status">
          ${wrong ?? words.asListed(row.pieces, weight(row.weightKg, say))}
        </p>
      </div>
      <div class="keys">
        <digit-keys
          .say=${say}
          .typed=${this.typed[this.field]}
          .most=${6}
          ?point=${this.field === 'weight'}
          @typed=${({ detail }: CustomEvent<string>) => this.#type(detail)}
          @leave=${() => this.tell('close', null)}
        ></digit-keys>
        <choice-strip .say=${say} .name=${this.ariaLabel} .choices=${choices}></choice-strip>
      </div>`;
  }

  #field(field: Field, name: string, follows: string) {
    const typed = this.typed[field];
    const pick = () => {
      this.field = field;
    };
    const shown = field === 'weight' ? `${typed} ${this.say.weight}` : typed;
    return html`<button class="field" aria-pressed=${this.field === field} @click=${pick}>
      <span>${name}</span>
      <output class=${typed === '' ? 'follows' : ''}>${typed === '' ? follows : shown}</output>
    </button>`;
  }

  get #came() {
    const { pieces, weight: typedWeight } = this.typed;
    return deliveryTyped(this.row, {
      pieces: pieces === '' ? null : Number(pieces),
      weightKg: typedWeight === '' ? null : this.#kilograms(Number(typedWeight)),
    });
  }

  #kilograms(shown: number): Kilograms {
    return this.say.weight === 'lb' ? fromPounds(shown) : kilograms(shown);
  }

  /** Why this cannot have come, in words. */
  #wrong() {
    const words = deliveryWords[this.say.language];
    const { pieces, weightKg } = this.#came;
    if (pieces > MOST_PIECES) return words.tooMuch(`${MOST_PIECES}`);
    if (weightKg > MOST_KG) return words.tooMuch(weight(MOST_KG, this.say));
    // A point alone is no number.
    if (pieces > 0 && !(weightKg > 0)) return words.noWeight;
    return pieces === 0 && weightKg > 0 ? words.noPieces : null;
  }

  #type(typed: string): void {
    this.typed = { ...this.typed, [this.field]: typed };
    this.odd = null;
  }

  #keep(): void {
    if (this.#wrong() !== null) return;
    const came = this.#came;
    const isAsked = this.odd !== null;
    const odd = isAsked ? [] : oddDelivery(came, this.row);
    this.odd = odd.length > 0 ? sayOdd(odd, this.say) : null;
    if (this.odd === null) this.tell('came', isAsked ? { ...came, isSo: true } : came);
  }
}
