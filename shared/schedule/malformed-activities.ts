import type { Fault } from './faults.ts';
import { fault, known, ordered, twice, whole } from './faults.ts';
import type { Activity, Length, Mode, Pin, Problem } from './model.ts';

type Ids = { readonly capacities: ReadonlySet<string>; readonly states: ReadonlySet<string> };

/** What is wrong with the activities, their modes and their pins. */
export function malformedActivities({ activities, resources }: Problem): Fault[] {
  const ids = (kind: string) =>
    new Set<string>(resources.filter((resource) => resource.kind === kind).map(({ id }) => id));
  const known = { capacities: ids('capacity'), states: ids('state') };
  return activities.flatMap((activity) => malformedActivity(activity, known));
}

function malformedActivity({ id, modes, releaseS, deadlineS, pin }: Activity, ids: Ids): Fault[] {
  const where = `activities.${id}`;
  return [
    ...(modes.length === 0 ? fault(where, 'has no mode') : []),
    ...twice(where, modes),
    ...(releaseS === undefined ? [] : whole(`${where}.releaseS`, releaseS)),
    ...(deadlineS === undefined ? [] : whole(`${where}.deadlineS`, deadlineS)),
    ...modes.flatMap((mode) => malformedMode(`${where}.${mode.id}`, mode, ids)),
    ...(pin ? malformedPin(`${where}.pin`, pin, modes, ids) : []),
  ];
}

function malformedMode(where: string, { length, needs, states }: Mode, ids: Ids): Fault[] {
  return [
    ...malformedLength(`${where}.length`, length),
    ...needs.flatMap(({ role, amount, oneOf }) => [
      ...whole(`${where}.${role}.amount`, amount, 1),
      ...oneOf.flatMap((resource) => known(`${where}.${role}`, resource, ids.capacities)),
    ]),
    ...states.flatMap(({ resource, state }) =>
      known(`${where}.states.${state}`, resource, ids.states),
    ),
  ];
}

function malformedLength(where: string, length: Length): Fault[] {
  if (length.kind === 'work') {
    const { lowS, typicalS, highS } = length;
    return [
      ...whole(`${where}.lowS`, lowS, 0),
      ...whole(`${where}.typicalS`, typicalS, 0),
      ...whole(`${where}.highS`, highS, 0),
      ...ordered(where, lowS, typicalS),
      ...ordered(where, typicalS, highS),
    ];
  }
  const { minS, maxS, aimS } = length;
  return [
    ...whole(`${where}.minS`, minS, 0),
    ...whole(`${where}.maxS`, maxS, 0),
    ...ordered(where, minS, maxS),
    ...(aimS === undefined ? [] : whole(`${where}.aimS`, aimS, 0)),
    ...ordered(where, aimS, maxS),
  ];
}

function malformedPin(where: string, pin: Pin, modes: readonly Mode[], ids: Ids): Fault[] {
  const mode = modes.find(({ id }) => id === pin.mode);
  if (!mode) return fault(where, `names mode ${pin.mode}, which is not there`);
  return [
    ...(pin.startS === undefined ? [] : whole(`${where}.startS`, pin.startS)),
    ...(pin.endS === undefined ? [] : whole(`${where}.endS`, pin.endS)),
    ...ordered(where, pin.startS, pin.endS),
    ...(pin.uses ?? []).flatMap(({ need, resource }) => [
      ...(mode.needs[need] ? [] : fault(where, `names need ${need}, which is not there`)),
      ...known(where, resource, ids.capacities),
    ]),
  ];
}
