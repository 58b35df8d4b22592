import type { Calibration, Live, Overlong, ServiceSpread } from '../day/index.ts';
import { calibrationOf, heldBy, overlongIn } from '../day/index.ts';
import type { MixLine } from '../plan/index.ts';
import type { HeldTo, LimitsChange } from '../safety/index.ts';
import { type LastLooked, lastLooked } from './check-last.ts';
import type { DayChart } from './day-chart.ts';
import { dayChart } from './day-chart.ts';
import type { DayEnd } from './day-end.ts';
import { dayEnd } from './day-end.ts';
import type { LogLine } from './day-log.ts';
import { dayLog } from './day-log.ts';
import { viewHead } from './head.ts';
import type { PullRow } from './pull-rows.ts';
import { pullRows } from './pull-rows.ts';
import type { ServiceStanding } from './service-standing.ts';
import { standingsOf } from './service-standing.ts';
import { smokerDrawing } from './smoker-drawing.ts';
import type { SmokerDrawing, ViewHead } from './view.ts';

/** The whole day, for whoever answers for it. */
export type DeskView = ViewHead & {
  readonly face: 'desk';
  /** The local day that is being cooked for. */
  readonly day: string;
  /** Each edit of a running day makes the next. */
  readonly planVersion: number;
  readonly standings: readonly ServiceStanding[];
  /** Rests and holds that will last longer than they may, as things stand. */
  readonly overlong: readonly Overlong[];
  /** What the day is held to, and who said why it is other than delivered, oldest first. */
  readonly limits: LimitsHeld;
  readonly chart: DayChart;
  readonly smokers: readonly SmokerDrawing[];
  /** By how many cooks of this kitchen its forecasts go. */
  readonly calibration: Calibration;
  readonly log: readonly LogLine[];
  readonly pull: readonly PullRow[];
  readonly mixes: readonly MixLine[];
  readonly end: DayEnd;
  /** What was last found at the checks that are open. */
  readonly looked: readonly LastLooked[];
};

export type LimitsHeld = Pick<HeldTo, 'id' | 'version'> & {
  readonly changes: readonly Pick<LimitsChange, 'why' | 'by'>[];
};

function limitsHeld({ index }: Live): LimitsHeld {
  const { id, version, changes } = heldBy(index.plan);
  return { id, version, changes: changes.map(({ why, by }) => ({ why, by })) };
}

/** The day as the desk sees it. */
export function deskView(live: Live, spreads: readonly ServiceSpread[]): DeskView {
  const { version, built, kitchen } = live.index.plan;
  const head = viewHead(live);
  return {
    face: 'desk',
    ...head,
    day: built.day,
    planVersion: version,
    standings: standingsOf(live, spreads),
    overlong: overlongIn(live),
    limits: limitsHeld(live),
    chart: dayChart(live),
    smokers: kitchen.smokers.map((smoker) => smokerDrawing(live, smoker)),
    calibration: calibrationOf(live.state),
    log: dayLog(live),
    pull: pullRows(live),
    mixes: built.mixes,
    end: dayEnd(live),
    looked: lastLooked(live, head.checks),
  };
}
