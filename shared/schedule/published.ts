import type { Index } from './index-of.ts';
import { indexOf } from './index-of.ts';
import type { Link, Placement, Problem } from './model.ts';

/** What persons have decided: who does what where, in which order, and the times published. */
export type Published = {
  readonly problem: Problem;
  readonly index: Index;
  /** One for each activity, in the problem's order, with the times that were published. */
  readonly placements: readonly Placement[];
  /** The order on resources, as last decided, and the times by which it was. */
  readonly links: readonly Link[];
  readonly decidedS: readonly Pick<Placement, 'startS' | 'endS'>[];
  /** The links of each activity. */
  readonly linksOf: readonly (readonly Link[])[];
};

/** What is published with a schedule. */
export function publishedOf(
  problem: Problem,
  placements: readonly Placement[],
  links: readonly Link[],
): Published {
  const index = indexOf(problem);
  const inOrder = placements
    .slice()
    .sort((a, b) => index.activity(a.activity) - index.activity(b.activity));
  const published = { problem, index, placements: inOrder, decidedS: inOrder, links };
  return { ...published, linksOf: linksByActivity(published) };
}

/** The links of each activity, whichever end of them it is. */
export function linksByActivity({
  problem,
  index,
  links,
}: Pick<Published, 'problem' | 'index' | 'links'>): Link[][] {
  const linksOf: Link[][] = problem.activities.map(() => []);
  for (const link of links) {
    linksOf[index.activity(link.from)]?.push(link);
    linksOf[index.activity(link.to)]?.push(link);
  }
  return linksOf;
}
