// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { deviceKind } from '../../../client/install/device-kind.ts';
import { InstallPage } from '../../../client/install/install-page.ts';
import { isTrusted, overTls, trustOf } from '../../../client/install/trust.ts';
import { SPEAKS } from '../../../client/shell/speak.ts';
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
    const { all, text } = await page({ trust: 'open', language, kind: null });
    const { devices, steps } = installWords[language];
    expect(all('summary').map((each) => each.textContent?.trim())).toEqual(Object.values(devices));
    for (const step of Object.values(steps).flat()) expect(text()).toContain(step);
  });

  it.each([
    ['an iPad, which says that it is a Mac', 'Macintosh; Intel Mac OS X 10_15_7', 5, 'ios'],
    ['a Mac', 'Macintosh; Intel Mac OS X 10_15_7', 0, 'mac'],
    ['a tablet', 'Linux; Android 14; K', 5, 'android'],
    ['a computer with Windows', 'Windows NT 10.0; Win64; x64', 0, 'windows'],
    ['something nobody has heard of', 'Toaster', 0, null],
  ] as const)('is known for %s', (_, userAgent, maxTouchPoints, kind) => {
    expect(deviceKind({ userAgent: `Mozilla/5.0 (${userAgent})`, maxTouchPoints })).toBe(kind);
  });

  it('has the steps of its own kind before it, and those of others behind one line', async () => {
    const { all } = await page({ trust: 'open', kind: 'android' });
    const open = all('details[open]').map((each) => each.querySelector('summary')?.textContent);
    expect(open).toEqual(['Android']);
  });

  it('is told that its maker’s steps were not tried, and how it is found again', async () => {
    const { text } = await page({ trust: 'open' });
    expect(text()).toContain('were not tried');
    expect(text()).toContain('Add to Home Screen');
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

  it('says that no tablet can reach it where it serves itself alone, and what to do', async () => {
    const { all, text } = await page({ trust: 'here' }, { fingerprint: null, addresses: [] });
    expect(text()).toContain('--lan');
    expect(text()).toContain('Ctrl-C');
    // Whether it was started without TLS, the page cannot know.
    expect(text()).toContain('--plain');
    expect(all('a[href="/"]')).toHaveLength(1);
  });

  it('has the way to the screens alone where a certificate was given that all trust', async () => {
    const given = { fingerprint: null, addresses: ['https://kitchen.example:4600'] };
    const { all, text } = await page({ trust: 'here' }, given);
    const texts = all('qr-code').map((code) => (code as HTMLElement & { text: string }).text);
    expect(texts).toEqual(['https://kitchen.example:4600/']);
    expect(text()).toContain('no certificate to install');
  });

  it('tells a device that others may listen, where there is no TLS', async () => {
    const { all, text } = await page({ trust: 'open' }, { fingerprint: null, addresses: [] });
    expect(text()).toContain('listen in');
    expect(all('a[href="/coalface.crt"]')).toHaveLength(0);
  });

  it('goes over to Spanish at a tap, and to the list of screens', async () => {
    const { all, text } = await page({ trust: 'here' });
    expect(all('a[href="/"]')).toHaveLength(1);
    dispatchEvent(new CustomEvent(SPEAKS, { detail: 'es' }));
    await vi.waitFor(() => expect(text()).toContain('Conectar una tableta'));
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
