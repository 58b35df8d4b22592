import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CheckOn, Intent, OpenCheck } from '../../../shared/day/index.ts';
import { openChecks } from '../../../shared/day/index.ts';
import type { BatchId, CoolerId, CutId, Instant } from '../../../shared/kernel/index.ts';
import { after, celsius, hours, kilograms, minutes, must } from '../../../shared/kernel/index.ts';
import { noon, plan, Telling, task } from './demo.ts';
import { atNoon } from './demo-noon.ts';

const at = (min: number): Instant => after(noon, minutes(min));
const ribs = 'lunch-ribs-1' as BatchId;
const by = must(plan.kitchen.crew[0], 'somebody').id;
const hot: CheckOn = { kind: 'hot-hold', batch: ribs };
const read = (tempC: number | null, on: CheckOn = hot): Intent => ({
  kind: 'check',
  on,
  tempC: tempC === null ? null : celsius(tempC),
  thermometer: null,
});
const open = (day: Telling, on: CheckOn): OpenCheck | undefined =>
  openChecks(day.state).find((check) => JSON.stringify(check.on) === JSON.stringify(on));

describe('a check', () => {
  it('is kept with what was read, when and by whom, also where it breaks its limit', () => {
    const telling = new Telling();
    expect(telling.ask(read(41), at(1), by).ok).toBe(true);
    expect(telling.state.checks).toMatchObject([{ on: hot, tempC: 41, by, at: at(1) }]);
  });

  it('stands in the name of a person', () => {
    const refused = new Telling().ask(read(70), at(1));
    expect(refused).toMatchObject({ ok: false, refusal: { rule: 'who-checked' } });
  });

  it('needs what the thermometer showed, and that a thermometer can show it', () => {
    const rules = [null, 400].map((tempC) => new Telling().ask(read(tempC), at(1), by));
    expect(rules).toMatchObject([
      { ok: false, refusal: { rule: 'reading-missing' } },
      { ok: false, refusal: { rule: 'impossible-temperature' } },
    ]);
  });

  it('is of something that the day and its kitchen have', () => {
    const unknown: CheckOn = { kind: 'clean', station: 'nowhere' as never, table: 1 };
    const refused = new Telling().ask(read(null, unknown), at(1), by);
    expect(refused).toMatchObject({ ok: false, refusal: { rule: 'nothing-to-check' } });
  });

  it('is taken back like any other word, and what it did goes with it', () => {
    const day = atNoon();
    day.ask(read(50), at(1), by);
    day.ask({ kind: 'correct', on: hot, action: 'discard' }, at(2), by);
    expect(day.state.happened.emptied.has(ribs)).toBe(true);
    const { commandId: command } = must(day.events.at(-1), 'it');
    expect(day.ask({ kind: 'undo', command }, at(3), by).ok).toBe(true);
    expect(day.state.happened.emptied.has(ribs)).toBe(false);
    expect(open(day, hot)?.failed?.tempC).toBe(50);
  });
});

describe('what is due', () => {
  it('is what stands in a cabinet, as often as the round of the kitchen says, two hours', () => {
    const day = atNoon();
    const before = must(open(day, hot), 'a check');
    expect(day.ask(read(65), at(30), by).ok).toBe(true);
    const { dueAt, asked, station } = must(open(day, hot), 'the next');
    expect(dueAt).toBe(after(at(30), hours(2)));
    expect(dueAt).toBeGreaterThan(before.dueAt);
    expect({ asked, station }).toEqual({ asked: '135 °F', station: 'pass' });
  });

  it('is never further off than one beat, whenever somebody looked before', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 100 }), { maxLength: 6 }), (pauses) => {
        const day = atNoon();
        let min = 0;
        for (const pause of pauses) {
          min += pause;
          if (open(day, hot) === undefined) break;
          day.ask(read(66), at(min), by);
          const next = open(day, hot);
          // When the last service that sells it closes, it is asked where what is left goes.
          const closes = Math.max(...plan.built.services.map(({ closesAt }) => closesAt));
          if (after(at(min), hours(2)) < closes) expect(next?.dueAt).toBe(after(at(min), hours(2)));
          else expect(next).toBeUndefined();
        }
      }),
      { numRuns: 30 },
    );
  });

  it('is asked for each batch that stands in a cabinet, and for none that is gone', () => {
    const day = atNoon();
    const held = () =>
      openChecks(day.state).flatMap(({ on }) => (on.kind === 'hot-hold' ? [on.batch] : []));
    expect(held()).toContain(ribs);
    day.ask({ kind: 'panEmpty', batch: ribs }, at(5));
    expect(held()).not.toContain(ribs);
    expect(openChecks(day.state).some(({ on }) => 'batch' in on && on.batch === ribs)).toBe(false);
  });

  it('is no more where the pass has counted the last portion out', () => {
    const day = atNoon();
    const { service, dish } = must(
      plan.built.batches.find(({ id }) => id === ribs),
      ribs,
    );
    const batches = plan.built.batches.filter((each) => each.dish === dish);
    const sold = batches.reduce((sum, { portions }) => sum + portions, 0);
    day.ask({ kind: 'sold', service, dish, sold }, at(5));
    expect(open(day, hot)).toBeUndefined();
  });

  it('is the end of a cook once its probe is begun, and late when nobody wrote it down', () => {
    const day = new Telling();
    const probe = task('lunch-chicken-1', 'probe');
    const on: CheckOn = { kind: 'end-temperature', batch: 'lunch-chicken-1' as BatchId };
    expect(open(day, on)).toBeUndefined();
    day.keep({ kind: 'taskStarted', task: probe, hand: by }, at(0), by);
    expect(open(day, on)).toMatchObject({ dueAt: at(0), asked: '165 °F', station: 'pit' });
    day.keep({ kind: 'taskFinished', task: probe }, at(6), by);
    expect(open(day, on)?.lateAt).toBe(at(16));
    day.ask(read(75, on), at(7), by);
    expect(open(day, on)).toBeUndefined();
  });

  it('is a wash of a table four hours after something lay on it (4-602.11(C), secondary)', () => {
    const day = new Telling();
    day.keep({ kind: 'taskStarted', task: task('lunch-slaw-1', 'shred'), hand: by }, at(0), by);
    const on: CheckOn = { kind: 'clean', station: 'stove' as never, table: null };
    expect(open(day, on)?.lateAt).toBe(at(240));
    day.keep({ kind: 'taskFinished', task: task('lunch-slaw-1', 'shred') }, at(30), by);
    expect(open(day, on)?.lateAt).toBe(at(240));
    day.ask(read(null, on), at(200), by);
    expect(open(day, on)).toBeUndefined();
  });

  it('is each thermometer in ice water once a day', () => {
    const day = atNoon();
    const fresh = new Telling();
    const first = must(plan.kitchen.thermometers?.[0], 'a thermometer').id;
    const on: CheckOn = { kind: 'thermometer', thermometer: first };
    expect(open(day, on)).toBeUndefined();
    expect(open(fresh, on)).toBeUndefined();
    fresh.keep({ kind: 'taskStarted', task: task('lunch-slaw-1', 'shred'), hand: by }, at(0), by);
    expect(open(fresh, on)?.dueAt).toBe(at(0));
    fresh.ask(read(1.2, on), at(1), by);
    // 34.2 °F in ice water is more than two degrees off (4-203.11, secondary copy).
    expect(open(fresh, on)?.failed?.breach).toMatchObject({ asked: '2 °F', found: '2.2 °F' });
    fresh.ask({ kind: 'correct', on, action: 'adjust-thermometer' }, at(2), by);
    expect(open(fresh, on)).toMatchObject({ isMending: true, failed: null });
    fresh.ask(read(0.1, on), at(3), by);
    expect(open(fresh, on)).toBeUndefined();
  });

  it('is a cooler while anything lies in it, and what came while nobody has read it', () => {
    const day = atNoon();
    expect(open(day, { kind: 'cold-hold', cooler: 'walk-in' as CoolerId })).toBeDefined();
    const cut = must(plan.built.pull[0], 'a line').cut as CutId;
    day.ask({ kind: 'delivery', cut, pieces: 4, weightKg: kilograms(8) }, at(1), by);
    const on: CheckOn = { kind: 'receiving', cut };
    expect(open(day, on)).toMatchObject({ dueAt: at(1), asked: '41 °F', station: 'trim' });
    day.ask(read(3, on), at(2), by);
    expect(open(day, on)).toBeUndefined();
  });

  it('is met by what comes out of a freezer, and keeps how cold it was', () => {
    const day = atNoon();
    const cut = must(plan.built.pull[0], 'a line').cut as CutId;
    const walkIn: CheckOn = { kind: 'cold-hold', cooler: 'walk-in' as CoolerId };
    day.ask({ kind: 'delivery', cut, pieces: 4, weightKg: kilograms(8) }, at(1), by);
    for (const on of [walkIn, { kind: 'receiving', cut } as const]) {
      day.ask(read(-18, on), at(2), by);
      expect(open(day, on)?.failed ?? null).toBeNull();
      expect(day.state.checks.at(-1)).toMatchObject({ on, tempC: -18 });
    }
    expect(day.ask(read(-40, walkIn), at(3), by)).toMatchObject({
      refusal: { rule: 'impossible-temperature' },
    });
  });

  it('finds what is held hot and froze too cold, by its whole distance', () => {
    const day = atNoon();
    day.ask(read(-5, hot), at(1), by);
    expect(open(day, hot)?.failed?.breach).toMatchObject({ asked: '135 °F', found: '23 °F' });
  });

  it('is of nothing where it was read before anything came, and says so', () => {
    const cut = must(plan.built.pull[0], 'a line').cut as CutId;
    const on: CheckOn = { kind: 'receiving', cut };
    const day = new Telling();
    expect(day.ask(read(3, on), at(1), by)).toMatchObject({
      refusal: { rule: 'nothing-to-check' },
    });
    day.ask({ kind: 'delivery', cut, pieces: 4, weightKg: kilograms(8) }, at(5), by);
    expect(day.ask(read(3, on), at(4), by).ok).toBe(false);
    expect(day.ask(read(3, on), at(6), by).ok).toBe(true);
  });

  it('is each lot that came, also of a cut that is not for today', () => {
    const pulled = new Set(plan.built.pull.map((line) => line.cut));
    const { id: other } = must(
      plan.catalogue.cuts.find((each) => !pulled.has(each.id) && !each.takenFrom),
      'a cut that is not pulled today',
    );
    const line = must(plan.built.pull[0], 'a line').cut as CutId;
    const came = (cut: CutId, tempC: number | null): Intent => ({
      ...{ kind: 'receive', cut, pieces: 1, weightKg: kilograms(2), supplier: 'Elm Meats' },
      ...{ tempC: tempC === null ? null : celsius(tempC), useBy: null, code: null, isSo: true },
    });
    const day = new Telling();
    // 41 °F or less: 3-202.11(A), read in Washington's adoption of 2013.
    day.ask(came(line, 9), at(1), by);
    day.ask(came(line, 3), at(2), by);
    expect(open(day, { kind: 'receiving', cut: line })).toMatchObject({ failed: { tempC: 9 } });
    day.ask(came(other, null), at(3), by);
    expect(open(day, { kind: 'receiving', cut: other })).toMatchObject({ dueAt: at(3) });
    day.ask(read(4, { kind: 'receiving', cut: other }), at(4), by);
    expect(open(day, { kind: 'receiving', cut: other })).toBeUndefined();
    const back = { kind: 'receiving', cut: line } as const;
    day.ask({ kind: 'correct', on: back, action: 'reject-delivery' }, at(5), by);
    expect(open(day, back)).toBeUndefined();
  });

  it('is what is kept for another day, at two hours and at six (3-501.14(A), secondary)', () => {
    const day = atNoon();
    day.ask({ kind: 'carryOver', batch: ribs, weightKg: kilograms(2) }, at(0), by);
    const stage = (n: number): CheckOn => ({ kind: 'cooling', batch: ribs, stage: n });
    expect(open(day, stage(1))?.lateAt).toBe(at(120));
    expect(open(day, stage(2))).toBeUndefined();
    day.ask(read(40, stage(1)), at(60), by);
    expect(open(day, stage(1))?.failed).toBeNull();
    day.ask(read(20, stage(1)), at(110), by);
    expect(open(day, stage(2))?.lateAt).toBe(at(360));
    // 45 °F after six hours and ten minutes.
    day.ask(read(7.2, stage(2)), at(370), by);
    expect(open(day, stage(2))).toMatchObject({ failed: { tempC: 7.2 }, allowed: ['discard'] });
  });
});
