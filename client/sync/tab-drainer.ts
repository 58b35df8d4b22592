import type { Drainer, DrainerListener, OutboxNews } from './ports.ts';

/**
 * Sees to it, by a Web Lock named as the outbox, that of all tabs which share it one sends: the one
 * that somebody looks at takes the lock over, since a tab in the background may be put to sleep
 * with it. Without locks every tab sends its own, which the hub bears: a command that comes twice
 * gets the same answer.
 */
export function tabDrainer(outbox: string): Drainer {
  return 'locks' in navigator ? new TabDrainer(outbox, navigator.locks) : new UnlockedDrainer();
}

class TabDrainer implements Drainer {
  readonly #outbox: string;
  readonly #locks: LockManager;
  readonly #channel: BroadcastChannel;
  readonly #closing = new AbortController();
  #listener: DrainerListener | null = null;
  #isMine = false;
  #release: () => void = () => {};

  constructor(outbox: string, locks: LockManager) {
    this.#outbox = outbox;
    this.#locks = locks;
    this.#channel = new BroadcastChannel(outbox);
  }

  get isMine(): boolean {
    return this.#isMine;
  }

  listen(listener: DrainerListener): void {
    this.#listener = listener;
    const { signal } = this.#closing;
    this.#channel.addEventListener(
      'message',
      ({ data }: MessageEvent<OutboxNews>) => listener.news(data),
      { signal },
    );
    const takeIfSeen = () => {
      if (document.visibilityState === 'visible' && !this.#isMine) void this.#hold({ steal: true });
    };
    document.addEventListener('visibilitychange', takeIfSeen, { signal });
    if (document.visibilityState === 'visible') takeIfSeen();
    else void this.#hold({});
  }

  tell(news: OutboxNews): void {
    this.#channel.postMessage(news);
  }

  close(): void {
    this.#closing.abort();
    this.#channel.close();
    this.#release();
  }

  /** Resolves when the lock is given back or taken away. */
  async #hold(options: LockOptions): Promise<void> {
    try {
      await this.#locks.request(this.#outbox, options, () => {
        this.#isMine = true;
        this.#listener?.mine();
        return new Promise<void>((release) => {
          this.#release = release;
        });
      });
      this.#isMine = false;
    } catch (fault) {
      const isTaken = fault instanceof DOMException && fault.name === 'AbortError';
      // Where a browser gives no locks, as in a private window, every tab sends its own.
      this.#isMine = !isTaken;
      if (!isTaken) this.#listener?.mine();
      // Taken over by the tab that is looked at now: wait to get it back.
      else if (!this.#closing.signal.aborted) void this.#hold({});
    }
  }
}

class UnlockedDrainer implements Drainer {
  readonly isMine = true;
  listen() {}
  tell() {}
  close() {}
}
