import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { MenuDish, PlanMenu, PlannedBatch, PlannedDish } from '../../shared/protocol/index.ts';
import { planEditorWords, shownClock, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import './clock-field.ts';
import { formStyle } from './form-style.ts';
import { planStyle } from './plan-editor.css.ts';

/** A dish of a service. Tells `dish-changed` with it, or `batch-edit` for the hub to make. */
@customElement('plan-dish')
export class PlanDish extends Part {
  static override styles = [base, formStyle, planStyle];

  @property({ attribute: false }) dish!: PlannedDish;
  @property({ attribute: false }) menu!: PlanMenu;
  /** As they are made where the plan does not name them. */
  @property({ attribute: false }) batches: readonly PlannedBatch[] = [];
  @state() private isOpen = false;

  private get said() {
    return planEditorWords[this.say.language];
  }

  protected override draw() {
    const { dish, said, say } = this;
    const item = this.menu.dishes.find(({ id }) => id === dish.dish);
    const name = item ? textIn(item.name, say) : dish.dish;
    return html`<div class="row">
        <span class="name">${name}</span>
        ${this.#portions(name)}
        ${item?.choices.map((choice) => this.#choice(choice))}
        <button aria-expanded=${this.isOpen} @click=${() => this.#toggle()}>${said.batches}</button>
        <button class="leaves" @click=${() => this.tell('dish-changed', null)}>${said.drop}</button>
      </div>
      ${this.isOpen ? html`${this.#batchRows()} ${this.#wishes(item)}` : nothing}`;
  }

  #toggle() {
    this.isOpen = !this.isOpen;
  }

  #portions(name: string) {
    const { dish, said } = this;
    const { sales } = dish;
    if (sales.by === 'quarter') {
      const counted = sales.portions.join(' ');
      return html`<label>
        ${said.byQuarter}
        <input .value=${counted} aria-label="${name}, ${said.byQuarter}"
          @input=${this.#counted} />
      </label>`;
    }
    return html`<label>
        <input type="number" min="1" .value=${String(sales.portions)}
          aria-label="${name}, ${said.portions}"
          @input=${(event: Event) => this.#sales({ portions: numberIn(event) })} />
        ${said.portions}
      </label>
      <label>
        ${said.sells}
        <select .value=${sales.shape} aria-label="${name}, ${said.sells}"
          @change=${(event: Event) => this.#sales({ shape: valueIn(event) as typeof sales.shape })}>
          ${(['even', 'early', 'middle', 'late'] as const).map(
            (shape) => html`<option value=${shape} ?selected=${shape === sales.shape}>
              ${said.shapes[shape]}
            </option>`,
          )}
        </select>
      </label>`;
  }

  #choice({ id, name, usual, options }: MenuDish['choices'][number]) {
    const { dish, said, say } = this;
    const chosen = dish.choices[id];
    const is = options.find((option) => option.id === (chosen ?? usual));
    return html`<label>
      ${textIn(name, say)}
      <select @change=${(event: Event) => this.#choose(id, valueIn(event))}>
        <option value="" ?selected=${chosen === undefined}>${said.usual}</option>
        ${options.map(
          (option) => html`<option value=${option.id} ?selected=${option.id === chosen}>
            ${textIn(option.name, say)}
          </option>`,
        )}
      </select>
      <span class="soft">${is ? textIn(is.reason, say) : nothing}</span>
    </label>`;
  }

  #batchRows() {
    const { dish, said } = this;
    const batches = dish.batches ?? this.batches;
    return html`${batches.map((batch, place) => this.#batch(batch, batches[place + 1]))}
      <div class="row deeper">
        <button @click=${() => this.#add(batches)}>${said.addBatch}</button>
        ${
          dish.batches
            ? html`<button class="leaves" @click=${() => this.#change({ batches: undefined })}>
                ${said.bySales}
              </button>`
            : nothing
        }
      </div>`;
  }

  #batch({ number, portions, ready }: PlannedBatch, next: PlannedBatch | undefined) {
    const { said } = this;
    const half = Math.floor(portions / 2);
    return html`<div class="row deeper">
      <span>${said.batch(number)}</span>
      ${this.#batchFields({ number, portions, ready })}
      <button ?disabled=${half < 1}
        @click=${() => this.#edit({ kind: 'splitBatch', number, portions: half, ready })}>
        ${said.split}
      </button>
      <button ?disabled=${!next}
        @click=${() => next && this.#edit({ kind: 'mergeBatches', number, other: next.number })}>
        ${said.mergeNext}
      </button>
      <button class="leaves" @click=${() => this.#edit({ kind: 'dropBatch', number })}>
        ${said.drop}
      </button>
    </div>`;
  }

  #batchFields(batch: PlannedBatch) {
    const { dish, said, say } = this;
    if (!dish.batches) {
      const ready = shownClock(batch.ready, say);
      return html`<span>${batch.portions} ${said.portions}, ${said.ready} ${ready}</span>`;
    }
    const change = (changed: Partial<PlannedBatch>) =>
      this.#change({
        batches: dish.batches?.map((each) =>
          each.number === batch.number ? { ...each, ...changed } : each,
        ),
      });
    return html`<label>
        <input type="number" min="1" .value=${String(batch.portions)}
          @input=${(event: Event) => change({ portions: numberIn(event) })} />
        ${said.portions}
      </label>
      <clock-field .say=${say} .label=${said.ready} .time=${batch.ready}
        @clock=${({ detail }: CustomEvent<string>) => change({ ready: detail })}></clock-field>`;
  }

  #wishes(item: MenuDish | undefined) {
    const { dish, menu, said, say } = this;
    return html`<div class="row deeper">
      <label>
        ${said.slots}
        <input .value=${dish.slots?.join(' ') ?? ''} placeholder=${said.anywhere}
          title=${menu.slots.map(({ id }) => id).join(' ')} @input=${this.#slots} />
      </label>
      ${item?.steps.map(
        ({ id, title }) => html`<label>
          ${textIn(title, say)}
          <select @change=${(event: Event) => this.#give(id, valueIn(event))}>
            <option value="" ?selected=${dish.hands[id] === undefined}>${said.whoever}</option>
            ${menu.people.map(
              (person) => html`<option value=${person.id}
                ?selected=${dish.hands[id] === person.id}>${person.name}</option>`,
            )}
          </select>
        </label>`,
      )}
    </div>`;
  }

  readonly #slots = (event: Event) => {
    const slots = valueIn(event)
      .split(/[\s,]+/)
      .filter((word) => word !== '');
    this.#change({ slots: slots.length > 0 ? slots : undefined });
  };

  readonly #counted = (event: Event) => {
    const portions = valueIn(event)
      .split(/[\s,]+/)
      .filter((word) => word !== '')
      .map(Number);
    this.#change({ sales: { by: 'quarter', portions } });
  };

  #sales(changed: object) {
    this.#change({ sales: { ...this.dish.sales, ...changed } });
  }

  #choose(choice: string, option: string) {
    const { [choice]: _old, ...others } = this.dish.choices;
    this.#change({ choices: option === '' ? others : { ...others, [choice]: option } });
  }

  #give(step: string, person: string) {
    const { [step]: _old, ...others } = this.dish.hands;
    this.#change({ hands: person === '' ? others : { ...others, [step]: person } });
  }

  #add(batches: readonly PlannedBatch[]) {
    const last = batches.at(-1);
    this.#edit({ kind: 'addBatch', portions: last?.portions ?? 1, ready: last?.ready ?? '12:00' });
  }

  #change(changed: object) {
    this.tell('dish-changed', { ...this.dish, ...changed });
  }

  #edit(edit: object) {
    this.tell('batch-edit', { dish: this.dish.dish, ...edit });
  }
}

const valueIn = (event: Event) => (event.target as HTMLInputElement).value;
const numberIn = (event: Event) => Math.round(Number(valueIn(event)));
