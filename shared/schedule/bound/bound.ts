import type { Net } from '../net.ts';
import { at, endOf } from '../network.ts';
import type { Measure } from '../worth.ts';
import { type Crew, crewsOf } from './crews.ts';
import { latestWithHours } from './latest.ts';
import { leastWaitingS } from './least-waiting.ts';

/**
 * What `aheadS` cannot be less than, in any schedule that keeps the lags of a net and gives its
 * waits their lengths: every activity as late as lags and hours allow, and on top what those who
 * share a crew must be earlier because the crew has so many units. `undefined`: there is none.
 */
export function boundOf(net: Net, measure: Measure): number | undefined {
  const windows = latestWithHours(net);
  if (windows.isBroken) return undefined;
  const latestS = net.modes.map((_, activity) => at(windows.hiS, endOf(activity)));
  const chainS = latestS.reduce(
    (sum, endS, i) => sum + at(measure.weights, i) * (at(measure.dueS, i) - endS),
    0,
  );
  return chainS + sharingS(net, measure, latestS);
}

/** What sharing adds; each activity is counted in one crew, that of the greatest bound first. */
function sharingS(net: Net, { weights }: Measure, latestS: readonly number[]): number {
  const counted = new Set<number>();
  const boundIn = ({ members, units }: Crew) => {
    const left = members.filter(({ activity }) => !counted.has(activity));
    const least = left.reduce((w, { activity }) => Math.min(w, at(weights, activity)), Infinity);
    if (left.length < 2) return 0;
    const jobs = left.map(({ activity, workS, lengthS }) => ({
      releaseS: -at(latestS, activity),
      workS,
      lengthS,
    }));
    return least * leastWaitingS(jobs, units);
  };
  const crews = crewsOf(net, (activity) => at(weights, activity) > 0)
    .map((crew) => ({ crew, alone: boundIn(crew) }))
    .sort((a, b) => b.alone - a.alone);
  let sumS = 0;
  for (const { crew } of crews) {
    sumS += boundIn(crew);
    for (const { activity } of crew.members) counted.add(activity);
  }
  return sumS;
}
