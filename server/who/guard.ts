import type { Command, DayState, Refusal } from '../../shared/day/index.ts';
import type { PersonId, ScreenId } from '../../shared/kernel/index.ts';
import { type DeskDeed, rights, roleOf, whyNotShown } from '../../shared/protocol/index.ts';
import { type Face, stationsOf } from '../../shared/view/index.ts';
import type { Asker } from '../hub/index.ts';

/** How a hub keeps its doors. */
export type Guard = {
  /** Every screen that reaches it is let in, and is what it shows. */
  readonly isOpen: boolean;
  /** Who has just proved to be at this screen. */
  personAt(screen: ScreenId): PersonId | null;
};

/** A command, what is asked of the plan, or a reading by another door. */
type Asked = Command | { readonly kind: DeskDeed | 'reading'; readonly personId: PersonId | null };

export const OPEN: Guard = { isOpen: true, personAt: () => null };

/** Why this screen may not show this face, or null. */
export function mayShow(state: DayState, asker: Asker, { isOpen }: Guard): Refusal | null {
  if (isOpen) return null;
  const { face, screenId } = asker;
  return whyNotShown(state.who.screens.get(screenId), face, isAtPit(state, face));
}

/**
 * Why this screen may not ask for this, or null, by the table of rights. Looked at for every single
 * one, on the day as it then is: a screen that was revoked a moment ago asks in vain.
 */
export function mayAsk(state: DayState, asker: Asker, asked: Asked, guard: Guard): Refusal | null {
  const { face, screenId } = asker;
  const { roles, isOwnWork, needsPin } = rights[asked.kind];
  const refused = mayShow(state, asker, guard);
  if (refused) return refused;
  if (!roles.includes(roleOf(face, isAtPit(state, face)))) return { rule: 'not-this-screens' };
  if (isOwnWork && !isItsWork(state, face, asked)) return { rule: 'not-this-screens' };
  if (guard.isOpen || !needsPin || state.who.pins.size === 0) return null;
  const { personId } = asked;
  const isKnown = personId !== null && guard.personAt(screenId) === personId;
  return isKnown ? null : { rule: 'needs-pin' };
}

const pitsOf = ({ plan }: DayState) =>
  new Set(plan?.kitchen.stations.filter(({ pit }) => pit).map(({ id }) => id));

function isAtPit(state: DayState, face: Face): boolean {
  if (face.kind !== 'station') return face.kind === 'smoker';
  const pits = pitsOf(state);
  return stationsOf(face).every((station) => pits.has(station));
}

function isItsWork(state: DayState, face: Face, asked: Asked): boolean {
  if (face.kind === 'desk' || !('task' in asked)) return true;
  const task = state.plan?.built.tasks.find(({ id }) => id === asked.task);
  // A task that is gone is for the day itself to refuse.
  if (!task) return true;
  if (task.station === null) return false;
  if (face.kind === 'station') return stationsOf(face).includes(task.station);
  return pitsOf(state).has(task.station);
}
