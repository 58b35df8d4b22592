import { describe, expect, it } from 'vitest';
import type { CheckOn, Intent } from '../../../shared/day/index.ts';
import {
  deliveryEffect,
  drawsOf,
  indexOf,
  lotsLeft,
  openChecks,
  sentBackIn,
} from '../../../shared/day/index.ts';
import type { CommandId, LotId, PersonId } from '../../../shared/kernel/index.ts';
import { after, celsius, kilograms, minutes, must } from '../../../shared/kernel/index.ts';
import { recordOf, traceOf } from '../../../shared/record/index.ts';
import { plan, Telling } from './demo.ts';

const { origin, batches, pull } = plan.built;
const line = must(
  pull.find(({ pieces, cut }) => pieces > 4 && batches.some(({ bought }) => bought === cut)),
  'a line of many pieces',
);
const by = must(plan.kitchen.crew[0], 'somebody').id as PersonId;
const at = (min: number) => after(origin, minutes(min));
const lot = (n: number) => `${plan.built.day}-${n}` as LotId;
const on: CheckOn = { kind: 'receiving', cut: line.cut };

/** 41 °F (5 °C) or less is asked: 3-202.11(A) of the US Food Code, read in a secondary copy. */
const came = (tempC: number | null, pieces: number = line.pieces): Intent => ({
  ...{ kind: 'receive', cut: line.cut, pieces, supplier: 'Elm Meats' },
  weightKg: kilograms((line.weightKg * pieces) / line.pieces),
  ...{ tempC: tempC === null ? null : celsius(tempC), useBy: null, code: null, isSo: true },
});
const sendBack: Intent = { kind: 'correct', on, action: 'reject-delivery' };

function told(...said: readonly Intent[]): Telling {
  const telling = new Telling();
  for (const [i, intent] of said.entries()) {
    const decision = telling.ask(intent, at(i + 1), by);
    if (!decision.ok) throw new Error(JSON.stringify(decision));
  }
  return telling;
}

const effect = ({ state }: Telling) => deliveryEffect(state, indexOf(plan), line.cut);
const drawnFrom = ({ state }: Telling) => [...new Set(drawsOf(state).map((draw) => draw.lot))];

describe('a lot that came too warm and was sent back', () => {
  it('is in no cooler, and no batch is cut from it', () => {
    const telling = told(came(9), sendBack);
    expect([...sentBackIn(telling.state)]).toEqual([lot(1)]);
    expect([...lotsLeft(telling.state).keys()]).toEqual([]);
    expect(drawnFrom(telling)).toEqual([null]);
    const batch = must(
      batches.find(({ bought }) => bought === line.cut),
      'a batch',
    ).id;
    const cut = telling.ask({ kind: 'cutFrom', batch, lots: [lot(1)] }, at(9), by);
    expect(cut).toMatchObject({ ok: false, refusal: { rule: 'lot-sent-back', lot: lot(1) } });
  });

  it('leaves the day as short as if it had not come, and asks nobody to look at nothing', () => {
    const telling = told(came(9), sendBack);
    expect(effect(telling)).toMatchObject({ shortPieces: line.pieces });
    expect(openChecks(telling.state).filter((each) => each.on.kind === 'receiving')).toEqual([]);
  });

  it('leaves what came cold enough before it, and what comes in its place', () => {
    const first = told(came(3, 2), came(9, line.pieces - 2), sendBack);
    expect([...sentBackIn(first.state)]).toEqual([lot(2)]);
    expect(effect(first)).toMatchObject({ shortPieces: line.pieces - 2 });
    first.ask(came(3, line.pieces - 2), at(20), by);
    expect([...lotsLeft(first.state).keys()]).toEqual([lot(1), lot(3)]);
    expect(effect(first)).toMatchObject({ shortPieces: 0 });
  });

  it('is the one whose reading was too high, not one that was read and was cold enough', () => {
    const telling = told(
      came(null, 2),
      { kind: 'check', on, tempC: celsius(3), thermometer: null },
      came(null, 2),
      { kind: 'check', on, tempC: celsius(11), thermometer: null },
      sendBack,
    );
    expect([...sentBackIn(telling.state)]).toEqual([lot(2)]);
  });

  it('goes whole where it was only counted against the list', () => {
    const { cut, pieces, weightKg } = line;
    const telling = told(
      { kind: 'delivery', cut, pieces, weightKg },
      { kind: 'check', on, tempC: celsius(11), thermometer: null },
      sendBack,
    );
    expect(effect(telling)).toMatchObject({ shortPieces: pieces });
    expect(openChecks(telling.state).filter((each) => each.on.kind === 'receiving')).toEqual([]);
  });

  it('stands where it stood once that is taken back', () => {
    const telling = told(came(9), sendBack);
    const command = must(telling.events.at(-1), 'the count').commandId as CommandId;
    const before = must(telling.events.at(-2), 'the correction').commandId as CommandId;
    for (const each of new Set([command, before])) {
      telling.ask({ kind: 'undo', command: each }, at(9), by);
    }
    expect([...lotsLeft(telling.state).keys()]).toEqual([lot(1)]);
    expect(effect(telling)).toMatchObject({ shortPieces: 0 });
  });

  it('is on record as gone back, all of it', () => {
    const record = must(recordOf(told(came(9), sendBack).state), 'a record');
    expect(record.left).toEqual([]);
    const trace = must(traceOf([record], lot(1)), 'a trace');
    expect(trace.sentBackKg).toBeCloseTo(line.weightKg, 9);
    expect(trace.leftKg).toBe(0);
  });
});
