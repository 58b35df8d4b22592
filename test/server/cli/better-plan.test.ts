import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { kitchenFolder, typed } from './kitchen-at-work.ts';

let folder: ReturnType<typeof kitchenFolder>;
beforeAll(() => {
  folder = kitchenFolder();
});
afterAll(() => folder.remove());

const better = (...more: readonly string[]) =>
  typed(folder.path, 'plan', '.', '--seconds', '2', ...more);

// What is found in a second depends on the machine; that a better plan is one is tested by steps.
describe('plan --seconds', () => {
  it('gives the plan that it found, what it was before, and what none can beat', async () => {
    const { exit, said } = await better('--json');
    const { bettering, engine } = JSON.parse(said);
    expect(exit).toBe(0);
    expect(engine).toBe(bettering.found ? 'improving 1' : 'constructive 1');
    if (!bettering.found) return;
    const { before, after, aheadLeastS } = bettering;
    expect(after.aheadS).toBeLessThanOrEqual(before.aheadS);
    expect(after.aheadS).toBeGreaterThanOrEqual(aheadLeastS);
  });

  it('says what came of it in the language of the reader', async () => {
    const { said } = await better('--language', 'es');
    expect(said).toMatch(/No se encontró un plan mejor en 2 s|Ningún plan puede mejorarlo en más/);
  });

  it('wants a number of seconds', async () => {
    const { exit, complaints } = await typed(folder.path, 'plan', '.', '--seconds', 'long');
    expect(exit).toBe(2);
    expect(complaints.join()).toContain('--seconds: found long');
  });
});
