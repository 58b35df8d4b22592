import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { MenuDish, PlanMenu, PlannedDish } from '../../shared/protocol/index.ts';
import { planEditorWords, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { formStyle } from './form-style.ts';
import { planStyle } from './plan-editor.css.ts';
import { valueIn } from './typed-in.ts';

/**
 * In which ways a dish is made, and why one would; by whom and on which racks it is wished. Tells
 * `dish-changed` with it.
 */
@customElement('plan-ways')
export class PlanWays extends Part {
  static override styles = [
    base,
    formStyle,
    planStyle,
    css`
      .ways {
        display: grid;
        grid-template-columns: minmax(8em, max-content) minmax(9em, max-content) minmax(0, 1fr);
        gap: 0 1em;
      }
      .ways > li,
      .ways label {
        display: contents;
      }
      .ways > li > *,
      .ways label > * {
        align-self: center;
      }
      .hands {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(22em, 100%), 1fr));
        gap: 0 2em;
      }
      .hands label {
        justify-content: space-between;
      }
      .hands select {
        max-width: 55%;
      }
      @media (width < 52em) {
        .ways {
          grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
        }
        .ways .soft {
          grid-column: 1 / -1;
        }
      }
    `,
  ];

  @property({ attribute: false }) dish!: PlannedDish;
  @property({ attribute: false }) item: MenuDish | undefined;
  @property({ attribute: false }) menu!: PlanMenu;

  private get said() {
    return planEditorWords[this.say.language];
  }

  protected override draw() {
    const choices = this.item?.choices ?? [];
    return html`${
      choices.length > 0
        ? html`<ul class="ways">
            ${choices.map((choice) => this.#choice(choice))}
          </ul>`
        : nothing
    }
    ${this.#wishes()}`;
  }

  #choice({ id, name, usual, options }: MenuDish['choices'][number]) {
    const { dish, said, say } = this;
    const chosen = dish.choices[id];
    const is = options.find((option) => option.id === (chosen ?? usual));
    const mostly = options.find((option) => option.id === usual);
    return html`<li>
      <label>
        <span>${textIn(name, say)}</span>
        <select @change=${(event: Event) => this.#choose(id, valueIn(event))}>
          <option value="" ?selected=${chosen === undefined}>
            ${said.usual(mostly ? textIn(mostly.name, say) : usual)}
          </option>
          ${options.map(
            (option) => html`<option value=${option.id} ?selected=${option.id === chosen}>
              ${textIn(option.name, say)}
            </option>`,
          )}
        </select>
      </label>
      <span class="soft">${is ? textIn(is.reason, say) : nothing}</span>
    </li>`;
  }

  #wishes() {
    const { dish, item, menu, said, say } = this;
    return html`<details>
      <summary>${said.wishes}</summary>
      <div class="hands">
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
      </div>
    </details>`;
  }

  readonly #slots = (event: Event) => {
    const slots = valueIn(event)
      .split(/[\s,]+/)
      .filter((word) => word !== '');
    this.#change({ slots: slots.length > 0 ? slots : undefined });
  };

  #choose(choice: string, option: string) {
    const { [choice]: _old, ...others } = this.dish.choices;
    this.#change({ choices: option === '' ? others : { ...others, [choice]: option } });
  }

  #give(step: string, person: string) {
    const { [step]: _old, ...others } = this.dish.hands;
    this.#change({ hands: person === '' ? others : { ...others, [step]: person } });
  }

  #change(changed: object) {
    this.tell('dish-changed', { ...this.dish, ...changed });
  }
}
