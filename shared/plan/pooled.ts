import { seconds } from '../kernel/index.ts';
import type {
  Activity,
  Lag,
  Mode,
  Placement,
  Problem,
  Resource,
  ResourceId,
} from '../schedule/index.ts';

/**
 * Parts of a rack are counted in these. A load of which two fit a rack takes half of one, a load of
 * which none fits beside another a whole one: so whatever fits the pool fits its racks too, but for
 * what may not drip on what.
 */
const PARTS = 60;

/**
 * The same day with racks taken together that are used alike: those of a smoker, or of one zone of
 * a long pit. When things cook is then found without asking where exactly they lie, which is far
 * quicker. `layOut` gives the racks out afterwards.
 */
export function pooled(problem: Problem): Problem {
  const capacity = new Map(
    problem.resources.flatMap((each): [ResourceId, number][] =>
      each.kind === 'capacity' ? [[each.id, each.capacity]] : [],
    ),
  );
  const pools = poolsOf(problem);
  const activities = problem.activities.map((activity) =>
    isStay(activity) ? pooledStay(activity, capacity, pools) : activity,
  );
  const isRack = ({ id }: Resource) => id.startsWith('slot:') || id.startsWith('load:');
  const sizes = new Map<ResourceId, number>();
  for (const pool of pools.values()) sizes.set(pool, (sizes.get(pool) ?? 0) + PARTS);
  const resources: Resource[] = [
    ...problem.resources.filter((each) => !isRack(each)),
    ...[...sizes].map(([id, size]): Resource => ({ kind: 'capacity', id, capacity: size })),
  ];
  return { ...problem, activities, resources, clashes: [] };
}

/** Which pool each rack is in: together with those that some load could lie on at the same fire. */
function poolsOf({ activities }: Problem): ReadonlyMap<ResourceId, ResourceId> {
  const pools = new Map<ResourceId, ResourceId>();
  for (const activity of activities.filter(isStay)) {
    for (const racks of waysByFire(activity).values()) {
      const [first] = racks.flatMap(rackOf);
      if (first === undefined) continue;
      const pool = pools.get(first) ?? poolNamed(first);
      for (const rack of racks.flatMap(rackOf)) {
        const old = pools.get(rack);
        pools.set(rack, pool);
        if (old === undefined || old === pool) continue;
        for (const [other, its] of pools) if (its === old) pools.set(other, pool);
      }
    }
  }
  return pools;
}

const poolNamed = (rack: ResourceId) => rack.replace('slot:', 'pool:') as ResourceId;
const rackOf = ({ needs }: Mode) => needs[0]?.oneOf ?? [];
const fireOf = ({ states: [fire] }: Mode) => (fire ? `${fire.resource} ${fire.state}` : '');

function waysByFire({ modes }: Activity): Map<string, Mode[]> {
  const ways = new Map<string, Mode[]>();
  for (const mode of modes) ways.set(fireOf(mode), [...(ways.get(fireOf(mode)) ?? []), mode]);
  return ways;
}

/** The same with one load kept out of the smoker it was planned in, if there is another for it. */
export function keptOut(problem: Problem, { activity: id, mode: out }: Placement): Problem | null {
  const stuck = problem.activities.find((activity) => activity.id === id);
  const modes = stuck?.modes.filter((mode) => mode.id !== out) ?? [];
  if (modes.length === 0) return null;
  return {
    ...problem,
    activities: problem.activities.map((each) => (each === stuck ? { ...each, modes } : each)),
  };
}

/**
 * The same with one load and another that it must not drip on, or be dripped on by, one after the
 * other: of those it meets the one that it meets for the shortest time.
 */
export function keptApart(
  problem: Problem,
  { clashes }: Pick<Problem, 'clashes'>,
  placements: readonly Placement[],
  stuck: Placement,
): Problem | null {
  const others = new Set(
    clashes.flatMap(({ upper, lower }) => {
      const pair = [upper.activity, lower.activity];
      return pair.includes(stuck.activity) ? pair.filter((id) => id !== stuck.activity) : [];
    }),
  );
  const meetingS = ({ startS, endS }: Placement) =>
    Math.min(endS, stuck.endS) - Math.max(startS, stuck.startS);
  const [nearest] = placements
    .filter((other) => others.has(other.activity) && meetingS(other) > 0)
    .sort((a, b) => meetingS(a) - meetingS(b));
  if (nearest === undefined) return null;
  const [first, second] = nearest.startS < stuck.startS ? [nearest, stuck] : [stuck, nearest];
  const lag: Lag = {
    from: { activity: first.activity, end: 'end' },
    to: { activity: second.activity, end: 'start' },
    minS: seconds(0),
    reason: 'apart',
  };
  return { ...problem, lags: [...problem.lags, lag] };
}

/** Whether an activity is the stay of a rack load. */
export function isStay({ modes }: Activity): boolean {
  return modes[0]?.needs[0]?.role === 'slot';
}

/** One way for each fire that the load can lie at, on any rack of its pool. */
function pooledStay(
  activity: Activity,
  capacity: ReadonlyMap<ResourceId, number>,
  pools: ReadonlyMap<ResourceId, ResourceId>,
): Activity {
  const modes = [...waysByFire(activity)].flatMap(([id, ways]): Mode[] => {
    const [first] = ways;
    const pool = pools.get(first?.needs[0]?.oneOf[0] ?? ('' as ResourceId));
    if (!first || !pool) return [];
    const amount = Math.max(...ways.map((way) => partsOf(way, capacity)));
    return [{ ...first, id, needs: [{ role: 'pool', amount, oneOf: [pool] }] }];
  });
  return { ...activity, modes };
}

/** What a load takes of a rack, by area or by weight, in parts that fit beside one another. */
function partsOf({ needs }: Mode, capacity: ReadonlyMap<ResourceId, number>): number {
  const shares = needs.flatMap(({ amount, oneOf }) =>
    oneOf.map((resource) => amount / (capacity.get(resource) ?? amount)),
  );
  return Math.ceil(PARTS / Math.floor(1 / Math.max(...shares)));
}
