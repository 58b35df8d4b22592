import { describe, expect, it } from 'vitest';
import type { CheckOn, CommandId } from '../../../shared/day/index.ts';
import { after, celsius, must, type PersonId, seconds } from '../../../shared/kernel/index.ts';
import { plan, Telling } from './demo.ts';

const at = (s: number) => after(plan.built.origin, seconds(s));
const batch = must(plan.built.batches[0], 'a batch').id;
const by = must(plan.kitchen.crew[0], 'somebody').id;
const hot: CheckOn = { kind: 'hot-hold', batch };
const read = (tempC: number | null, on: CheckOn = hot) => ({
  kind: 'check' as const,
  on,
  tempC: tempC === null ? null : celsius(tempC),
  thermometer: null,
});

describe('a check', () => {
  it('is kept with what was read, when and by whom, also where it breaks its limit', () => {
    const telling = new Telling();
    expect(telling.ask(read(41), at(60), by).ok).toBe(true);
    expect(telling.state.checks).toMatchObject([{ on: hot, tempC: 41, by, at: at(60) }]);
  });

  it('stands in the name of a person', () => {
    const refused = new Telling().ask(read(70), at(60));
    expect(refused).toMatchObject({ ok: false, refusal: { rule: 'who-checked' } });
  });

  it('needs what the thermometer showed, and that a thermometer can show it', () => {
    const telling = new Telling();
    const rules = [null, 400].map((tempC) => telling.ask(read(tempC), at(60), by));
    expect(rules).toMatchObject([
      { ok: false, refusal: { rule: 'reading-missing' } },
      { ok: false, refusal: { rule: 'impossible-temperature' } },
    ]);
  });

  it('is of something that the day and its kitchen have', () => {
    const unknown: CheckOn = { kind: 'clean', station: 'nowhere' as never, table: 1 };
    const refused = new Telling().ask(read(null, unknown), at(60), by as PersonId);
    expect(refused).toMatchObject({ ok: false, refusal: { rule: 'nothing-to-check' } });
  });

  it('is taken back like any other word, and what it did goes with it', () => {
    const telling = new Telling();
    telling.ask({ kind: 'correct', on: hot, action: 'discard' }, at(60), by);
    expect(telling.state.happened.emptied.has(batch)).toBe(true);
    const command = must(telling.events.at(-1), 'it').commandId as CommandId;
    expect(telling.ask({ kind: 'undo', command }, at(120), by).ok).toBe(true);
    expect(telling.state.checks).toEqual([]);
    expect(telling.state.happened.emptied.has(batch)).toBe(false);
  });

  it('lets only what its row allows be done about it', () => {
    const correction = { kind: 'correct', on: hot, action: 'move-below' } as const;
    expect(new Telling().ask(correction, at(60), by)).toMatchObject({
      refusal: { rule: 'correction-not-allowed', allowed: ['reheat-at-once', 'discard'] },
    });
  });
});
