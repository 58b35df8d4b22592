import { beforeEach, describe, expect, it } from 'vitest';
import type { WorkerScope } from '../../../client/worker/scope.ts';
import { serveShell } from '../../../client/worker/shell-worker.ts';

const ORIGIN = 'https://pit.local:4600';

/** A device's caches, as the standard for service workers has them, in memory. */
class Caches {
  readonly kept = new Map<string, Map<string, Response>>();

  async open(name: string) {
    const files = this.kept.get(name) ?? new Map<string, Response>();
    this.kept.set(name, files);
    return {
      match: async (path: string) => files.get(path)?.clone(),
      put: async (path: string, answer: Response) => void files.set(path, answer.clone()),
    };
  }

  async match(path: string) {
    for (const files of this.kept.values()) if (files.has(path)) return files.get(path)?.clone();
    return undefined;
  }

  keys = async () => [...this.kept.keys()];
  delete = async (name: string) => this.kept.delete(name);
}

let caches: Caches;
/** What the hub serves; null: it is away. */
let hub: Map<string, string> | null;
let asked: string[];
let tookOver: number;
/** What the device's clock shows. */
let nowMs: number;

beforeEach(() => {
  caches = new Caches();
  asked = [];
  tookOver = 0;
  nowMs = Date.UTC(2026, 5, 1, 12, 0, 0, 500);
  hub = new Map([
    ['/assets/wall-1.js', 'wall one'],
    ['/station.html', '<body></body>station one'],
    ['/index.html', 'list one'],
    ['/screens.json', '[1]'],
    ['/api/me', 'me'],
  ]);
});

type Listener = (event: never) => void;

/** A worker of one version, with what a browser would do to it. */
function worker(version: string, files = ['/assets/wall-1.js', '/station.html', '/index.html']) {
  const listeners = new Map<string, Listener>();
  const scope = {
    shell: { version, files },
    caches,
    location: { origin: ORIGIN },
    Date: { now: () => nowMs },
    clients: { claim: async () => {} },
    fetch: async (what: string | Request) => {
      const path = typeof what === 'string' ? what : new URL(what.url).pathname;
      asked.push(path);
      if (hub === null) throw new TypeError('no network');
      const text = hub.get(path);
      return text === undefined ? new Response('', { status: 404 }) : new Response(text);
    },
    skipWaiting: async () => {
      tookOver += 1;
    },
    addEventListener: (kind: string, run: Listener) => listeners.set(kind, run),
  };
  serveShell(scope as unknown as WorkerScope);
  const tell = (kind: string, event: object) => listeners.get(kind)?.(event as never);
  const extended = async (kind: string) => {
    let work: Promise<unknown> = Promise.resolve();
    tell(kind, { waitUntil: (given: Promise<unknown>) => (work = given) });
    await work;
  };
  return {
    install: () => extended('install'),
    activate: () => extended('activate'),
    async say(data: unknown) {
      let work: Promise<unknown> = Promise.resolve();
      tell('message', { data, waitUntil: (given: Promise<unknown>) => (work = given) });
      await work;
    },
    /** What a page gets; null where the browser asks the hub itself. */
    async ask(path: string, method = 'GET'): Promise<string | null> {
      let answer: Promise<Response> | null = null;
      const request = { method, url: new URL(path, ORIGIN).href };
      tell('fetch', { request, respondWith: (given: Promise<Response>) => (answer = given) });
      return answer === null ? null : (await (answer as Promise<Response>)).text();
    },
  };
}

describe('a device that has kept the screens', () => {
  it('opens every page without the hub, whatever stands behind its name', async () => {
    const one = worker('one');
    await one.install();
    await one.activate();
    hub = null;
    expect(await one.ask('/station.html?station=trim')).toBe('<body></body>station one');
    expect(await one.ask('/')).toBe('list one');
    expect(await one.ask('/assets/wall-1.js')).toBe('wall one');
  });

  it('does not ask the hub for what it has', async () => {
    const one = worker('one');
    await one.install();
    asked = [];
    await one.ask('/station.html');
    expect(asked).toEqual([]);
  });

  it('leaves to the hub what is the hub’s to say', async () => {
    const one = worker('one');
    await one.install();
    expect(await one.ask('/api/me')).toBeNull();
    expect(await one.ask('/health')).toBeNull();
    expect(await one.ask('/station.html', 'POST')).toBeNull();
    expect(await one.ask('https://evil.example/station.html')).toBeNull();
  });

  it('tells what screens there were when the hub was last asked', async () => {
    const one = worker('one');
    await one.install();
    expect(await one.ask('/screens.json')).toBe('[1]');
    hub?.set('/screens.json', '[1, 2]');
    expect(await one.ask('/screens.json')).toBe('[1, 2]');
    hub = null;
    expect(await one.ask('/screens.json')).toBe('[1, 2]');
  });
});

describe('a wall that is loaded anew', () => {
  const TRIM = '/station.html?station=trim';
  const stands = (stood: string) => ({ at: `${ORIGIN}${TRIM}`, stood });

  async function kept() {
    const one = worker('one');
    await one.install();
    await one.say(stands('<div>Trim ribs, by $&amp; 10:40</div>'));
    return one;
  }

  it('begins with what stood on it, also without the hub', async () => {
    const one = await kept();
    hub = null;
    const page = await one.ask(TRIM);
    expect(page).toBe('<body><div>Trim ribs, by $&amp; 10:40</div></body>station one');
  });

  it('begins with what stood there last', async () => {
    const one = await kept();
    await one.say(stands('<div>Rub ribs</div>'));
    expect(await one.ask(TRIM)).toContain('<body><div>Rub ribs</div></body>');
  });

  it('begins with what the hub says where the device has lost the page', async () => {
    const one = await kept();
    await caches.delete('coalface shell one');
    hub?.set('/station.html', '<body><div class="likeness">Rub ribs</div></body>');
    expect(await one.ask(TRIM)).toBe('<body><div class="likeness">Rub ribs</div></body>');
  });

  it('begins with nothing that stood on another', async () => {
    const one = await kept();
    expect(await one.ask('/station.html?station=season')).toBe('<body></body>station one');
    expect(await one.ask('/')).toBe('list one');
  });

  it('begins with nothing that stood over an hour ago, or in times to come', async () => {
    const one = await kept();
    const keptMs = nowMs;
    nowMs = keptMs + 59 * 60_000;
    expect(await one.ask(TRIM)).toContain('Trim ribs');
    nowMs = keptMs + 61 * 60_000;
    expect(await one.ask(TRIM)).not.toContain('Trim ribs');
    nowMs = keptMs - 60_000;
    expect(await one.ask(TRIM)).not.toContain('Trim ribs');
  });

  it('begins all the same where what stood cannot be read', async () => {
    const one = await kept();
    const open = caches.open.bind(caches);
    caches.open = async (name) => {
      if (name.includes('likeness')) throw new DOMException('', 'UnknownError');
      return open(name);
    };
    expect(await one.ask(TRIM)).toBe('<body></body>station one');
  });

  it('begins with nothing once its device may not show the day', async () => {
    const one = await kept();
    await one.say('forget');
    expect(await one.ask(TRIM)).toBe('<body></body>station one');
  });
});

describe('a newer version', () => {
  it('does not take over by itself, but when a page says that it may', async () => {
    const two = worker('two');
    await two.install();
    expect(tookOver).toBe(0);
    await two.say('something else');
    expect(tookOver).toBe(0);
    await two.say('take over');
    expect(tookOver).toBe(1);
  });

  it('is kept whole or not at all', async () => {
    const two = worker('two', ['/station.html', '/assets/missing.js']);
    await expect(two.install()).rejects.toThrow('/assets/missing.js: 404');
  });

  it('fetches what has changed, and takes over what has not', async () => {
    await worker('one').install();
    hub?.set('/station.html', 'station two');
    hub?.set('/assets/wall-2.js', 'wall two');
    asked = [];
    const two = worker('two', ['/assets/wall-1.js', '/assets/wall-2.js', '/station.html']);
    await two.install();
    expect(asked.sort()).toEqual(['/assets/wall-2.js', '/station.html']);
    await two.activate();
    hub = null;
    expect(await two.ask('/station.html')).toBe('station two');
    expect(await two.ask('/assets/wall-1.js')).toBe('wall one');
  });

  it('leaves files of the version before, which a page may fetch late, and no older', async () => {
    hub?.set('/assets/late-1.js', 'late one');
    const files = ['/station.html'];
    await worker('one', [...files, '/assets/late-1.js']).install();
    hub?.delete('/assets/late-1.js');
    const two = worker('two', files);
    await two.install();
    await two.activate();
    expect(await caches.match('/assets/late-1.js')).toBeDefined();
    const three = worker('three', files);
    await three.install();
    await three.activate();
    expect(await caches.match('/assets/late-1.js')).toBeUndefined();
    expect((await caches.keys()).sort()).toEqual(['coalface shell three', 'coalface shell two']);
  });
});
