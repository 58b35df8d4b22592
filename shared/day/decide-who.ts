import type { PersonId, ScreenId, StationId } from '../kernel/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { Decision } from './decision.ts';
import { happen, refuse } from './decision.ts';
import type { Refusal } from './refusal.ts';
import type { DayState } from './state.ts';
import type { CrewLanguage, Place, ScreenRecord } from './who.ts';
import { livingScreens } from './who.ts';

/** What somebody at the desk wants changed about who belongs to the hub. */
export type WhoAction =
  /** Whoever has the owner's code makes a screen a desk, and begins with PINs anew. */
  | { readonly kind: 'claim'; readonly screen: ScreenId; readonly name: string }
  | {
      readonly kind: 'pair';
      readonly screen: ScreenId;
      readonly name: string;
      readonly place: Place;
    }
  | { readonly kind: 'rename'; readonly screen: ScreenId; readonly name: string }
  | { readonly kind: 'move'; readonly screen: ScreenId; readonly place: Place }
  | { readonly kind: 'revoke'; readonly screen: ScreenId }
  | { readonly kind: 'setPin'; readonly person: PersonId; readonly isOwner: boolean }
  | { readonly kind: 'clearPin'; readonly person: PersonId };

/** At which screen it was asked, and who proved to be there by a PIN. */
export type WhoActor = { readonly screenId: ScreenId; readonly personId: PersonId | null };

/**
 * What a change of who belongs to the hub makes happen, or why it does not. Any desk may make it
 * until somebody has an owner's PIN; from then on it takes that.
 */
export function decideWho(state: DayState, action: WhoAction, actor: WhoActor): Decision {
  const { who } = state;
  const refused = action.kind === 'claim' ? null : whyNotOwner(state, actor);
  if (refused) return refuse(refused);
  switch (action.kind) {
    case 'claim': {
      const { screen, name } = action;
      const owners = [...who.pins].filter(([, { isOwner }]) => isOwner);
      const place: Place = { role: 'desk', stations: [] };
      return happen(...owners.map(([person]) => ({ kind: 'pinCleared', person }) as const), {
        kind: 'screenPaired',
        screen,
        name: freeName(state, name),
        place,
      });
    }
    case 'setPin':
    case 'clearPin':
      return decidePin(state, action);
    default:
      return decideScreen(state, action);
  }
}

/** Why a screen may not ask for what is a desk's to ask for, or null. */
export function whyNoDesk({ who }: DayState, screenId: ScreenId): Refusal | null {
  const screen = who.screens.get(screenId);
  if (!screen) return { rule: 'screen-unknown' };
  if (screen.revokedAt !== null) return { rule: 'screen-revoked' };
  return screen.place.role === 'desk' ? null : { rule: 'not-the-desk' };
}

function whyNotOwner(state: DayState, { screenId, personId }: WhoActor): Refusal | null {
  const refused = whyNoDesk(state, screenId);
  if (refused) return refused;
  const { who } = state;
  const isOwned = [...who.pins.values()].some(({ isOwner }) => isOwner);
  const isOwner = personId !== null && who.pins.get(personId)?.isOwner === true;
  return isOwned && !isOwner ? { rule: 'needs-owner' } : null;
}

type ScreenAction = Exclude<WhoAction, { kind: 'claim' | 'setPin' | 'clearPin' }>;

function decideScreen(state: DayState, action: ScreenAction): Decision {
  const screen = livingScreens(state.who).find(({ id }) => id === action.screen);
  const { kind } = action;
  const refused =
    (kind !== 'pair' && !screen ? { rule: 'unknown-screen' as const } : null) ??
    (kind === 'pair' || kind === 'rename' ? nameTaken(state, action.name, action.screen) : null) ??
    (kind === 'pair' || kind === 'move' ? whyNotThere(state, action.place) : null) ??
    (kind === 'revoke' || (kind === 'move' && action.place.role !== 'desk')
      ? whyMustStay(state, screen)
      : null);
  if (refused) return refuse(refused);
  switch (action.kind) {
    case 'pair':
      return happen({ ...action, kind: 'screenPaired' });
    case 'rename':
      return happen({ ...action, kind: 'screenRenamed' });
    case 'move':
      return happen({ ...action, kind: 'screenMoved' });
    case 'revoke':
      return happen({ ...action, kind: 'screenRevoked' });
    default:
      return unreachable(action);
  }
}

/** What somebody reads from now on; the table of rights says who may have it so. */
export function decideLanguage(
  state: DayState,
  { person, language }: { readonly person: PersonId; readonly language: CrewLanguage | null },
): Decision {
  if (!isOfCrew(state, person)) return refuse({ rule: 'unknown-person' });
  return happen({ kind: 'languageSet', person, language });
}

const isOfCrew = ({ plan }: DayState, person: PersonId): boolean =>
  plan?.kitchen.crew.some(({ id }) => id === person) ?? false;

function decidePin(
  state: DayState,
  action: Extract<WhoAction, { kind: 'setPin' | 'clearPin' }>,
): Decision {
  const { person } = action;
  if (action.kind === 'clearPin') {
    return state.who.pins.has(person)
      ? happen({ kind: 'pinCleared', person })
      : refuse({ rule: 'unknown-person' });
  }
  if (!isOfCrew(state, person)) return refuse({ rule: 'unknown-person' });
  return happen({ kind: 'pinSet', person, isOwner: action.isOwner });
}

/** Two screens of one name could not be told apart in the log. */
function nameTaken({ who }: DayState, name: string, self: ScreenId): Refusal | null {
  const isTaken = livingScreens(who).some((each) => each.name === name && each.id !== self);
  return isTaken ? { rule: 'name-taken', name } : null;
}

function freeName(state: DayState, name: string, again = 2): string {
  const wanted = again === 2 ? name : `${name} ${again - 1}`;
  const isFree = livingScreens(state.who).every((each) => each.name !== wanted);
  return isFree ? wanted : freeName(state, name, again + 1);
}

function whyNotThere({ plan }: DayState, { role, stations }: Place): Refusal | null {
  if (role === 'wall' && stations.length === 0) return { rule: 'needs-station' };
  const known = new Set<StationId>(plan?.kitchen.stations.map(({ id }) => id));
  return stations.every((id) => known.has(id)) ? null : { rule: 'unknown-place' };
}

function whyMustStay({ who }: DayState, screen: ScreenRecord | undefined): Refusal | null {
  const desks = livingScreens(who).filter(({ place }) => place.role === 'desk');
  return desks.length === 1 && desks[0]?.id === screen?.id ? { rule: 'last-desk' } : null;
}
