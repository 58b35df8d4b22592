import { cell } from './cell.ts';
import type { LongestLags } from './longest-lags.ts';
import type { Project } from './project.ts';

/** How many groups are kept, those with the most to do. */
const KEPT = 8;
/** Two that exclude each other have an order already. */
const SIZE_AT_LEAST = 3;

/**
 * Groups of activities of which no two may run at once, by resources or by lags: each is a machine
 * for one at a time, often scarcer than the resources it comes from.
 */
export function cliques(project: Project, longest: LongestLags): number[][] {
  const { durations } = project;
  const length = (activity: number) => cell(durations, activity);
  const all = Array.from(durations.keys()).filter((activity) => length(activity) > 0);
  const byLength = all.toSorted((a, b) => length(b) - length(a) || a - b);
  const grown = all.map((seed) => {
    const members = [seed];
    for (const next of byLength) {
      if (members.every((member) => excludes(project, longest, member, next))) members.push(next);
    }
    return members.sort((a, b) => a - b);
  });
  const different = [...new Map(grown.map((members) => [members.join(), members])).values()];
  const work = (members: number[]) => members.reduce((sum, member) => sum + length(member), 0);
  return different
    .filter((members) => members.length >= SIZE_AT_LEAST)
    .sort((a, b) => work(b) - work(a))
    .slice(0, KEPT);
}

function excludes(project: Project, longest: LongestLags, one: number, other: number): boolean {
  if (one === other) return false;
  const { durations, capacities, demands } = project;
  const kinds = capacities.length;
  const { least, size } = longest;
  return (
    cell(least, one * size + other) >= cell(durations, one) ||
    cell(least, other * size + one) >= cell(durations, other) ||
    capacities.some(
      (capacity, kind) =>
        cell(demands, one * kinds + kind) + cell(demands, other * kinds + kind) > capacity,
    )
  );
}
