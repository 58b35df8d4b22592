import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { demoLog } from '../../server/demo/index.ts';
import { type Live, openLive } from '../../shared/day/index.ts';
import { after, type Instant, minutes, type StationId } from '../../shared/kernel/index.ts';
import { type Face, type View, viewOf } from '../../shared/view/index.ts';
import { deskWords, passWords, ui } from '../../shared/words/index.ts';
import { stretched, stretchedTexts } from '../gallery/stretch.ts';
import { noon, plan, Telling } from '../shared/day/demo.ts';
import { longerScreens } from './everyone/longer.ts';
import { PANEL, WALL } from './everyone/reader.ts';
import { settled } from './everyone/screens.ts';
import { unfit } from './everyone/unfit.ts';
import { standWall } from './moments/walls.ts';

// Whole walls in a language two fifths longer than English, as the next one may be: what a screen
// says and what a kitchen has written into its files.

/** The demo's day at its noon, and in the thick of the afternoon. */
const MOMENTS = [0, 150].map((sinceNoon) => after(noon, minutes(sinceNoon)));

let folder: string;
let read: (name: string) => Buffer;
let days: readonly Live[];

test.beforeAll(async () => {
  days = MOMENTS.map(dayAt);
  folder = mkdtempSync(join(tmpdir(), 'coalface-longer-'));
  read = await longerScreens(folder);
});
test.afterAll(() => rmSync(folder, { recursive: true }));

type Wall = {
  readonly name: string;
  readonly path: string;
  readonly face: Face;
  /** A part of it, and words of which one is longer there. */
  readonly says: readonly [part: string, words: () => readonly string[]];
};

const stationWall = (id: string): Wall => ({
  name: `the station ${id}`,
  path: `station.html?station=${id}`,
  face: { kind: 'station', station: id as StationId },
  says: ['then-foot b', () => [ui.en.thenBand]],
});
const WALLS: readonly Wall[] = [
  stationWall('trim'),
  stationWall('pit'),
  {
    name: 'the smokers',
    path: 'smoker.html',
    face: { kind: 'smoker' },
    says: ['now-line .place', () => [ui.en.start, ui.en.finish, ui.en.waits]],
  },
  {
    name: 'the pass',
    path: 'pass.html',
    face: { kind: 'pass' },
    says: ['pass-line .ready', () => [passWords.en.ready]],
  },
  {
    name: 'the desk',
    path: 'desk.html',
    face: { kind: 'desk' },
    says: ['desk-page [role=tab]', () => [deskWords.en.sections.pull]],
  },
];

/** As whoever does what is planned leaves it. */
function dayAt(at: Instant): Live {
  const told = new Telling();
  for (const tap of demoLog(plan, { now: at, seed: 1 })) told.ask(tap.intent, tap.at, tap.personId);
  return openLive(told.state, at);
}

for (const { name, path, face, says } of WALLS) {
  test(`nothing is cut off in a language two fifths longer: ${name}`, async ({ browser }) => {
    const views = days.map((day): View => stretchedTexts(viewOf(day, face)));
    for (const size of [WALL, PANEL]) {
      const wall = await standWall(browser, { path, ...size, read });
      const [part, words] = says;
      const longer = new RegExp(words().map(stretched).join('|'));
      for (const [n, view] of views.entries()) {
        await wall.show(view);
        await wall.page.locator(part, { hasText: longer }).first().waitFor();
        await settled(wall.page);
        const where = `${name}, ${size.width} wide, moment ${n + 1}`;
        expect.soft(await wall.page.evaluate(unfit, null), where).toEqual([]);
      }
      await wall.close();
    }
  });
}
