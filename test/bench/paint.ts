import { availableParallelism, loadavg } from 'node:os';
import { type Browser, type CDPSession, chromium, type Locator, type Page } from 'playwright';
import { openLive } from '../../shared/day/index.ts';
import { after, instant, minutes, must } from '../../shared/kernel/index.ts';
import type { CommandMessage } from '../../shared/protocol/index.ts';
import { type Face, isWork, type TaskView, type View, viewOf } from '../../shared/view/index.ts';
import { launchOptions } from '../browser.ts';
import { noon, plan, Telling } from '../shared/day/demo.ts';
import { panChart, watchInk } from './paint/in-page.ts';
import { openStubKitchen, type StubKitchen } from './paint/stub-kitchen.ts';
import { quantile, rounded } from './taps.ts';

const TAPS = 60;
/** A finger lies on the glass for no less (judged, no source). */
const DWELL_MS = 60;
const SLOWED = 6;
const BURST = 200;
const FRAMES = 300;
const SIZE = { width: 1920, height: 1080 };

/**
 * What a finger sees of a wall, in Chromium, on the demo day of 300 tasks of hands and more.
 *
 * - `tap_ink_p95_ms`: from the lift of a finger on a ring to the end of the frame that has its ink,
 *   on a processor slowed six times; the hub answers later than that.
 * - `blank_ink_p95_ms`: the same for a page that has nothing but one place to tap, measured beside
 *   it: what is the machine's and the browser's own.
 * - `burst_longest_task_ms`: the longest task of the page's own thread while a hub shows two
 *   hundred changed days in a second, on the same slowed processor.
 * - `chart_frame_p95_ms`: the time that the page's own thread takes to move the desk's chart by
 *   nine pixels, to more hours than are in sight and back, from noon, when it is full; not slowed.
 * - `waiting_per_core`: how many others wanted the machine meanwhile. Above one, all figures are of
 *   a machine that is shared, not of the screens.
 */
export async function bench(): Promise<Record<string, number>> {
  const browser = await chromium.launch(launchOptions());
  const blank = await measureBlank(browser);
  const wall = await measureWall(browser);
  const chart = await measureChart(browser);
  await browser.close();
  const [load = 0] = loadavg();
  const waiting_per_core = rounded(load / availableParallelism());
  const sizes = { tasks: plan.built.tasks.length, taps: TAPS, burst: BURST };
  return { ...sizes, ...blank, ...wall, ...chart, waiting_per_core };
}

/** The demo day in the middle of its work, as one face shows it, and what taps make of that. */
class ShownDay {
  readonly #openedMs = performance.now();
  view: View;

  constructor(face: Face) {
    this.view = dayOf(face);
  }

  readonly now = () => instant(this.view.at + Math.floor(performance.now() - this.#openedMs));

  take({ kind, ...rest }: CommandMessage): void {
    const id = 'task' in rest ? rest.task : null;
    if (kind === 'start') this.#change(id, { state: 'running', startAt: this.now() });
    else if (kind === 'takeBack') this.#change(id, { state: 'ready' });
    else this.#change(null, {});
  }

  /** Another count of pieces on every line: as much changes as can without a line that moves. */
  stir(n: number): void {
    this.#changeAll((task) => ({ ...task, counted: n % Math.max(2, task.pieces) }));
  }

  #change(id: string | null, change: Partial<TaskView>): void {
    this.#changeAll((task) => (task.id === id ? { ...task, ...change } : task));
  }

  #changeAll(change: (task: TaskView) => TaskView): void {
    const seq = this.view.seq + 1;
    this.view = isWork(this.view)
      ? { ...this.view, seq, tasks: this.view.tasks.map(change) }
      : { ...this.view, seq };
  }
}

function dayOf(face: Face): View {
  return face.kind === 'desk' ? viewOf(openLive(new Telling().state, noon), face) : startable(face);
}

/** Four hours into the day, or as soon after that as somebody may start something. */
function startable(face: Face): View {
  const { state } = new Telling();
  for (let minute = 240; minute < 1_440; minute += 5) {
    const at = after(plan.built.origin, minutes(minute));
    const view = viewOf(openLive(state, at), face);
    const soon = after(at, minutes(5));
    if (isWork(view) && view.tasks.some((task) => task.state === 'ready' && task.startAt <= soon))
      return view;
  }
  throw new Error('nobody may start anything on the demo day');
}

/** One place to tap, and ink for it. */
const BLANK = `<!doctype html><style>
    tap-ring { display: block; width: 300px; height: 300px }
    tap-ring[inked] { background: black }
  </style><tap-ring></tap-ring><script>
    const ring = document.querySelector('tap-ring');
    ring.addEventListener('pointerdown', () => ring.removeAttribute('inked'));
    ring.addEventListener('pointerup', () => ring.setAttribute('inked', ''));
  </script>`;

async function measureBlank(browser: Browser) {
  const context = await browser.newContext({ viewport: SIZE, screen: SIZE, hasTouch: true });
  const page = await context.newPage();
  await watched(page);
  await page.goto(`data:text/html,${encodeURIComponent(BLANK)}`);
  const inkMs = await tapPlace(page, await slowed(page), page.locator('tap-ring'));
  await context.close();
  return {
    blank_ink_p50_ms: rounded(quantile(inkMs, 0.5)),
    blank_ink_p95_ms: rounded(quantile(inkMs, 0.95)),
  };
}

async function slowed(page: Page): Promise<CDPSession> {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  return cdp;
}

async function measureWall(browser: Browser) {
  const [first, ...beside] = plan.kitchen.stations.map(({ id }) => id);
  const day = new ShownDay({ kind: 'station', station: must(first, 'a station'), beside });
  const { now } = day;
  const kitchen = await openStubKitchen({
    view: () => day.view,
    now,
    take: (message) => day.take(message),
  });
  const context = await browser.newContext({ viewport: SIZE, screen: SIZE, hasTouch: true });
  const page = await context.newPage();
  await watched(page);
  await page.goto(`${kitchen.address}/station.html?station=${[first, ...beside].join(',')}`);
  // Starts what stands first and takes it back, in one place, by turns.
  const ring = page.getByRole('button', { name: /^start: / }).first();
  const inkMs = await tapPlace(page, await slowed(page), ring);
  const longestMs = await burstOn(browser, page, { day, kitchen });
  await context.close();
  await kitchen.close();
  return {
    tap_ink_p50_ms: rounded(quantile(inkMs, 0.5)),
    tap_ink_p95_ms: rounded(quantile(inkMs, 0.95)),
    burst_longest_task_ms: rounded(longestMs),
  };
}

async function watched(page: Page): Promise<void> {
  // What compiles this file marks functions with a helper that no page has.
  await page.addInitScript('globalThis.__name = (named) => named');
  await page.addInitScript(watchInk);
}

/** Taps where `place` is now, whatever comes to stand there. */
async function tapPlace(page: Page, cdp: CDPSession, place: Locator): Promise<number[]> {
  await place.waitFor();
  const box = must(await place.boundingBox(), 'a place');
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  for (let tap = 0; tap < TAPS; tap++) {
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [middle] });
    await page.waitForTimeout(DWELL_MS);
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await page.waitForTimeout(900);
  }
  const { inkMs } = await page.evaluate(() => window.written);
  if (inkMs.length < TAPS) throw new Error(`${inkMs.length} of ${TAPS} taps left ink`);
  return inkMs;
}

async function burstOn(
  browser: Browser,
  page: Page,
  { day, kitchen }: { readonly day: ShownDay; readonly kitchen: StubKitchen },
): Promise<number> {
  await browser.startTracing(page, { categories: ['toplevel', 'disabled-by-default-lighthouse'] });
  const beganMs = performance.now();
  for (let n = 1; n <= BURST; n++) {
    day.stir(n);
    kitchen.show(day.view);
    const dueMs = beganMs + (n * 1_000) / BURST;
    await new Promise((resolve) => setTimeout(resolve, Math.max(0, dueMs - performance.now())));
  }
  // A page that lags behind has longer tasks still to come.
  await page.waitForTimeout(4_000);
  const trace = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: Trace[] };
  return longestTaskMs(trace.traceEvents);
}

type Trace = { name: string; pid: number; tid: number; dur?: number; args?: { name?: string } };

/** Of the main threads of pages. */
function longestTaskMs(events: readonly Trace[]): number {
  const key = ({ pid, tid }: Trace) => `${pid} ${tid}`;
  const mains = new Set(
    events.filter(({ args }) => args?.name === 'CrRendererMain').map((event) => key(event)),
  );
  const tasks = events.filter((event) => /RunTask$/.test(event.name) && mains.has(key(event)));
  if (tasks.length < BURST) throw new Error(`only ${tasks.length} tasks were seen`);
  return Math.max(...tasks.map(({ dur = 0 }) => dur)) / 1_000;
}

async function measureChart(browser: Browser) {
  const day = new ShownDay({ kind: 'desk' });
  const { now } = day;
  const kitchen = await openStubKitchen({ view: () => day.view, now, take: () => {} });
  const page = await browser.newPage({ viewport: SIZE });
  await watched(page);
  await page.goto(`${kitchen.address}/desk.html`);
  await page.locator('time-chart .sheet').waitFor();
  await page.waitForTimeout(1_000);
  const bars_in_sight = await page.locator('time-chart .bar').count();
  await page.evaluate(panChart, FRAMES);
  const { frameMs } = await page.evaluate(() => window.written);
  await page.close();
  await kitchen.close();
  const bars = day.view.face === 'desk' ? day.view.chart.bars.length : 0;
  return {
    chart_bars: bars,
    bars_in_sight,
    chart_frame_p50_ms: rounded(quantile(frameMs, 0.5)),
    chart_frame_p95_ms: rounded(quantile(frameMs, 0.95)),
    chart_frame_longest_ms: rounded(Math.max(...frameMs)),
  };
}
