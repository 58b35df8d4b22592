import { describe, expect, it } from 'vitest';
import type { Intent } from '../../../shared/day/index.ts';
import type { BatchId, Kilograms, LotId, TaskId } from '../../../shared/kernel/index.ts';
import { after, kilograms, must, seconds } from '../../../shared/kernel/index.ts';
import {
  type BatchFlow,
  csvOf,
  recordOf,
  traceOf,
  traceTable,
} from '../../../shared/record/index.ts';
import { handsInOrder, plan, Telling } from '../day/demo.ts';

const { origin, pull, batches, tubs, problem } = plan.built;
const at = (timeS: number) => after(origin, seconds(timeS));
const tub = must(
  tubs.find(({ batch }) => batches.find(({ id }) => id === batch)?.bought !== null),
  'a tub of what is bought',
);
const { cut, pieces, weightKg } = must(
  pull.find((line) => line.cut === batches.find(({ id }) => id === tub.batch)?.bought),
  'its line',
);
const by = must(plan.kitchen.crew[0], 'somebody').id;

/** A day whose lot came and whose hands have begun all that they do. */
function worked(): Telling {
  const day = new Telling();
  const lot: Intent = {
    ...{ kind: 'receive', cut, pieces, weightKg, supplier: 'Elm Meats' },
    ...{ tempC: null, useBy: null, code: null, isSo: true },
  };
  day.ask(lot, at(10));
  let n = 20;
  for (const task of handsInOrder) {
    day.keep({ kind: 'taskStarted', task, hand: by }, at(n), by);
    day.keep({ kind: 'taskFinished', task }, at(n + 1), by);
    n += 2;
  }
  return day;
}

const flowIn = (day: Telling, batch: BatchId): BatchFlow =>
  must(
    recordOf(day.state)?.flows.find((flow) => flow.batch === batch),
    batch,
  );
const weigh = (kg: number): Intent => ({
  ...{ kind: 'weighTub', batch: tub.batch, tub: tub.tub, weightKg: kilograms(kg) },
});
const outOf = (flow: BatchFlow) =>
  flow.tubs.reduce((sum, each) => sum + each.weightKg, 0) +
  flow.lossKg.trim +
  flow.lossKg.cook +
  flow.lossKg.carve +
  flow.servedKg +
  flow.keptKg +
  (flow.thrownKg ?? 0);

describe('trim that went over the scale', () => {
  it('weighs what the scale showed, and what is more of it is less on the plates', () => {
    const day = worked();
    const before = flowIn(day, tub.batch);
    const own = (flow: BatchFlow) =>
      must(
        flow.tubs.find((each) => each.tub === tub.tub),
        'it',
      );
    expect(own(before).isWeighed).toBe(false);
    const moreKg = own(before).weightKg + 1;
    expect(day.ask(weigh(moreKg), at(9_000), by).ok).toBe(true);
    const flow = flowIn(day, tub.batch);
    expect(own(flow)).toMatchObject({ isWeighed: true, weightKg: expect.closeTo(moreKg, 9) });
    expect(flow.servedKg).toBeLessThan(before.servedKg);
    // As much of what went on is lost in the fire and under the knife as before.
    const onKg = ({ lossKg, servedKg }: BatchFlow) => lossKg.cook + lossKg.carve + servedKg;
    expect(onKg(before) - onKg(flow)).toBeCloseTo(1, 6);
    expect(flow.servedKg / onKg(flow)).toBeCloseTo(before.servedKg / onKg(before), 6);
    expect(outOf(flow)).toBeCloseTo(flow.inKg, 6);
  });

  it('is told from what is reckoned, in the trace and its table', () => {
    const day = worked();
    day.ask(weigh(2), at(9_000), by);
    const days = [must(recordOf(day.state), 'a record')];
    const trace = must(traceOf(days, `${plan.built.day}-1` as LotId), 'a trace');
    const table = csvOf(traceTable(trace));
    expect(table.split('\r\n')[0]).toBe('lot,day,where,what,weight_kg,how');
    expect(trace.tubs.map(({ isWeighed }) => isWeighed)).toContain(true);
    expect(table).toMatch(new RegExp(`,${tub.goes},${tub.name.en},[\\d.]+,weighed`));
    expect(table).toMatch(/,service .*,reckoned/);
  });

  it('is refused where it is of nothing, too early, or more than the pieces weighed', () => {
    const day = worked();
    const refusalOf = (intent: Intent) => {
      const decision = day.ask(intent, at(9_000), by);
      return decision.ok ? null : decision.refusal.rule;
    };
    const other = { ...weigh(1), tub: 'no such tub' } as Intent;
    expect(refusalOf(other)).toBe('not-of-this-day');
    expect(refusalOf(weigh(5_000))).toBe('impossible-amount');
    expect(refusalOf(weigh(-1))).toBe('impossible-amount');
    expect(new Telling().ask(weigh(1), at(10), by)).toMatchObject({
      refusal: { rule: 'not-started' },
    });
  });

  it('is undone like any other word', () => {
    const day = worked();
    const before = flowIn(day, tub.batch);
    day.ask(weigh(2), at(9_000), by);
    const { commandId: command } = must(day.events.at(-1), 'it');
    day.ask({ kind: 'undo', command }, at(9_001), by);
    expect(flowIn(day, tub.batch)).toEqual(before);
  });
});

describe('what is thrown out', () => {
  const {
    id: batch,
    dish,
    service,
    portions,
  } = must(
    batches.find(({ id }) => id === tub.batch),
    'its batch',
  );
  const goal = must(
    problem.goals.find(({ id }) => id === (batch as string)),
    'how it is served',
  ).activity as TaskId;

  it('leaves its service, all of it where nothing was sold, as its check said', () => {
    const day = worked();
    const before = flowIn(day, batch);
    const on = { kind: 'hot-hold', batch } as const;
    day.keep({ kind: 'correctionRecorded', on, action: 'discard' }, at(9_500), by);
    const flow = flowIn(day, batch);
    expect(flow).toMatchObject({ servedKg: 0, isThrownOut: true });
    expect(flow.thrownKg).toBeCloseTo(before.servedKg, 9);
    const days = [must(recordOf(day.state), 'a record')];
    const trace = must(traceOf(days, `${plan.built.day}-1` as LotId), 'a trace');
    expect(trace.thrown.map((each) => each.dish)).toContain(dish);
    expect(outOf(flow)).toBeCloseTo(flow.inKg, 6);
  });

  it('may have fed the service it stood at while nobody counted, and not once they did', () => {
    const thrownOut = (sold: number | null) => {
      const day = worked();
      day.keep({ kind: 'taskStarted', task: goal, hand: null }, at(9_100), null);
      if (sold !== null) day.keep({ kind: 'portionsSold', service, dish, sold }, at(9_200), by);
      const on = { kind: 'hot-hold', batch } as const;
      day.keep({ kind: 'correctionRecorded', on, action: 'discard' }, at(9_500), by);
      const days = [must(recordOf(day.state), 'a record')];
      const trace = must(traceOf(days, `${plan.built.day}-1` as LotId), 'a trace');
      return must(
        trace.thrown.find((each) => each.dish === dish),
        'what went',
      );
    };
    expect(thrownOut(null).mayHaveFed.map((each) => each.service)).toEqual([service]);
    expect(thrownOut(1).mayHaveFed).toEqual([]);
  });

  it('leaves it as much as was not sold by then', () => {
    const day = worked();
    const before = flowIn(day, batch);
    day.keep({ kind: 'taskStarted', task: goal, hand: null }, at(9_100), null);
    const sold = Math.floor(portions / 4);
    day.keep({ kind: 'portionsSold', service, dish, sold }, at(9_200), by);
    day.keep({ kind: 'leftCarriedOver', batch, weightKg: 0 as Kilograms }, at(9_300), by);
    // What is counted after that was of another batch.
    day.keep({ kind: 'portionsSold', service, dish, sold: portions }, at(9_400), by);
    const flow = flowIn(day, batch);
    expect(flow.thrownKg).toBeCloseTo((before.servedKg * (portions - sold)) / portions, 6);
    expect(flow.servedKg).toBeCloseTo((before.servedKg * sold) / portions, 6);
  });
});
