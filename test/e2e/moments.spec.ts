import { expect, test } from '@playwright/test';
import { CAP_HEIGHT, LETTERS_ARCMIN } from '../../client/theme/tokens.css.ts';
import { ensureBuilt } from '../../server/ensure-built.mjs';
import type { StationView } from '../../shared/view/index.ts';
import { type Moment, twentyMoments } from './moments/moments.ts';
import { lookAt, type SeenText, type SeenWall } from './moments/seen.ts';
import { type StandingWall, standWall } from './moments/walls.ts';

// The walls of a station and of the pit at twenty moments of a day, measured as whoever stands
// before it would see it.
// NUREG-0700 §1.3.1-4: letters are at least 16 minutes of arc high, and 20 to 22 where they are to
// be read at ease.

const LEAST = LETTERS_ARCMIN.small;
const FROM_THE_FLOOR = LETTERS_ARCMIN.body;
/** Browsers round the size of a letter. */
const ROUNDING = 0.1;

/** A full HD panel of 43 inches that is read from three metres. */
const PANEL = 'diagonal=43&distance=3';
const SIZE = { width: 1920, height: 1080 };

/** What is to be read from the floor: who, what, how much, when, and how late a service will be. */
const FLOOR: readonly (readonly [part: string, element: RegExp])[] = [
  ['now-line', /^(?:h2|button\.title|b\.who)/],
  ['wall-head', /^(?:b|h1)/],
  ['smoker-cutaway', /^h2/],
];
const isForTheFloor = ({ element, parts }: SeenText) =>
  FLOOR.some(([part, of]) => parts[0] === part && of.test(element));

let moments: readonly Moment[];
test.beforeAll(() => {
  test.setTimeout(240_000);
  ensureBuilt();
  moments = twentyMoments();
});

const said = ({ text, parts }: SeenText) => `${parts[0]}: ${text}`;

/** What nobody could read at this moment, or would read twice. */
function faultsOf({ texts, overlaps, bricks }: SeenWall): string[] {
  const small = texts.filter(({ arcmin }) => arcmin < LEAST - ROUNDING);
  const low = texts.filter(
    (text) => isForTheFloor(text) && text.arcmin < FROM_THE_FLOOR - ROUNDING,
  );
  // What was decided may be shortened beside what it cost: a tap on the line says it whole.
  const mayBeShort = ({ element }: SeenText) => element === 'span.told';
  const cut = texts.filter((text) => text.isCut && !mayBeShort(text));
  const lines = bricks.filter((brick) => brick.endsWith('now-line[due]'));
  return [
    ...small.map((text) => `too small: ${said(text)}`),
    ...low.map((text) => `too small for the floor: ${said(text)}`),
    ...cut.map((text) => `cut off: ${said(text)}`),
    ...overlaps.map((both) => `one over the other: ${both.join(' / ')}`),
    ...(lines.length > 3 ? [`too much needs a hand at once: ${lines.length}`] : []),
  ];
}

/** What a line under *Now* leaves out of: what, who, when, how much, to what standard. */
function missingIn({ texts }: SeenWall, { tasks }: StationView): string[] {
  const on = texts.filter(({ parts }) => parts[0]?.startsWith('now-line'));
  const titles = on.filter(({ element }) => element.startsWith('button.title') || element === 'h2');
  const shown = tasks.filter(({ title }) => titles.some(({ text }) => text === title.en));
  const words = texts.map(({ text }) => text).join('\n');
  return shown.flatMap(({ title, hand, pieces, weightKg, mind, state }) => {
    const who = hand ? on.some(({ element }) => element.startsWith('b.who')) : true;
    const amount =
      pieces > 1 || weightKg > 0 ? /\d+ \p{L}+|\d (?:lb|oz|kg|g)\b/u.test(words) : true;
    const standard = mind && state === 'running' ? words.includes(mind.en) : true;
    return [
      ...(who ? [] : [`${title.en}: who?`]),
      ...(amount ? [] : [`${title.en}: how much?`]),
      ...(standard ? [] : [`${title.en}: to what standard?`]),
    ];
  });
}

for (const face of ['station', 'smoker'] as const) {
  test(`the ${face} wall can be read at twenty moments of a day`, async ({ browser }) => {
    const walls = new Map<string, StandingWall>();
    for (const [n, { trouble, views }] of moments.entries()) {
      const view = views[face];
      const of = view.face === 'station' ? `&station=${view.stations[0]?.id}` : '';
      const path = `${face}.html?${PANEL}${of}`;
      const wall = walls.get(path) ?? (await standWall(browser, { path, ...SIZE }));
      walls.set(path, wall);
      await wall.show(view);
      const seen = await wall.page.evaluate(lookAt, CAP_HEIGHT);
      const missing = view.face === 'station' ? missingIn(seen, view) : [];
      const when = `moment ${n + 1}${trouble ? `, ${trouble}` : ''}`;
      expect.soft(seen.texts.length, when).toBeGreaterThan(3);
      expect.soft([...faultsOf(seen), ...missing], when).toEqual([]);
    }
    for (const wall of walls.values()) await wall.close();
  });
}
