import type { Placed } from './chain-placed.ts';
import type { Closure } from './closure.ts';
import type { Link, Problem, StateResource } from './model.ts';
import { changeTimeS } from './state-change.ts';

type Group = { readonly state: string; readonly users: Placed[] };

/** The links that hold activities of one state back until those of the one before are over. */
export function stateLinks(problem: Problem, placed: readonly Placed[], closure: Closure): Link[] {
  return problem.resources.flatMap((resource) => {
    if (resource.kind !== 'state') return [];
    const groups = groupsOf(resource, placed);
    return groups.flatMap((group, i) => {
      const next = groups[i + 1];
      return next ? between(resource, group, next, closure) : [];
    });
  });
}

/** Who needs the same state one after the other, without another state between. */
function groupsOf(resource: StateResource, placed: readonly Placed[]): Group[] {
  const groups: Group[] = [];
  for (const user of placed) {
    const need = user.mode.states.find((state) => state.resource === resource.id);
    if (!need) continue;
    const last = groups.at(-1);
    if (last?.state === need.state) last.users.push(user);
    else groups.push({ state: need.state, users: [user] });
  }
  return groups;
}

/** From the last of one group to the first of the next; the others are held by these. */
function between(resource: StateResource, a: Group, b: Group, closure: Closure): Link[] {
  const isLast = (user: Placed) =>
    !a.users.some((other) => closure.precedes(user.number, other.number));
  const isFirst = (user: Placed) =>
    !b.users.some((other) => closure.precedes(other.number, user.number));
  const gapS = changeTimeS(resource, a.state, b.state);
  return a.users.filter(isLast).flatMap((from) =>
    b.users.filter(isFirst).map((to) => ({
      from: from.placement.activity,
      to: to.placement.activity,
      resource: resource.id,
      gapS,
    })),
  );
}
