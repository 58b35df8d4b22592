import { describe, expect, it } from 'vitest';
import type { Intent } from '../../../shared/day/index.ts';
import { drawsOf, lotsLeft } from '../../../shared/day/index.ts';
import type { CommandId, CutId, LotId } from '../../../shared/kernel/index.ts';
import { after, celsius, kilograms, must, seconds } from '../../../shared/kernel/index.ts';
import { handsInOrder, plan, Telling } from './demo.ts';

const { origin, batches, pull } = plan.built;
const line = must(
  pull.find(({ cut }) => batches.filter(({ bought }) => bought === cut).length > 1),
  'a cut of two batches',
);
const ofLine = batches.filter(({ bought }) => bought === line.cut);
const firstTask = (batch: string) =>
  must(
    handsInOrder.find((id) => id.startsWith(`${batch}/`)),
    batch,
  );
const early = after(origin, seconds(60));
const dayOf = plan.built.day;

function receive(change: Partial<Extract<Intent, { kind: 'receive' }>> = {}): Intent {
  return {
    ...{ kind: 'receive', cut: line.cut, pieces: line.pieces, weightKg: line.weightKg },
    ...{ supplier: 'Elm Meats', tempC: celsius(3), useBy: '2026-12-31', code: 'E-7' },
    ...change,
  };
}
const lot = (n: number) => `${dayOf}-${n}` as LotId;

describe('a lot that comes', () => {
  it('is named by the day and its number', () => {
    const telling = new Telling();
    expect(telling.ask(receive({ pieces: 2, weightKg: kilograms(9) }), early).ok).toBe(true);
    expect(telling.ask(receive({ pieces: 1, weightKg: kilograms(4) }), early).ok).toBe(true);
    expect([...telling.state.happened.lots.keys()]).toEqual([lot(1), lot(2)]);
  });

  it('stands against the pull list once there is enough with the others, not before', () => {
    const telling = new Telling();
    telling.ask(receive({ pieces: line.pieces - 1, weightKg: kilograms(90) }), early);
    expect(telling.state.happened.deliveries.has(line.cut)).toBe(false);
    telling.ask(receive({ pieces: 3, weightKg: kilograms(12) }), early);
    const came = telling.state.happened.deliveries.get(line.cut);
    expect(came).toMatchObject({ pieces: line.pieces + 2, weightKg: 102 });
  });

  it('keeps what was written of it', () => {
    const telling = new Telling();
    telling.ask(receive(), early);
    expect(telling.state.happened.lots.get(lot(1))).toMatchObject({
      ...{ supplier: 'Elm Meats', tempC: 3, useBy: '2026-12-31', code: 'E-7', at: early },
    });
  });

  it('never takes the number of one that was undone: its label may be on a shelf', () => {
    const telling = new Telling();
    telling.ask(receive(), early);
    const command = must(telling.events.at(-1), 'the lot').commandId;
    // The events of one command are undone together.
    const both = telling.events.slice(-2).map(({ commandId }) => commandId);
    for (const each of both) telling.ask({ kind: 'undo', command: each as CommandId }, early);
    expect(command).toBe(both[1]);
    expect(telling.state.happened.lots.size).toBe(0);
    telling.ask(receive(), early);
    expect([...telling.state.happened.lots.keys()]).toEqual([lot(2)]);
  });

  it.each([
    ['a temperature that no thermometer shows', { tempC: celsius(390) }, 'impossible-temperature'],
    ['a use-by in the past', { useBy: '2026-03-01' }, 'past-use-by'],
    ['no pieces', { pieces: 0, weightKg: kilograms(0) }, 'impossible-amount'],
    ['half a piece', { pieces: 1.5 }, 'impossible-amount'],
    ['a weight of nothing', { weightKg: kilograms(0) }, 'impossible-amount'],
    ['a cut that the kitchen does not know', { cut: 'unicorn' as CutId }, 'not-of-this-day'],
  ] as const)('is refused with %s', (_what, change, rule) => {
    const decision = new Telling().ask(receive(change), early);
    expect(decision).toMatchObject({ ok: false, refusal: { rule } });
  });
});

describe('the lot that a batch is cut from', () => {
  const drawn = (telling: Telling, batch: string) =>
    drawsOf(telling.state)
      .filter((draw) => draw.batch === batch)
      .map(({ lot: of, pieces }) => [of, pieces]);

  it('is the first that came, and then the next', () => {
    const telling = new Telling();
    const [first] = [...ofLine].sort((a, b) => a.beginByS - b.beginByS);
    const { id, pieces } = must(first, 'a batch');
    telling.ask(receive({ pieces: pieces - 1, weightKg: kilograms(5 * (pieces - 1)) }), early);
    telling.ask(receive({ pieces: 20, weightKg: kilograms(80) }), early);
    telling.ask({ kind: 'start', task: firstTask(id) }, after(origin, seconds(300)));
    expect(drawn(telling, id)).toEqual([
      [lot(1), pieces - 1],
      [lot(2), 1],
    ]);
  });

  it('is nobody’s knowledge where none had come when the batch was begun', () => {
    const telling = new Telling();
    const { id, pieces } = must(ofLine[0], 'a batch');
    telling.ask({ kind: 'start', task: firstTask(id) }, early);
    telling.ask(receive(), after(origin, seconds(600)));
    expect(drawn(telling, id)).toEqual([[null, pieces]]);
    const late = telling.ask(
      { kind: 'cutFrom', batch: id, lots: [lot(1)] },
      after(origin, seconds(700)),
    );
    expect(late).toMatchObject({ ok: false, refusal: { rule: 'lot-not-here-yet' } });
  });

  it('is another where a person says so, and not given twice', () => {
    const telling = new Telling();
    const { id, pieces } = must(ofLine[0], 'a batch');
    telling.ask(receive({ pieces: 30, weightKg: kilograms(120) }), early);
    telling.ask(receive({ pieces, weightKg: kilograms(4 * pieces) }), early);
    telling.ask({ kind: 'cutFrom', batch: id, lots: [lot(2)] }, early);
    expect(drawn(telling, id)).toEqual([[lot(2), pieces]]);
    const other = must(ofLine[1], 'another batch').id;
    const again = telling.ask({ kind: 'cutFrom', batch: other, lots: [lot(2)] }, early);
    expect(again).toMatchObject({ ok: false, refusal: { rule: 'lot-used-up' } });
  });

  it('must be of its cut, and one that came', () => {
    const telling = new Telling();
    const { id } = must(ofLine[0], 'a batch');
    const foreign = must(
      pull.find(({ cut }) => cut !== line.cut),
      'another cut',
    );
    telling.ask(receive({ cut: foreign.cut }), early);
    const wrong = telling.ask({ kind: 'cutFrom', batch: id, lots: [lot(1)] }, early);
    expect(wrong).toMatchObject({ ok: false, refusal: { rule: 'lot-of-another-cut' } });
    const none = telling.ask({ kind: 'cutFrom', batch: id, lots: [lot(9)] }, early);
    expect(none).toMatchObject({ ok: false, refusal: { rule: 'unknown-lot' } });
  });

  it('passes what is left of it to the next day, and nothing that is used up', () => {
    const telling = new Telling();
    const { id, pieces } = must(ofLine[0], 'a batch');
    telling.ask(receive({ pieces: pieces + 3, weightKg: kilograms(4 * (pieces + 3)) }), early);
    telling.ask({ kind: 'cutFrom', batch: id, lots: [lot(1)] }, early);
    telling.ask({ kind: 'start', task: firstTask(id) }, after(origin, seconds(300)));
    expect(lotsLeft(telling.state).get(lot(1))?.leftPieces).toBe(3);
    const next = { ...plan, built: { ...plan.built, day: '2026-03-05' } };
    telling.nextDay(next, after(origin, seconds(86_400)));
    expect(telling.state.happened.lots.get(lot(1))).toMatchObject({ leftPieces: 3 });
  });
});
