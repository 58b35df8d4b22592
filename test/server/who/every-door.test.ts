import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PersonId } from '../../../shared/kernel/index.ts';
import { desk, first, type KitchenAtHand, openKitchen } from './doors.ts';

let kitchen: KitchenAtHand;
beforeAll(async () => {
  kitchen = await openKitchen();
});
afterAll(() => kitchen.close());

/** One of each kind. */
const doors = ['pair', 'plan/show', 'readings', 'what-if', 'record/show'];

const refusal = (rule: string) => ({ ok: false, refusal: { rule } });

describe('every door', () => {
  it.each([
    ['what is no JSON', 'claim', '{"code":'],
    ['more than it may hold', 'claim', JSON.stringify({ code: 'x'.repeat(5_000) })],
    ['a key it does not have', 'claim', { code: 'a', name: 'b', role: 'owner' }],
    ['a place that is none', 'let-in', { code: 'a', name: 'b', place: { role: 'king' } }],
    ['a name without letters', 'rename', { screen: 'a', name: '   ' }],
  ])('refuses %s', async (_what, door, asked) => {
    const { status, body } = await kitchen.post(door, asked);
    expect([400, 413]).toContain(status);
    expect(body).toMatchObject({ ok: false, refusal: { rule: 'bad-message' } });
  });

  it.each(doors)('is shut to pages from elsewhere: %s', async (door) => {
    const response = await fetch(`${kitchen.address()}/api/${door}`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', Origin: 'http://evil.example' },
      body: '{}',
    });
    expect(response.status).toBe(403);
    expect(response.headers.get('cache-control')).toBe('no-store');
  });

  it.each(doors)('says of what is no JSON that it is none: %s', async (door) => {
    const { status, body } = await kitchen.post(door, '{"half":');
    expect(status).toBe(400);
    expect(body).toMatchObject({ ok: false, refusal: { rule: 'bad-message' } });
  });

  it('knows no token but its own', async () => {
    await kitchen.claim();
    const token = 'A'.repeat(43);
    for (const door of ['who', 'leave']) {
      expect((await kitchen.post(door, {}, { token })).body).toEqual(refusal('screen-unknown'));
    }
    const pin = { person: 'ines' as PersonId, pin: '4093', isOwner: true };
    expect((await kitchen.post('pin', pin, { token })).body).toEqual(refusal('screen-unknown'));
    expect(await first(kitchen.screen(desk, token))).toMatchObject({
      refusal: { rule: 'screen-unknown' },
    });
  });
});
