import { Worker } from 'node:worker_threads';
import type { Mend } from '../../shared/day/index.ts';
import type { HeldTo } from '../../shared/safety/index.ts';
import type { PlanMade } from '../adopt.ts';
import { builtHub } from '../built.mjs';
import type { DayFiles } from '../day-files.ts';
import type { Nearest, NearestAsk } from '../nearest.ts';
import type { ConflictSaid } from '../why-not-planned.ts';
import type { DraftAsk, Drafted } from './draft.ts';
import type { MendAsk, StillAsk } from './mend.ts';

/** Tries plans beside the hub's own thread. */
export type Drafts = {
  /**
   * Null where a later one of the same screen was asked for before this one's turn came: whoever
   * types wants to know of the last letter.
   */
  try(screen: string, asked: () => DraftAsk): Promise<Drafted | null>;
  /** The same, where it may take long. */
  better(screen: string, asked: () => DraftAsk): Promise<Drafted | null>;
  /** The same for what is taken: it keeps its turn, whatever else is asked; null once closed. */
  take(screen: string, asked: () => DraftAsk): Promise<Drafted | null>;
  /** What would fit; null also where the same screen asks for something else meanwhile. */
  nearest(screen: string, asked: () => NearestAsk): Promise<Nearest | null>;
  /** Which few things of a plan that does not fit cannot all be, in time. */
  conflict(screen: string, asked: () => DraftAsk): Promise<ConflictSaid | null>;
  /** What would mend the day. */
  mend(screen: string, asked: () => MendAsk): Promise<Mend | null>;
  /** Whether what was offered still does: it is being taken, and keeps its turn. */
  stillMends(screen: string, asked: () => StillAsk): Promise<boolean | null>;
  /** The plan of a day that opens, as its file has it: it keeps its turn; null once closed. */
  make(asked: MakeAsk): Promise<PlanMade | null>;
  close(): Promise<void>;
};

export type MakeAsk = {
  readonly files: DayFiles;
  readonly version: number;
  /** What the last day was held to. */
  readonly before: HeldTo | null;
};

/** What the thread is told to work out. */
export type Asked =
  | { readonly kind: 'draft'; readonly ask: DraftAsk }
  | { readonly kind: 'nearest'; readonly ask: NearestAsk }
  | { readonly kind: 'conflict'; readonly ask: DraftAsk }
  | { readonly kind: 'make'; readonly ask: MakeAsk }
  | { readonly kind: 'mend'; readonly ask: MendAsk }
  | { readonly kind: 'still-mends'; readonly ask: StillAsk };

/**
 * What takes long gives way when the same screen asks for something else: it stops by itself where
 * it looks up now and then, or is ended with its thread, which then has to begin anew and is slow
 * at first. What looks up after each plan that it tries is ended only where one takes too long.
 * What is short stays once it has begun. What is taken does not even lose its turn: somebody has
 * decided.
 */
type Manner = 'is-taken' | 'stays' | 'stops' | 'stops-soon' | 'is-ended';

/** What the thread is sent. */
export type Sent = Asked & { readonly stop: Int32Array<SharedArrayBuffer> };

type Waiting = {
  readonly screen: string;
  /** Read when its turn comes: the day goes on meanwhile. */
  readonly asked: () => Asked;
  readonly manner: Manner;
  /** One once nobody waits for it any more: it is shared with the thread. */
  readonly stop: Int32Array<SharedArrayBuffer>;
  readonly resolve: (found: unknown) => void;
  readonly reject: (fault: unknown) => void;
};

const isLong = ({ manner }: Waiting) => manner !== 'is-taken' && manner !== 'stays';

/** Where one plan takes longer than this to try, what is asked for next takes as long (judged). */
const SOON_MS = 5_000;

type Told = { found(found: unknown): void; ended(fault: unknown): void };

/** One thread at a time: begun with the first thing that it is sent, and anew once it has ended. */
function createThread({ found, ended }: Told) {
  let worker: Worker | null = null;

  function begin(): Worker {
    const begun = new Worker(builtHub('draft-work'));
    const isOver = (fault: unknown) => {
      if (worker !== begun) return;
      worker = null;
      ended(fault);
    };
    begun.on('message', (answer) => worker === begun && found(answer));
    begun.on('error', isOver);
    begun.on('exit', () => isOver(new Error('the thread that tries plans has ended')));
    begun.unref();
    return begun;
  }

  return {
    send(sent: Sent) {
      worker ??= begin();
      worker.postMessage(sent);
    },
    async end() {
      const last = worker;
      worker = null;
      await last?.terminate();
    },
  };
}

/** Everything is asked of one thread, one thing after the other. */
export function createDrafts(): Drafts {
  let running: Waiting | null = null;
  let waiting: Waiting[] = [];
  const thread = createThread({
    found: (found) => settle((each) => each.resolve(found)),
    ended: (fault) => settle((each) => each.reject(fault)),
  });

  function settle(answer: (each: Waiting) => void) {
    const done = running;
    running = null;
    if (done) answer(done);
    next();
  }

  function next() {
    if (running) return;
    running = waiting.shift() ?? null;
    if (!running) return;
    try {
      const { asked, stop } = running;
      thread.send({ ...asked(), stop });
    } catch (fault) {
      settle((each) => each.reject(fault));
    }
  }

  /** What runs for a screen that asks for something else is let go. */
  function giveWay(screen: string) {
    if (!running || running.screen !== screen || !isLong(running)) return;
    running.resolve(null);
    Atomics.store(running.stop, 0, 1);
    if (running.manner === 'stops') return;
    if (running.manner === 'is-ended') return end();
    const slow = running;
    setTimeout(() => running === slow && end(), SOON_MS).unref();
  }

  function end() {
    void thread.end();
    settle((each) => each.resolve(null));
  }

  const put: Put = (screen, asked, manner) => {
    const isOld = (each: Waiting) => each.screen === screen && each.manner !== 'is-taken';
    for (const old of waiting.filter(isOld)) old.resolve(null);
    waiting = waiting.filter((each) => !isOld(each));
    return new Promise((resolve, reject) => {
      const stop = new Int32Array(new SharedArrayBuffer(4));
      waiting.push({ screen, asked, manner, stop, resolve, reject });
      giveWay(screen);
      next();
    });
  };

  return {
    ...drafting(put),
    async close() {
      for (const each of waiting) each.resolve(null);
      waiting = [];
      await thread.end();
    },
  };
}

/** It asks as a screen does, and no screen has such a name. */
const FOLDER = '';

type Put = (screen: string, asked: () => Asked, manner: Manner) => Promise<unknown>;

/** What can be asked of the thread, with the answer that belongs to each. */
function drafting(put: Put): Omit<Drafts, 'close'> {
  const asking =
    <Ask, Found>(kind: Asked['kind'], manner: Manner) =>
    (screen: string, asked: () => Ask) =>
      put(screen, () => ({ kind, ask: asked() }) as Asked, manner) as Promise<Found | null>;
  return {
    try: asking<DraftAsk, Drafted>('draft', 'stays'),
    better: asking<DraftAsk, Drafted>('draft', 'stops'),
    take: asking<DraftAsk, Drafted>('draft', 'is-taken'),
    nearest: asking<NearestAsk, Nearest>('nearest', 'stops-soon'),
    conflict: asking<DraftAsk, ConflictSaid>('conflict', 'stops-soon'),
    mend: asking<MendAsk, Mend>('mend', 'is-ended'),
    stillMends: asking<StillAsk, boolean>('still-mends', 'is-taken'),
    make: (ask) => asking<MakeAsk, PlanMade>('make', 'is-taken')(FOLDER, () => ask),
  };
}
