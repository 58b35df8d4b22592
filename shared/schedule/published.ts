import { must } from '../kernel/index.ts';
import type { Index } from './index-of.ts';
import { indexOf } from './index-of.ts';
import type { Goal, GoalId, Link, Placement, Problem } from './model.ts';
import { isLinkOn, type Sharing, sharingsOf } from './sharing.ts';

/** What persons have decided: who does what where, in which order, and the times published. */
export type Published = {
  readonly problem: Problem;
  readonly index: Index;
  /** One for each activity, in the problem's order, with the times that were published. */
  readonly placements: readonly Placement[];
  /** The order on what is shared, as last decided, and the times by which it was. */
  readonly links: readonly Link[];
  readonly decidedS: readonly Pick<Placement, 'startS' | 'endS'>[];
  readonly orders: readonly Order[];
  /** By activity: which of these it is in. */
  readonly ordersOf: readonly (readonly number[])[];
};

/** The decided order on one thing that is shared. */
export type Order = { readonly sharing: Sharing; readonly links: readonly DecidedLink[] };

export type DecidedLink = {
  /** Its place among the links. */
  readonly number: number;
  readonly from: number;
  readonly to: number;
};

/** A Bug where the problem has no such goal. */
export function goalOf({ problem }: Published, id: GoalId): Goal {
  return must(
    problem.goals.find((goal) => goal.id === id),
    id,
  );
}

/** The same for several. */
export function goalsOf(published: Published, ids: readonly GoalId[]): Goal[] {
  return ids.map((id) => goalOf(published, id));
}

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
  return withOrders({ problem, index, placements: inOrder, links, decidedS: inOrder });
}

/** The same with its links told apart by what they are about. */
export function withOrders(decided: Omit<Published, 'orders' | 'ordersOf'>): Published {
  const { problem, index, placements, links } = decided;
  const sharings = sharingsOf(problem, index, placements);
  const linksOn: DecidedLink[][] = sharings.map(() => []);
  links.forEach((link, number) => {
    const on = sharings.findIndex((sharing, i) => {
      // Each clash has one link; two clashes of the same two activities have one each.
      const isTaken = sharing.kind === 'clash' && linksOn[i]?.length === 1;
      return !isTaken && isLinkOn(link, sharing);
    });
    const [from, to] = [index.activity(link.from), index.activity(link.to)];
    linksOn[on]?.push({ number, from, to });
  });
  const orders = sharings.map((sharing, i): Order => ({ sharing, links: linksOn[i] ?? [] }));
  const ordersOf: number[][] = problem.activities.map(() => []);
  orders.forEach(({ sharing }, i) => {
    for (const { activity } of sharing.users) ordersOf[activity]?.push(i);
  });
  return { ...decided, orders, ordersOf };
}
