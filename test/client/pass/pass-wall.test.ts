// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { PassWall } from '../../../client/pass/pass-wall.ts';
import type { BatchId, DishId, ServiceId } from '../../../shared/kernel/index.ts';
import { must, seconds } from '../../../shared/kernel/index.ts';
import type { PassDish, PassPan, PassView } from '../../../shared/view/index.ts';
import { buttonsOf, drawn, saidOn, tap, tapsWrittenDown } from '../fingers.ts';
import { at, stationView } from '../fixtures.ts';

const { face: _face, stations: _stations, tasks: _tasks, later: _later, ...head } = stationView;
const dinner = 'dinner' as ServiceId;

const pan = (dish: string, more: Partial<PassPan>): PassPan => ({
  batch: `${dish}-1` as BatchId,
  name: { en: `${dish} 1` },
  service: dinner,
  pieces: 4,
  piece: { one: { en: 'piece' }, many: { en: 'pieces' } },
  portions: 24,
  stage: 'ready',
  readyAt: at(-30),
  readyLowAt: at(-30),
  readyHighAt: at(-30),
  heldUntil: at(90),
  isEmptied: false,
  setOut: { en: `Slice ${dish}` },
  barred: null,
  soldTill: null,
  ...more,
});

const dish = (name: string, more: Partial<PassPan> = {}): PassDish => ({
  dish: name.toLowerCase() as DishId,
  name: { en: name },
  allergens: [],
  perQuarter: [2, 2, 2, 2],
  sold: 0,
  soldBefore: 0,
  soldOutAt: null,
  pans: [pan(name, more)],
});

async function wall(dishes: readonly PassDish[], more: Partial<PassView> = {}) {
  const service = { id: dinner, name: { en: 'Dinner' }, opensAt: at(-10), closesAt: at(50) };
  const view: PassView = { ...head, face: 'pass', service, dishes, ...more };
  const { sync, taps } = tapsWrittenDown({ view });
  const element = Object.assign(new PassWall(), { sync });
  document.body.append(element);
  await drawn();
  return { element, taps };
}

const thirteen = Array.from({ length: 13 }, (_, i) => dish(`Dish ${String.fromCharCode(65 + i)}`));
const names = (element: Element) => buttonsOf(element).map(([name]) => name);

beforeEach(() => {
  document.documentElement.style.setProperty('--arcmin', '1.76');
  Object.assign(globalThis, { innerWidth: 1920, innerHeight: 1080 });
});
afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
});

describe('the wall of the pass', () => {
  it('has every step of counting in a line of its own where there is room', async () => {
    const { element } = await wall(thirteen.slice(0, 7));
    expect(element.shadowRoot?.querySelectorAll('pass-line[short]')).toHaveLength(0);
    expect(names(element)).toContain('5 more sold: Dish A');
  });

  it('sets thirteen dishes in two columns, and keeps the larger step behind *less*', async () => {
    const { element, taps } = await wall(thirteen);
    expect(element.shadowRoot?.querySelectorAll('pass-line[short]')).toHaveLength(13);
    expect(element.shadowRoot?.querySelector('main')?.classList.contains('two')).toBe(true);
    expect(names(element)).not.toContain('5 more sold: Dish B');
    await tap(element, 'less: Dish B');
    await tap(element, '5 more sold: Dish B');
    await tap(element, '1 more sold: Dish C');
    expect(taps).toMatchObject([
      { kind: 'sold', dish: 'dish b', sold: 5 },
      { kind: 'sold', dish: 'dish c', sold: 1 },
    ]);
  });

  it('says before all else what is barred and why, in two columns and in one', async () => {
    const missed = { why: 'missed', check: 'hot-hold' } as const;
    const cold = { why: 'failed', check: 'hot-hold' } as const;
    const ribs = dish('Ribs', { barred: missed });
    const beans = dish('Beans', { barred: cold });
    const two = (await wall([ribs, beans, ...thirteen.slice(2)])).element;
    const said = [...(two.shadowRoot?.querySelectorAll('pass-line') ?? [])].map(saidOn);
    expect(said[0]).toMatch(/0 ready .*24 barred: probe it .*short/);
    expect(said[1]).toMatch(/0 ready .*24 barred: too cold .*short/);
    const marked = [...(two.shadowRoot?.querySelectorAll('pass-line[due]') ?? [])];
    expect(marked.map(saidOn)).toEqual(said.slice(0, 2));
    const one = (await wall([ribs, beans])).element;
    expect(saidOn(one)).toContain('24 barred: probe it');
  });

  it('says in two columns first what presses, then till when a pan may be held', async () => {
    const rest = thirteen.slice(3);
    const old = dish('Old', { heldUntil: at(-1) });
    const few = dish('Few', { portions: 3 });
    const whole = dish('Whole', { stage: 'held' });
    const { element } = await wall([old, few, whole, ...rest]);
    const lines = [...(element.shadowRoot?.querySelectorAll('pass-line') ?? [])].map(saidOn);
    expect(lines[0]).toMatch(/24 ready .*24 too long: check/);
    expect(lines[1]).toMatch(/3 ready out at \d\d:\d\d, \d+ short .*3 till 12:12/);
    expect(lines[2]).toMatch(/0 ready Slice Whole .*24 held till 12:12/);
    expect(lines[3]).toMatch(/24 ready +24 till 12:12/);
  });

  const coming = { stage: 'coming', heldUntil: null } as const;
  const soon = { readyAt: at(58), readyLowAt: at(58), readyHighAt: at(58) };

  it('says in two columns when there is again what runs out or is barred', async () => {
    const later = { ...coming, ...soon, readyAt: at(50), batch: 'later' as BatchId };
    const withNext = (name: string, more: Partial<PassPan>) => {
      const one = dish(name, more);
      return { ...one, pans: [...one.pans, pan(name, later)] };
    };
    const few = { ...withNext('Few', { portions: 3 }), perQuarter: [8, 8, 8, 8] };
    const barred = withNext('Barred', { barred: { why: 'failed', check: 'hot-hold' } });
    const { element } = await wall([few, barred, ...thirteen.slice(2)]);
    const lines = [...(element.shadowRoot?.querySelectorAll('pass-line') ?? [])].map(saidOn);
    expect(lines[0]).toMatch(/3 ready out 10:4\d, next 11:32 .*3 till 12:12/);
    expect(lines[1]).toMatch(/0 ready .*24 barred: too cold .*next 24 at 11:40/);
    expect(lines[1]).not.toMatch(/short/);
  });

  it('says in two columns of what is not there yet from when to when it is short', async () => {
    const later = { ...coming, ...soon, readyAt: at(45) };
    const { element } = await wall([dish('Later', later), ...thirteen.slice(1)]);
    const [line] = [...(element.shadowRoot?.querySelectorAll('pass-line') ?? [])].map(saidOn);
    expect(line).toMatch(/0 ready short 10:4\d, next 11:27 +first 24 at 11:40/);
  });

  it('says in two columns of what is all held that it is there, before what comes', async () => {
    const early = { id: dinner, name: { en: 'Dinner' }, opensAt: at(10), closesAt: at(70) };
    const whole = dish('Whole', { stage: 'held', portions: 4 });
    const lands = { ...coming, ...soon, portions: 2, readyAt: at(12), batch: 'later' as BatchId };
    const pans = [...whole.pans, pan('Whole', lands)];
    const two = [{ ...whole, pans }, ...thirteen.slice(1)];
    const { element } = await wall(two, { service: early });
    const [line] = [...(element.shadowRoot?.querySelectorAll('pass-line') ?? [])].map(saidOn);
    expect(line).toMatch(/0 ready out at \S+ \d+ short +4 held till 12:12 +next 2 at/);
  });

  it('says before it opens what brings to the board what is held', async () => {
    const early = { opensAt: at(60), closesAt: at(120) };
    const service = { id: dinner, name: { en: 'Dinner' }, ...early };
    const { element } = await wall([dish('Whole', { stage: 'held', heldUntil: at(200) })], {
      service,
    });
    expect(saidOn(element)).toMatch(/0 ready +24 held till .*Slice Whole +no more to come/);
  });

  it('says in two columns of several pans that one is only the first to go', async () => {
    const two = { ...dish('Two'), perQuarter: [0, 0, 0, 0] };
    const pans = [...two.pans, pan('Two', { heldUntil: at(150), batch: 'two-2' as BatchId })];
    const { element } = await wall([{ ...two, pans }, ...thirteen.slice(1)]);
    const [line] = [...(element.shadowRoot?.querySelectorAll('pass-line') ?? [])].map(saidOn);
    expect(line).toMatch(/48 ready +24 first, till 12:12/);
  });

  it('says in two columns of what runs out first when more lands, then its hold', async () => {
    const later = { ...coming, ...soon, portions: 2, batch: 'later' as BatchId };
    const few = dish('Few', { portions: 3 });
    const lands = { ...later, readyAt: at(0), readyLowAt: at(-5), readyHighAt: at(5) };
    const short = { ...few, perQuarter: [9, 9, 9, 9], pans: [...few.pans, pan('Few', lands)] };
    const { element } = await wall([short, ...thirteen.slice(1)]);
    const [line] = [...(element.shadowRoot?.querySelectorAll('pass-line') ?? [])].map(saidOn);
    expect(line).toMatch(/out at \S+ \d+ short .*next 2 at \S+ .*3 till/);
  });

  it('says the half of the day once of pans beside each other', async () => {
    const two = dish('Two');
    const pans = [...two.pans, pan('Two', { stage: 'held', heldUntil: at(150) })];
    const { element } = await wall([{ ...two, pans }], { clock: '12 h' });
    expect(saidOn(element)).toMatch(/24 till 12:12 +24 held till 1:12 pm/);
  });

  it('says of a morning once that nothing is ready yet, and when the first is', async () => {
    const early = { ...dish('Early', { ...coming, ...soon }), perQuarter: [0, 0, 0, 0] };
    const short = dish('Short', { ...coming, ...soon });
    const { element } = await wall([early, short]);
    const lines = [...(element.shadowRoot?.querySelectorAll('pass-line') ?? [])].map(saidOn);
    // The figure alone says that nothing is ready.
    expect(lines[0]).toMatch(/0 ready first 24 at 11:40/);
    expect(lines[1]).toMatch(/0 ready \d short from \d\d:\d\d first 24 at 11:40/);
    expect(lines.join()).not.toMatch(/lasts to the close|out at/);
  });

  it('says once of what is sold out in fact that nothing is left, or when more lands', async () => {
    const gone = { ...dish('Gone', { portions: 4 }), sold: 4, perQuarter: [0, 0, 0, 0] };
    const more = { ...gone, dish: 'more' as DishId, name: { en: 'More' } };
    const pans = [...gone.pans, pan('More', { ...coming, ...soon, batch: 'more-2' as BatchId })];
    const { element } = await wall([gone, { ...more, pans }]);
    const lines = [...(element.shadowRoot?.querySelectorAll('pass-line') ?? [])].map(saidOn);
    expect(lines[0]).toMatch(/0 ready 4 sold no more to come/);
    expect(lines[1]).toMatch(/0 ready 4 sold next 24 at 11:40/);
  });

  const isOff = (element: Element, name: string) =>
    buttonsOf(element)
      .find(([each]) => each.startsWith(name))?.[1]
      .hasAttribute('disabled');

  it('takes no sale of what is not ready, and no more than is', async () => {
    const { element, taps } = await wall([
      dish('None', { ...coming, ...soon }),
      dish('Whole', { stage: 'held' }),
      dish('Three', { portions: 3 }),
    ]);
    const off = ['1 more sold: None', '1 more sold: Whole', '5 more sold: Three'];
    expect(off.map((name) => isOff(element, name))).toEqual([true, true, true]);
    expect(isOff(element, '1 more sold: Three')).toBe(false);
    await tap(element, '1 more sold: None');
    expect(taps).toEqual([]);
  });

  it('keeps the larger step from behind *less* where so many are not ready', async () => {
    const { element } = await wall([dish('Three', { portions: 3 }), ...thirteen.slice(1)]);
    await tap(element, 'less: Three');
    expect(names(element)).not.toContain('5 more sold: Three');
    expect(names(element)).toContain('sold out');
  });

  it('says at its head of a service that will be late what holds it up till when', async () => {
    const heldBy = { kind: 'cooks', dish: { en: 'Pork' }, till: at(150) } as const;
    const late = { id: dinner, name: { en: 'Dinner' }, opensAt: at(60), inHandS: seconds(-1800) };
    const services = [{ ...late, hangsOn: null, heldBy }];
    const headOf = async (wide: number) => {
      Object.assign(globalThis, { innerWidth: wide });
      const { element } = await wall(thirteen, { services });
      return saidOn(must(element.shadowRoot?.querySelector('late-line'), 'why late'));
    };
    const whole = await headOf(1920);
    expect(whole).toMatch(/Dinner 11:42: 30 min late/);
    expect(whole).toMatch(/Pork cooks till ≈\s13:12/);
    // Where it would push the clock out, it does without its time.
    const narrower = await headOf(1200);
    expect(narrower).toContain('Pork cooks');
    expect(narrower).not.toContain('Pork cooks till');
    document.body.replaceChildren();
    const { element } = await wall(thirteen, { services: [{ ...late, hangsOn: null }] });
    expect(saidOn(element)).not.toContain('Pork');
  });

  it('lets a hand go out till a time, as every wall does', async () => {
    const { element, taps } = await wall(thirteen.slice(0, 2));
    await tap(element, 'Pass · Dinner');
    await tap(element, 'Theo goes out');
    await tap(element, '30 min');
    expect(taps).toMatchObject([{ kind: 'handOut', hand: 'theo', backAt: at(30) }]);
  });
});
