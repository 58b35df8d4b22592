import { expect, it } from 'vitest';
import { type CheckOn, openLive } from '../../../shared/day/index.ts';
import type { BatchId } from '../../../shared/kernel/index.ts';
import { after, celsius, minutes, must } from '../../../shared/kernel/index.ts';
import { viewOf } from '../../../shared/view/index.ts';
import { noon, plan } from '../day/demo.ts';
import { atNoon } from '../day/demo-noon.ts';

it('says to the desk what was last found at a check that comes round again', () => {
  const telling = atNoon();
  const person = must(plan.kitchen.crew[0], 'a person');
  const on: CheckOn = { kind: 'hot-hold', batch: 'lunch-ribs-1' as BatchId };
  const at = after(noon, minutes(30));
  telling.ask({ kind: 'check', on, tempC: celsius(65), thermometer: null }, at, person.id);
  const view = viewOf(openLive(telling.state, after(noon, minutes(100))), { kind: 'desk' });
  if (view.face !== 'desk') throw new Error('a desk was asked for');
  const { key } = must(
    view.checks.find((check) => JSON.stringify(check.on) === JSON.stringify(on)),
    'what is held hot',
  );
  const found = view.looked.find((each) => each.key === key);
  expect(found).toEqual({ key, at, by: person.name, tempC: 65, action: null });
});
