// @vitest-environment happy-dom
import { afterEach, expect, it, vi } from 'vitest';
import { SmokerCutaway } from '../../../client/parts/smoker-cutaway.ts';
import { pitRule } from '../../../shared/view/index.ts';
import { drawn } from '../fingers.ts';
import { NOW, smokerView } from '../fixtures.ts';

/** A smoker in whose racks a stretch of hours is so high. */
async function cutaway(highPx: number) {
  vi.spyOn(HTMLElement.prototype, 'offsetHeight', 'get').mockReturnValue(highPx);
  const part = new SmokerCutaway();
  Object.assign(part, { smoker: smokerView.smokers[0], now: NOW });
  part.rule = pitRule(smokerView.smokers, NOW);
  part.say = { ...part.say, zone: smokerView.zone };
  document.body.append(part);
  await drawn();
  await new Promise(requestAnimationFrame);
  return part;
}

afterEach(() => {
  vi.restoreAllMocks();
  document.body.replaceChildren();
});

it('shows no hours under racks so full that no stretch of hours has room in them', async () => {
  expect((await cutaway(0)).hasAttribute('bare')).toBe(true);
});

it('shows them where there is a stretch to be read by them', async () => {
  expect((await cutaway(12)).hasAttribute('bare')).toBe(false);
});
