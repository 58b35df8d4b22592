import { describe, expect, it } from 'vitest';
import { carryOf, dayFrom, fold } from '../../../shared/day/index.ts';
import type { ScreenId } from '../../../shared/kernel/index.ts';
import { after, celsius, kilograms, must, seconds } from '../../../shared/kernel/index.ts';
import { handsInOrder, plan, Telling } from './demo.ts';

describe('what a day leaves to the next', () => {
  it('is all that the next begins with, also once it was written down and read again', () => {
    const telling = new Telling();
    const { origin, pull, batches } = plan.built;
    const at = (timeS: number) => after(origin, seconds(timeS));
    const { cut } = must(pull[0], 'a line');
    const received = { cut, pieces: 40, weightKg: kilograms(100), supplier: 'Elm Meats' };
    telling.ask(
      { kind: 'receive', ...received, tempC: null, useBy: null, code: null, isSo: true },
      at(10),
    );
    for (const task of handsInOrder.slice(0, 12)) telling.ask({ kind: 'start', task }, at(400));
    const smoker = must(plan.kitchen.smokers[0], 'a smoker').id;
    telling.ask({ kind: 'smokerDown', smoker, tempC: celsius(70), backAt: null }, at(500));
    const batch = must(batches[0], 'a batch').id;
    telling.ask({ kind: 'carryOver', batch, weightKg: kilograms(2) }, at(600));
    const place = { role: 'desk', stations: [] } as const;
    const screen = 'a-desk' as ScreenId;
    telling.keep({ kind: 'screenPaired', screen, name: 'Desk', place }, at(700), null);
    const person = must(plan.kitchen.crew[0], 'somebody').id;
    telling.keep({ kind: 'languageSet', person, language: 'es' }, at(700), null);
    const before = telling.state;
    const carry = JSON.parse(JSON.stringify(carryOf(before)));
    const next = { ...plan, built: { ...plan.built, day: '2026-03-05' } };
    const event = telling.nextDay(next, at(86_400));
    const { atPlan: _, ...whole } = telling.state;
    const { atPlan: __, ...fromCarry } = fold(dayFrom(carry), event);
    expect(fromCarry).toEqual(whole);
    expect(whole.happened.lots.size).toBe(1);
    expect(whole.who.languages.get(person)).toBe('es');
    expect(whole.kept).toHaveLength(1);
    expect(whole.happened.spells).toHaveLength(1);
  });
});
