import type { Live } from '../day/index.ts';
import type { Instant } from '../kernel/index.ts';
import type { MixLine, PullLine } from '../plan/index.ts';
import type { DayChart } from './day-chart.ts';
import { dayChart } from './day-chart.ts';
import type { LogLine } from './day-log.ts';
import { dayLog } from './day-log.ts';
import { viewHead } from './head.ts';
import { smokerDrawing } from './smoker-drawing.ts';
import type { SmokerDrawing, ViewHead } from './view.ts';

/** The whole day, for whoever answers for it. */
export type DeskView = ViewHead & {
  readonly face: 'desk';
  /** The local day that is being cooked for. */
  readonly day: string;
  /** Each edit of a running day makes the next. */
  readonly planVersion: number;
  readonly chart: DayChart;
  readonly smokers: readonly SmokerDrawing[];
  readonly log: readonly LogLine[];
  readonly pull: readonly PullRow[];
  readonly mixes: readonly MixLine[];
};

export type PullRow = Omit<PullLine, 'byS'> & { readonly byAt: Instant };

/** The day as the desk sees it. */
export function deskView(live: Live): DeskView {
  const { version, built, kitchen } = live.index.plan;
  return {
    face: 'desk',
    ...viewHead(live),
    day: built.day,
    planVersion: version,
    chart: dayChart(live),
    smokers: kitchen.smokers.map((smoker) => smokerDrawing(live, smoker)),
    log: dayLog(live),
    pull: built.pull
      .map(({ byS, ...line }) => ({ ...line, byAt: live.instantOf(byS) }))
      .sort((a, b) => a.byAt - b.byAt),
    mixes: built.mixes,
  };
}
