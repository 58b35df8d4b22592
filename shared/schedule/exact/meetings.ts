import type { Net, NetClash, NetPart } from '../net.ts';
import { type Arc, at, endOf, startOf } from '../network.ts';
import { amountOn, type Way } from './ways.ts';

/** The ways out of a conflict: at least one of these sets of orders holds in any schedule. */
export type WaysOut = readonly (readonly Arc[])[];

type Ways = readonly (Way | undefined)[];

/** The first conflict there is on any resource or in any clash, if all is done at these times. */
export function firstMeeting(net: Net, ways: Ways, timeS: Int32Array): WaysOut | undefined {
  return (
    stateMeeting(net, ways, timeS) ??
    capacityMeeting(net, ways, timeS) ??
    net.clashes.map((clash) => clashMeeting(net, clash, ways, timeS)).find((out) => out)
  );
}

const order = (from: number, to: number, weightS: number): Arc => ({
  from,
  to,
  weightS,
  back: false,
});

const before = (first: number, second: number, gapS = 0) =>
  order(endOf(first), startOf(second), gapS);

function stateMeeting(net: Net, ways: Ways, timeS: Int32Array): WaysOut | undefined {
  const needs = ways.flatMap(
    (way, activity) => way?.mode.states.map((state) => ({ ...state, activity })) ?? [],
  );
  for (const [i, a] of needs.entries()) {
    for (const b of needs.slice(i + 1)) {
      if (a.resource !== b.resource || a.state === b.state || a.activity === b.activity) continue;
      const { changeS, states } = net.resources[a.resource] ?? { changeS: [], states: 0 };
      const out = [
        before(a.activity, b.activity, at(changeS, a.state * states + b.state)),
        before(b.activity, a.activity, at(changeS, b.state * states + a.state)),
      ];
      if (!out.some((arc) => holds(arc, timeS))) return out.map((arc) => [arc]);
    }
  }
  return undefined;
}

const holds = ({ from, to, weightS }: Arc, timeS: Int32Array) =>
  at(timeS, to) - at(timeS, from) >= weightS;

/** Two of those who are somewhere together and too many must come one after the other. */
function capacityMeeting(net: Net, ways: Ways, timeS: Int32Array): WaysOut | undefined {
  for (const [resource, { capacity }] of net.resources.entries()) {
    const users = ways.flatMap((way, activity) => {
      const amount = way ? amountOn(way, resource) : 0;
      const [startS, endS] = [at(timeS, startOf(activity)), at(timeS, endOf(activity))];
      return amount > 0 ? [{ activity, amount, startS, endS }] : [];
    });
    for (const one of users) {
      const isMoment = one.startS === one.endS;
      const there = users.filter(({ activity, startS, endS }) =>
        isMoment
          ? activity === one.activity || (startS < one.startS && one.startS < endS)
          : startS <= one.startS && one.startS < endS,
      );
      const tooMany = leastTooMany(there, capacity, one.activity);
      if (tooMany) return pairsOf(tooMany).map(([a, b]) => [before(a, b)]);
    }
  }
  return undefined;
}

type User = { readonly activity: number; readonly amount: number };

/** As few of them as are too many, and then only if one of them is among these. */
function leastTooMany(users: readonly User[], capacity: number, one: number): number[] | undefined {
  let sum = users.reduce((all, { amount }) => all + amount, 0);
  if (sum <= capacity) return undefined;
  const kept = users
    .toSorted((a, b) => a.amount - b.amount)
    .filter(({ activity, amount }) => {
      if (activity === one || sum - amount <= capacity) return true;
      sum -= amount;
      return false;
    });
  return kept.map(({ activity }) => activity);
}

const pairsOf = (activities: readonly number[]) =>
  activities.flatMap((a) => activities.filter((b) => b !== a).map((b) => [a, b] as const));

function clashMeeting(net: Net, clash: NetClash, ways: Ways, timeS: Int32Array) {
  const { upper, lower, pairs } = clash;
  const [above, below] = [ways[upper.activity], ways[lower.activity]];
  const sits = above?.uses.some((up) =>
    below?.uses.some((low) => pairs.has(up * net.resources.length + low)),
  );
  if (!sits) return undefined;
  const out = [...partBefore(upper, lower), ...partBefore(lower, upper)];
  return out.some((arcs) => arcs.every((arc) => holds(arc, timeS))) ? undefined : out;
}

/** One part is over when the other begins: because its activity is, or by itself. */
function partBefore(first: NetPart, second: NetPart): Arc[][] {
  const beginS = second.begin.offsetS;
  const begins = startOf(second.activity);
  const over = [order(endOf(first.activity), begins, -beginS)];
  if (first.finish.end === 1) return [over];
  const byItself = order(startOf(first.activity), begins, first.finish.offsetS - beginS);
  return [over, [byItself]];
}
