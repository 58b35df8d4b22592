import type { CrewLanguage, Place, Refusal } from '../day/index.ts';
import type { PersonId, ScreenId, StationId, Text } from '../kernel/index.ts';

/** What the doors under /api answer: what was asked for, or why not. */
export type WhoAnswer<Found> = ({ readonly ok: true } & Found) | WhoRefused;
export type WhoRefused = { readonly ok: false; readonly refusal: Refusal };

/** To a screen that asks to be let in. It shows the code, and keeps the secret to itself. */
export type PairAsked = { readonly secret: string; readonly code: string; readonly leftS: number };

/** A screen that asks to be let in, as the desk sees it. */
export type PairingShown = {
  readonly code: string;
  readonly address: string;
  readonly leftS: number;
};

/** What a screen is to keep once it was let in, and where it belongs. */
export type LetIn = { readonly token: string; readonly path: string; readonly name: string };

export type PairWaited =
  | { readonly is: 'waiting' }
  | { readonly is: 'over' }
  | ({ readonly is: 'let-in' } & LetIn);

/** What a screen may know of itself. */
export type WhoAmI = {
  /** No screen needs to be let in here: a demo, or a hub that was started so. */
  readonly isOpen: boolean;
  /** Nobody has claimed the hub yet: it waits for the owner's code. */
  readonly isUnclaimed: boolean;
  /** Where this screen belongs; null for one that was not let in. */
  readonly place: { readonly name: string; readonly path: string } | null;
};

export type ListedScreen = {
  readonly id: ScreenId;
  readonly name: string;
  readonly place: Place;
  readonly isHere: boolean;
  /** In UTC milliseconds; null where it was never seen. */
  readonly seenAtMs: number | null;
  readonly isThisOne: boolean;
};

export type ListedPerson = {
  readonly id: PersonId;
  readonly name: string;
  readonly hasPin: boolean;
  readonly isOwner: boolean;
  /** What they read; null where a screen speaks its own. */
  readonly language: CrewLanguage | null;
};

/** All that the desk shows of screens and people. */
export type WhoList = {
  readonly isOpen: boolean;
  readonly screens: readonly ListedScreen[];
  readonly asking: readonly PairingShown[];
  readonly people: readonly ListedPerson[];
  readonly stations: readonly { readonly id: StationId; readonly name: Text }[];
  /** Who has proved to be at this screen. */
  readonly present: PersonId | null;
  /** Whether changes take an owner who has done so. */
  readonly needsOwner: boolean;
};

export type ClaimAsk = { readonly code: string; readonly name: string };
export type SecretAsk = { readonly secret: string };
export type LetInAsk = { readonly code: string; readonly name: string; readonly place: Place };
export type RenameAsk = { readonly screen: ScreenId; readonly name: string };
export type MoveAsk = { readonly screen: ScreenId; readonly place: Place };
export type RevokeAsk = { readonly screen: ScreenId };
/** A PIN of null takes it away. */
export type PinAsk = {
  readonly person: PersonId;
  readonly pin: string | null;
  readonly isOwner: boolean;
};
export type LanguageAsk = { readonly person: PersonId; readonly language: CrewLanguage | null };
export type ProveAsk = { readonly person: PersonId; readonly pin: string };
