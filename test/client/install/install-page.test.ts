// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { InstallPage } from '../../../client/install/install-page.ts';
import { isTrusted, overTls, trustOf } from '../../../client/install/trust.ts';
import type { InstallFacts } from '../../../shared/protocol/index.ts';
import { installWords } from '../../../shared/words/index.ts';

const HOST = '192.168.1.5:4600';
const facts: InstallFacts = { fingerprint: 'AA:BB:CC', addresses: [`https://${HOST}`] };

afterEach(() => {
  document.body.replaceChildren();
  vi.unstubAllGlobals();
});

/** The page as a device sees it, on a network where TLS is trusted or not yet. */
async function page(given: Partial<InstallPage>, shown = facts, hasInstalled = false) {
  vi.stubGlobal('fetch', async (what: string) => {
    if (what === '/install.json') return new Response(JSON.stringify(shown));
    if (hasInstalled) return new Response(null);
    throw new TypeError('not trusted');
  });
  const went: string[] = [];
  const go = (address: string) => went.push(address);
  const element = Object.assign(new InstallPage(), { host: HOST, go, ...given });
  document.body.append(element);
  await vi.waitFor(() => {
    const root = element.shadowRoot;
    if (!root?.querySelector('h1') || root.querySelector('[role=status]')) throw new Error('wait');
  });
  const all = (selector: string) => [...(element.shadowRoot?.querySelectorAll(selector) ?? [])];
  const text = () => (element.shadowRoot?.textContent ?? '').replaceAll(/\s+/g, ' ');
  return { all, text, went };
}

describe('a device that does not trust the kitchen yet', () => {
  it.each(['en', 'es'] as const)('is told every step for its kind, in %s', async (language) => {
    const { all, text } = await page({ trust: 'open', language });
    const { devices, steps } = installWords[language];
    expect(all('summary').map((each) => each.textContent?.trim())).toEqual(Object.values(devices));
    for (const step of Object.values(steps).flat()) expect(text()).toContain(step);
  });

  it('gets the certificate, and the fingerprint to compare', async () => {
    const { all, text } = await page({ trust: 'open' });
    expect(all('a[href="/coalface.crt"]')).toHaveLength(1);
    expect(text()).toContain('AA:BB:CC');
  });

  it('goes on to where it wanted to go as soon as the certificate is installed', async () => {
    const { went } = await page({ trust: 'open', to: '/station.html?station=trim' }, facts, true);
    await vi.waitFor(() => expect(went).toEqual([`https://${HOST}/station.html?station=trim`]));
  });

  it('is led to no other host by what stands in its address', () => {
    const lot = '/desk.html#record/2026-11-28-2';
    expect(overTls(HOST, lot)).toBe(`https://${HOST}${lot}`);
    for (const to of ['//evil.example/', 'https://evil.example/', 'javascript:alert(1)']) {
      expect(overTls(HOST, to)).toBe(`https://${HOST}/`);
    }
  });
});

describe('the machine of the hub', () => {
  it('shows two codes to scan: the way to the certificate, and the screens', async () => {
    const { all } = await page({ trust: 'here' });
    const texts = all('qr-code').map((code) => (code as HTMLElement & { text: string }).text);
    expect(texts).toEqual([`http://${HOST}/install.html`, `https://${HOST}/`]);
  });

  it('says that no tablet can reach it where it serves itself alone', async () => {
    const { text } = await page({ trust: 'here' }, { fingerprint: null, addresses: [] });
    expect(text()).toContain('--lan');
  });
});

it('knows how it was reached', () => {
  const at = (href: string) => trustOf(new URL(href));
  expect(at('https://192.168.1.5:4600/')).toBe('trusted');
  expect(at('http://127.0.0.1:4600/')).toBe('here');
  expect(at('http://192.168.1.5:4600/')).toBe('open');
});

it('takes any answer over TLS for trust, and none for none', async () => {
  expect(await isTrusted(HOST, async () => new Response(null, { status: 500 }))).toBe(true);
  expect(await isTrusted(HOST, () => Promise.reject(new TypeError()))).toBe(false);
});
