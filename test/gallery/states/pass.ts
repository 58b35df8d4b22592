import type { BatchId, DishId, ServiceId } from '../../../shared/kernel/index.ts';
import { type PassDish, type PassPan, passLine } from '../../../shared/view/index.ts';
import { at, NOW } from '../../client/fixtures.ts';
import type { Shown, State } from '../state.ts';

const dinner = 'dinner' as ServiceId;
const service = {
  id: dinner,
  name: { en: 'Dinner', es: 'Cena' },
  opensAt: at(-10),
  closesAt: at(170),
};

const pan = (more: Partial<PassPan> = {}): PassPan => ({
  batch: `shoulder-${more.portions ?? 1}` as BatchId,
  name: { en: 'Shoulders 1', es: 'Paletas 1' },
  service: dinner,
  pieces: 6,
  piece: {
    one: { en: 'shoulder', es: 'paleta' },
    many: { en: 'shoulders', es: 'paletas' },
  },
  portions: 84,
  stage: 'ready',
  readyAt: at(-30),
  readyLowAt: at(-30),
  readyHighAt: at(-30),
  heldUntil: at(90),
  isEmptied: false,
  setOut: { en: 'Shred shoulders', es: 'Desmenuce las paletas' },
  barred: null,
  soldTill: null,
  ...more,
});

const dish = (pans: readonly PassPan[], more: Partial<PassDish> = {}): PassDish => ({
  dish: 'shoulder' as DishId,
  name: { en: 'Pulled shoulder', es: 'Paleta desmechada' },
  allergens: ['mustard'],
  perQuarter: [6, 9, 12, 12, 9, 6],
  sold: 0,
  soldBefore: 0,
  soldOutAt: null,
  pans,
  ...more,
});

const coming = pan({
  portions: 40,
  stage: 'coming',
  readyAt: at(60),
  readyLowAt: at(45),
  readyHighAt: at(85),
  heldUntil: null,
});

const shown = (name: string, what: PassDish, more: State['given'] = {}): State => ({
  name,
  high: 84,
  given: { line: passLine(what, service, NOW), now: NOW, open: true, ...more },
});

const states: readonly State[] = [
  shown('ready', dish([pan()])),
  shown('held, still to be cut', dish([pan({ stage: 'held' })])),
  shown('held too long', dish([pan({ heldUntil: at(-4) })])),
  shown('barred', dish([pan({ barred: { why: 'missed', check: 'hot-hold' } })])),
  shown('nothing before the next', dish([coming])),
  shown('runs out', dish([pan({ portions: 12 })])),
  shown('sold out', dish([pan()], { soldOutAt: at(-5) })),
  shown('some sold, more comes', dish([pan(), coming], { sold: 31 })),
  { ...shown('in two columns', dish([pan(), coming]), { short: true }), wide: 540 },
  { ...shown('on a phone', dish([pan(), coming]), { narrow: true }), wide: 460, high: 150 },
];

export const pass: readonly Shown[] = [
  { part: 'pass-line', states },
  {
    part: 'pass-taps',
    states: [
      shown('may be sold', dish([pan()]), { service: dinner }),
      shown('just sold', dish([pan()], { sold: 3 }), { service: dinner, undoable: true }),
      shown('kept here', dish([pan()]), { service: dinner, mark: 'here' }),
    ].map((state) => ({ ...state, wide: 420 })),
  },
];
