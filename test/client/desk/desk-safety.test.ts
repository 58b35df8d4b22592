// @vitest-environment happy-dom
import { afterEach, expect, it } from 'vitest';
import '../../../client/desk/desk-safety.ts';
import type { DeskSafety } from '../../../client/desk/desk-safety.ts';
import type { Sync } from '../../../client/sync/index.ts';
import { after, type Instant, minutes } from '../../../shared/kernel/index.ts';
import type { DeskView, Intent } from '../../../shared/view/index.ts';
import { buttonsOf, drawn } from '../fingers.ts';
import { NOW } from '../fixtures.ts';
import { ribs, rosa } from '../open-check.ts';

afterEach(() => document.body.replaceChildren());

it('keeps what is typed of a check whose time is over while somebody types', async () => {
  let now: Instant = NOW;
  const taps: Intent[] = [];
  const part = document.createElement('desk-safety') as DeskSafety;
  part.say = { ...part.say, temperature: '°F' };
  part.sync = { hubNow: () => now, tap: (intent: Intent) => taps.push(intent) } as unknown as Sync;
  const view = () =>
    ({
      checks: [ribs],
      people: [rosa],
      limits: { id: 'food-code', version: 1, changes: [] },
    }) as unknown as DeskView;
  part.view = view();
  document.body.append(part);
  await drawn();
  const press = async (name: RegExp) => {
    buttonsOf(part)
      .find(([each]) => name.test(each))?.[1]
      .click();
    await drawn();
  };
  for (const name of [/held hot/, /^1$/, /^4$/]) await press(name);
  now = after(NOW, minutes(31));
  part.view = view();
  await drawn();
  for (const name of [/^9$/, /^Rosa/]) await press(name);
  expect(taps).toMatchObject([{ kind: 'check', on: ribs.on }]);
  expect(taps[0]).toHaveProperty('tempC', expect.closeTo(65, 1));
});
