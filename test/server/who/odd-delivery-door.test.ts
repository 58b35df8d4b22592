import type { Socket } from 'socket.io-client';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Answer, RecordShown } from '../../../shared/protocol/index.ts';
import { desk, first, type KitchenAtHand, openKitchen } from './doors.ts';

let kitchen: KitchenAtHand;
let socket: Socket;
let cut: RecordShown['cuts'][number];
beforeAll(async () => {
  kitchen = await openKitchen({ isOpen: true });
  socket = kitchen.screen(desk);
  await first(socket);
  const { body } = await kitchen.post('record/show');
  const [pulled] = (body as unknown as RecordShown).cuts;
  if (!pulled) throw new Error('no cut');
  cut = pulled;
});
afterAll(() => kitchen.close());

let sent = 0;

/** As a desk sends it, but for what is to be other. */
function come(kind: 'receive' | 'delivery', change: object = {}): Promise<Answer> {
  sent += 1;
  const head = { id: `came-${sent}`, personId: null, screenId: null, tappedAt: Date.now() };
  const amount = { cut: cut.cut, pieces: 4, weightKg: cut.usualKg * 4 };
  const useBy = new Date(Date.now() + 5 * 86_400_000).toISOString().slice(0, 10);
  const label = { supplier: 'Elm Meats', tempC: 2, useBy, code: null };
  const message = { kind, ...head, ...amount, ...(kind === 'receive' ? label : {}), ...change };
  return socket.timeout(20_000).emitWithAck('command', message);
}

describe('a delivery by the hub’s own socket', () => {
  const heavy = { weightKg: 900 };

  it('is kept where it is like any other', async () => {
    expect(await come('receive')).toMatchObject({ ok: true });
    expect(await come('delivery')).toMatchObject({ ok: true });
  });

  it.each(['receive', 'delivery'] as const)('is refused where it is odd: %s', async (kind) => {
    expect(await come(kind, heavy)).toMatchObject({
      ok: false,
      refusal: { rule: 'odd-delivery', odd: [{ kind: 'weight', weightKg: 900 }] },
    });
  });

  it.each(['receive', 'delivery'] as const)('is kept once it is said so: %s', async (kind) => {
    expect(await come(kind, { ...heavy, isSo: true })).toMatchObject({ ok: true });
  });

  it.each([false, 'yes', 1, null])('takes nothing else for that: %j', async (isSo) => {
    expect(await come('receive', { ...heavy, isSo })).toMatchObject({
      ok: false,
      refusal: { rule: 'bad-message' },
    });
  });
});
