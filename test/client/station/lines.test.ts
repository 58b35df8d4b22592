// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { NextRow } from '../../../client/parts/next-row.ts';
import { RuleHours } from '../../../client/parts/rule-hours.ts';
import { StationWall } from '../../../client/station/station-wall.ts';
import { pitRule, type TaskView } from '../../../shared/view/index.ts';
import { drawn, saidOn, tapsWrittenDown } from '../fingers.ts';
import {
  at,
  injectShoulders,
  NOW,
  smokerView,
  squareRibs,
  stationView,
  task,
} from '../fixtures.ts';

const { people, zone, clock, temperature, weight } = stationView;
const english = { language: 'en', zone, clock, temperature, weight } as const;

beforeEach(() => {
  document.documentElement.style.setProperty('--arcmin', '1.76');
  Object.assign(globalThis, { innerWidth: 1920, innerHeight: 1080 });
});
afterEach(() => document.body.replaceChildren());

async function row(more: Partial<TaskView>, narrow = false, now: typeof NOW | null = null) {
  const shown = task('round', 'Feed wood', [20, 3], more);
  const props = { say: english, task: shown, people, narrow, now };
  const element = Object.assign(new NextRow(), props);
  document.body.append(element);
  await drawn();
  return saidOn(element);
}

describe('the titles under Now', () => {
  it('are written in one size, whether a line runs, waits or is done', async () => {
    const done = { ...squareRibs, state: 'done' as const };
    for (const first of [squareRibs, done]) {
      const view = { ...stationView, tasks: [first, injectShoulders] };
      const { sync } = tapsWrittenDown({ view });
      const wall = Object.assign(new StationWall(), { sync });
      document.body.append(wall);
      await drawn();
      const pages = [...(wall.shadowRoot?.querySelectorAll('now-line') ?? [])].map((line) =>
        line.shadowRoot?.querySelector<HTMLElement>('.page'),
      );
      const sizes = pages.map((page) =>
        ['--chars', '--rows'].map((name) => page?.style.getPropertyValue(name)),
      );
      expect(new Set(sizes.map(String)).size).toBe(1);
      wall.remove();
    }
  });
});

describe('a row under Next', () => {
  it('names the smoker that a round is for', async () => {
    expect(await row({ thing: { en: 'Smoker B' } })).toContain('20 slabs · Smoker B');
  });

  it('does not count the one thing that it names', async () => {
    const said = await row({ pieces: 1, thing: { en: 'Walk-in cooler' } });
    expect(said).toContain('Walk-in cooler');
    expect(said).not.toMatch(/1 slab|·\s*Walk-in/);
  });

  it('says of which day it is where it is more than half a day off', async () => {
    expect(await row({ startAt: at(17 * 60) }, false, at(0))).toContain('Thu 03:42');
    expect(await row({ startAt: at(10 * 60) }, false, at(0))).not.toContain('Wed');
  });

  it('says why it waits without a name that says no more', async () => {
    const smoker = { id: 'b' as never, name: { en: 'Smoker B' } };
    const said = await row({ because: { kind: 'down', smoker, backAt: null } });
    expect(said).toContain('Smoker B is down');
    expect(said).not.toContain('Ines');
  });
});

describe('the rules under the racks of a smoker', () => {
  it.each([
    ['24 h', /09:00 +12:00 +15:00/],
    // The half of the day is said where it begins.
    ['12 h', /9 am +12 pm +3 /],
  ] as const)('say which hours they hold, by a clock of %s', async (of, hours) => {
    const rule = pitRule(smokerView.smokers, NOW);
    const say = { ...english, clock: of };
    const element = Object.assign(new RuleHours(), { say, rule });
    document.body.append(element);
    await drawn();
    expect(saidOn(element)).toMatch(hours);
  });
});
