/**
 * What a service worker has around it, as far as ours uses it: the compiler is told of pages, whose
 * globals are others.
 */
export type WorkerScope = {
  /** Put before the script when it is built. */
  readonly shell: Shell;
  readonly caches: CacheStorage;
  readonly location: { readonly origin: string };
  readonly clients: { claim(): Promise<void> };
  readonly fetch: typeof fetch;
  readonly Date: { now(): number };
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'install' | 'activate', run: (event: Extendable) => void): void;
  addEventListener(kind: 'fetch', run: (event: Fetching) => void): void;
  addEventListener(kind: 'message', run: (event: Extendable & Told) => void): void;
};

/** All files that the screens are made of, from the root, and one name for just this state. */
export type Shell = { readonly version: string; readonly files: readonly string[] };

type Told = { readonly data: unknown };
type Extendable = { waitUntil(work: Promise<unknown>): void };
type Fetching = { readonly request: Request; respondWith(answer: Promise<Response>): void };
