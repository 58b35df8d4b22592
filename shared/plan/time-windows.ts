import type { ActivityId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Activity, Mode, Problem } from '../schedule/index.ts';

/** What the lags and dates of a problem leave an activity, in seconds from the origin. */
export type TimeWindow = {
  readonly earliestS: number;
  readonly latestS: number;
  /** No less can lie between its start and its end. */
  readonly leastS: number;
};

type Arc = { readonly from: number; readonly to: number; readonly weightS: number };

/** The window of each activity, whatever hands and places there are; null where one has none. */
export function timeWindows(problem: Problem): ReadonlyMap<ActivityId, TimeWindow> | null {
  const { activities, horizonS } = problem;
  const number = new Map(activities.map(({ id }, i) => [id, i]));
  const nodeOf = ({ activity, end }: { activity: ActivityId; end: 'start' | 'end' }) =>
    2 * must(number.get(activity), activity) + (end === 'start' ? 0 : 1);
  const arcs = [
    ...activities.flatMap(lengthArcs),
    ...problem.lags.flatMap(({ from, to, minS, maxS }) => [
      ...(minS === undefined ? [] : [{ from: nodeOf(from), to: nodeOf(to), weightS: minS }]),
      ...(maxS === undefined ? [] : [{ from: nodeOf(to), to: nodeOf(from), weightS: -maxS }]),
    ]),
  ];
  const out = outOf(arcs, 2 * activities.length);
  const into = outOf(arcs.map(turned), 2 * activities.length);
  const earliestS = activities.flatMap(({ releaseS = 0, pin }): number[] => [
    pin?.startS ?? releaseS,
    pin?.endS ?? releaseS,
  ]);
  const latestS = activities.flatMap(({ deadlineS = horizonS, pin }): number[] => [
    pin?.startS ?? horizonS,
    pin?.endS ?? deadlineS,
  ]);
  for (const goal of problem.goals) {
    const node = nodeOf(goal);
    latestS[node] = Math.min(goal.dueS, latestS[node] ?? goal.dueS);
  }
  const lo = spread(earliestS, out);
  const hi = spread(
    latestS.map((s) => -s),
    into,
  )?.map((s) => -s);
  if (!lo || !hi || lo.some((s, node) => s > (hi[node] ?? s))) return null;
  return new Map(
    activities.map((activity, i) => {
      const [first = 0, last = 0] = [lo[2 * i], hi[2 * i + 1]];
      return [activity.id, { earliestS: first, latestS: last, leastS: leastOf(activity, i, out) }];
    }),
  );
}

const turned = ({ from, to, weightS }: Arc): Arc => ({ from: to, to: from, weightS });

function lengthArcs({ modes, pin }: Activity, i: number): Arc[] {
  const [start, end] = [2 * i, 2 * i + 1];
  const atLeast = { from: start, to: end, weightS: Math.min(...modes.map(leastLength)) };
  const atMost = { from: end, to: start, weightS: -Math.max(...modes.map(mostLength)) };
  // A start and an end that have been are the length, whatever the modes say.
  return pin?.startS !== undefined && pin.endS !== undefined ? [] : [atLeast, atMost];
}

/** The least that a mode takes by itself, in seconds. */
export const leastLength = ({ length }: Mode): number =>
  length.kind === 'wait' ? length.minS : length.typicalS;
const mostLength = ({ length }: Mode): number =>
  length.kind === 'wait' ? length.maxS : length.typicalS;

function outOf(arcs: readonly Arc[], nodes: number): readonly (readonly Arc[])[] {
  const out: Arc[][] = Array.from({ length: nodes }, () => []);
  for (const arc of arcs) out[arc.from]?.push(arc);
  return out;
}

/** Raises each node to what the arcs ask; null where they go round in a circle for ever. */
function spread(floorsS: readonly number[], out: readonly (readonly Arc[])[]): number[] | null {
  const timeS = [...floorsS];
  const queue = timeS.map((_, node) => node);
  const most = queue.length ** 2;
  for (let head = 0; head < queue.length; head++) {
    if (head > most) return null;
    const node = queue[head] ?? 0;
    for (const { to, weightS } of out[node] ?? []) {
      const askedS = (timeS[node] ?? 0) + weightS;
      if (askedS <= (timeS[to] ?? 0)) continue;
      timeS[to] = askedS;
      queue.push(to);
    }
  }
  return timeS;
}

/** A stay lasts as long as what happens inside of it. */
function leastOf({ modes }: Activity, i: number, out: readonly (readonly Arc[])[]): number {
  const ownS = Math.min(...modes.map(leastLength));
  if (modes[0]?.length.kind !== 'wait') return ownS;
  const floorsS = out.map((_, node) => (node === 2 * i ? 0 : Number.NEGATIVE_INFINITY));
  const paths = spread(floorsS, out);
  return Math.max(ownS, paths?.[2 * i + 1] ?? ownS);
}
