import type { Placed } from './chain-placed.ts';
import type { Link, Problem, StateResource } from './model.ts';
import { changeTimeS } from './state-change.ts';

type Group = { readonly state: string; readonly users: Placed[] };

/** The links that hold activities of one state back until those of the one before are over. */
export function stateLinks(problem: Problem, placed: readonly Placed[]): Link[] {
  return problem.resources.flatMap((resource) => {
    if (resource.kind !== 'state') return [];
    const groups = groupsOf(resource, placed);
    return groups.flatMap((group, i) => {
      const next = groups[i + 1];
      return next ? between(resource, group, next) : [];
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

/** From each to each, for any of them may come out of turn one day. */
function between(resource: StateResource, a: Group, b: Group): Link[] {
  const gapS = changeTimeS(resource, a.state, b.state);
  return a.users.flatMap((from) =>
    b.users.map((to) => ({
      from: from.placement.activity,
      to: to.placement.activity,
      resource: resource.id,
      gapS,
    })),
  );
}
