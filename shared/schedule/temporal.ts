import { lagArcs, lengthArcs, lengthBounds, nodeOf, pinnedLength } from './arcs-of-problem.ts';
import type { Index } from './index-of.ts';
import { indexOf } from './index-of.ts';
import type { Activity, Problem } from './model.ts';
import type { Net } from './net.ts';
import { FAR_S } from './net.ts';
import { arcsOf, at, endOf, startOf } from './network.ts';

export type TemporalOptions = {
  /** What part of their margin to give waits, 0 to 1. */
  readonly aim: number;
  /** By how much to let each goal come late. */
  readonly lateS: readonly number[];
};

/** The times of a problem alone: lags and lengths as arcs, dates as bounds. */
export function temporalNet(
  problem: Problem,
  options: TemporalOptions,
): Pick<Net, 'arcs' | 'loS' | 'hiS' | 'dated'> {
  const index = indexOf(problem);
  const lengths = problem.activities.flatMap((activity, i) => {
    const bounds = possibleLengths(activity, options.aim);
    const minS = Math.min(...bounds.map((each) => each.minS));
    const maxS = Math.max(...bounds.map((each) => each.maxS));
    return lengthArcs(i, minS, maxS);
  });
  const arcs = arcsOf([...lagArcs(problem, index), ...lengths], problem.activities.length * 2);
  return { arcs, ...dateBounds(problem, index, options.lateS) };
}

function possibleLengths({ modes, pin }: Activity, aim: number) {
  const possible = modes.filter(({ id }) => !pin || pin.mode === id);
  return possible.map(({ length }) => pinnedLength(pin, lengthBounds(length, aim)));
}

/** The bounds that dates put on each node; a pinned one may lie before the origin. */
function dateBounds(problem: Problem, index: Index, lateS: readonly number[]) {
  const nodes = problem.activities.length * 2;
  const loS = new Int32Array(nodes);
  const hiS = new Int32Array(nodes).fill(problem.horizonS);
  const dated = new Uint8Array(nodes);
  const notAfter = (node: number, s: number) => {
    hiS[node] = Math.min(at(hiS, node), s);
    dated[node] = 1;
  };
  problem.goals.forEach((goal, i) => {
    notAfter(nodeOf(goal, index), goal.dueS + at(lateS, i));
  });
  problem.activities.forEach(({ releaseS, deadlineS, pin }, i) => {
    const [start, end] = [startOf(i), endOf(i)];
    const pinnedInTime = pin?.startS !== undefined || pin?.endS !== undefined;
    loS[start] = loS[end] = pinnedInTime ? -FAR_S : Math.max(0, releaseS ?? 0);
    if (deadlineS !== undefined) notAfter(end, deadlineS);
    if (pin?.startS !== undefined) loS[start] = hiS[start] = pin.startS;
    if (pin?.endS !== undefined) loS[end] = hiS[end] = pin.endS;
    if (pinnedInTime) dated[start] = dated[end] = 1;
  });
  return { loS, hiS, dated };
}
