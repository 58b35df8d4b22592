import { describe, expect, it } from 'vitest';
import { keptFor } from '../../../server/plan-desk/kept-for.ts';
import { type AdoptedPlan, EVENT_VERSION, fold, keptBy } from '../../../shared/day/index.ts';
import type { CommandId, DayId, Kilograms, LocalDay } from '../../../shared/kernel/index.ts';
import { addDays, must } from '../../../shared/kernel/index.ts';
import { sayDay, sayKept } from '../../../shared/words/index.ts';
import { noon, plan, Telling } from '../../shared/day/demo.ts';

const today = plan.built.day as LocalDay;
const shoulder = must(
  plan.built.batches.find(({ dish }) => dish === 'pulled-shoulder'),
  'pulled shoulder',
);
const { portionKg } = must(
  plan.catalogue.dishes.find(({ id }) => id === shoulder.dish),
  'its dish',
);
const say = {
  language: 'en',
  zone: 'UTC',
  clock: '24 h',
  temperature: '°C',
  weight: 'kg',
} as const;

/** The day after twelve and a half portions of it were kept. */
function withKept(): Telling {
  const day = new Telling();
  const weightKg = (12.5 * portionKg) as Kilograms;
  const { ok } = day.ask({ kind: 'carryOver', batch: shoulder.id, weightKg }, noon);
  expect(ok).toBe(true);
  return day;
}

const on = (days: number) => addDays(today, days);

describe('what a day keeps for another', () => {
  it('is told to the plans of the days after it, in whole portions, and not to its own', () => {
    const { state } = withKept();
    expect(keptFor(today, state, plan)).toEqual([]);
    expect(keptFor(on(1), state, plan)).toMatchObject([
      { portions: 12, madeOn: today, at: noon, dish: { en: 'Pulled shoulder' } },
    ]);
  });

  it('is told as long as its date mark lets it be used: seven days, the first is its own', () => {
    // Food Code 3-501.17: the day it was made is the first of seven.
    const { state } = withKept();
    expect(keptFor(on(6), state, plan)).toMatchObject([{ lastDay: on(6) }]);
    expect(keptFor(on(7), state, plan)).toEqual([]);
  });

  it('is known on the next day, whatever its plan is', () => {
    const { state } = withKept();
    const day = on(1);
    const next: AdoptedPlan = { ...plan, version: 1, built: { ...plan.built, day } };
    const head = { seq: state.seq + 1, day: day as string as DayId };
    const by = { commandId: 'next' as CommandId, personId: null, screenId: null };
    const after = fold(state, {
      ...{ ...head, ...by, at: noon, keptAt: noon },
      version: EVENT_VERSION,
      kind: 'planAdopted',
      plan: next,
    });
    expect(after.happened.carried.size).toBe(0);
    expect(keptFor(day, after, plan)).toMatchObject([{ portions: 12, madeOn: today }]);
  });

  it('is gone where keeping it was undone', () => {
    const day = withKept();
    const { commandId } = must(day.events.at(-1), 'an event');
    day.ask({ kind: 'undo', command: commandId }, noon);
    expect(keptBy(day.state)).toEqual([]);
  });

  it('is said with its day, its amount and its last day, in each language', () => {
    const kept = keptFor(on(1), withKept().state, plan);
    const [line, rule] = sayKept(kept, say);
    expect(line).toMatch(/^Pulled shoulder: 12 portions \(.* kg\) were kept, \w+, Mar \d, 18:00; /);
    expect(line).toContain(`by the end of ${sayDay(on(6), say)}.`);
    expect(rule).toBe('No plan counts on what was kept: it has to be heated again first.');
    const [spanish] = sayKept(kept, { ...say, language: 'es' });
    expect(spanish).toContain('se apartaron 12 porciones');
    expect(sayKept([], say)).toEqual([]);
  });
});
