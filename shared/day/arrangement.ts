import type { Celsius, PersonId, SlotId, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import { fireOf, kitchenResource, resourceId } from '../plan/index.ts';
import type { Activity, Mode, Move, Placement, ResourceId, Use } from '../schedule/index.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import { factsOf, loadKey } from './state.ts';

/** One rack load: how much of which slot it takes, and the fire that it needs there. */
export type Load = {
  readonly stay: TaskId;
  readonly need: number;
  readonly areaCm2: number;
  readonly weightG: number;
  readonly fireC: Celsius | null;
  readonly slot: SlotId;
};

/** A stay has one load, and its slot is the first thing that it needs. */
const SLOT_NEED = 0;

/**
 * Who does a task and where its loads are, as it now stands: the schedule's choice, but for what
 * persons have decided since, the last of it first. Its times are the plan's; the live times come
 * from the timeline.
 */
export function placementOf(state: DayState, index: PlanIndex, task: TaskId): Placement {
  // Of a plan that is only tried nothing is remembered.
  if (index.plan !== state.plan) return arranged(state, index, task);
  const known = remembered.get(state) ?? new Map<TaskId, Placement>();
  remembered.set(state, known);
  const placement = known.get(task) ?? arranged(state, index, task);
  known.set(task, placement);
  return placement;
}

/** A state never changes, and every line of every screen asks. */
const remembered = new WeakMap<DayState, Map<TaskId, Placement>>();

function arranged(state: DayState, index: PlanIndex, task: TaskId): Placement {
  const placed = must(index.placements.get(task), task);
  const decided = state.arranged.get(task);
  const planned = decided ? { ...placed, ...decided } : placed;
  const slot = state.slots.get(loadKey(task, SLOT_NEED));
  const lying = slot && modeIn(index, task, slot);
  if (lying) return { ...planned, mode: lying.id, uses: usesOf(lying) };
  const hand = factsOf(state, task).hand;
  if (hand === null) return planned;
  const mode = modeFor(index, task, planned, hand);
  const uses = planned.uses.map(({ need, resource }): Use => {
    const given = hand && isHand(resource) && resourceId({ kind: 'hand', person: hand });
    if (given && mode.needs[need]?.oneOf.includes(given)) return { need, resource: given };
    return { need, resource };
  });
  return { ...planned, mode: mode.id, uses };
}

/** The way of lying in that slot; undefined where a load cannot. */
function modeIn(index: PlanIndex, stay: TaskId, slot: SlotId): Mode | undefined {
  const place = resourceId({ kind: 'slot', slot });
  const { modes } = must(index.activities.get(stay), stay);
  return modes.find(({ needs }) => needs[SLOT_NEED]?.oneOf.includes(place));
}

/** A way of lying leaves nothing to choose. */
const usesOf = ({ needs }: Mode): Use[] =>
  needs.flatMap(({ oneOf: [resource] }, need) => (resource ? [{ need, resource }] : []));

/** The tasks that stand otherwise than the schedule has them. */
export function rearranged(state: DayState, index: PlanIndex): TaskId[] {
  const moved = [...state.slots.keys()].map((key) => key.slice(0, key.lastIndexOf('#')) as TaskId);
  const given = [...state.tasks].filter(([, { hand }]) => hand !== null).map(([id]) => id);
  return [...new Set([...moved, ...given])].filter((task) => {
    const planned = index.placements.get(task);
    return planned !== undefined && !sameArrangement(planned, placementOf(state, index, task));
  });
}

/** Whether two placements of a task have it done by the same hands in the same places. */
export function sameArrangement(a: Placement, b: Placement): boolean {
  return (
    a.mode === b.mode &&
    a.uses.every(({ need, resource }) =>
      b.uses.some((other) => other.need === need && other.resource === resource),
    )
  );
}

/** The same as changes that the timeline can be told. */
export function movesTo(state: DayState, index: PlanIndex, tasks: readonly TaskId[]): Move[] {
  return tasks.map((task) => {
    const { activity, mode, uses } = placementOf(state, index, task);
    return { activity, mode, uses };
  });
}

/** Who does it, as it now stands; null where no hand is needed. */
export function currentHand(state: DayState, index: PlanIndex, task: TaskId): PersonId | null {
  return currentHands(state, index, task)[0] ?? null;
}

/** Everybody who does it, as it now stands: more than one where it takes a team. */
export function currentHands(state: DayState, index: PlanIndex, task: TaskId): PersonId[] {
  return placementOf(state, index, task).uses.flatMap(({ resource }) => {
    const thing = kitchenResource(resource);
    return thing.kind === 'hand' ? [thing.person] : [];
  });
}

/** Everybody who has been shown this work. */
export function handsFor(index: PlanIndex, task: TaskId): readonly PersonId[] {
  const known = shown.get(index) ?? new Map<TaskId, readonly PersonId[]>();
  shown.set(index, known);
  const hands = known.get(task) ?? handsIn(must(index.activities.get(task), task));
  known.set(task, hands);
  return hands;
}

/** It stays as long as the plan does, and every line of every wall asks. */
const shown = new WeakMap<PlanIndex, Map<TaskId, readonly PersonId[]>>();

function handsIn({ modes }: Activity): PersonId[] {
  const resources = modes.flatMap(({ needs }) => needs.flatMap(({ oneOf }) => oneOf));
  return [...new Set(resources)].flatMap((resource) => {
    const thing = kitchenResource(resource);
    return thing.kind === 'hand' ? [thing.person] : [];
  });
}

/** The load of a stay in the slot that it is in, or will come to; none for any other task. */
export function loadsOf(state: DayState, index: PlanIndex, stay: TaskId): Load[] {
  const [use] = placementOf(state, index, stay).uses;
  const thing = use && kitchenResource(use.resource);
  if (thing?.kind !== 'slot') return [];
  return [must(loadIn(index, stay, thing.slot), stay)];
}

/** A load as it would lie in a slot, or null where it cannot: too small, too weak, not so hot. */
export function loadIn(index: PlanIndex, stay: TaskId, slot: SlotId): Load | null {
  const mode = modeIn(index, stay, slot);
  if (!mode) return null;
  const amountOf = (role: string) => mode.needs.find((need) => need.role === role)?.amount ?? 0;
  const [fire] = mode.states;
  return {
    stay,
    need: SLOT_NEED,
    areaCm2: amountOf('slot'),
    weightG: amountOf('load'),
    fireC: fire ? fireOf(fire.state) : null,
    slot,
  };
}

/** The set temperature that a stay needs of its smoker; null where any will do. */
export function heatNeededC(state: DayState, index: PlanIndex, stay: TaskId): Celsius | null {
  const [need] = modeOf(index, placementOf(state, index, stay)).states;
  return need ? fireOf(need.state) : null;
}

/** The mode a placement was placed in. */
export function modeOf(index: PlanIndex, placement: Placement): Mode {
  const { modes } = must(index.activities.get(placement.activity), placement.activity);
  return must(
    modes.find(({ id }) => id === placement.mode),
    `${placement.activity} ${placement.mode}`,
  );
}

/** The planned mode if that hand can work in it, else the first one it can. */
function modeFor(index: PlanIndex, task: TaskId, planned: Placement, hand: PersonId): Mode {
  const resource = resourceId({ kind: 'hand', person: hand });
  const able = ({ needs }: Mode) => needs.some(({ oneOf }) => oneOf.includes(resource));
  const mode = modeOf(index, planned);
  if (able(mode)) return mode;
  const { modes } = must(index.activities.get(task), task);
  return modes.find((each) => able(each) && isSamePlace(each, planned)) ?? modes.find(able) ?? mode;
}

/** Whether it leaves the work at the table where it is planned. */
const isSamePlace = ({ needs }: Mode, { uses }: Placement) =>
  uses.every(({ need, resource }) => isHand(resource) || needs[need]?.oneOf.includes(resource));

const isHand = (resource: ResourceId) => kitchenResource(resource).kind === 'hand';
