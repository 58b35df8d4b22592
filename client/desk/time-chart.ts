import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Instant, TaskId } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { ChartWindow, DayChart, DeskView, LaidRow } from '../../shared/view/index.ts';
import {
  barUnder,
  chainLinks,
  lanesOf,
  panned,
  rowsInView,
  showing,
  stepFrom,
  windowAt,
  zoomed,
} from '../../shared/view/index.ts';
import { deskWords } from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { isOfRacks, sheetDrawing } from './chart-drawing.ts';
import { ChartGestures } from './chart-gestures.ts';
import { headSizes } from './chart-heads.ts';
import { LaidChart } from './chart-laid.ts';
import type { Paper } from './chart-paper.ts';
import { RULE_LETTERS, ruleDrawing } from './chart-rule.ts';
import { whyDrawing } from './chart-why.ts';
import { SeenChart } from './seen-chart.ts';
import { timeChartStyles } from './time-chart.css.ts';

type Sizes = Pick<Paper, 'widthPx' | 'lanePx' | 'letterPx' | 'headPx' | 'doingPx'>;

const ZOOM = 1.5;
/** So near to a bar a finger still means it. */
const FINGER_PX = 40;

/**
 * The day on ruled time: a row for each hand and each rack, with what it is at or does next at its
 * head; now in brick, what is gone hatched, what a service waits for heavy. A tap on a task says
 * why it is when it is. It draws only what is in view.
 */
@customElement('time-chart')
export class TimeChart extends Part {
  static override styles = [base, timeChartStyles];

  @property({ attribute: false }) view: DeskView | null = null;
  @property({ type: Number }) now: Instant = instant(0);
  @property({ type: Boolean, reflect: true }) narrow = false;
  /** Null while it follows the clock. */
  @state() private held: ChartWindow | null = null;
  @state() private picked: TaskId | null = null;

  readonly #seen = new SeenChart(this, () => this.renderRoot.querySelector<HTMLElement>('.scroll'));
  readonly #gestures = new ChartGestures({
    pan: (byPx) => this.#look((window, day) => panned(window, -byPx / this.#timePx, day)),
    zoom: (factor, aboutPx) =>
      this.#look((window, day) => zoomed(window, factor, this.#shareAt(aboutPx), day)),
  });
  readonly #laid = new LaidChart();
  #shown: TaskId | null = null;
  /** Measured once before each drawing. */
  #sizes: Sizes = { widthPx: 1, lanePx: 1, letterPx: 1, headPx: 0, doingPx: 0 };

  protected override willUpdate(): void {
    const { widthPx, lanePx, letterPx, isNarrow } = this.#seen;
    const rows = this.view?.chart.rows ?? [];
    const head = headSizes(rows, { widthPx, letterPx, say: this.say }, isNarrow);
    this.narrow = isNarrow;
    this.#sizes = { widthPx, lanePx, letterPx, ...head };
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
    const paper = this.#paper(view.chart);
    const rows = this.#rows(view.chart);
    return html`<svg
        class="rule"
        height=${RULE_LETTERS * paper.letterPx}
        width=${paper.widthPx}
        aria-hidden="true"
        @pointerdown=${this.#down}
        @pointermove=${this.#move}
        @pointerup=${this.#up}
        @pointercancel=${this.#up}
        @wheel=${this.#wheel}
      >
        ${ruleDrawing(paper, view.chart, view.zone)}
      </svg>
      <div
        class="scroll"
        tabindex="0"
        role="group"
        aria-label=${deskWords[say.language].dayChart}
        @scroll=${() => this.requestUpdate()}
        @keydown=${this.#key}
      >
        ${this.#sheet(paper, rows, view.chart)}
      </div>
      <div class="foot">
        <div class="why" role="status">${whyDrawing(view, this.picked, say, this.now)}</div>
        ${this.#strip(rows)}
      </div>`;
  }

  #paper(chart: DayChart): Paper {
    return {
      window: this.#window(chart),
      ...this.#sizes,
      now: this.now,
      chained: new Set(chart.chains.flatMap(({ tasks }) => tasks)),
      picked: this.picked,
      batches: chart.batches,
      say: this.say,
    };
  }

  #sheet(paper: Paper, rows: readonly LaidRow[], chart: DayChart) {
    const shown = rowsInView(rows, paper.window, this.#seen.lanesInView);
    const links = chart.chains.flatMap(({ tasks }) => chainLinks(rows, tasks));
    const heightPx = lanesOf(rows) * paper.lanePx;
    return html`<svg
      class="rows"
      height=${heightPx}
      width=${paper.widthPx}
      aria-hidden="true"
      @pointerdown=${this.#down}
      @pointermove=${this.#move}
      @pointerup=${this.#up}
      @pointercancel=${this.#up}
      @wheel=${this.#wheel}
      @click=${this.#tap}
    >
      ${sheetDrawing(paper, { shown, links, heightPx })}
    </svg>`;
  }

  #strip(rows: readonly LaidRow[]) {
    const words = deskWords[this.say.language];
    const toNow = { label: words.toNow, choose: this.#toNow };
    const choices: Choice[] = [
      { label: '−', name: words.further, choose: () => this.#zoom(ZOOM) },
      { label: '+', name: words.nearer, choose: () => this.#zoom(1 / ZOOM) },
      // On a phone it has room only while it is of use.
      ...(this.narrow && !this.held ? [] : [toNow]),
      ...this.#otherHalf(rows),
    ];
    const { dayChart: name } = words;
    return html`<choice-strip .say=${this.say} .name=${name} .choices=${choices}></choice-strip>`;
  }

  /** To the racks where none is in sight, and back. */
  #otherHalf(rows: readonly LaidRow[]): Choice[] {
    const words = deskWords[this.say.language];
    const [first, last] = this.#seen.lanesInView;
    if (lanesOf(rows) <= last - first) return [];
    const top = rows.find(isOfRacks)?.top ?? 0;
    if (top > last - 1.5) {
      return [{ label: words.toSmokers, choose: () => this.#seen.scrollUp(top) }];
    }
    return first > 0.5 ? [{ label: words.toCrew, choose: () => this.#seen.scrollUp(0) }] : [];
  }

  #rows(chart: DayChart): readonly LaidRow[] {
    return this.#laid.rowsOf(chart, this.now, this.#window(chart).from);
  }

  get #timePx(): number {
    return Math.max(1, this.#sizes.widthPx - this.#sizes.headPx);
  }

  #shareAt(clientX: number): number {
    const { left } = this.getBoundingClientRect();
    return Math.min(1, Math.max(0, (clientX - left - this.#sizes.headPx) / this.#timePx));
  }

  #window(chart: DayChart): ChartWindow {
    return this.held ?? windowAt(this.now, chart, this.#seen.opensMs(this.#timePx));
  }

  #look(at: (window: ChartWindow, day: DayChart) => ChartWindow): void {
    if (this.view) this.held = at(this.#window(this.view.chart), this.view.chart);
  }

  #zoom(factor: number): void {
    this.#look((window, day) => zoomed(window, factor, 0.5, day));
  }

  readonly #toNow = () => {
    this.held = null;
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
    const deeds: Readonly<Record<string, () => void>> = {
      ArrowLeft: () => this.#look((window, day) => panned(window, -0.15, day)),
      ArrowRight: () => this.#look((window, day) => panned(window, 0.15, day)),
      ArrowUp: () => this.#step(-1),
      ArrowDown: () => this.#step(1),
      '+': () => this.#zoom(1 / ZOOM),
      '-': () => this.#zoom(ZOOM),
      Home: this.#toNow,
      Escape: () => {
        this.picked = null;
      },
    };
    const deed = deeds[event.key];
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

const holds = (bars: LaidRow['bars'], task: TaskId | null): boolean =>
  bars.some(({ bar }) => bar.id === task);
