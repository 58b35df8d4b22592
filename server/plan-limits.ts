import { type Celsius, seconds } from '../shared/kernel/index.ts';
import type { Breach, Limits } from '../shared/plan/index.ts';
import {
  breachOf,
  celsiusOf,
  judgeAbove,
  judgeCleaning,
  judgeColdHold,
  judgeEndTemperature,
  judgeHotHold,
  judgeNitrite,
  judgeOutOfTemperature,
  judgeReheat,
  type LimitsChange,
  limitOf,
  type Profile,
  profileAfter,
  profiles,
  rowBroken,
  rowsOf,
  rubbedPpm,
  secondsOf,
  variancesOf,
} from '../shared/safety/index.ts';

/** What a kitchen may name as the limits it keeps to. */
export const profileNames = profiles.map(({ id }) => id);

/** The delivered profile of that name with what a kitchen changed of it, or null. */
export function profileNamed(id: string, changes: readonly LimitsChange[] = []): Profile | null {
  const delivered = profiles.find((profile) => profile.id === id);
  return delivered ? profileAfter(delivered, changes) : null;
}

/** A profile as the plan asks it: each row answers with itself where a plan would break it. */
export function planLimits(profile: Profile): Limits {
  return {
    coreNeededC: (kind) => {
      const limit = limitOf(profile, 'end-temperature', { kind });
      const [point] = limit?.anyOf ?? [];
      return point ? celsiusOf(point.temp) : null;
    },
    endTemperature: (food) => breachOf(judgeEndTemperature(profile, food)),
    hotHold: (coreC) => breachOf(judgeHotHold(profile, { coreC })),
    coldHold: (coreC) => breachOf(judgeColdHold(profile, { coreC })),
    reheat: (food) => breachOf(judgeReheat(profile, { ...food, way: 'oven', tookS: seconds(0) })),
    reheatWithin: (tookS) =>
      breachOf(judgeReheat(profile, { way: 'oven', tookS, coreC: HOT_C, heldS: LONG_S })),
    cooling: (stages) => coolingBreach(profile, stages),
    outOfTemperature: (outS) => breachOf(judgeOutOfTemperature(profile, outS)),
    cleanInterval: (inUseS) => breachOf(judgeCleaning(profile, inUseS)),
    above: (upper, lower) => breachOf(judgeAbove(profile, upper, lower)),
    cure: ({ method, ...into }) =>
      breachOf(judgeNitrite(profile, { method, ppm: rubbedPpm(into) })),
    curing: () => curingBreach(profile),
  };
}

/** The row that asks for a variance first, or one that nobody has filled in. */
function curingBreach(profile: Profile): Breach | null {
  const [row] = variancesOf(profile, ['curing']);
  return row ? rowBroken({ row }, { measured: null, limit: null }) : null;
}

/** Hotter and longer than any row asks: where only the time is in question. */
const HOT_C = 100 as Celsius;
const LONG_S = seconds(86_400);

/** Each stage of each row needs one of the route's that is as cold and as soon. */
function coolingBreach(profile: Profile, stages: Parameters<Limits['cooling']>[0]): Breach | null {
  for (const row of rowsOf(profile, 'cooling')) {
    if (row.severity !== 'refuse') continue;
    if (row.limit === null) return rowBroken({ row }, { measured: null, limit: null });
    const missed = row.limit.stages.find(
      ({ to, within }) =>
        !stages.some((stage) => stage.toC <= celsiusOf(to) && stage.withinS <= secondsOf(within)),
    );
    if (missed) {
      const asked = `${missed.to}, ${missed.within}`;
      return { ...rowBroken({ row }, { measured: null, limit: null }), asked };
    }
  }
  return null;
}
