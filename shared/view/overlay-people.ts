import type { Command } from '../day/index.ts';
import type { Person } from './view.ts';

type Absent = Extract<Command, { kind: 'handOut' | 'handIn' }>;

/** Who is out, as a finger has just said; what that moves only the hub can tell. */
export function layPeople<V extends { readonly people: readonly Person[] }>(
  view: V,
  command: Absent,
): V {
  const isOut = command.kind === 'handOut';
  const backAt = command.kind === 'handOut' ? command.backAt : null;
  const people = view.people.map((person) =>
    person.id === command.hand ? { ...person, isOut, backAt } : person,
  );
  return { ...view, people };
}
