import {
  isUnclaimed,
  languageReadBy,
  livingScreens,
  type WhoActor,
} from '../../shared/day/index.ts';
import type { ScreenId } from '../../shared/kernel/index.ts';
import type {
  ListedPerson,
  ListedScreen,
  PairingShown,
  WhoAmI,
  WhoList,
} from '../../shared/protocol/index.ts';
import type { WhoParts } from './front.ts';
import { pathOf } from './place-path.ts';

/** What a screen may know of itself; of the kitchen it learns nothing. */
export function whoAmI({ hub, isOpen }: WhoParts, screen: ScreenId | null): WhoAmI {
  const { who } = hub.state;
  const record = screen === null ? undefined : who.screens.get(screen);
  const isIn = record !== undefined && record.revokedAt === null;
  return {
    isOpen,
    isUnclaimed: isUnclaimed(who),
    place: isIn ? { name: record.name, path: pathOf(record.place) } : null,
  };
}

/** Screens, those that ask to be let in, and people: for a desk's eyes. */
export function listWho(
  parts: WhoParts,
  actor: WhoActor | null,
  asking: readonly PairingShown[],
): WhoList {
  const { hub, isOpen } = parts;
  const { who, plan } = hub.state;
  return {
    isOpen,
    screens: isOpen ? [] : screensOf(parts, actor?.screenId ?? null),
    asking: isOpen ? [] : asking,
    people: peopleOf(parts),
    stations: (plan?.kitchen.stations ?? []).map(({ id, name }) => ({ id, name })),
    present: actor?.personId ?? null,
    needsOwner: [...who.pins.values()].some(({ isOwner }) => isOwner),
  };
}

function screensOf({ hub, keys }: WhoParts, self: ScreenId | null): ListedScreen[] {
  return livingScreens(hub.state.who).map(({ id, name, place }) => ({
    id,
    name,
    place,
    isHere: hub.screens.has(id),
    seenAtMs: keys.seenAt(id),
    isThisOne: id === self,
  }));
}

function peopleOf({ hub }: WhoParts): ListedPerson[] {
  const { plan, who } = hub.state;
  return (plan?.kitchen.crew ?? []).map((member) => ({
    id: member.id,
    name: member.name,
    hasPin: who.pins.has(member.id),
    isOwner: who.pins.get(member.id)?.isOwner ?? false,
    language: languageReadBy(who, member),
  }));
}
