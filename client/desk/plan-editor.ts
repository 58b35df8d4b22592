import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type {
  CookPlan,
  PlanAnswer,
  PlanEdit,
  PlanShown,
  PlanTried,
} from '../../shared/protocol/index.ts';
import type { Refusal } from '../../shared/view/index.ts';
import { planEditorWords, sayKept } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { readSettings } from '../shell/settings.ts';
import { base } from '../theme/index.ts';
import './day-field.ts';
import { formStyle } from './form-style.ts';
import { type Further, lookFurther, NOTHING_YET } from './look-further.ts';
import { planOn, withNewService } from './new-in-plan.ts';
import './plan-day.ts';
import { type PlanDoors, planDoors } from './plan-doors.ts';
import { editorStyle, planStyle } from './plan-editor.css.ts';
import './plan-service.ts';
import type { Phase } from './plan-verdict.ts';
import './plan-verdict.ts';
import { keepTyped, typedPlan } from './typed-plan.ts';

/** Typing pauses so long before the hub is asked whether it fits. */
const QUIET_MS = 350;
type Service = CookPlan['services'][number];

/**
 * The cook plan, to be changed: whatever is typed is tried at once, and says what it does to the
 * running day or what does not fit. It is taken whole or not at all, and stays here until then.
 */
@customElement('plan-editor')
export class PlanEditor extends Part {
  static override styles = [base, formStyle, planStyle, editorStyle];

  /** Left out: those of the hub that this page came from, with this device's own token. */
  @property({ attribute: false }) doors: PlanDoors = planDoors({
    token: readSettings(new URLSearchParams()).token,
    language: () => this.say.language,
  });
  /** The running version: with each new one the hub is asked for its plan. */
  @property({ type: Number }) version = 0;
  @state() private shown: PlanShown | null = null;
  @state() private typed: CookPlan | null = typedPlan();
  @state() private tried: PlanTried | null = null;
  @state() private further: Further = NOTHING_YET;
  @state() private refusal: Refusal | null = null;
  @state() private phase: Phase = 'still';

  #quiet: ReturnType<typeof setTimeout> | undefined;

  private get said() {
    return planEditorWords[this.say.language];
  }

  private get plan(): CookPlan | null {
    return this.typed ?? this.shown?.plan ?? null;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.typed) this.#tryLater();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#quiet);
  }

  protected override willUpdate(changed: ReadonlyMap<PropertyKey, unknown>): void {
    if (changed.has('version')) void this.#show();
  }

  protected override draw() {
    const { plan, shown, said, phase, refusal } = this;
    if (!shown && phase === 'still' && !refusal) return html`<p>${this.words.looking}</p>`;
    return html`${this.#verdict()}
      ${plan && shown ? this.#sheet(plan, shown) : shown ? html`<p>${said.noPlan}</p>` : nothing}`;
  }

  #verdict() {
    const { say, tried, phase, typed, shown, further } = this;
    return html`<plan-verdict
      .say=${say}
      .phase=${phase}
      .tried=${further.better ?? tried}
      .refusal=${this.refusal}
      .further=${further}
      ?changed=${typed !== null}
      ?fits=${typed !== null && tried?.fits === true}
      ?undoable=${shown?.canUndo && !typed}
      @nearest=${() => further.nearest && this.#type(further.nearest.plan)}
      @take=${() => this.#take()}
      @forget=${() => this.#forget()}
      @undo=${this.#undo}
      >${this.plan ? this.#day(this.plan) : nothing}</plan-verdict
    >`;
  }

  #sheet(plan: CookPlan, shown: PlanShown) {
    const { said, say } = this;
    const batches = plan.day === shown.runs ? shown.batches : [];
    return html`${sayKept(shown.kept, say).map((line) => html`<p>${line}</p>`)}
      ${plan.services.map(
        (service, place) => html`<plan-service
          .say=${say}
          .service=${service}
          .menu=${shown.menu}
          .batches=${batches.filter((each) => each.service === service.id)}
          @service-changed=${({ detail }: CustomEvent<Service | null>) =>
            this.#changeService(plan, place, detail)}
          @batch-edit=${({ detail }: CustomEvent<PlanEdit>) => this.#edit(plan, detail)}
        ></plan-service>`,
      )}
      <div class="buttons">
        <button @click=${() => this.#type(withNewService(plan, shown.menu))}>
          ${said.addService}
        </button>
      </div>
      <plan-day
        .say=${say}
        .day=${plan.day}
        .days=${shown.days}
        @to-day=${({ detail }: CustomEvent<string>) => this.#type(planOn(plan, detail))}
        @from-day=${({ detail }: CustomEvent<string>) => this.#copy(detail, plan.day)}
      ></plan-day>`;
  }

  #day(plan: CookPlan) {
    return html`<day-field
      large
      .say=${this.say}
      .label=${this.said.day}
      .day=${plan.day}
      @to-day=${({ detail }: CustomEvent<string>) => this.#type(planOn(plan, detail))}
    ></day-field>`;
  }

  /** The plan of another day for this one; services keep their wall times. */
  async #copy(from: string, to: string): Promise<void> {
    await this.#asking(async () => {
      const answer = await this.doors.show(from);
      if (answer.ok && answer.plan) this.#type(planOn(answer.plan, to));
    });
  }

  #changeService(plan: CookPlan, place: number, changed: Service | null): void {
    const services = changed
      ? plan.services.with(place, changed)
      : plan.services.toSpliced(place, 1);
    this.#type({ ...plan, services });
  }

  #type(plan: CookPlan): void {
    const isOtherDay = plan.day !== this.plan?.day;
    this.typed = plan;
    keepTyped(plan);
    this.#tryLater();
    if (isOtherDay) void this.#show();
  }

  #forget(): void {
    this.typed = null;
    this.tried = null;
    this.further = NOTHING_YET;
    this.refusal = null;
    keepTyped(null);
  }

  #tryLater(): void {
    this.tried = null;
    this.further = NOTHING_YET;
    this.refusal = null;
    this.phase = 'trying';
    clearTimeout(this.#quiet);
    this.#quiet = setTimeout(() => void this.#try(), QUIET_MS);
  }

  async #try(): Promise<void> {
    const asked = this.typed;
    if (!asked) return;
    await this.#asking(async () => {
      const answer = await this.doors.draft(asked);
      // What was typed meanwhile has been asked for by itself.
      if (this.typed !== asked) return;
      // What another page of the same person asked came first: nobody else asks for this one.
      if (answer.ok && answer.stale) return this.#tryLater();
      this.#hear(answer);
      if (!answer.ok) return;
      await lookFurther(asked, answer, {
        doors: this.doors,
        isStill: () => this.typed === asked && this.phase === 'still',
        tell: (further) => void Object.assign(this, { further }),
      });
    });
  }

  async #take(): Promise<void> {
    const { typed, doors } = this;
    const steps = this.further.better?.better?.steps ?? 0;
    if (typed) await this.#settle(() => doors.take(typed, steps));
  }

  readonly #undo = () => this.#settle(() => this.doors.undo());

  async #settle(ask: () => Promise<PlanAnswer<PlanTried>>): Promise<void> {
    this.phase = 'trying';
    await this.#asking(async () => {
      const answer = await ask();
      if (answer.ok && answer.taken) this.#forget();
      this.#hear(answer);
    });
    await this.#show();
  }

  async #edit(plan: CookPlan, edit: PlanEdit): Promise<void> {
    await this.#asking(async () => {
      const answer = await this.doors.edit(plan, edit);
      if (answer.ok) this.#type(answer.plan);
      else this.refusal = answer.refusal;
    });
  }

  async #show(): Promise<void> {
    await this.#asking(async () => {
      const answer = await this.doors.show(this.typed?.day ?? null);
      // Why a plan was not taken stays until something else is tried.
      if (answer.ok) this.shown = answer;
      else this.refusal = answer.refusal;
    });
  }

  #hear(answer: PlanAnswer<PlanTried>): void {
    this.phase = 'still';
    this.tried = answer.ok ? answer : null;
    this.refusal = answer.ok ? null : answer.refusal;
  }

  async #asking(run: () => Promise<void>): Promise<void> {
    try {
      await run();
    } catch {
      this.phase = 'away';
    }
  }
}
