import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { MenuDish, PlanMenu, PlannedBatch, PlannedDish } from '../../shared/protocol/index.ts';
import { planEditorWords, sayWays, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';
import './plan-batches.ts';
import { dishStyle } from './plan-dish.css.ts';
import { planStyle } from './plan-editor.css.ts';
import './plan-ways.ts';
import { numberIn, valueIn } from './typed-in.ts';

/**
 * A dish of a service in one row; all that is seldom changed opens under it. Tells `dish-changed`
 * with it, or `batch-edit` for the hub to make.
 */
@customElement('plan-dish')
export class PlanDish extends Part {
  static override styles = [base, formStyle, planStyle, dishStyle];

  @property({ attribute: false }) dish!: PlannedDish;
  @property({ attribute: false }) menu!: PlanMenu;
  /** As they are made where the plan does not name them. */
  @property({ attribute: false }) batches: readonly PlannedBatch[] = [];
  @state() private isOpen = false;

  private get said() {
    return planEditorWords[this.say.language];
  }

  protected override draw() {
    const { dish, said, say, isOpen } = this;
    const item = this.menu.dishes.find(({ id }) => id === dish.dish);
    const name = item ? textIn(item.name, say) : dish.dish;
    return html`<div class="dish">
        <span class="name">${name}</span>
        ${item ? this.#ways(item) : nothing} ${this.#portions(name)}
        <button class="more" aria-expanded=${isOpen} aria-label="${said.details}, ${name}"
          @click=${this.#toggle}>${said.details}</button>
      </div>
      ${isOpen ? this.#opened(item, name) : nothing}`;
  }

  readonly #toggle = () => {
    this.isOpen = !this.isOpen;
  };

  /** What is made otherwise than usual, heavy; then what usual is. */
  #ways({ choices }: MenuDish) {
    const { otherwise, usual } = sayWays(choices, this.dish.choices, this.say);
    return html`<span class="ways">
      ${otherwise ? html`<strong>${otherwise}</strong>` : nothing}
      ${usual ? html`<span class="soft">${usual}</span>` : nothing}
    </span>`;
  }

  #opened(item: MenuDish | undefined, name: string) {
    const { dish, menu, batches, said, say } = this;
    return html`<div class="opened">
      <plan-ways .say=${say} .dish=${dish} .item=${item} .menu=${menu}></plan-ways>
      <plan-batches .say=${say} .dish=${dish} .batches=${batches}></plan-batches>
      <button class="leaves" @click=${() => this.tell('dish-changed', null)}>
        ${said.dropNamed(name)}
      </button>
    </div>`;
  }

  #portions(name: string) {
    const { dish, said } = this;
    const { sales } = dish;
    if (sales.by === 'quarter') {
      return html`<label class="counted">
        <input .value=${sales.portions.join(' ')} aria-label="${name}, ${said.byQuarter}"
          @input=${this.#counted} />
        ${said.byQuarter}
      </label>`;
    }
    return html`<label class="portions">
        <input type="number" min="1" .value=${String(sales.portions)}
          aria-label="${name}, ${said.portions}"
          @input=${(event: Event) => this.#sales({ portions: numberIn(event) })} />
        ${said.portions}
      </label>
      <select class="sells" .value=${sales.shape} aria-label="${name}, ${said.sells}"
        @change=${(event: Event) => this.#sales({ shape: valueIn(event) as typeof sales.shape })}>
        ${(['even', 'early', 'middle', 'late'] as const).map(
          (shape) => html`<option value=${shape} ?selected=${shape === sales.shape}>
            ${said.shapes[shape]}
          </option>`,
        )}
      </select>`;
  }

  readonly #counted = (event: Event) => {
    const portions = valueIn(event)
      .split(/[\s,]+/)
      .filter((word) => word !== '')
      .map(Number);
    this.tell('dish-changed', { ...this.dish, sales: { by: 'quarter', portions } });
  };

  #sales(changed: object) {
    const { dish } = this;
    this.tell('dish-changed', { ...dish, sales: { ...dish.sales, ...changed } });
  }
}
