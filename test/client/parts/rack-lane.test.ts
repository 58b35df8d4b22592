// @vitest-environment happy-dom
import { afterEach, expect, it } from 'vitest';
import { laneM, RackLane } from '../../../client/parts/rack-lane.ts';
import { celsius, must, type TaskId } from '../../../shared/kernel/index.ts';
import type { LoadDrawing } from '../../../shared/view/index.ts';
import { pitRule } from '../../../shared/view/index.ts';
import { drawn, saidOn } from '../fingers.ts';
import { at, NOW, smokerView } from '../fixtures.ts';

const rack = must(smokerView.smokers[0]?.racks[0], 'a rack');
const shoulders = must(rack.loads[0], 'a load');
const points: LoadDrawing = {
  ...shoulders,
  stay: 'points-1/stay' as TaskId,
  pieces: 5,
  piece: { one: { en: 'point', es: 'punta' }, many: { en: 'points', es: 'puntas' } },
  next: { title: { en: 'probe', es: 'sonda' }, lowAt: at(90), at: at(120), highAt: at(150) },
  lastCore: { tempC: celsius(78), at: at(-5) },
};

async function lane(...loads: LoadDrawing[]) {
  const part = new RackLane();
  const { zone, clock, temperature } = smokerView;
  Object.assign(part, { rack: { ...rack, loads }, laneM: laneM(smokerView.smokers), now: NOW });
  part.rule = pitRule(smokerView.smokers, NOW);
  part.say = { ...part.say, zone, clock, temperature };
  document.body.append(part);
  await drawn();
  return part;
}

afterEach(() => document.body.replaceChildren());

it('says of each kind in a rack how many of what, how hot, and what is next when', async () => {
  const said = saidOn(await lane(shoulders, points));
  expect(said).toContain('3 shoulders core 144 °F wrap 11:50–12:50');
  expect(said).toContain('5 points core 172 °F probe 12:12–13:12');
});

it('draws the range of each kind on hours of its own, under its words', async () => {
  const root = must((await lane(shoulders, points)).shadowRoot, 'its root');
  const kinds = [...root.querySelectorAll('.kind')];
  expect(kinds.map((kind) => kind.querySelectorAll('range-rule').length)).toEqual([1, 1]);
});

it('says pieces of one name, wanted at one time, as one with their least core', async () => {
  const more = { ...shoulders, stay: 'shoulder-2/stay' as TaskId };
  const cool = { ...more, lastCore: { tempC: celsius(60), at: at(-5) } };
  const said = saidOn(await lane(shoulders, cool));
  expect(said).toContain('6 shoulders core 140 °F wrap 11:50–12:50');
  expect(said).not.toContain('3 + 3');
});

it('says of what is more than half a day off which half of the day it is', async () => {
  const halves = async (hours: number) => {
    const [lowAt, highAt] = [at(60 * hours), at(60 * hours + 40)];
    const load = { ...points, next: { ...must(points.next, 'what is next'), lowAt, highAt } };
    document.body.replaceChildren();
    const part = await lane(load);
    part.say = { ...part.say, clock: '12 h' };
    await drawn();
    const when = must(part.shadowRoot?.querySelector('.next .when'), 'when');
    return [when.textContent, when.querySelector('.half')?.textContent ?? null];
  };
  // A narrow lane leaves the half of the day out where the first time like it is meant.
  expect(await halves(3)).toEqual(['1:42–2:22 pm', ' pm']);
  expect(await halves(15)).toEqual(['1:42–2:22 am', null]);
});

it('says of what may be done by now from now to when, and not as an order', async () => {
  const next = { ...must(points.next, 'what is next'), lowAt: at(-10), highAt: at(40) };
  expect(saidOn(await lane({ ...points, next }))).toContain('probe: now–11:22');
});

it('says how old a core is that was read long ago', async () => {
  const old = { ...shoulders, lastCore: { tempC: celsius(62), at: at(-64) } };
  expect(saidOn(await lane(old))).toContain('core 144 °F, 1 h ago');
  const said = saidOn(await lane({ ...shoulders, lastCore: null }));
  expect(said).not.toContain('core');
});

it('has a single word where nothing lies and nothing comes', async () => {
  const part = await lane();
  expect(saidOn(part).trim()).toMatch(/^1\s+free$/);
  expect(part.shadowRoot?.querySelector('svg, range-rule')).toBeNull();
});
