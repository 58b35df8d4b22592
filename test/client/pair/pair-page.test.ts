// @vitest-environment happy-dom
import { afterEach, expect, it, vi } from 'vitest';
import { PairPage } from '../../../client/pair/pair-page.ts';
import type { QrCode } from '../../../client/parts/qr-code.ts';
import { heedLanguage } from '../../../client/shell/speak.ts';
import type { WhoDoors } from '../../../client/shell/who-doors.ts';
import { saidOn, tap } from '../fingers.ts';

afterEach(() => document.body.replaceChildren());

async function asking(origin: string) {
  const doors = {
    me: async () => ({ ok: true, isOpen: false, isUnclaimed: false, place: null }),
    pair: async () => ({ ok: true, secret: 's', code: 'K7QD4M', leftS: 300 }),
    waited: () => new Promise(() => {}),
  } as unknown as WhoDoors;
  const page = Object.assign(new PairPage(), { doors, origin });
  document.body.append(page);
  await vi.waitFor(() => {
    if (!page.shadowRoot?.querySelector('output')) throw new Error('not yet');
  });
  return page;
}

const codeOn = (page: PairPage) => page.shadowRoot?.querySelector<QrCode>('qr-code') ?? null;

it('shows its code to be scanned, too, which leads a phone to it at the desk', async () => {
  const code = codeOn(await asking('https://192.168.1.5:4600'));
  expect(code?.text).toBe('https://192.168.1.5:4600/desk.html#who/K7QD4M');
});

it('shows none where it found the hub by a name that a phone would take for itself', async () => {
  expect(codeOn(await asking('http://127.0.0.1:4600'))).toBeNull();
});

it('is put over to the other language before anybody has let it in', async () => {
  heedLanguage();
  const page = await asking('http://127.0.0.1:4600');
  expect(saidOn(page)).toContain('Let this screen in');
  await tap(page, 'Español');
  await vi.waitFor(() => expect(saidOn(page)).toContain('Admitir esta pantalla'));
  expect(saidOn(page)).toContain('K7Q');
});
