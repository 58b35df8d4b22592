import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { root } from '../../server/fingerprint.mjs';
import { galleryAt, galleryIn } from '../gallery/built.ts';

// Every part in every state, beside what it looked like when somebody last looked at it. The
// letters are the ones we bundle, nothing moves and no clock runs, so that only a change of ours,
// or of how a browser smooths an edge, shows. After a change that was meant:
// `npx playwright test parts --update-snapshots`, and look at what became of them.

const looks = [
  { name: 'paper-english', query: '?ground=paper&language=en' },
  { name: 'night-spanish', query: '?ground=night&language=es' },
  { name: 'paper-long', query: '?ground=paper&long' },
];

/** Of a letter's edge: that of another build of the browser; a word is ten times as much. */
const TOLERANCE = { threshold: 0.25, maxDiffPixels: 60 };

let folder: string;
let serve: (page: Page) => Promise<void>;

test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-parts-'));
  serve = await galleryIn(folder);
});

test.afterAll(() => rmSync(folder, { recursive: true }));

/** Elements that a source file defines. */
const elementsIn = (path: string): string[] =>
  [...readFileSync(path, 'utf8').matchAll(/@customElement\('([a-z-]+)'\)/g)].map(
    ([, name = '']) => name,
  );

for (const { name, query } of looks) {
  test(`every part looks as it did: ${name}`, async ({ browser }) => {
    const page = await browser.newPage({ viewport: { width: 540, height: 2200 } });
    const faults: string[] = [];
    page.on('pageerror', (fault) => faults.push(String(fault.stack)));
    await serve(page);
    await page.goto(galleryAt(query));
    await page.locator('body[data-drawn]').waitFor();
    await page.evaluate(async () => {
      await document.fonts.ready;
      // A line that measures itself draws once more.
      for (let frames = 0; frames < 3; frames++) await new Promise(requestAnimationFrame);
    });
    const parts = await page
      .locator('body > section')
      .evaluateAll((all) => all.map(({ id }) => id));
    expect(parts.length).toBeGreaterThan(20);
    for (const part of parts) {
      // One at a time at the top of the page, so that nothing is scrolled while it is looked at.
      await page.addStyleTag({ content: `section:not(#${part}) { display: none !important }` });
      const picture = await page.locator(`#${part}`).screenshot();
      await page.locator('style').evaluateAll((all) => all.map((each) => each.remove()));
      expect.soft(picture).toMatchSnapshot([name, `${part}.png`], TOLERANCE);
    }
    expect(faults).toEqual([]);
    await page.close();
  });
}

test('every part of a wall is shown there', async ({ page }) => {
  await serve(page);
  await page.goto(galleryAt(''));
  await page.locator('body[data-drawn]').waitFor();
  const shown = await page.locator('body > section').evaluateAll((all) => all.map(({ id }) => id));
  const parts = join(root, 'client/parts');
  const known = readdirSync(parts).flatMap((file) => elementsIn(join(parts, file)));
  expect(known.filter((part) => !shown.includes(part))).toEqual([]);
});
