import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { PlannedBatch, PlannedDish } from '../../shared/protocol/index.ts';
import { planEditorWords, shownClock } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import './clock-field.ts';
import { formStyle } from './form-style.ts';
import { planStyle } from './plan-editor.css.ts';
import { numberIn } from './typed-in.ts';

/** The batches of a dish. Tells `dish-changed` with it, or `batch-edit` for the hub to make. */
@customElement('plan-batches')
export class PlanBatches extends Part {
  static override styles = [
    base,
    formStyle,
    planStyle,
    css`
      .batch {
        display: grid;
        grid-template-columns: 6em minmax(0, 22em) max-content max-content max-content;
        align-items: center;
        gap: 0.2em 1em;
        min-height: var(--touch);
      }
      .asked {
        display: flex;
        flex-wrap: wrap;
        gap: 0 1em;
      }
      @media (width < 80em) {
        .batch {
          display: flex;
          flex-wrap: wrap;
        }
      }
    `,
  ];

  @property({ attribute: false }) dish!: PlannedDish;
  /** As they are made where the plan does not name them. */
  @property({ attribute: false }) batches: readonly PlannedBatch[] = [];

  private get said() {
    return planEditorWords[this.say.language];
  }

  protected override draw() {
    const { dish, said } = this;
    const batches = dish.batches ?? this.batches;
    return html`${batches.map((batch, place) => this.#batch(batch, batches[place + 1]))}
      <div class="buttons">
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
    return html`<div class="batch">
      <span>${said.batch(number)}</span>
      <span class="asked">${this.#fields({ number, portions, ready })}</span>
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

  #fields(batch: PlannedBatch) {
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
