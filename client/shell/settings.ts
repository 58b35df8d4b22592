import { nanoid } from 'nanoid';
import type { PersonId, ScreenId } from '../../shared/kernel/index.ts';
import type { Side } from '../../shared/view/index.ts';
import type { Language } from '../../shared/words/index.ts';
import type { ChosenGround, Panel } from '../theme/index.ts';

/** What this device knows of itself. A word in the page's address stands before what is stored. */
export type Settings = {
  readonly screenId: ScreenId;
  /** What the hub gave it when it was let in. */
  readonly token: string | null;
  readonly panel: Panel | null;
  readonly language: Language;
  readonly ground: ChosenGround;
  /** Fills the glass at the first tap. */
  readonly fill: boolean;
  /** For whose hands it is set up: raw ones, clean ones, or anybody's. */
  readonly side: Side | null;
  /** Put up to sound when somebody is called; the hub has one such screen sound at a time. */
  readonly sounds: boolean;
  /** Whose own screen it is, as a phone may be. */
  readonly personId: PersonId | null;
};

type Stored = {
  screenId?: string;
  token?: string;
  diagonal?: string;
  distance?: string;
  language?: string;
  ground?: string;
  side?: string;
  sounds?: string;
  fill?: string;
};
export type Setting = Exclude<keyof Stored, 'screenId' | 'token'>;

const KEY = 'coalface screen';

/** Reads what is stored; the screen gets its id the first time. */
export function readSettings(address: URLSearchParams): Settings {
  const stored = readStored();
  const screenId = stored.screenId ?? nanoid();
  if (stored.screenId === undefined) writeStored({ ...stored, screenId });
  const word = (key: Setting) => address.get(key) ?? stored[key];
  return {
    screenId: screenId as ScreenId,
    token: stored.token ?? null,
    panel: panelFrom(Number(word('diagonal')), Number(word('distance'))),
    language: word('language') === 'es' ? 'es' : 'en',
    ground: groundFrom(word('ground')),
    fill: word('fill') === 'glass',
    side: sideFrom(word('side')),
    sounds: word('sounds') === 'calls',
    personId: address.get('person') as PersonId | null,
  };
}

/** What was said of one setting alone, also where it takes another to mean something. */
export const storedWord = (setting: Setting): string => readStored()[setting] ?? '';

/** Remembers one setting of this device; an empty word forgets it. */
export function remember(setting: Setting, word: string): void {
  const { [setting]: _, ...others } = readStored();
  writeStored(word === '' ? others : { ...others, [setting]: word });
}

/** Remembers that this screen was let in. False where the browser keeps nothing. */
export function rememberToken(token: string): boolean {
  writeStored({ ...readStored(), token });
  return readStored().token === token;
}

const groundFrom = (word: string | undefined): ChosenGround =>
  word === 'night' || word === 'clock' ? word : 'paper';

const sideFrom = (word: string | undefined): Side | null =>
  word === 'raw' || word === 'clean' ? word : null;

function panelFrom(diagonalIn: number, distanceM: number): Panel | null {
  const isPanel = diagonalIn >= 3 && diagonalIn <= 200 && distanceM >= 0.2 && distanceM <= 20;
  return isPanel ? { diagonalIn, distanceM } : null;
}

function readStored(): Stored {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    return typeof stored === 'object' && stored !== null ? stored : {};
  } catch {
    // A private window may keep nothing: the screen works, and has another id next time.
    return {};
  }
}

function writeStored(stored: Stored): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(stored));
  } catch {
    // As above.
  }
}
