import type { CrewLanguage, Live, Role, WhoFact } from '../day/index.ts';
import { everIn } from '../day/index.ts';
import type { PersonId, ScreenId, StationId, Text } from '../kernel/index.ts';
import { unreachable } from '../kernel/index.ts';

/** Who was let in and where, who may prove to be there, and what somebody reads. */
export type LoggedWho =
  | {
      readonly kind: 'screen';
      readonly what: 'screenPaired' | 'screenMoved';
      readonly name: string;
      readonly role: Role;
      readonly stations: readonly Text[];
    }
  | {
      readonly kind: 'screen';
      readonly what: 'screenRenamed' | 'screenRevoked';
      readonly name: string;
    }
  | {
      readonly kind: 'pin';
      readonly what: 'pinSet' | 'pinCleared';
      readonly of: string;
      /** Whether who has it answers for screens and PINs. */
      readonly isOwner: boolean;
    }
  | {
      readonly kind: 'language';
      readonly what: 'languageSet';
      readonly of: string;
      readonly language: CrewLanguage | null;
    };

/** Who was let in, with the names that they go by. */
export function loggedWho(live: Live, told: WhoFact): LoggedWho {
  switch (told.kind) {
    case 'screenPaired':
    case 'screenMoved': {
      const { role, stations } = told.place;
      // As it was called when it was let in; it may have been renamed since.
      const name = told.kind === 'screenPaired' ? told.name : screenOf(live, told.screen);
      const named = stations.map((station) => stationOf(live, station));
      return { kind: 'screen', what: told.kind, name, role, stations: named };
    }
    case 'screenRenamed':
      return { kind: 'screen', what: told.kind, name: told.name };
    case 'screenRevoked':
      return { kind: 'screen', what: told.kind, name: screenOf(live, told.screen) };
    case 'pinSet':
    case 'pinCleared': {
      const isOwner = told.kind === 'pinSet' && told.isOwner;
      return { kind: 'pin', what: told.kind, of: nameOf(live, told.person), isOwner };
    }
    case 'languageSet': {
      const { kind: what, person, language } = told;
      return { kind: 'language', what, of: nameOf(live, person), language };
    }
    default:
      return unreachable(told);
  }
}

const stationOf = (live: Live, id: StationId): Text =>
  everIn(live, ({ stations }) => stations.find((station) => station.id === id))?.name ?? { en: id };
const screenOf = ({ state }: Live, id: ScreenId): string => state.who.screens.get(id)?.name ?? id;

/** How the crew list calls somebody, or did before they left it; else by their id. */
export const nameOf = (live: Live, id: PersonId): string =>
  everIn(live, ({ crew }) => crew.find((person) => person.id === id))?.name ?? id;
