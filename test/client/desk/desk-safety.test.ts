// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import '../../../client/desk/desk-safety.ts';
import type { DeskSafety } from '../../../client/desk/desk-safety.ts';
import type { Sync } from '../../../client/sync/index.ts';
import { after, celsius, type Instant, minutes } from '../../../shared/kernel/index.ts';
import type { CheckView, DeskView, Intent, LastLooked } from '../../../shared/view/index.ts';
import { buttonsOf, drawn, saidOn } from '../fingers.ts';
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
      looked: [],
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

describe('what is to be looked at, at the desk', () => {
  const later: CheckView = {
    ...ribs,
    ...{ fromAt: after(NOW, minutes(40)), dueAt: after(NOW, minutes(60)) },
    lateAt: after(NOW, minutes(90)),
  };

  async function safety(checks: readonly CheckView[], looked: readonly LastLooked[] = []) {
    const part = document.createElement('desk-safety') as DeskSafety;
    part.say = { ...part.say, temperature: '°F' };
    part.sync = { hubNow: () => NOW } as unknown as Sync;
    const limits = { id: 'food-code', version: 1, changes: [] };
    part.view = { checks, looked, people: [rosa], limits } as unknown as DeskView;
    document.body.append(part);
    await drawn();
    return part;
  }

  it('says first that nothing is due where nothing is, and then what comes', async () => {
    expect(saidOn(await safety([later]))).toMatch(/Due now Nothing due now\. Later .*held hot/);
  });

  it('stands by place, so that one walk does all of it, with the soonest place first', async () => {
    const stove = { ...later, key: 'stove', station: { en: 'Stove' }, thing: { en: 'Beans' } };
    const last = { ...later, key: 'last', thing: { en: 'Slaw' }, lateAt: after(NOW, minutes(99)) };
    const part = await safety([last, stove, { ...later, lateAt: after(NOW, minutes(80)) }]);
    expect(saidOn(part)).toMatch(/Pass .*Ribs .*Slaw .*Stove .*Beans/);
  });

  it('keeps what is typed at one place where another comes to stand before it', async () => {
    const stove = { ...ribs, key: 'stove', station: { en: 'Stove' }, thing: { en: 'Beans' } };
    const part = await safety([ribs, { ...stove, lateAt: after(ribs.lateAt, minutes(5)) }]);
    const rows = () => buttonsOf(part).filter(([name]) => /held hot/.test(name));
    rows()[1]?.[1].click();
    await drawn();
    const pad = () => part.shadowRoot?.querySelector('check-pad');
    const before = pad();
    expect(before).not.toBeNull();
    const sooner = { ...stove, lateAt: after(ribs.lateAt, minutes(-5)) };
    part.view = { ...part.view, checks: [ribs, sooner] };
    await drawn();
    expect(saidOn(part)).toMatch(/Stove .*Beans.*Pass .*Ribs/);
    expect(pad()).toBe(before);
  });

  it('says what its limit asks, and its clause only once it is opened', async () => {
    const part = await safety([ribs]);
    expect(saidOn(part)).toContain('at least 135 °F');
    expect(saidOn(part)).not.toContain('3-501.16');
    buttonsOf(part)[0]?.[1].click();
    await drawn();
    expect(saidOn(part)).toContain('3-501.16(A)(1), FDA Food Code');
  });

  it('says what was found last and that it was good, or that nobody has looked yet', async () => {
    const found = { at: after(NOW, minutes(-60)), by: 'Rosa', tempC: celsius(63), action: null };
    const part = await safety([ribs], [{ key: ribs.key, ...found }]);
    expect(saidOn(part)).toMatch(/last good: 145 °F, \d\d:42, Rosa/);
    expect(saidOn(await safety([ribs]))).toContain('not looked at yet');
  });

  it('has a box only on what may be done by now', async () => {
    expect(saidOn(await safety([ribs]))).toContain('write it down');
    expect(saidOn(await safety([later]))).not.toContain('write it down');
  });
});
