import { Likenesses } from './likeness.ts';
import type { WorkerScope } from './scope.ts';

const SHELL = 'coalface shell ';
const TOLD = 'coalface told';
/** What the hub says that changes seldom: its last word is better than none. */
const LASTING = ['/screens.json', '/standards.json'];

/**
 * Keeps all files of the screens on the device, so that a screen starts without its hub, and at
 * once with it. It changes nothing by itself: pages that are open go on with the files that they
 * were made of, until one of them says that it is a good moment.
 */
export function serveShell(scope: WorkerScope): void {
  const { caches, clients, shell } = scope;
  const own = SHELL + shell.version;
  const files = new Set(shell.files);
  const likenesses = new Likenesses(scope);

  scope.addEventListener('install', (event) => event.waitUntil(fill()));
  scope.addEventListener('activate', (event) => event.waitUntil(tidy()));
  scope.addEventListener('message', (event) => {
    if (event.data === 'take over') void scope.skipWaiting();
    else event.waitUntil(likenesses.hear(event.data));
  });
  scope.addEventListener('fetch', (event) => {
    const { request } = event;
    const path = fileOf(request);
    if (path !== null && files.has(path)) event.respondWith(asItStood(path, request));
    else if (path !== null && LASTING.includes(path)) event.respondWith(lastTold(path, request));
  });

  /** The file that is asked for; null for what is none of ours. */
  function fileOf({ method, url }: Request): string | null {
    const { origin, pathname } = new URL(url);
    if (method !== 'GET' || origin !== scope.location.origin) return null;
    return pathname === '/' ? '/index.html' : pathname;
  }

  /** All or nothing: a shell with a hole in it would be found out when the hub is away. */
  async function fill(): Promise<void> {
    const cache = await caches.open(own);
    await Promise.all(
      shell.files.map(async (path) => {
        // The name of an asset carries the hash of what is in it; a page may have changed.
        const isLasting = path.startsWith('/assets/');
        const before = isLasting ? await caches.match(path) : undefined;
        const answer =
          before ?? (await scope.fetch(path, { cache: isLasting ? 'default' : 'reload' }));
        if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
        await cache.put(path, answer);
      }),
    );
  }

  /** Pages of the version before may still be open, and fetch the rest of themselves late. */
  async function tidy(): Promise<void> {
    const names = (await caches.keys()).filter((name) => name.startsWith(SHELL) && name !== own);
    await Promise.all(names.slice(0, -1).map((name) => caches.delete(name)));
    await clients.claim();
  }

  async function kept(path: string, request: Request): Promise<Response> {
    const newest = await caches.open(own);
    return (await newest.match(path)) ?? (await caches.match(path)) ?? scope.fetch(request);
  }

  function asItStood(path: string, request: Request): Promise<Response> {
    const file = kept(path, request);
    return path.endsWith('.html') ? likenesses.into(file, request.url) : file;
  }

  async function lastTold(path: string, request: Request): Promise<Response> {
    const told = await caches.open(TOLD);
    try {
      const answer = await scope.fetch(request);
      if (answer.ok) await told.put(path, answer.clone());
      return answer;
    } catch (fault) {
      const last = await told.match(path);
      if (last) return last;
      throw fault;
    }
  }
}
