// @vitest-environment happy-dom
import { expect, it } from 'vitest';
import { faultsDoor, tellFaults } from '../../../client/shell/tell-faults.ts';
import { type ScreenFault, screenFaultSchema } from '../../../shared/protocol/index.ts';

function listening() {
  const told: ScreenFault[] = [];
  const page = new EventTarget();
  tellFaults((fault) => told.push(fault), page);
  const fail = (error: unknown) => page.dispatchEvent(Object.assign(new Event('error'), { error }));
  return { told, page, fail };
}

it('tells of a fault with what it came of, in words that the hub takes', () => {
  const { told, fail } = listening();
  fail(new Error('a part cannot be drawn', { cause: new TypeError('nothing is there') }));
  expect(told).toHaveLength(1);
  expect(told[0]?.said).toMatch(/a part cannot be drawn[\s\S]*nothing is there/);
  expect(screenFaultSchema().safeParse(told[0]).success).toBe(true);
});

it('tells of what was promised and failed, too', () => {
  const { told, page } = listening();
  const event = Object.assign(new Event('unhandledrejection'), { reason: new Error('no answer') });
  page.dispatchEvent(event);
  expect(told[0]?.said).toContain('no answer');
});

it('tells once of what fails every second, and not without end of what fails anew', () => {
  const { told, fail } = listening();
  const again = new Error('the same again');
  for (let n = 0; n < 100; n++) fail(again);
  expect(told).toHaveLength(1);
  for (let n = 0; n < 100; n++) fail(new Error(`another ${n}`));
  expect(told.length).toBeLessThanOrEqual(20);
});

it('cuts a long way to a fault to what the hub takes, and bears a hub that is away', async () => {
  const { told, fail } = listening();
  fail(new Error('x'.repeat(9000)));
  expect(screenFaultSchema().safeParse(told[0]).success).toBe(true);
  const asked: string[] = [];
  const tell = faultsDoor('t', (async (url: string) => {
    asked.push(url);
    throw new TypeError('away');
  }) as typeof fetch);
  tell({ page: '/', said: 'something' });
  await Promise.resolve();
  expect(asked).toEqual(['/api/faults']);
});
