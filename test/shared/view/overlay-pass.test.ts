import { describe, expect, it } from 'vitest';
import type {
  BatchId,
  CommandId,
  DishId,
  ScreenId,
  ServiceId,
} from '../../../shared/kernel/index.ts';
import type { Command, Intent, PassView } from '../../../shared/view/index.ts';
import { overlay } from '../../../shared/view/index.ts';
import { at, NOW, stationView } from '../../client/fixtures.ts';

const lunch = 'lunch' as ServiceId;
const ribs = 'ribs' as DishId;
const batch = 'ribs-1' as BatchId;
const { face: _face, stations: _stations, tasks: _tasks, later: _later, ...head } = stationView;

const view: PassView = {
  face: 'pass',
  ...head,
  service: { id: lunch, name: { en: 'Lunch' }, opensAt: at(-60), closesAt: at(60) },
  dishes: [
    {
      dish: ribs,
      name: { en: 'Ribs' },
      allergens: [],
      perQuarter: [5, 5, 5, 5, 5, 5, 5, 5],
      sold: 3,
      soldBefore: 0,
      soldOutAt: null,
      pans: [
        {
          batch,
          name: { en: 'Ribs 1' },
          service: lunch,
          pieces: 10,
          piece: { one: { en: 'slab' }, many: { en: 'slabs' } },
          portions: 20,
          stage: 'ready',
          readyAt: at(-90),
          readyLowAt: at(-90),
          readyHighAt: at(-90),
          heldUntil: at(120),
          isEmptied: false,
          setOut: { en: 'Slice it' },
          barred: null,
          soldTill: null,
        },
      ],
    },
  ],
};

let ids = 0;
function command(intent: Intent): Command {
  ids += 1;
  const id = `tap-${ids}` as CommandId;
  return { ...intent, id, personId: null, screenId: 'pass' as ScreenId, tappedAt: NOW };
}
const lay = (...commands: readonly Command[]) =>
  overlay(
    view,
    commands.map((each) => ({ command: each, mark: 'here' as const })),
  );
const drawn = (...commands: readonly Command[]) => lay(...commands).view.dishes[0];

describe('a tap at the pass', () => {
  it('is drawn before the hub has it, and marked as not yet kept there', () => {
    const sold = command({ kind: 'sold', service: lunch, dish: ribs, sold: 8 });
    expect(drawn(sold)?.sold).toBe(8);
    expect(lay(sold).marks.get(ribs)).toBe('here');
  });

  it('that empties a pan or sells out a dish is drawn as well', () => {
    expect(drawn(command({ kind: 'panEmpty', batch }))?.pans[0]?.isEmptied).toBe(true);
    const out = command({ kind: 'soldOut', service: lunch, dish: ribs });
    expect(drawn(out)?.soldOutAt).toBe(NOW);
  });

  it('of another service leaves this one as it is', () => {
    const other = command({
      kind: 'sold',
      service: 'dinner' as ServiceId,
      dish: ribs,
      sold: 8,
    });
    expect(lay(other).view).toBe(view);
    expect(lay(other).marks.size).toBe(0);
  });

  it('that is taken back before the hub saw it never was', () => {
    const sold = command({ kind: 'sold', service: lunch, dish: ribs, sold: 8 });
    const undo = command({ kind: 'undo', command: sold.id });
    expect(lay(sold, undo).view).toBe(view);
  });
});
