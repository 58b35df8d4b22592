import type { Command, Place, Refusal, Role, ScreenRecord } from '../day/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { Face } from '../view/index.ts';
import { stationsOf } from '../view/index.ts';

/** What a role may show. A desk answers for the whole day, and may look over every shoulder. */
const shows: Readonly<Record<Role, Readonly<Record<Face['kind'], boolean>>>> = {
  wall: { station: true, smoker: false, pass: false, desk: false },
  pit: { station: true, smoker: true, pass: false, desk: false },
  pass: { station: true, smoker: false, pass: true, desk: false },
  desk: { station: true, smoker: true, pass: true, desk: true },
};

/** Who may ask for something. */
export type Right = {
  readonly roles: readonly Role[];
  /** Only for work that the screen itself shows; the desk shows all of it. */
  readonly isOwnWork: boolean;
  /** Somebody has to be known by a PIN, once anybody in the kitchen has one. */
  readonly needsPin: boolean;
};

const hands: Right = { roles: ['wall', 'pit', 'pass', 'desk'], isOwnWork: true, needsPin: false };
const anybody: Right = { ...hands, isOwnWork: false };
const pass: Right = { roles: ['pass', 'desk'], isOwnWork: false, needsPin: false };
const desk: Right = { roles: ['desk'], isOwnWork: false, needsPin: true };
const pit: Right = { roles: ['pit', 'desk'], isOwnWork: false, needsPin: false };

/** What is asked at the doors of the desk: under /api/plan, /api/record and /api/language. */
export type DeskDeed = 'draftPlan' | 'takePlan' | 'undoPlan' | 'readRecord' | 'setLanguage';

/**
 * Who may ask for what, all of it. The hub looks here before it decides anything; docs/who.md shows
 * the same table, and a test holds the two together.
 */
export const rights: Readonly<Record<Command['kind'] | DeskDeed, Right>> = {
  start: hands,
  finish: hands,
  takeBack: hands,
  count: hands,
  late: hands,
  needHelp: hands,
  helpCame: hands,
  giveTo: hands,
  note: anybody,
  reading: pit,
  moveSlots: pit,
  smokerDown: pit,
  smokerCold: pit,
  smokerUp: pit,
  doorOpen: pit,
  handOut: anybody,
  handIn: anybody,
  delivery: anybody,
  receive: anybody,
  cutFrom: anybody,
  weighCure: anybody,
  weighTub: anybody,
  sold: pass,
  soldOut: pass,
  panEmpty: pass,
  carryOver: pass,
  closeDay: desk,
  check: anybody,
  correct: anybody,
  undo: anybody,
  draftPlan: { ...desk, needsPin: false },
  takePlan: desk,
  undoPlan: desk,
  readRecord: { ...desk, needsPin: false },
  setLanguage: { ...desk, needsPin: false },
};

/**
 * Why a screen that was put up there may not show this face, or null. `isPit`: all its stations are
 * at the pit.
 */
export function whyNotShown(
  screen: ScreenRecord | undefined,
  face: Face,
  isPit: boolean,
): Refusal | null {
  if (!screen) return { rule: 'screen-unknown' };
  if (screen.revokedAt !== null) return { rule: 'screen-revoked' };
  return isItsFace(screen.place, face, isPit) ? null : { rule: 'screen-elsewhere' };
}

function isItsFace({ role, stations }: Place, face: Face, isPit: boolean): boolean {
  if (!shows[role][face.kind]) return false;
  if (face.kind !== 'station' || role === 'desk') return true;
  const isOwn = stationsOf(face).every((station) => stations.includes(station));
  return isOwn || (role === 'pit' && isPit);
}

/**
 * What a face counts as, whoever shows it: a desk that opens a wall works there as that wall would.
 */
export function roleOf(face: Face, isPit: boolean): Role {
  switch (face.kind) {
    case 'station':
      return isPit ? 'pit' : 'wall';
    case 'smoker':
      return 'pit';
    case 'pass':
      return 'pass';
    case 'desk':
      return 'desk';
    default:
      return unreachable(face);
  }
}
