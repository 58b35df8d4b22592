import type { Forecast, WrapName } from '../cook/index.ts';
import type { Instant, Seconds } from '../kernel/index.ts';
import { after, celsius, minutes, since } from '../kernel/index.ts';
import type { AdoptedForecast, ForeseenStage } from './adopted-forecast.ts';
import type { CookAsk } from './cook-ask.ts';
import { cookAskOf, lastReadingAt } from './cook-ask.ts';
import type { Decision } from './decision.ts';
import { happen } from './decision.ts';
import { indexOf } from './plan-index.ts';
import type { DayState } from './state.ts';

/**
 * Times move only for what a hand would act on: the middle by so much and by such a share of what
 * is left; its ends by twice that, since they say how sure it is (judged). Compared with what
 * stands, not with what was last computed: small steps one way add up, and steps to and fro do not.
 */
const MIDDLE = { leastS: minutes(5), shareOfLeft: 0.08 };
const ENDS = { leastS: minutes(10), shareOfLeft: 0.16 };
const NEVER = 0.1;

const FAN_POINTS = 12;

/** What a forecast says, in the times of the day; null: that nothing can be said. */
export function adoptedFrom(
  ask: CookAsk,
  found: Forecast | null,
  version: number,
): AdoptedForecast {
  const { stay, startedAt, now, options, piece } = ask;
  const at = (timeS: Seconds | undefined): Instant | null =>
    timeS === undefined ? null : after(startedAt, timeS);
  const wrap = piece.stays.find((each) => each.wrap !== 'none')?.wrap ?? 'none';
  return {
    ...{ stay, startedAt, madeAt: now, seed: options.seed, modelVersion: version },
    lastReadingAt: lastReadingAt(ask),
    wrap: wrap satisfies WrapName,
    isCalibrated: found?.isCalibrated ?? false,
    stages: (found?.targets ?? []).map(
      ({ id, tempC, p10S, p50S, p90S, never, ofSmoker, raw }): ForeseenStage => ({
        stage: id as ForeseenStage['stage'],
        tempC,
        ...{ p10At: at(p10S), p50At: at(p50S), p90At: at(p90S) },
        never: hundredth(never),
        ofSmoker: hundredth(ofSmoker),
        raw: raw ?? null,
      }),
    ),
    fan: thinned(found?.fan ?? []).map(({ atS, p10C, p50C, p90C }) => ({
      at: after(startedAt, atS),
      ...{ p10C: tenth(p10C), p50C: tenth(p50C), p90C: tenth(p90C) },
    })),
  };
}

const hundredth = (share: number) => Math.round(share * 100) / 100;

const tenth = (tempC: number) => celsius(Math.round(tempC * 10) / 10);

/** Points enough to draw, the first and the last among them. */
function thinned<Point>(points: readonly Point[]): Point[] {
  const step = Math.max(1, (points.length - 1) / (FAN_POINTS - 1));
  return points.filter((_, i) => Math.floor(i / step) !== Math.floor((i - 1) / step));
}

/** Whether a new forecast differs so much from the one that stands that a time should move. */
export function isNewsOfCook(stands: AdoptedForecast | null, found: AdoptedForecast): boolean {
  if (!stands) return found.stages.length > 0;
  if (stands.isCalibrated !== found.isCalibrated) return true;
  if (stands.modelVersion !== found.modelVersion || stands.wrap !== found.wrap) return true;
  if (stands.stages.length !== found.stages.length) return true;
  return found.stages.some((stage, place) => {
    const was = stands.stages[place];
    return was === undefined || differs(was, stage, found.madeAt);
  });
}

function differs(was: ForeseenStage, is: ForeseenStage, now: Instant): boolean {
  if (was.stage !== is.stage || was.tempC !== is.tempC) return true;
  if (Math.abs(was.never - is.never) >= NEVER) return true;
  const leftS = Math.max(0, since(now, is.p50At ?? now));
  const moved = (a: Instant | null, b: Instant | null, by: typeof MIDDLE) => {
    if (a === null || b === null) return a !== b;
    return Math.abs(b - a) / 1000 >= Math.max(by.leastS, by.shareOfLeft * leftS);
  };
  return (
    moved(was.p50At, is.p50At, MIDDLE) ||
    moved(was.p10At, is.p10At, ENDS) ||
    moved(was.p90At, is.p90At, ENDS)
  );
}

/**
 * Takes a forecast up where it is still about the load as it now is and moves a time; else nothing
 * happens. `key` is that of what it was asked.
 */
export function decideForecast(state: DayState, key: string, found: AdoptedForecast): Decision {
  if (!state.plan || state.happened.closed) return happen();
  const ask = cookAskOf(state, indexOf(state.plan), found.stay, found.madeAt);
  if (ask?.key !== key) return happen();
  const stands = state.forecasts.get(found.stay)?.at(-1) ?? null;
  if (!isNewsOfCook(stands, found)) return happen();
  return happen({ kind: 'forecastAdopted', forecast: found });
}
