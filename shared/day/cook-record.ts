import { COOKS_TO_BE_KNOWN, cooksIn, type Outcome } from '../cook/index.ts';
import type { Instant } from '../kernel/index.ts';
import { since } from '../kernel/index.ts';
import type { AdoptedForecast, ForeseenStage } from './adopted-forecast.ts';
import { passagesOf } from './passage.ts';
import { saneCores } from './probe.ts';
import type { DayState } from './state.ts';

/** Kitchens change: what is longer ago than so many forecasts is of other hands and fires. */
const KEPT = 600;

/** Of one load so many forecasts, spread over its cook: more would be the same witness again. */
const OF_ONE = 8;

/** How many finished cooks of this kitchen its forecasts go by, of how many are enough. */
export type Calibration = { readonly cooks: number; readonly enough: number };

/** How far a kitchen’s record goes. */
export const calibrationOf = ({ record }: Pick<DayState, 'record'>): Calibration => ({
  ...{ cooks: cooksIn(record), enough: COOKS_TO_BE_KNOWN },
});

/** What a kitchen has on record once this day is over: what was foreseen, and how it came. */
export function recordAfter(state: DayState): readonly Outcome[] {
  const day = state.day ?? '';
  const found = [...state.forecasts.values()].flatMap((made) => {
    const step = Math.max(1, made.length / OF_ONE);
    const spread = made.filter((_, i) => Math.floor(i / step) !== Math.floor((i - 1) / step));
    return spread.flatMap((each) => outcomesOf(state, day, each));
  });
  return [...state.record, ...found].slice(-KEPT);
}

function outcomesOf(state: DayState, day: string, made: AdoptedForecast): Outcome[] {
  return made.stages.flatMap(({ stage, tempC, raw }): Outcome[] => {
    const passedAt = passedOf(state, made, { stage, tempC });
    // What was over when it was foreseen teaches nothing; nor what nobody saw the end of.
    if (raw === null || passedAt === null || passedAt <= made.madeAt) return [];
    return [
      {
        cookId: `${day} ${made.stay}`,
        target: { tempC, way: 'rising' },
        wrap: made.wrap,
        madeAtS: since(made.startedAt, made.madeAt),
        raw,
        passedS: since(made.startedAt, passedAt),
      },
    ];
  });
}

/** When a core first showed what its check must find; else when hands found it so. */
function passedOf(
  state: DayState,
  { stay, startedAt }: AdoptedForecast,
  { stage, tempC }: Pick<ForeseenStage, 'stage' | 'tempC'>,
): Instant | null {
  const finishedAt = passagesOf(state).get(stage)?.finishedAt ?? null;
  if (finishedAt === null) return null;
  const shown = saneCores(state, stay, startedAt).find((reading) => reading.tempC >= tempC);
  return shown?.at ?? finishedAt;
}
