import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import type { Instant, TaskId } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { ChartWindow, DayChart, DeskView, LaidRow, WouldBe } from '../../shared/view/index.ts';
import {
  barUnder,
  chainLinks,
  lanesOf,
  panned,
  placeIn,
  rowsInView,
  showing,
  stepFrom,
  windowAt,
  zoomed,
} from '../../shared/view/index.ts';
import { deskWords } from '../../shared/words/index.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { timeArea } from './chart-area.ts';
import { headsDrawing, sheetDrawing } from './chart-drawing.ts';
import { footDrawing } from './chart-foot.ts';
import { ChartGestures } from './chart-gestures.ts';
import { headSizes } from './chart-heads.ts';
import { keyDeed } from './chart-keys.ts';
import { LaidChart } from './chart-laid.ts';
import { type Paper, paperOf, type Sizes } from './chart-paper.ts';
import { RULE_LETTERS, ruleDrawing } from './chart-rule.ts';
import { ChartShift } from './chart-shift.ts';
import { whyDrawing } from './chart-why.ts';
import { kept } from './kept.ts';
import { SeenChart } from './seen-chart.ts';
import { timeChartStyles } from './time-chart.css.ts';

/** So near to a bar a finger still means it. */
const FINGER_PX = 40;
/** Now goes a pixel or two in so long. */
const STEP_MS = 15_000;

/**
 * The day on ruled time: a row for each hand and each rack, with what it is at or does next at its
 * head; now in brick, what is gone hatched, what a service waits for heavy. A tap on a task says
 * why it is when it is. It draws only what is in view.
 */
@customElement('time-chart')
export class TimeChart extends Part {
  static override styles = [base, timeChartStyles];

  @property({ attribute: false }) view: DeskView | null = null;
  /** What would stand elsewhere, if something were done that is thought of. */
  @property({ attribute: false }) wouldBe: readonly WouldBe[] = [];
  @property({ type: Number }) now: Instant = instant(0);
  @property({ type: Boolean, reflect: true }) narrow = false;
  /** Null while it follows the clock. */
  @state() private held: ChartWindow | null = null;
  @state() private picked: TaskId | null = null;

  readonly #seen = new SeenChart(this, () => this.renderRoot.querySelector<HTMLElement>('.scroll'));
  readonly #shift = new ChartShift(this);
  readonly #gestures = new ChartGestures({
    pan: (byPx) => {
      this.#shift.move();
      this.#pan(-byPx / this.#timePx);
    },
    zoom: (factor, aboutPx, byPx) => {
      this.#zoom(factor, this.#shareAt(aboutPx));
      this.#pan(-byPx / this.#timePx);
    },
  });
  readonly #laid = new LaidChart();
  readonly #paper = kept<Paper>();
  #shown: TaskId | null = null;
  /** Measured once before each drawing. */
  #sizes: Sizes = { widthPx: 1, lanePx: 1, letterPx: 1, headPx: 0, doingPx: 0 };
  #lanes: readonly [first: number, last: number] = [0, 0];

  protected override willUpdate(): void {
    // To measure is to have the page laid out: not while it moves.
    if (this.#shift.isMoving) return;
    const { widthPx, lanePx, letterPx, isNarrow } = this.#seen;
    const rows = this.view?.chart.rows ?? [];
    const head = headSizes(rows, { widthPx, letterPx, say: this.say }, isNarrow);
    this.narrow = isNarrow;
    this.#sizes = { widthPx, lanePx, letterPx, ...head };
    this.#lanes = this.#seen.lanesInView;
  }

  protected override updated(): void {
    const { picked } = this;
    if (picked === this.#shown) return;
    this.#shown = picked;
    // Its reasons take room at the foot, and may hide what they are about.
    const row = this.view && this.#rows(this.view.chart).find(({ bars }) => holds(bars, picked));
    if (row) this.#seen.scrollTo(row);
  }

  protected override draw() {
    const { view, say } = this;
    if (!view) return null;
    const rows = this.#rows(view.chart);
    const seen = this.#window(view.chart);
    const paper = this.#paperFor(seen, view.chart);
    const fromPx = placeIn(paper.window, seen.from) * paper.drawnPx;
    const rule = { fromPx, heightPx: RULE_LETTERS * paper.letterPx };
    return html`<div
        class="day"
        @pointerdown=${this.#down}
        @pointermove=${this.#move}
        @pointerup=${this.#up}
        @pointercancel=${this.#up}
        @wheel=${this.#wheel}
      >
        <div class="rule" aria-hidden="true">
          ${timeArea(paper, rule, [paper], () => ruleDrawing(paper, view.chart, view.zone))}
        </div>
        <div
          class="scroll"
          tabindex="0"
          role="group"
          aria-label=${deskWords[say.language].dayChart}
          @scroll=${() => this.requestUpdate()}
          @keydown=${this.#key}
        >
          ${this.#sheet(paper, rows, view.chart, fromPx)}
        </div>
      </div>
      <div class="foot">${this.#foot(view, rows)}</div>`;
  }

  /** The same paper for as long as what is drawn need not be otherwise. */
  #paperFor(seen: ChartWindow, chart: DayChart): Paper {
    const window = this.#shift.drawnFor(seen);
    const { picked, say } = this;
    const now = stepBefore(this.now);
    const of = [chart, window.from, window.to, now, picked, say, ...Object.values(this.#sizes)];
    return this.#paper(of, () =>
      paperOf(chart, { window, seen }, { now, picked, say, ...this.#sizes }),
    );
  }

  #sheet(paper: Paper, rows: readonly LaidRow[], chart: DayChart, fromPx: number) {
    const lanes = this.#lanes;
    const heightPx = lanesOf(rows) * paper.lanePx;
    const of = [paper, rows, ...lanes];
    const shown = () => rowsInView(rows, paper.window, lanes);
    return html`<div class="sheet" aria-hidden="true" @click=${this.#tap}>
      ${timeArea(paper, { fromPx, heightPx }, of, () => {
        const links = chart.chains.flatMap(({ tasks }) => chainLinks(rows, tasks));
        return sheetDrawing(paper, { shown: shown(), links, heightPx });
      })}
      <svg class="heads" width=${paper.widthPx} height=${heightPx}>
        ${guard(of, () => headsDrawing(paper, shown()))}
      </svg>
    </div>`;
  }

  #foot(view: DeskView, rows: readonly LaidRow[]) {
    const { picked, say, narrow, now } = this;
    const isFollowing = this.held === null;
    const minute = Math.floor(now / 60_000);
    const of = [view, rows, picked, say, narrow, isFollowing, minute, ...this.#lanes];
    return guard(of, () => {
      const sight = { rows, lanesInView: this.#lanes, isNarrow: narrow, isFollowing };
      return html`<div class="why" role="status">${whyDrawing(view, picked, say, now)}</div>
        ${footDrawing(sight, this.#deeds, say)}`;
    });
  }

  #rows(chart: DayChart): readonly LaidRow[] {
    return this.#laid.rowsOf(chart, this.now, this.#window(chart).from, this.wouldBe);
  }

  get #timePx(): number {
    return Math.max(1, this.#sizes.widthPx - this.#sizes.headPx);
  }

  #shareAt(clientX: number): number {
    const { left } = this.getBoundingClientRect();
    return Math.min(1, Math.max(0, (clientX - left - this.#sizes.headPx) / this.#timePx));
  }

  #window(chart: DayChart): ChartWindow {
    return this.held ?? windowAt(stepBefore(this.now), chart, this.#seen.opensMs(this.#timePx));
  }

  #look(at: (window: ChartWindow, day: DayChart) => ChartWindow): void {
    if (this.view) this.held = at(this.#window(this.view.chart), this.view.chart);
  }

  #pan(byShare: number): void {
    this.#look((window, day) => panned(window, byShare, day));
  }

  #zoom(factor: number, aboutShare = 0.5): void {
    this.#shift.rest();
    this.#look((window, day) => zoomed(window, factor, aboutShare, day));
  }

  readonly #deeds = {
    pan: (byShare: number) => this.#pan(byShare),
    zoom: (factor: number) => this.#zoom(factor),
    toNow: () => {
      this.#shift.rest();
      this.held = null;
    },
    step: (by: 1 | -1) => this.#step(by),
    unpick: () => {
      this.picked = null;
    },
    scrollUp: (lane: number) => this.#seen.scrollUp(lane),
  };

  readonly #down = (event: PointerEvent) => this.#gestures.down(event);
  readonly #move = (event: PointerEvent) => this.#gestures.move(event);
  readonly #up = (event: PointerEvent) => this.#gestures.up(event);
  readonly #wheel = (event: WheelEvent) => this.#gestures.wheel(event, event.clientX);

  #tap({ clientX, offsetY, target }: MouseEvent): void {
    const { view } = this;
    if (!view || this.#gestures.hasMoved) return;
    const named = (target as Element).closest('[data-task]')?.getAttribute('data-task');
    const { from, to } = this.#window(view.chart);
    const at = instant(from + (to - from) * this.#shareAt(clientX));
    const withinMs = ((to - from) * FINGER_PX) / this.#timePx;
    const height = offsetY / this.#seen.lanePx;
    const under = barUnder(this.#rows(view.chart), height, at, withinMs)?.id;
    this.picked = (named as TaskId | undefined) ?? under ?? null;
  }

  #key(event: KeyboardEvent): void {
    const deed = keyDeed(event.key, this.#deeds);
    if (!deed) return;
    event.preventDefault();
    deed();
  }

  #step(by: 1 | -1): void {
    const bar = this.view && stepFrom(this.view.chart, this.picked, by);
    if (!bar) return;
    this.picked = bar.id;
    this.#look((window, day) => showing(window, bar.startAt, day));
  }
}

const stepBefore = (now: Instant): Instant => instant(Math.floor(now / STEP_MS) * STEP_MS);

const holds = (bars: LaidRow['bars'], task: TaskId | null): boolean =>
  bars.some(({ bar }) => bar.id === task);
