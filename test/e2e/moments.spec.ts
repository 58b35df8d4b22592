import { expect, test } from '@playwright/test';
import { CAP_HEIGHT, LETTERS_ARCMIN } from '../../client/theme/tokens.css.ts';
import type { View } from '../../shared/view/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { missingOn } from './moments/asked.ts';
import { type Moment, twentyMoments, type WallOf } from './moments/moments.ts';
import { lookAt, type SeenText, type SeenWall } from './moments/seen.ts';
import { type StandingWall, standWall } from './moments/walls.ts';

// The walls of a station, of the pit and of the pass at twenty moments of a day, measured as
// whoever stands before them would see them.
// NUREG-0700 §1.3.1-4: letters are at least 16 minutes of arc high, and 20 to 22 where they are to
// be read at ease.

const LEAST = LETTERS_ARCMIN.small;
const FROM_THE_FLOOR = LETTERS_ARCMIN.body;
/** Higher than these are only what is to be done now, and what is ready to be sold. */
const FIGURES = LETTERS_ARCMIN.figure;
/** Browsers round the size of a letter. */
const ROUNDING = 0.1;

type Glass = { readonly width: number; readonly height: number; readonly panel: string };

/** A full HD panel of 43 inches that is read from three metres. */
const PANEL: Glass = { width: 1920, height: 1080, panel: 'diagonal=43&distance=3&' };
/** A tablet of ten inches on a shelf over the bench. */
const TABLET: Glass = { width: 1024, height: 600, panel: 'diagonal=10&distance=0.7&' };
/** In the hand of one person. */
const PHONE: Glass = { width: 390, height: 844, panel: '' };

/** What is to be read from the floor: who, what, how much, by when, how late a service will be. */
const FLOOR: readonly (readonly [part: string, element: RegExp])[] = [
  ['now-line', /^(?:h2|button\.title|b\.who|span\.under)/],
  ['wall-head', /^(?:b|h1)/],
  ['smoker-cutaway', /^h2/],
  ['pass-line', /^b/],
];
const isForTheFloor = ({ element, parts }: SeenText) =>
  FLOOR.some(([part, of]) => parts[0]?.startsWith(part) && of.test(element));
const isNowTitle = ({ element, line }: SeenText) =>
  line.startsWith('now-line') && /^(?:h2|button\.title)/.test(element);

let moments: readonly Moment[];
test.beforeAll(() => {
  test.setTimeout(240_000);
  moments = twentyMoments();
});

const said = ({ text, parts }: SeenText) => `${parts[0]}: ${text}`;

/** What nobody could read at this moment, or would read twice. */
function faultsOf({ texts, overlaps }: SeenWall): string[] {
  const small = texts.filter(({ arcmin }) => arcmin < LEAST - ROUNDING);
  const low = texts.filter(
    (text) => isForTheFloor(text) && text.arcmin < FROM_THE_FLOOR - ROUNDING,
  );
  // What was decided may be shortened beside what it cost: a tap on the line says it whole.
  const mayBeShort = ({ element }: SeenText) => element === 'span.told';
  const cut = texts.filter((text) => text.isCut && !mayBeShort(text));
  return [
    ...small.map((text) => `too small: ${said(text)}`),
    ...low.map((text) => `too small for the floor: ${said(text)}`),
    ...cut.map((text) => `cut off: ${said(text)}`),
    ...overlaps.map((both) => `one over the other: ${both.join(' / ')}`),
  ];
}

/** Dishes at the pass that ask for a hand at once. */
const MOST_DISHES = 3;

/** Where more than one thing asks for the same eyes, or two for the same hand. */
function shoutsOf({ texts, bricks }: SeenWall): string[] {
  const high = texts.filter((text) => text.arcmin > FIGURES + ROUNDING && !isNowTitle(text));
  const lines = [...new Set(texts.map(({ line }) => line))].filter((line) => line !== '');
  const mindedOn = (of: string) =>
    new Set(texts.filter(({ line, isMinded }) => isMinded && line === of).map(({ text }) => text));
  const twice = lines.filter((line) => mindedOn(line).size > 1);
  const called = texts
    .filter(({ element, parts }) => element === 'b.who' && parts[0] === 'now-line[due]')
    .map(({ text }) => text);
  const both = called.filter((hand, i) => called.indexOf(hand) < i);
  const dishes = bricks.filter((brick) => brick.endsWith('pass-line[due]')).length;
  return [
    ...high.map((text) => `higher than what is to be done now: ${said(text)}`),
    ...twice.map((line) => `minded twice on one line: ${[...mindedOn(line)].join(' / ')}`),
    ...both.map((hand) => `called to two things at once: ${hand}`),
    ...(dishes > MOST_DISHES ? [`${dishes} dishes need a hand at once`] : []),
  ];
}

type Look = {
  readonly of: WallOf;
  readonly on?: Glass;
  readonly language?: Language;
  readonly ground?: 'paper' | 'night';
  /** All of them, or each so manieth. */
  readonly each?: number;
};

const pathOf = (view: View, { on = PANEL, language = 'en', ground = 'paper' }: Look) => {
  const stations = view.face === 'station' ? view.stations.map(({ id }) => id).join(',') : '';
  const of = stations && `&station=${stations}`;
  return `${view.face}.html?${on.panel}language=${language}&ground=${ground}${of}`;
};

const LOOKS: readonly (readonly [string, Look])[] = [
  ['the station wall', { of: 'station' }],
  ['the smoker wall', { of: 'smoker' }],
  ['the pass', { of: 'pass' }],
  [
    'the station wall in Spanish at night',
    { of: 'station', language: 'es', ground: 'night', each: 4 },
  ],
  ['the smoker wall in Spanish', { of: 'smoker', language: 'es', each: 6 }],
  ['the pass in Spanish', { of: 'pass', language: 'es', each: 5 }],
  ['the wall of two stations', { of: 'shared', each: 4 }],
  ['the tablet at one station', { of: 'station', on: TABLET, each: 10 }],
  ['the tablet of the mixes in Spanish', { of: 'station', on: TABLET, language: 'es', each: 15 }],
  ['the phone of one person', { of: 'station', on: PHONE, language: 'es', each: 4 }],
];

for (const [name, look] of LOOKS) {
  const { of, on = PANEL, language = 'en', each = 1 } = look;
  test(`${name} can be read at ${Math.floor(20 / each)} moments of a day`, async ({ browser }) => {
    const walls = new Map<string, StandingWall>();
    for (const [n, { trouble, views }] of moments.entries()) {
      // The busy hours are the later ones.
      if (n % each !== each - 1) continue;
      const view = views[of];
      const path = pathOf(view, look);
      const { width, height } = on;
      const wall = walls.get(path) ?? (await standWall(browser, { path, width, height }));
      walls.set(path, wall);
      await wall.show(view);
      const seen = await wall.page.evaluate(lookAt, CAP_HEIGHT);
      const when = `moment ${n + 1}${trouble ? `, ${trouble}` : ''}`;
      expect.soft(seen.texts.length, when).toBeGreaterThan(3);
      const faults = [...faultsOf(seen), ...shoutsOf(seen), ...missingOn(seen, view, language)];
      expect.soft(faults, when).toEqual([]);
    }
    for (const wall of walls.values()) await wall.close();
  });
}
