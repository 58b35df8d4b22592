import type { PropertyValues } from 'lit';
import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { SlotId, TaskId } from '../../shared/kernel/index.ts';
import type {
  Drawn,
  LoadDrawing,
  Side,
  SmokerView,
  StationPage,
  View,
} from '../../shared/view/index.ts';
import { checksDue, pitRule, stationPage } from '../../shared/view/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { pitWords, sayRefusal } from '../../shared/words/index.ts';
import { laneM } from '../parts/rack-lane.ts';
import '../parts/smoker-cutaway.ts';
import '../parts/then-foot.ts';
import '../parts/wall-head.ts';
import { CrewDoor } from '../shell/crew-door.ts';
import { DayController, worstService } from '../shell/day-controller.ts';
import { bareNotice, checkBand, notice, toLookAt } from '../shell/notice.ts';
import { SeenSize } from '../shell/seen-size.ts';
import { readSettings } from '../shell/settings.ts';
import { Touched } from '../shell/touched.ts';
import { Wall } from '../shell/wall.ts';
import type { Sync } from '../sync/index.ts';
import { base } from '../theme/index.ts';
import { followDrag } from './drag.ts';
import { failing, footWork } from './foot-work.ts';
import './move-foot.ts';
import { MoveFlow } from './move-flow.ts';
import { canShareFoot, hasThen, highAs, isNarrow, pitLines } from './pit-room.ts';
import type { Reading } from './reading.ts';
import { airOf, coreOf, readingPad } from './reading.ts';
import { smokerWallStyles } from './smoker-wall.css.ts';
import { type AskMight, type Might, MightFlow, mightDoor } from './what-if.ts';

const isSmoker = (view: View): view is SmokerView => view.face === 'smoker';

/**
 * The wall of the pit: every smoker cut open, and at its foot the work of the pit's hands, or the
 * move under way.
 */
@customElement('smoker-wall')
export class SmokerWall extends Wall {
  static override styles = [base, smokerWallStyles];

  @property({ attribute: false }) sync!: Sync;
  @property({ attribute: false }) askMight: AskMight = mightDoor(
    readSettings(new URLSearchParams()).token,
  );
  @property() language: Language = 'en';
  @property({ attribute: false }) side: Side | null = null;
  @property({ type: Boolean, reflect: true }) narrow = false;
  @state() private reading: Reading | null = null;

  readonly #size = new SeenSize(this);
  readonly #crew = new CrewDoor(this);
  readonly #touched = new Touched(() => this.requestUpdate());
  readonly #moving = new MoveFlow({
    ask: (question) => this.sync.ask(question),
    tap: (intent) => this.sync.tap(intent),
    changed: () => this.requestUpdate(),
  });
  readonly #might = new MightFlow(
    (asked) => this.askMight(asked),
    () => this.requestUpdate(),
  );
  #day: DayController<SmokerView> | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    const { sync, language } = this;
    this.#day ??= new DayController(this, { sync, language, isOurs: isSmoker });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#touched.stop();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (this.#day) this.say = this.#day.say;
    this.narrow = isNarrow(this.#size.seen);
    const hub = this.#day?.hub;
    if (hub) this.#moving.see(hub);
  }

  protected override draw() {
    const drawn = this.#day?.drawn ?? null;
    const crew = this.#crew.offer(drawn?.view ?? null, this.sync, this.say);
    return html`<wall-head
        .say=${this.say}
        .name=${pitWords[this.say.language].smokers}
        .outlook=${drawn && worstService(drawn.view)}
        .now=${this.sync.hubNow()}
        .others=${crew.choices}
        .asks=${crew.asks}
        ?open=${crew.isOpen}
        @toggle=${this.#crew.toggle}
        ?narrow=${this.narrow}
      ></wall-head>
      ${drawn ? this.#page(drawn) : this.#nothing()}`;
  }

  #nothing() {
    const { blank } = this.sync.state;
    return html`${notice({ now: [] }, this)}
      <p class="quiet">${blank ? sayRefusal(blank, this.say) : this.words.looking}</p>`;
  }

  #page(drawn: Drawn<SmokerView>) {
    const page = this.#work(drawn.view);
    const asks = this.reading !== null || this.#moving.move.kind !== 'none';
    return html`${(this.narrow ? notice : bareNotice)(page, this)}
      <main class="smokers">${this.#smokers(drawn)}</main>
      <section class=${asks ? 'foot asks' : 'foot'}>
        ${this.#foot(page, drawn)} ${this.narrow ? nothing : checkBand(this, true)}
      </section>
      ${this.#then(page, drawn.view)}`;
  }

  #then(page: StationPage, { smokers }: SmokerView) {
    const now = this.sync.hubNow();
    const racks = Math.max(0, ...smokers.map((each) => highAs(each, now, this.say)));
    if (!this.narrow && !hasThen(this.#size.seen, racks)) return nothing;
    return html`<then-foot
      .say=${this.say}
      .tasks=${[...page.next, ...page.further]}
      .now=${now}
      .later=${page.laterCount}
      @pick=${({ detail }: CustomEvent<TaskId>) => this.#touched.picked(detail)}
    ></then-foot>`;
  }

  /** A box for what is to be looked at stands under one line. */
  get #mustLook(): boolean {
    return !this.narrow && checksDue(toLookAt(this.sync), this.sync.hubNow()).length > 0;
  }

  #work(view: SmokerView): StationPage {
    const { seen } = this.#size;
    const page = (now: number) => {
      const room = { now, next: 1, further: this.narrow ? 0 : 1 };
      return stationPage(view, this.sync.hubNow(), { room, held: this.#touched.held });
    };
    const most = page(this.#mustLook || failing(view) ? 1 : pitLines(seen));
    const shown = most.now.map(({ task }) => task);
    return shown.length < 2 || canShareFoot(shown, seen, this) ? most : page(1);
  }

  #smokers({ view, marks }: Drawn<SmokerView>) {
    const now = this.sync.hubNow();
    const rule = pitRule(view.smokers, now);
    const wholeM = laneM(view.smokers);
    const { move } = this.#moving;
    return repeat(
      view.smokers,
      ({ id }) => id,
      (smoker) => html`<smoker-cutaway
        .say=${this.say}
        .smoker=${smoker}
        .laneM=${wholeM}
        .rule=${rule}
        .now=${now}
        .marks=${marks}
        .picked=${move.kind === 'none' ? null : move.load}
        .askedSlot=${'to' in move ? move.to : null}
        ?narrow=${this.narrow}
        @pick=${({ detail }: CustomEvent<LoadDrawing>) => this.#pick(detail)}
        @goal=${({ detail }: CustomEvent<SlotId>) => this.#moving.goal(detail)}
        @grasp=${({ detail }: CustomEvent<Grasp>) => this.#grasp(detail)}
        @air=${() => this.#read(airOf(smoker, this.say))}
      ></smoker-cutaway>`,
    );
  }

  #foot(page: StationPage, drawn: Drawn<SmokerView>) {
    const { say, narrow, reading, sync, side } = this;
    const { move } = this.#moving;
    if (reading) {
      return readingPad(reading, {
        say,
        now: this.sync.hubNow(),
        endsAt: drawn.view.endsAt,
        keep: (intent) => sync.tap(intent),
        next: (asked) => {
          this.reading = asked;
        },
      });
    }
    if (move.kind !== 'none') {
      return html`<move-foot
        .say=${say}
        .move=${move}
        .now=${this.sync.hubNow()}
        .said=${this.#might.said}
        ?narrow=${narrow}
        @take=${() => this.#moving.take()}
        @leave=${() => this.#moving.leave()}
        @core=${({ detail }: CustomEvent<LoadDrawing>) => this.#read(coreOf(detail, say))}
        @might=${({ detail }: CustomEvent<Asked>) => {
          void this.#might.ask(detail.load, detail.might, say);
        }}
      ></move-foot>`;
    }
    const on = { view: drawn.view, seen: this.#size.seen, mustLook: this.#mustLook };
    return footWork(page, { sync, say, narrow, drawn, touched: this.#touched, side, ...on });
  }

  #pick(load: LoadDrawing): void {
    this.#might.forget();
    this.reading = null;
    this.#moving.pick(load);
  }

  #grasp({ load, event }: Grasp): void {
    followDrag(event, {
      dragged: () => {
        if (this.#moving.move.kind === 'none' || this.#moving.move.load !== load) this.#pick(load);
      },
      dropped: (on) => {
        const slot = on instanceof HTMLElement ? on.dataset['slot'] : undefined;
        if (slot) void this.#moving.goal(slot as SlotId);
      },
    });
  }

  #read(reading: Reading): void {
    this.#moving.leave();
    this.reading = reading;
  }
}

type Asked = { readonly load: LoadDrawing; readonly might: Might };
type Grasp = { readonly load: LoadDrawing; readonly event: PointerEvent };
