// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepLikeness } from '../../../client/stand/keep-likeness.ts';
import { StationWall } from '../../../client/station/station-wall.ts';
import type { Stood } from '../../../client/worker/likeness.ts';
import { openLive } from '../../../shared/day/index.ts';
import { after, minutes, must, type PersonId } from '../../../shared/kernel/index.ts';
import { stationLikeness } from '../../../shared/paper/index.ts';
import { type StationView, viewOf } from '../../../shared/view/index.ts';
import type { Language } from '../../../shared/words/index.ts';
import { plan, Telling } from '../../shared/day/demo.ts';
import { drawn, tapsWrittenDown } from '../fingers.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
  document.documentElement.lang = 'en';
});

const stations = plan.kitchen.stations.map(({ id }) => id);

/** What one station has before it so long into the day: what it may begin it has half begun. */
function viewAt(minute: number, number: number): StationView {
  const at = after(plan.built.origin, minutes(minute));
  const station = must(stations[number], 'a station');
  const telling = new Telling();
  const seen = () => {
    const view = viewOf(openLive(telling.state, at), { kind: 'station', station });
    if (view.face !== 'station') throw new Error('no station');
    return view;
  };
  const [begun, called] = seen().tasks.filter(({ state }) => state === 'ready');
  if (begun) telling.ask({ kind: 'start', task: begun.id }, at);
  if (called) telling.ask({ kind: 'needHelp', task: called.id }, at);
  return seen();
}

/** What the wall itself leaves of itself. */
async function likenessOfWall(
  view: StationView,
  language: Language,
  own: PersonId | null = null,
): Promise<string> {
  document.documentElement.lang = language;
  const { sync } = tapsWrittenDown({ view, blank: null });
  Object.assign(sync, { hubNow: () => view.at });
  const wall = Object.assign(new StationWall(), { sync, language, own });
  document.body.append(wall);
  await drawn();
  const heard: Stood[] = [];
  const controller = { postMessage: (stood: Stood) => heard.push(stood) };
  const container = Object.assign(new EventTarget(), { controller });
  keepLikeness(sync, container as unknown as ServiceWorkerContainer);
  return must(heard.at(-1), 'a likeness').stood;
}

const oneLine = ({ textContent }: Element) => (textContent ?? '').replace(/\s+/g, ' ').trim();

/** Its texts by their places: the head, then line by line, then row by row. */
function wordsIn(likeness: string) {
  const page = new DOMParser().parseFromString(likeness, 'text/html');
  const texts = (of: Element | null | undefined, names: string) =>
    [...(of?.querySelectorAll(names) ?? [])].map(oneLine);
  return {
    head: texts(page.querySelector('header'), 'h1, p'),
    lines: [...page.querySelectorAll('ol > li')].map((line) =>
      line.querySelector('h2') ? texts(line, 'h2, p').filter(Boolean) : oneLine(line),
    ),
    rows: [...page.querySelectorAll('ul > li')].map((row) => texts(row, 'p')),
  };
}

describe.each(['en', 'es'] as const)('in %s, what the hub puts into a page', (language) => {
  it.each([
    [5, 0],
    [240, 0],
    [360, 0],
    [360, 1],
    [600, 2],
    [1_700, 0],
  ])('is what the wall will say, %i minutes into the day at station %i', async (minute, number) => {
    const view = viewAt(minute, number);
    const { zone, clock, temperature, weight } = view;
    const say = { language, zone, clock, temperature, weight };
    const hubs = wordsIn(stationLikeness(view, { now: view.at, say }));
    const walls = wordsIn(await likenessOfWall(view, language));
    expect(hubs).toEqual(walls);
  });

  it('is under the name of whose page it is', async () => {
    const view = viewAt(360, 0);
    const { zone, clock, temperature, weight } = view;
    const say = { language, zone, clock, temperature, weight };
    const own = must(view.people[0], 'somebody').id;
    const hubs = wordsIn(stationLikeness(view, { now: view.at, say, own }));
    expect(hubs).toEqual(wordsIn(await likenessOfWall(view, language, own)));
    expect(hubs.head[0]).toBe(view.people[0]?.name);
  });
});
