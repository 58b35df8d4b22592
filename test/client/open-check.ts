import type { BatchId, PersonId } from '../../shared/kernel/index.ts';
import { after, celsius, minutes } from '../../shared/kernel/index.ts';
import type { CheckView, Person } from '../../shared/view/index.ts';
import { NOW } from './fixtures.ts';

/** The row that asks for it. */
export const row = {
  id: 'hot-hold',
  what: { en: 'Hot holding' },
  section: '3-501.16(A)(1)',
  source: 'FDA Food Code',
  edition: 'a copy',
};

/** What is held hot, to be looked at now and late in half an hour. */
export const ribs: CheckView = {
  on: { kind: 'hot-hold', batch: 'ribs' as BatchId },
  key: 'hot-hold ribs',
  thing: { en: 'Ribs' },
  station: { en: 'Pass' },
  asked: '135 °F',
  atLeastC: celsius(57.22),
  atMostC: null,
  hasReading: true,
  fromAt: NOW,
  dueAt: NOW,
  lateAt: after(NOW, minutes(30)),
  breach: { row, asked: '135 °F', found: null },
  failed: null,
  isMending: false,
  allowed: ['reheat-at-once', 'discard'],
  thermometers: [],
};

/** Who is there to look. */
export const rosa: Person = {
  id: 'rosa' as PersonId,
  name: 'Rosa',
  onShift: true,
  isOut: false,
  backAt: null,
};
