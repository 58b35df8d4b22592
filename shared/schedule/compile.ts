import { lengthBounds, pinnedLength } from './arcs-of-problem.ts';
import type { Index } from './index-of.ts';
import { indexOf } from './index-of.ts';
import type { Activity, Clash, Mode, Need, Part, Problem, Resource } from './model.ts';
import type { Net, NetClash, NetMode, NetNeed, NetPart, NetResource } from './net.ts';
import { FAR_S } from './net.ts';
import { changeTimeS } from './state-change.ts';
import type { TemporalOptions } from './temporal.ts';
import { temporalNet } from './temporal.ts';
import { tiesOf } from './ties.ts';
import { tightening } from './tightened.ts';

/** Makes a well-formed problem ready for search. */
export function compile(problem: Problem, options: TemporalOptions): Net {
  const index = indexOf(problem);
  const states = statesNeeded(problem, index);
  const resources = problem.resources.map((resource, i) =>
    netResource(resource, states[i] ?? new Map(), problem.horizonS),
  );
  const temporal = temporalNet(problem, options);
  const tighten = tightening(temporal.arcs);
  const modes = problem.activities.map((activity, i) => {
    const parts = { problem, index, aim: options.aim, states, resources };
    return tighten(netModes(activity, parts), i);
  });
  const clashes = problem.clashes.map((clash) => netClash(clash, index, resources.length));
  return {
    ...temporal,
    size: problem.activities.length,
    ties: tiesOf(temporal.arcs, problem.activities.length),
    modes,
    resources,
    clashes,
    clashesOf: clashesByActivity(clashes, problem.activities.length),
  };
}

type Parts = {
  readonly problem: Problem;
  readonly index: Index;
  readonly aim: number;
  readonly states: readonly ReadonlyMap<string, number>[];
  readonly resources: readonly NetResource[];
};

function netModes(activity: Activity, parts: Parts): NetMode[] {
  const { pin } = activity;
  return activity.modes.flatMap((mode, i) =>
    pin && pin.mode !== mode.id ? [] : [netMode(activity, mode, i, parts)],
  );
}

function netMode({ pin }: Activity, mode: Mode, index: number, parts: Parts): NetMode {
  const pinnedInTime = pin?.startS !== undefined || pin?.endS !== undefined;
  const states = mode.states.map(({ resource, state }) => {
    const number = parts.index.resource(resource);
    return { resource: number, state: parts.states[number]?.get(state) ?? 0 };
  });
  return {
    index,
    ...pinnedLength(pin, lengthBounds(mode.length, parts.aim)),
    needs: mode.needs.map((need, i) => netNeed(need, i, pin, parts.index)),
    states,
    startLoS: pinnedInTime ? -FAR_S : firstStart(mode, parts),
    endHiS: FAR_S,
    anyHour: pinnedInTime,
  };
}

function netNeed(need: Need, i: number, pin: Activity['pin'], index: Index): NetNeed {
  const pinned = pin?.uses?.find((use) => use.need === i);
  const resources = pinned ? [pinned.resource] : need.oneOf;
  return { amount: need.amount, resources: resources.map(index.resource) };
}

/** When the states that resources begin in have been changed to what the mode needs. */
function firstStart(mode: Mode, { problem, index }: Parts): number {
  const changes = mode.states.map(({ resource: id, state }) => {
    const resource = problem.resources[index.resource(id)];
    if (resource?.kind !== 'state' || resource.initial === undefined) return -FAR_S;
    return changeTimeS(resource, resource.initial, state);
  });
  return Math.max(-FAR_S, ...changes);
}

/** Every state of each resource that some mode needs, numbered as they are met. */
function statesNeeded(problem: Problem, index: Index): Map<string, number>[] {
  const names = problem.resources.map(() => new Map<string, number>());
  for (const { modes } of problem.activities) {
    for (const { resource, state } of modes.flatMap((mode) => mode.states)) {
      const its = names[index.resource(resource)];
      if (its && !its.has(state)) its.set(state, its.size);
    }
  }
  return names;
}

function clashesByActivity(clashes: readonly NetClash[], activities: number): number[][] {
  const of: number[][] = Array.from({ length: activities }, () => []);
  clashes.forEach(({ upper, lower }, i) => {
    for (const activity of new Set([upper.activity, lower.activity])) of[activity]?.push(i);
  });
  return of;
}

function netResource(
  resource: Resource,
  states: ReadonlyMap<string, number>,
  horizonS: number,
): NetResource {
  if (resource.kind === 'state') {
    const names = [...states.keys()];
    const changes = names.flatMap((from) => names.map((to) => changeTimeS(resource, from, to)));
    return {
      capacity: 0,
      spans: undefined,
      openS: horizonS,
      changeS: Int32Array.from(changes),
      states: names.length,
    };
  }
  const spans = resource.open?.flatMap(({ start, end }) => [start, end]);
  const openS = resource.open?.reduce((sum, { start, end }) => sum + end - start, 0);
  return {
    capacity: resource.capacity,
    spans: spans && Int32Array.from(spans),
    openS: Math.max(1, openS ?? horizonS),
    changeS: new Int32Array(),
    states: 0,
  };
}

function netClash({ upper, lower, places }: Clash, index: Index, resources: number): NetClash {
  const pairs = places.map(([up, low]) => index.resource(up) * resources + index.resource(low));
  return {
    upper: netPart(index.activity(upper.activity), upper.part),
    lower: netPart(index.activity(lower.activity), lower.part),
    pairs: new Set(pairs),
  };
}

function netPart(activity: number, { fromS, toS }: Part): NetPart {
  return {
    activity,
    begin: { end: 0, offsetS: fromS },
    finish: toS === undefined ? { end: 1, offsetS: 0 } : { end: 0, offsetS: toS },
  };
}
