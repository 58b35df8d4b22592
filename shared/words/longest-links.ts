import type { ActivityId, Seconds } from '../kernel/index.ts';

/** A chain of more links than this is told by its longest ones. */
const TOLD_MOST = 4;

/** What is told of a chain, in its order, and how many links it has in all. */
export function longestOf(
  chain: readonly ActivityId[],
  takesS: (id: ActivityId) => Seconds,
): { readonly told: readonly ActivityId[]; readonly links: number } {
  const links = [...new Set(chain)];
  const byLength = [...links].sort((a, b) => takesS(b) - takesS(a));
  const longest = new Set(byLength.slice(0, TOLD_MOST));
  return { told: links.filter((id) => longest.has(id)), links: links.length };
}
