import type { Logged } from './logged.ts';

/** What the log is looked through by: the crew's work, what was read, what came and went. */
export type LogKind = 'work' | 'readings' | 'food' | 'house';

const kinds: Readonly<Record<Exclude<Logged['kind'], 'undone'>, LogKind>> = {
  task: 'work',
  counted: 'work',
  late: 'work',
  given: 'work',
  moved: 'work',
  mended: 'work',
  note: 'work',
  handWentOut: 'work',
  handCameIn: 'work',
  read: 'readings',
  checked: 'readings',
  corrected: 'readings',
  smokerWentDown: 'readings',
  smokerRunsCold: 'readings',
  smokerCameUp: 'readings',
  doorOpened: 'readings',
  deliveryCame: 'food',
  lotCame: 'food',
  batchCutFrom: 'food',
  cureWeighed: 'food',
  tubWeighed: 'food',
  portionsSold: 'food',
  dishSoldOut: 'food',
  panEmptied: 'food',
  leftCarriedOver: 'food',
  plan: 'house',
  limits: 'house',
  dayClosed: 'house',
  screen: 'house',
  pin: 'house',
  language: 'house',
};

/** An undoing is of the kind of what it undid, as far as that is known. */
export function logKind(said: Logged): LogKind {
  if (said.kind !== 'undone') return kinds[said.kind];
  return said.what ? logKind(said.what) : 'work';
}
