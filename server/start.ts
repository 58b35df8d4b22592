import { randomUUID } from 'node:crypto';
import { hostname, tmpdir } from 'node:os';
import { resolve } from 'node:path';
import { type DayState, stayIn } from '../shared/day/index.ts';
import { must, type SlotId, wallTime } from '../shared/kernel/index.ts';
import { AlertDesk } from './alerts/index.ts';
import { CannotStart } from './cannot-start.ts';
import type { Clock } from './clock.ts';
import { type Closing, createClosing } from './closing.ts';
import { guardedRules } from './day-rules.ts';
import { beginFrom, isUsed } from './demo-from.ts';
import { openDoor } from './door.ts';
import { openFolder, watchFolder } from './folder/index.ts';
import { askWhatIf, createCookThread, Forecasts, Spreads } from './forecast/index.ts';
import { type Hub, openHub } from './hub/index.ts';
import { keptClock } from './kept-clock.ts';
import type { Options } from './options.ts';
import { createDrafts, createPlanDesk } from './plan-desk/index.ts';
import { createPlanning, type Planning } from './planning.ts';
import { playDemo, readThermometers } from './play-demo.ts';
import { type TakeReadings, takeReadings } from './readings/index.ts';
import { openRecord } from './record/index.ts';
import type { Report } from './report.ts';
import { openTransport } from './transport/index.ts';
import { unusableDisk } from './unusable-disk.ts';
import { openWho } from './who/index.ts';

/** How often the folder is looked into for a plan that has become due. */
const LOOK_MS = 5 * 60_000;

export type Started =
  | { readonly ok: true; stop(): Promise<void> }
  /** Why not, for whoever started it. */
  | { readonly ok: false; readonly lines: readonly string[] };

type Tools = {
  /** Gets what a person should read. */
  readonly say: (line: string) => void;
  readonly report: Report;
};

/**
 * Opens a kitchen's folder, takes up its plan, and serves its screens. Who is asked to stop before
 * that is done runs `closing` meanwhile.
 */
export async function startHub(
  options: Options,
  tools: Tools,
  closing: Closing = createClosing(),
): Promise<Started> {
  try {
    await open(options, { ...tools, closing });
    return { ok: true, stop: closing.run };
  } catch (fault) {
    await closing.run();
    const told = fault instanceof CannotStart ? fault : unusableDisk(folderOf(options), fault);
    if (told) return { ok: false, lines: told.lines };
    throw fault;
  }
}

const folderOf = ({ folder }: Options) => resolve(folder.path ?? tmpdir());

async function open(options: Options, tools: Tools & { readonly closing: Closing }) {
  const { say, report, closing } = tools;
  const wasUsed = isUsed(options.folder.path);
  const folder = openFolder(options.folder, closing);
  folder.lines.forEach(say);
  if (options.demoFrom) beginFrom(options.demoFrom, { folder: folder.path, wasUsed });
  const clock = keptClock(folder.path, options.speed);
  if (options.speed > 1) say(`The clock runs ${options.speed} times as fast.`);
  const { log } = folder;
  const who = openWho(folder.path, { ...options, clock, closing });
  const rules = guardedRules(who.guard);
  const book = openRecord({ folder: folder.path, log, report, closing });
  const { start, witness } = book;
  const parts = { log, rules, clock, epoch: randomUUID(), report };
  const hub = await openHub({ ...parts, start, witness });
  closing.add(hub.close);
  closing.add(book.rest);
  const chain = book.check(hub);
  const drafts = createDrafts();
  closing.add(drafts.close);
  const planning = createPlanning(hub, folder.path, drafts.make);
  await begin({ hub, planning, clock, say, isDemo: options.folder.kind === 'demo' });
  const thread = createCookThread();
  const forecasts = new Forecasts({ hub, thread, clock, report });
  closing.add(() => forecasts.close());
  hub.heed(() => forecasts.heed());
  forecasts.heed();
  const spreads = new Spreads({ hub, clock, report });
  closing.add(() => spreads.close());
  hub.heed(() => spreads.heed());
  const desk = who.serve(hub);
  const planDesk = createPlanDesk({ hub, folder: folder.path, drafts, now: clock.now });
  const take = takeReadings(hub, clock.now);
  if (options.folder.kind === 'demo') await readThermometers({ hub, take, clock, closing });
  if (options.mqtt !== undefined) await hearProbes(options.mqtt, { hub, take, ...tools });
  const alerts = new AlertDesk({ hub, clock, report });
  closing.add(async () => alerts.close());
  const whatIf = askWhatIf(hub, thread, forecasts);
  const recordDesk = book.desk(hub, chain);
  const transport = await openTransport({
    choice: options.tls ?? { kind: 'none' },
    folder: folder.path,
    kitchen: hub.state.plan?.kitchen.name ?? hostname(),
    host: options.host,
    also: options.names ?? [],
    report,
    closing,
  });
  transport.lines.forEach(say);
  const doors = { transport, who: desk.who, planDesk, recordDesk, take, whatIf };
  const door = await openDoor(hub, options, { ...tools, ...doors });
  folder.sayAddress(door.address);
  keepLooking(folder.path, { planning, clock, ...tools });
  door.lines.forEach(say);
  desk.lines(door.address).forEach(say);
  say('Ready.');
}

/** What speaks to a broker is loaded only where one is asked for. */
async function hearProbes(
  url: string,
  {
    hub,
    take,
    say,
    report,
    closing,
  }: Tools & {
    readonly hub: Hub<DayState>;
    readonly take: TakeReadings;
    readonly closing: Closing;
  },
) {
  const { listenToProbes } = await import('./mqtt/index.ts');
  const inSlot = (slot: SlotId) => stayIn(hub.state, slot);
  const probes = listenToProbes({ url, take, stayIn: inSlot, report });
  closing.add(probes.close);
  say(`Thermometers are heard from the broker at ${new URL(url).host}.`);
}

type Beginning = {
  readonly hub: Hub<DayState>;
  readonly planning: Planning;
  readonly clock: Clock;
  readonly say: (line: string) => void;
  readonly isDemo: boolean;
};

/** The day as the folder has it; the demo's has been going on since last night. */
async function begin({ hub, planning, clock, say, isDemo }: Beginning) {
  const { readOnly, seq } = hub.health;
  if (readOnly) {
    say(`The log is damaged (${readOnly.why}) after entry ${readOnly.atSeq}.`);
    say('Its screens show the day up to there, and nothing more is kept.');
    return;
  }
  clockLines(hub, clock).forEach(say);
  const isNewDemo = isDemo && seq === 0;
  const { what, lines } = await planning.look(clock.now(), (plan) =>
    isNewDemo ? plan.built.origin : clock.now(),
  );
  if (hub.state.plan === null && (what === 'broken' || what === 'impossible')) {
    throw new CannotStart(...lines, 'Nothing was started. Mend this and start again.');
  }
  lines.forEach(say);
  if (what === 'nothing-due') say('No plan is due: the screens wait for one in plans/.');
  if (isNewDemo) await playDemo(hub, must(hub.state.plan, 'the plan of the demo'), clock.now());
}

/** A clock that was set back: till it has caught up, every tap would have one and the same time. */
function clockLines({ openedAt, state }: Hub<DayState>, clock: Clock): string[] {
  if (openedAt === null || openedAt <= clock.now()) return [];
  const zone = state.plan?.kitchen.zone ?? 'UTC';
  const [last, now] = [openedAt, clock.now()].map((at) => {
    const { day, time } = wallTime(at, zone);
    return `${day} ${time}`;
  });
  return [
    `The clock of this machine shows ${now}, and the log was last written at ${last}: till the ` +
      'clock is past that, the time on every screen stands still. Set the clock and start again.',
  ];
}

/** Takes up plans that are changed, or become due, while the hub runs. */
function keepLooking(
  path: string,
  {
    planning,
    clock,
    say,
    report,
    closing,
  }: Tools & {
    readonly planning: Planning;
    readonly clock: Clock;
    readonly closing: Closing;
  },
) {
  async function look() {
    try {
      const { what, lines } = await planning.look(clock.now());
      lines.forEach(say);
      if (what === 'adopted') say('A new plan was taken up.');
      else if (lines.length > 0 && what !== 'nothing-due') say('The running day stays as it is.');
    } catch (fault) {
      report({ level: 'fault', what: 'the folder could not be looked into', path, fault });
    }
  }
  closing.add(watchFolder(path, () => void look(), report));
  closing.add(clock.every(LOOK_MS, () => void look()));
}
