import { seconds } from '../kernel/index.ts';
import type {
  Activity,
  CapacityResource,
  Conflict,
  Need,
  Planned,
  Planner,
  Problem,
  ResourceId,
} from '../schedule/index.ts';
import { leastLength, type TimeWindow, timeWindows } from './time-windows.ts';

/** What an activity takes for certain of some resources, within its window. */
type Taking = {
  readonly activity: Activity;
  readonly window: TimeWindow;
  /** Amount × seconds. */
  readonly asks: number;
};

/**
 * A proof, without any search, that a day asks more of some hands or places than there is: what
 * has to be done between two times asks for more hours than they have between them (the energy of
 * Erschler and Lopez, from memory). Null where there is no such proof, which proves nothing.
 */
export function overbooked(problem: Problem, windows = timeWindows(problem)): Conflict | null {
  if (!windows) return null;
  const free = problem.activities.flatMap((activity) => {
    const window = windows.get(activity.id);
    return window && !isFixed(activity) ? [{ activity, window }] : [];
  });
  let worst: Short | null = null;
  for (const { role, its } of groupsOf(problem)) {
    const takings = free.flatMap(({ activity, window }): Taking[] => {
      const asks = leastAsked(activity, its, window.leastS);
      return asks > 0 ? [{ activity, window, asks }] : [];
    });
    const short = shortest(takings, supplyOf(problem, its));
    if (short && (!worst || short.shortS > worst.shortS)) {
      worst = { ...short, role, resources: [...its] };
    }
  }
  return worst && conflictOf(worst);
}

/** What is refused without a search: its times contradict each other, or it asks for too much. */
export function refusedAtOnce(
  problem: Problem,
  planner: Planner,
  options: Parameters<Planner>[1],
): Extract<Planned, { ok: false }> | null {
  const windows = timeWindows(problem);
  if (!windows) {
    // How they contradict each other the planner says before it searches.
    const planned = planner(problem, options);
    return planned.ok ? null : planned;
  }
  const proof = overbooked(problem, windows);
  return proof && { ok: false, conflicts: [proof] };
}

type Shortfall = {
  readonly shortS: number;
  readonly fromS: number;
  readonly toS: number;
  readonly takings: readonly Taking[];
};
type Short = Shortfall & { readonly role: string; readonly resources: readonly ResourceId[] };

function conflictOf({ shortS, fromS, toS, takings, role, resources }: Short): Conflict | null {
  const [first, ...others] = takings.toSorted((a, b) => b.asks - a.asks);
  if (!first) return null;
  return {
    kind: 'no-room',
    activity: first.activity.id,
    role,
    resources,
    window: { start: seconds(fromS), end: seconds(toS) },
    shortS: seconds(Math.ceil(shortS)),
    blockedBy: others.map(({ activity }) => activity.id),
  };
}

/** What has a time already is held to no calendar. */
const isFixed = ({ pin }: Activity) => pin?.startS !== undefined || pin?.endS !== undefined;

type Group = { readonly role: string; readonly its: ReadonlySet<ResourceId> };

/** Resources that some activity chooses among, and all that a role is ever filled by. */
function groupsOf({ activities }: Problem): Group[] {
  const groups = new Map<string, Group>();
  const all = new Map<string, Set<ResourceId>>();
  for (const { modes } of activities) {
    const own = new Map<string, Set<ResourceId>>();
    for (const { role, oneOf } of modes.flatMap(({ needs }) => needs)) {
      for (const sets of [own, all]) {
        const known = sets.get(role) ?? new Set();
        for (const each of oneOf) known.add(each);
        sets.set(role, known);
      }
    }
    for (const [role, its] of own) groups.set(nameOf(role, its), { role, its });
  }
  for (const [role, its] of all) groups.set(nameOf(role, its), { role, its });
  return [...groups.values()];
}

const nameOf = (role: string, its: ReadonlySet<ResourceId>) => [role, ...[...its].sort()].join(' ');

/** What an activity takes of these in whatever way it is done. */
function leastAsked(
  { modes, pin }: Activity,
  its: ReadonlySet<ResourceId>,
  leastS: number,
): number {
  const isAmong = ({ oneOf }: Need, number: number) => {
    const given = pin?.uses?.find(({ need }) => need === number)?.resource;
    return given === undefined ? oneOf.every((each) => its.has(each)) : its.has(given);
  };
  const possible = modes.filter(({ id }) => !pin || pin.mode === id);
  const asked = possible.map((mode) => {
    const amounts = mode.needs.filter(isAmong).map(({ amount }) => amount);
    const sum = amounts.reduce((a, b) => a + b, 0);
    return sum * Math.max(leastS, leastLength(mode));
  });
  return Math.min(...asked);
}

/** The stretch between two times that lacks most, if any does. */
function shortest(takings: readonly Taking[], supply: Supply): Shortfall | null {
  const inOrder = takings.toSorted((a, b) => a.window.latestS - b.window.latestS);
  let worst: Shortfall | null = null;
  for (const fromS of new Set(takings.map(({ window }) => window.earliestS))) {
    const within: Taking[] = [];
    let asks = 0;
    for (const taking of inOrder) {
      if (taking.window.earliestS < fromS) continue;
      within.push(taking);
      asks += taking.asks;
      const toS = taking.window.latestS;
      const { amountS, most } = supply(fromS, toS);
      // So much longer would the whole of it have to be there.
      const shortS = most === 0 ? 0 : (asks - amountS) / most;
      if (shortS > (worst?.shortS ?? 0)) worst = { shortS, fromS, toS, takings: [...within] };
    }
  }
  return worst;
}

/** Amount × seconds that there are between two times, and the most that there is of one. */
type Supply = (fromS: number, toS: number) => { readonly amountS: number; readonly most: number };

function supplyOf({ resources, activities, horizonS }: Problem, its: ReadonlySet<ResourceId>) {
  const own = resources.filter(
    (each): each is CapacityResource => each.kind === 'capacity' && its.has(each.id),
  );
  const spans = own.flatMap(({ id, capacity, open = [{ start: 0, end: horizonS }] }) => [
    ...open.map(({ start, end }) => ({ start, end, amount: capacity })),
    ...activities
      .flatMap((activity) => fixedOn(activity, id))
      .flatMap(({ start, end, amount }) =>
        open.map((span) => ({
          start: Math.max(start, span.start),
          end: Math.min(end, span.end),
          amount: -amount,
        })),
      ),
  ]);
  const real = spans.filter(({ start, end }) => start < end);
  const most = Math.max(0, ...own.map(({ capacity }) => capacity));
  // Asked for each pair of times: what there is up to each is summed once.
  const known = new Map<number, number>();
  const upTo = (timeS: number) => {
    const sum = known.get(timeS) ?? real.reduce((all, span) => all + takenUp(span, timeS), 0);
    known.set(timeS, sum);
    return sum;
  };
  return (fromS: number, toS: number) => ({ amountS: upTo(toS) - upTo(fromS), most });
}

type Stretch = { readonly start: number; readonly end: number; readonly amount: number };

const takenUp = ({ start, end, amount }: Stretch, timeS: number) =>
  amount * Math.max(0, Math.min(end, timeS) - start);

/** What stands takes of a resource. */
function fixedOn({ modes, pin }: Activity, id: ResourceId) {
  const { startS, endS, uses = [] } = pin ?? {};
  if (startS === undefined || endS === undefined) return [];
  const mode = modes.find((each) => each.id === pin?.mode);
  return uses
    .filter(({ resource }) => resource === id)
    .map(({ need }) => ({ start: startS, end: endS, amount: mode?.needs[need]?.amount ?? 0 }));
}
