import { createSync, type Sync, type SyncPorts } from '../../client/sync/index.ts';
import { dayRules } from '../../server/day-rules.ts';
import {
  type Batch,
  type EventLog,
  type MemoryDisk,
  memoryDisk,
} from '../../server/store/index.ts';
import { instant, type SlotId } from '../../shared/kernel/index.ts';
import type { HubLink, HubLinkListener, ViewMessage } from '../../shared/protocol/index.ts';
import type { Agenda } from './agenda.ts';
import type { Planted } from './run.ts';
import type { PromiseName } from './verdict.ts';

/**
 * A fault that somebody could build in, put between the sound parts, and the promises that it may
 * be seen to break.
 */
export type PlantedFault = {
  readonly name: string;
  readonly planted: Planted;
  readonly breaks: readonly PromiseName[];
};

const WRITE_BEHIND_MS = 20;
const FIRST_RACK = 'a/1' as SlotId;

/** Says ok at once and writes a moment later, as a store does that answers before it commits. */
function answersBeforeItCommits(log: EventLog, agenda: Agenda): EventLog {
  let written: Promise<unknown> = Promise.resolve();
  const later = (batch: Batch) => async () => {
    await new Promise<void>((resolve) => agenda.after(WRITE_BEHIND_MS, resolve));
    return log.append(batch);
  };
  return {
    ...log,
    append: async (batch) => {
      written = written.then(later(batch));
      const seq = batch.expectedSeq + batch.entries.length;
      return { ok: true, head: { seq, hash: '', epoch: batch.epoch } };
    },
  };
}

/**
 * Neither refuses a second answer to a command nor finds the first, as a store whose key was
 * dropped.
 */
const forgetsItsKey = (log: EventLog): EventLog => ({ ...log, answerTo: async () => null });

/** A power cut takes a page from its middle, as it does on media without order. */
function diskThatTears(): MemoryDisk {
  const disk = memoryDisk();
  return {
    ...disk,
    cutPower: () => {
      disk.cutPower();
      disk.damage((entries) => void entries.splice(entries.length >> 1, 1));
    },
  };
}

type OverListener = (listener: HubLinkListener) => HubLinkListener;

/** A sync that is the real one but for what it hears of its link. */
const overListener = (over: OverListener) => (ports: SyncPorts) =>
  createSync({
    ...ports,
    openLink: (hello, listener) => ports.openLink(hello, over(listener)),
  });

/** A sync that is the real one but for what lies between it and its link. */
const overLink = (over: (link: HubLink, ports: SyncPorts) => Partial<HubLink>) => {
  return (ports: SyncPorts): Sync =>
    createSync({
      ...ports,
      openLink: (hello, listener) => {
        const link = ports.openLink(hello, listener);
        return { ...link, ...over(link, ports) };
      },
    });
};

/** Takes a tap out of the outbox as soon as it is sent, without waiting for the hub's word. */
const outboxThatForgets = overLink((link, { outbox }) => ({
  command: (message) => {
    void outbox.remove(message.id);
    return link.command(message);
  },
}));

/** Does not come back once its line was lost. */
const screenThatStaysDown = overListener((listener) => {
  let isLost = false;
  const unlessLost = (tell: () => void) => {
    if (!isLost) tell();
  };
  return {
    ...listener,
    up: () => unlessLost(() => listener.up()),
    view: (message) => unlessLost(() => listener.view(message)),
    down: () => {
      isLost = true;
      listener.down();
    },
  };
});

/** Shows whatever came last, though it be older than what it shows. */
function screenThatGoesBack(ports: SyncPorts): Sync {
  let last: ViewMessage | null = null;
  const sync = overListener((listener) => ({
    ...listener,
    view: (message) => {
      last = message;
      listener.view(message);
    },
  }))(ports);
  return withState(sync, () =>
    last ? { ...sync.state, view: last.view, seq: last.seq } : sync.state,
  );
}

/** Takes the device's own clock for the hub's. */
function screenThatTrustsItsClock(ports: SyncPorts): Sync {
  const sync = createSync(ports);
  const hubNow = () => instant(Math.round(ports.clock.wallMs()));
  return { ...withState(sync, () => sync.state), hubNow };
}

const withState = (sync: Sync, state: () => Sync['state']): Sync => ({
  get state() {
    return state();
  },
  hubNow: () => sync.hubNow(),
  tap: (intent, personId) => sync.tap(intent, personId),
  ask: (question) => sync.ask(question),
  seen: (command) => sync.seen(command),
  subscribe: (listener) => sync.subscribe(listener),
  close: () => sync.close(),
});

export const plantedFaults: readonly PlantedFault[] = [
  {
    name: 'a store that answers before it commits',
    planted: { overLog: answersBeforeItCommits },
    breaks: ['once', 'confirmed'],
  },
  {
    name: 'a store that forgot that a command has one answer',
    planted: { disk: () => memoryDisk({ keys: 'any' }), overLog: forgetsItsKey },
    breaks: ['once', 'same'],
  },
  {
    name: 'a disk that does not sync, once the power is cut',
    planted: { disk: () => memoryDisk({ syncs: false }) },
    breaks: ['once', 'confirmed'],
  },
  {
    name: 'a disk that a power cut tears in the middle',
    planted: { disk: diskThatTears },
    breaks: ['grows'],
  },
  {
    name: 'an outbox that forgets a tap before it is answered',
    planted: { createSync: outboxThatForgets },
    breaks: ['kept'],
  },
  {
    name: 'a screen that shows an older view over a newer one',
    planted: { createSync: screenThatGoesBack },
    breaks: ['forward'],
  },
  {
    name: 'a screen that does not come back when its line was lost',
    planted: { createSync: screenThatStaysDown },
    breaks: ['converges'],
  },
  {
    name: "a screen that takes its own clock for the hub's",
    planted: { createSync: screenThatTrustsItsClock },
    breaks: ['clock'],
  },
  {
    name: 'a rule that puts whatever is moved on the first rack, full or not',
    planted: {
      rules: {
        ...dayRules,
        decide: (state, command, ...rest) => {
          if (command.kind !== 'moveSlots') return dayRules.decide(state, command, ...rest);
          const moves = command.moves.map((move) => ({ ...move, to: FIRST_RACK }));
          return { ok: true, facts: [{ kind: 'slotsMoved', moves }] };
        },
      },
    },
    breaks: ['day'],
  },
  {
    name: 'a rule that lets begin what a limit bars',
    planted: {
      rules: {
        ...dayRules,
        decide: (state, command, ...rest) => {
          const decision = dayRules.decide(state, command, ...rest);
          if (decision.ok || decision.refusal.rule !== 'barred') return decision;
          if (command.kind !== 'start') return decision;
          const { task } = command;
          return { ok: true, facts: [{ kind: 'taskStarted', task, hand: command.personId }] };
        },
      },
    },
    breaks: ['barred'],
  },
  {
    name: 'a rule that keeps one answer to a check as two',
    planted: {
      rules: {
        ...dayRules,
        decide: (state, command, ...rest) => {
          const decision = dayRules.decide(state, command, ...rest);
          if (!decision.ok || command.kind !== 'check') return decision;
          return { ok: true, facts: [...decision.facts, ...decision.facts] };
        },
      },
    },
    breaks: ['asked'],
  },
  {
    name: 'a running day that does not hear of the clock',
    planted: {
      rules: {
        ...dayRules,
        run: (state, now) => ({ ...dayRules.run(state, now), tick: () => false }),
      },
    },
    breaks: ['converges'],
  },
  {
    name: 'a rule of the day that cannot be worked out',
    planted: {
      rules: {
        ...dayRules,
        decide: (state, command, ...rest) => {
          if (command.kind === 'late') throw new RangeError('nobody thought of this');
          return dayRules.decide(state, command, ...rest);
        },
      },
    },
    breaks: ['hale'],
  },
];
