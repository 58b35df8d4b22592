import { html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { BatchShown, CookPlan, PlanMenu, PlannedDish } from '../../shared/protocol/index.ts';
import { planEditorWords, textIn } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import './clock-field.ts';
import { newDish } from './new-in-plan.ts';
import './plan-dish.ts';
import { formStyle } from './form-style.ts';
import { planStyle } from './plan-editor.css.ts';

type Service = CookPlan['services'][number];

/** A service with its dishes. Tells `service-changed`, with null to drop it, and `batch-edit`. */
@customElement('plan-service')
export class PlanService extends Part {
  static override styles = [base, formStyle, planStyle];

  @property({ attribute: false }) service!: Service;
  @property({ attribute: false }) menu!: PlanMenu;
  @property({ attribute: false }) batches: readonly BatchShown[] = [];

  private get said() {
    return planEditorWords[this.say.language];
  }

  protected override draw() {
    const { service, said, say, menu } = this;
    const name = textIn(service.name, say);
    return html`<fieldset class="service">
      <legend class="unseen">${name}</legend>
      <div class="heading">
        <label class="name">
          <span class="unseen">${said.service}</span>
          <input .value=${name} @input=${this.#rename} />
        </label>
        ${this.#clock('opens')} ${this.#clock('closes')}
      </div>
      ${service.dishes.map(
        (dish, place) => html`<plan-dish
          .say=${say}
          .dish=${dish}
          .menu=${menu}
          .batches=${this.batches.filter((each) => each.dish === dish.dish)}
          @dish-changed=${(event: CustomEvent<PlannedDish | null>) => this.#change(event, place)}
          @batch-edit=${this.#inService}
        ></plan-dish>`,
      )}
      <div class="buttons">
        ${this.#adding()}
        <button class="leaves" @click=${() => this.tell('service-changed', null)}>
          ${said.dropNamed(name)}
        </button>
      </div>
    </fieldset>`;
  }

  #clock(which: 'opens' | 'closes') {
    const { service, said } = this;
    return html`<clock-field
      .say=${this.say}
      .label=${said[which]}
      .time=${service[which]}
      @clock=${({ detail }: CustomEvent<string>) => this.#tell({ ...service, [which]: detail })}
    ></clock-field>`;
  }

  #adding() {
    const { service, menu, said, say } = this;
    const taken = new Set<string>(service.dishes.map(({ dish }) => dish));
    const left = menu.dishes.filter(({ id }) => !taken.has(id));
    return html`<select aria-label=${said.addDish} @change=${this.#add}>
      <option value="" selected>${said.addDish}</option>
      ${left.map(({ id, name }) => html`<option value=${id}>${textIn(name, say)}</option>`)}
    </select>`;
  }

  readonly #add = ({ target }: Event) => {
    const select = target as HTMLSelectElement;
    const dish = newDish(select.value);
    select.value = '';
    const { service } = this;
    this.#tell({ ...service, dishes: [...service.dishes, dish] });
  };

  readonly #rename = ({ target }: Event) => {
    const { service, say } = this;
    const name = { ...service.name, [say.language]: (target as HTMLInputElement).value };
    this.#tell({ ...service, name });
  };

  /** Which service it is in the dish itself does not know. */
  readonly #inService = (event: CustomEvent<object>) => {
    if ('service' in event.detail) return;
    event.stopPropagation();
    this.tell('batch-edit', { ...event.detail, service: this.service.id });
  };

  #change(event: CustomEvent<PlannedDish | null>, place: number): void {
    event.stopPropagation();
    const { service } = this;
    const { detail } = event;
    const dishes = detail ? service.dishes.with(place, detail) : service.dishes.toSpliced(place, 1);
    this.#tell({ ...service, dishes });
  }

  #tell(service: Service): void {
    this.tell('service-changed', service);
  }
}
