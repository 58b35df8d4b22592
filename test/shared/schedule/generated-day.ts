import { minutes, seconds } from '../../../shared/kernel/index.ts';
import type { Activity, Clash, Lag, Problem } from '../../../shared/schedule/index.ts';
import { barbecueDay } from './barbecue-day.ts';
import { activityId, resourceId } from './problems.ts';

/** So many batches of a kitchen are rubbed with one mix. */
const BATCHES_OF_A_MIX = 4;
/** The share of activities that are mixes: one to so many. */
const ACTIVITIES_TO_A_MIX = 36;
const RACKS = [1, 2, 3, 4, 5];
const SMOKERS = ['a', 'b', 'c'];

/**
 * A barbecue day of about so many activities, with what ties batches together: a mix that several
 * are rubbed with, wrapping that is quicker for two hands, and birds that drip on what lies below
 * them while they are raw. Past some 300 activities it is the day of several kitchens.
 */
export function generatedDay(activities: number, seed: number): Problem {
  const mixes = Math.floor(activities / (ACTIVITIES_TO_A_MIX + 1));
  const day = barbecueDay(activities - mixes, seed);
  const batches = day.goals.length;
  const kitchens = new Set(day.resources.map(({ id }) => id.match(/^cabinet(\d+)$/)?.[1])).size - 1;
  const groups = groupsOf(batches, kitchens);
  return {
    ...day,
    activities: [...day.activities.map(wrappedByTwo), ...groups.map(mixOf(day))],
    lags: [...day.lags, ...groups.flatMap(waitingForTheirMix)],
    clashes: clashesOf(day, batches, kitchens),
  };
}

type Group = readonly number[];

/** Batches of one kitchen and one service, a few at a time. */
function groupsOf(batches: number, kitchens: number): Group[] {
  const alike = new Map<string, number[]>();
  for (let batch = 0; batch < batches; batch++) {
    const key = `${batch % kitchens} ${Math.floor(batch / kitchens) % 2}`;
    alike.set(key, [...(alike.get(key) ?? []), batch]);
  }
  return [...alike.values()].flatMap((its) =>
    Array.from({ length: Math.ceil(its.length / BATCHES_OF_A_MIX) }, (_, i) =>
      its.slice(i * BATCHES_OF_A_MIX, (i + 1) * BATCHES_OF_A_MIX),
    ),
  );
}

const mixOf =
  ({ activities }: Problem) =>
  ([first = 0]: Group): Activity => {
    const rub = activities.find(({ id }) => id === `rub-${first}`);
    return { id: activityId(`mix-${first}`), modes: rub?.modes ?? [] };
  };

const waitingForTheirMix = (group: Group): Lag[] =>
  group.map((batch) => ({
    from: { activity: activityId(`mix-${group[0]}`), end: 'end' },
    to: { activity: activityId(`rub-${batch}`), end: 'start' },
    minS: seconds(0),
    maxS: minutes(12 * 60),
    reason: 'mix',
  }));

/** By one hand, or in less time by two. */
function wrappedByTwo(activity: Activity): Activity {
  const [alone] = activity.modes;
  const [hand] = alone?.needs ?? [];
  if (!activity.id.startsWith('wrap') || alone?.length.kind !== 'work' || !hand) return activity;
  const { lowS, typicalS, highS } = alone.length;
  const part = (s: number) => seconds(Math.ceil(s * 0.6));
  const length = {
    ...alone.length,
    lowS: part(lowS),
    typicalS: part(typicalS),
    highS: part(highS),
  };
  return { ...activity, modes: [alone, { ...alone, id: 'two', length, needs: [hand, hand] }] };
}

/** Every sixth small batch is birds: raw in the first hour, nothing big may lie below them. */
function clashesOf(day: Problem, batches: number, kitchens: number): Clash[] {
  const isBig = (batch: number) =>
    day.activities
      .find(({ id }) => id === `smoke-${batch}`)
      ?.modes.some(({ states: [fire] }) => fire?.state === 'low') ?? false;
  const big = Array.from({ length: batches }, (_, batch) => isBig(batch));
  const birds = [...big.keys()].filter((batch) => !big[batch] && batch % 6 === 0);
  return birds.flatMap((bird) =>
    [...big.keys()]
      .filter((other) => big[other] && other % kitchens === bird % kitchens)
      .slice(0, 6)
      .map(
        (other): Clash => ({
          upper: {
            activity: activityId(`smoke-${bird}`),
            part: { fromS: seconds(0), toS: minutes(60) },
          },
          lower: { activity: activityId(`finish-${other}`), part: { fromS: seconds(0) } },
          places: placesOf(bird % kitchens),
          reason: 'drips',
        }),
      ),
  );
}

const placesOf = (kitchen: number): Clash['places'] =>
  SMOKERS.flatMap((smoker) =>
    RACKS.flatMap((upper) =>
      RACKS.filter((lower) => lower > upper).map(
        (lower) =>
          [
            resourceId(`${smoker}/${upper}-${kitchen}`),
            resourceId(`${smoker}/${lower}-${kitchen}`),
          ] as const,
      ),
    ),
  );
