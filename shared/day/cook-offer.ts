import type { Celsius, Instant, Seconds, ServiceId, TaskId, Text } from '../kernel/index.ts';
import type { TaskName } from '../plan/index.ts';
import type { Timeline } from '../schedule/index.ts';
import type { AdoptedForecast, ForeseenStage } from './adopted-forecast.ts';
import { movesTo } from './arrangement.ts';
import { cookStagesOf } from './cooking.ts';
import { endRangeOn } from './end-range.ts';
import { forecastOf } from './foreseen.ts';
import { ifEarlier } from './if-earlier.ts';
import type { Live } from './live.ts';
import { outlooksOn } from './outlook.ts';
import { taskName } from './plan-index.ts';
import type { Refusal } from './refusal.ts';
import type { DayState } from './state.ts';
import { loadKey } from './state.ts';
import { tellForeseen } from './told.ts';
import type { WhatIfInFire } from './what-if.ts';

/** What would come of it: for the load itself, and for what is promised. */
export type CookOffer = {
  readonly basedOnSeq: number;
  /** Of what has not gone in. */
  readonly goesIn: GoesIn | null;
  readonly stages: readonly {
    readonly stage: TaskId;
    readonly tempC: Celsius;
    /** As it stands; null where nothing does. */
    readonly before: Range | null;
    readonly after: Range;
  }[];
  readonly services: readonly {
    readonly id: ServiceId;
    readonly name: Text;
    readonly opensAt: Instant;
    readonly beforeS: Seconds;
    readonly afterS: Seconds;
  }[];
};

/** When hands would begin to load it, and what they would have to begin before, and when. */
type GoesIn = {
  readonly at: Instant;
  readonly first: { readonly task: TaskName; readonly at: Instant } | null;
};

type Range = Pick<ForeseenStage, 'p10At' | 'p50At' | 'p90At' | 'never'>;

/** What the day would be with that forecast, beside what it is; nothing of it is kept. */
export function cookOffer(live: Live, found: AdoptedForecast, whatIf: WhatIfInFire): CookOffer {
  const { state, index, now } = live;
  const { stay } = found;
  const slots = new Map(state.slots);
  if (whatIf.kind === 'move') slots.set(loadKey(stay, 0), whatIf.to);
  const forecasts = new Map(state.forecasts).set(stay, [found]);
  const tried = live.timeline.fork();
  const then: DayState = { ...state, slots, forecasts };
  if (whatIf.kind === 'move') tried.moved(movesTo(then, index, [stay]));
  tellForeseen(tried, then, stay, now);
  const stands = forecastOf(state, stay);
  return {
    basedOnSeq: state.seq,
    goesIn: null,
    stages: found.stages.map((each) => {
      const was = stands?.stages.find(({ stage }) => stage === each.stage);
      const { stage, tempC } = each;
      return { stage, tempC, before: was ? rangeOf(was) : null, after: rangeOf(each) };
    }),
    services: servicesOn(live, tried),
  };
}

const rangeOf = ({ p10At, p50At, p90At, never }: ForeseenStage): Range => ({
  ...{ p10At, p50At, p90At, never },
});

/**
 * What the day would be if a load went in so much sooner. Its core has not been read, so its ranges
 * are the catalogue's, before and after.
 */
export function earlierOffer(
  live: Live,
  stay: TaskId,
  byS: Seconds,
):
  | { readonly ok: true; readonly offer: CookOffer }
  | { readonly ok: false; readonly refusal: Refusal } {
  const sooner = ifEarlier(live, stay, byS);
  if (!sooner.ok) return sooner;
  const { state, index, now } = live;
  const { tried, at, first } = sooner;
  const rangeOn = (timeline: Timeline, stage: TaskId): Range => {
    const { lowS, highS } = endRangeOn(timeline, { state, index, now }, stage);
    const { endS } = timeline.times(stage);
    const [p10At, p50At, p90At] = [lowS, endS, highS].map((s) => live.instantOf(s));
    return { p10At: p10At ?? null, p50At: p50At ?? null, p90At: p90At ?? null, never: 0 };
  };
  const stages = cookStagesOf(state, index, stay).map(({ stage, tempC }) => ({
    ...{ stage, tempC },
    before: rangeOn(live.timeline, stage),
    after: rangeOn(tried, stage),
  }));
  const services = servicesOn(live, tried);
  const begins = first && { task: taskName(index, first.task), at: first.at };
  const goesIn: GoesIn = { at, first: begins };
  return { ok: true, offer: { basedOnSeq: state.seq, goesIn, stages, services } };
}

/** What each service has in hand, as it stands and as it would. */
function servicesOn({ timeline, index }: Live, tried: Timeline): CookOffer['services'] {
  const [before, after] = [outlooksOn(timeline, index), outlooksOn(tried, index)];
  return index.plan.built.services.flatMap(({ id, name, opensAt }) => {
    const [was, is] = [before.get(id), after.get(id)];
    if (!was || !is) return [];
    return [{ id, name, opensAt, beforeS: was.inHandS, afterS: is.inHandS }];
  });
}
