import { html, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Instant, ServiceId, TaskId } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { ChartWindow, DayChart, DeskView, LaidRow } from '../../shared/view/index.ts';
import {
  barUnder,
  chainLinks,
  layRows,
  panned,
  rowsInView,
  ruleOf,
  ruleStepMin,
  showing,
  stepFrom,
  whyOf,
  windowAt,
  zoomed,
} from '../../shared/view/index.ts';
import { clockTime, deskWords, sayBar, sayWhy, textIn } from '../../shared/words/index.ts';
import '../parts/choice-strip.ts';
import { Part } from '../parts/part.ts';
import { base } from '../theme/index.ts';
import { acrossPx, linkDrawing, namesPx, type Paper, rowDrawing } from './chart-drawing.ts';
import { ChartGestures } from './chart-gestures.ts';
import { SeenChart } from './seen-chart.ts';
import { timeChartStyles } from './time-chart.css.ts';

const NARROW_BELOW_PX = 600;
const ZOOM = 1.5;
/** So near to a bar a finger still means it. */
const FINGER_PX = 24;

/**
 * The day on ruled time: a row for each hand and each rack, now in brick, what is gone hatched, the
 * chain that a service hangs on heavy. A tap on a task says why it is when it is. It draws only
 * what is in view.
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
  #laid: { readonly of: DayChart; readonly rows: readonly LaidRow[] } | null = null;

  protected override willUpdate(): void {
    this.narrow = this.#seen.widthPx < NARROW_BELOW_PX;
  }

  protected override draw() {
    const { view } = this;
    if (!view) return null;
    const paper = this.#paper(view);
    return html`${this.#rule(paper, view)}
      <div
        class="scroll"
        tabindex="0"
        role="group"
        aria-label=${deskWords[this.say.language].dayChart}
        @scroll=${() => this.requestUpdate()}
        @keydown=${this.#key}
      >
        ${this.#rows(paper, view.chart)}
      </div>
      <div class="foot">${this.#foot(view)}</div>`;
  }

  #paper({ chart }: DeskView): Paper {
    const { widthPx, lanePx } = this.#seen;
    return {
      window: this.#window(chart),
      namesPx: this.#namesPx,
      widthPx,
      lanePx,
      now: this.now,
      chained: new Set(chart.chains.flatMap(({ tasks }) => tasks)),
      picked: this.picked,
      say: this.say,
    };
  }

  #rule(paper: Paper, { chart, zone }: DeskView) {
    const { widthPx, lanePx, namesPx, window } = paper;
    const strokes = ruleOf(chart, ruleStepMin(window, this.#timePx, lanePx * 2.4), zone);
    const shown = strokes.filter((at) => at >= window.from && at <= window.to);
    // A time that would be cut off at an edge is not written there.
    const hasRoom = (x: number) => x > namesPx + 1.3 * lanePx && x < widthPx - 1.3 * lanePx;
    return html`<svg class="rule" height=${lanePx} width=${widthPx} aria-hidden="true"
      @pointerdown=${this.#down} @pointermove=${this.#move}
      @pointerup=${this.#up} @pointercancel=${this.#up} @wheel=${this.#wheel}>
      ${shown.map((at) => {
        const x = acrossPx(paper, at);
        const word = svg`<text x=${x} y=${lanePx * 0.6} text-anchor="middle">
          ${clockTime(at, this.say)}
        </text>`;
        return svg`<path d="M${x} ${lanePx * 0.72}V${lanePx}" />${hasRoom(x) ? word : nothing}`;
      })}
      <path class="now" d="M${acrossPx(paper, this.now)} ${lanePx * 0.5}V${lanePx}" />
    </svg>`;
  }

  #rows(paper: Paper, chart: DayChart) {
    const rows = this.#laidRows(chart);
    const { lanePx, widthPx, namesPx } = paper;
    const shown = rowsInView(rows, paper.window, this.#seen.lanesInView);
    const last = rows.at(-1);
    const heightPx = last ? (last.top + last.lanes) * lanePx : 0;
    const nowPx = acrossPx(paper, this.now);
    const links = chart.chains.flatMap(({ tasks }) => chainLinks(rows, tasks));
    return html`<svg class="rows" height=${heightPx} width=${widthPx} aria-hidden="true"
      @pointerdown=${this.#down} @pointermove=${this.#move}
      @pointerup=${this.#up} @pointercancel=${this.#up} @wheel=${this.#wheel}
      @click=${this.#tap}>
      <defs>
        <pattern id="gone" width="9" height="9" patternUnits="userSpaceOnUse"
          patternTransform="rotate(25)"><path class="hatch" d="M1 0V9" /></pattern>
        <pattern id="range" width="7" height="7" patternUnits="userSpaceOnUse"
          patternTransform="rotate(25)"><path class="strong" d="M1 0V7" /></pattern>
        <clipPath id="time"><rect x=${namesPx} width=${widthPx} height=${heightPx} /></clipPath>
      </defs>
      ${repeat(
        shown,
        ({ top }) => top,
        (row) => rowDrawing(paper, row),
      )}
      <g clip-path="url(#time)">
        ${links.map((link) => linkDrawing(paper, link))}
        <path class="now" d="M${nowPx} 0V${heightPx}" />
      </g>
    </svg>`;
  }

  #foot({ chart, services }: DeskView) {
    const words = deskWords[this.say.language];
    const choices = [
      { label: '−', name: words.further, choose: () => this.#zoom(ZOOM) },
      { label: '+', name: words.nearer, choose: () => this.#zoom(1 / ZOOM) },
      { label: words.toNow, choose: () => this.#toNow() },
    ];
    return html`<div class="why" role="status">${this.#why(chart, services)}</div>
      <choice-strip .say=${this.say} .name=${words.dayChart} .choices=${choices}></choice-strip>`;
  }

  #why(chart: DayChart, services: DeskView['services']) {
    const { picked, say, now } = this;
    const words = deskWords[say.language];
    const bars = picked ? whyOf(chart, picked) : [];
    const [bar] = bars;
    if (!bar) return html`<p>${words.pickOne}</p>`;
    const decided = services.filter(({ id }) => chainOf(chart, id).includes(bar.id));
    const names = decided.map(({ name }) => textIn(name, say)).join(', ');
    return html`<p>${sayBar(bar, chart, say, now)}${names ? ` · ${words.decides(names)}` : ''}</p>
      ${sayWhy(bars, say, now).map((sentence) => html`<p>${sentence}</p>`)}`;
  }

  #laidRows(chart: DayChart): readonly LaidRow[] {
    if (this.#laid?.of !== chart) this.#laid = { of: chart, rows: layRows(chart) };
    return this.#laid.rows;
  }

  get #namesPx(): number {
    const { view, say } = this;
    return namesPx(view ? this.#laidRows(view.chart) : [], this.#seen, say);
  }

  get #timePx(): number {
    return Math.max(1, this.#seen.widthPx - this.#namesPx);
  }

  #shareAt(clientX: number): number {
    const { left } = this.getBoundingClientRect();
    return Math.min(1, Math.max(0, (clientX - left - this.#namesPx) / this.#timePx));
  }

  #window(chart: DayChart): ChartWindow {
    return this.held ?? windowAt(this.now, chart, this.#seen.opensMs);
  }

  #look(at: (window: ChartWindow, day: DayChart) => ChartWindow): void {
    if (this.view) this.held = at(this.#window(this.view.chart), this.view.chart);
  }

  #zoom(factor: number): void {
    this.#look((window, day) => zoomed(window, factor, 0.5, day));
  }

  #toNow(): void {
    this.held = null;
  }

  readonly #down = (event: PointerEvent) => this.#gestures.down(event);
  readonly #move = (event: PointerEvent) => this.#gestures.move(event);
  readonly #up = (event: PointerEvent) => this.#gestures.up(event);
  readonly #wheel = (event: WheelEvent) => this.#gestures.wheel(event, event.clientX);

  #tap({ clientX, offsetY }: MouseEvent): void {
    const { view } = this;
    if (!view || this.#gestures.hasMoved) return;
    const { from, to } = this.#window(view.chart);
    const at = instant(from + (to - from) * this.#shareAt(clientX));
    const withinMs = ((to - from) * FINGER_PX) / this.#timePx;
    const height = offsetY / this.#seen.lanePx;
    this.picked = barUnder(this.#laidRows(view.chart), height, at, withinMs)?.id ?? null;
  }

  #key(event: KeyboardEvent): void {
    const deeds: Readonly<Record<string, () => void>> = {
      ArrowLeft: () => this.#look((window, day) => panned(window, -0.15, day)),
      ArrowRight: () => this.#look((window, day) => panned(window, 0.15, day)),
      ArrowUp: () => this.#step(-1),
      ArrowDown: () => this.#step(1),
      '+': () => this.#zoom(1 / ZOOM),
      '-': () => this.#zoom(ZOOM),
      Home: () => this.#toNow(),
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
    const row = this.#laid?.rows.find(({ bars }) => bars.some((laid) => laid.bar === bar));
    if (row) this.#seen.scrollTo(row);
  }
}

const chainOf = ({ chains }: DayChart, service: ServiceId | undefined): readonly TaskId[] =>
  chains.find((chain) => chain.service === service)?.tasks ?? [];
