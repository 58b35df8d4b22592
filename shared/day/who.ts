import type { Instant, PersonId, ScreenId, StationId } from '../kernel/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { CrewMember } from '../kitchen/index.ts';

/** What a screen is for. What each may show and ask is one table: `shared/protocol/rights.ts`. */
export type Role = 'wall' | 'pit' | 'pass' | 'desk';

/** What a screen was put up for, and at which stations; a desk belongs to none. */
export type Place = { readonly role: Role; readonly stations: readonly StationId[] };

/** A screen that was let in. It stays known after it was revoked: the log tells of it. */
export type ScreenRecord = {
  readonly id: ScreenId;
  readonly name: string;
  readonly place: Place;
  readonly pairedAt: Instant;
  readonly revokedAt: Instant | null;
};

/**
 * Who belongs to this hub: its screens, the people who have a PIN, and what a desk has said they
 * read. Secrets are not among it: a log cannot forget.
 */
export type WhoState = {
  readonly screens: ReadonlyMap<ScreenId, ScreenRecord>;
  /** Whether the person also answers for screens and PINs. */
  readonly pins: ReadonlyMap<PersonId, { readonly isOwner: boolean }>;
  /** What a desk said stands before the kitchen's file; null: whatever the screen speaks. */
  readonly languages: ReadonlyMap<PersonId, CrewLanguage | null>;
};

/** A language that somebody reads. */
export type CrewLanguage = NonNullable<CrewMember['language']>;

export type WhoFact =
  | {
      readonly kind: 'screenPaired';
      readonly screen: ScreenId;
      readonly name: string;
      readonly place: Place;
    }
  | { readonly kind: 'screenRenamed'; readonly screen: ScreenId; readonly name: string }
  | { readonly kind: 'screenMoved'; readonly screen: ScreenId; readonly place: Place }
  | { readonly kind: 'screenRevoked'; readonly screen: ScreenId }
  | { readonly kind: 'pinSet'; readonly person: PersonId; readonly isOwner: boolean }
  | { readonly kind: 'pinCleared'; readonly person: PersonId }
  | {
      readonly kind: 'languageSet';
      readonly person: PersonId;
      readonly language: CrewLanguage | null;
    };

export const nobody: WhoState = { screens: new Map(), pins: new Map(), languages: new Map() };

const kinds: Readonly<Record<WhoFact['kind'], true>> = {
  screenPaired: true,
  screenRenamed: true,
  screenMoved: true,
  screenRevoked: true,
  pinSet: true,
  pinCleared: true,
  languageSet: true,
};

/** Whether a fact is about who belongs to the hub, and so outlasts the day it was written on. */
export function isWhoFact<Fact extends { readonly kind: string }>(
  fact: Fact,
): fact is Extract<Fact, WhoFact> {
  return Object.hasOwn(kinds, fact.kind);
}

/** Who belongs to the hub after one more fact, which happened at `at`. */
export function foldWho(who: WhoState, fact: WhoFact, at: Instant): WhoState {
  switch (fact.kind) {
    case 'screenPaired': {
      const { screen: id, name, place } = fact;
      return withScreen(who, { id, name, place, pairedAt: at, revokedAt: null });
    }
    case 'screenRenamed':
      return changed(who, fact.screen, { name: fact.name });
    case 'screenMoved':
      return changed(who, fact.screen, { place: fact.place });
    case 'screenRevoked':
      return changed(who, fact.screen, { revokedAt: at });
    case 'pinSet': {
      const pins = new Map(who.pins).set(fact.person, { isOwner: fact.isOwner });
      return { ...who, pins };
    }
    case 'pinCleared': {
      const pins = new Map(who.pins);
      pins.delete(fact.person);
      return { ...who, pins };
    }
    case 'languageSet': {
      const languages = new Map(who.languages).set(fact.person, fact.language);
      return { ...who, languages };
    }
    default:
      return unreachable(fact);
  }
}

function withScreen(who: WhoState, screen: ScreenRecord): WhoState {
  return { ...who, screens: new Map(who.screens).set(screen.id, screen) };
}

function changed(who: WhoState, id: ScreenId, change: Partial<ScreenRecord>): WhoState {
  const screen = who.screens.get(id);
  return screen ? withScreen(who, { ...screen, ...change }) : who;
}

/** The screens that may still do anything, in the order in which they came. */
export function livingScreens({ screens }: WhoState): ScreenRecord[] {
  return [...screens.values()].filter(({ revokedAt }) => revokedAt === null);
}

/** What somebody of the crew reads; null where nobody says, and a screen speaks its own. */
export function languageReadBy(
  { languages }: WhoState,
  { id, language }: CrewMember,
): CrewLanguage | null {
  const said = languages.get(id);
  return said === undefined ? (language ?? null) : said;
}

/** Whether nobody answers for this hub yet: no desk belongs to it. */
export function isUnclaimed(who: WhoState): boolean {
  return !livingScreens(who).some(({ place }) => place.role === 'desk');
}
