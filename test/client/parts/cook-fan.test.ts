// @vitest-environment happy-dom
import { afterEach, expect, it } from 'vitest';
import type { CookFan } from '../../../client/parts/cook-fan.ts';
import '../../../client/parts/cook-fan.ts';
import { after, celsius, hours, instant } from '../../../shared/kernel/index.ts';

const at = (hour: number) => after(instant(0), hours(hour));

async function drawn(isSmall: boolean) {
  const part = document.createElement('cook-fan') as CookFan;
  part.small = isSmall;
  part.now = at(4);
  if (isSmall) part.rule = { from: at(3), to: at(12), hours: [] };
  part.cook = {
    startedAt: at(0),
    cores: [{ at: at(4), tempC: celsius(62) }],
    fan: [{ at: at(4), p10C: celsius(60), p50C: celsius(62), p90C: celsius(64) }],
    stages: [{ tempC: celsius(96), p10At: at(8), p50At: at(9), p90At: at(11), never: 0 }],
    wrappedAt: at(3),
    openedAt: [at(1)],
    isCalibrated: false,
  };
  document.body.append(part);
  await part.updateComplete;
  return part.shadowRoot;
}

afterEach(() => document.body.replaceChildren());

it('draws the fan, the core, the targets, the wrap, an opened door and now', async () => {
  const root = await drawn(false);
  for (const kind of ['fan', 'middle', 'core', 'target', 'range', 'wrapped', 'opened', 'now']) {
    expect(root?.querySelector(`path.${kind}`)?.getAttribute('d')).toMatch(/^M[\d. LM-]+Z?$/);
  }
});

it('names its targets, and its doubt where there is room for words', async () => {
  const large = await drawn(false);
  expect(large?.textContent).toContain('96 °C');
  expect(large?.textContent).toContain('few cooks finished here yet');
  const small = await drawn(true);
  expect(small?.textContent?.trim()).toBe('96 °C');
});

it('leaves now to the hours of the rack that it stands over', async () => {
  const small = await drawn(true);
  expect(small?.querySelector('path.now')).toBeNull();
  expect(small?.querySelector('path.middle')).not.toBeNull();
});
