import { inspect } from 'node:util';
import type { Sync, SyncPorts } from '../../client/sync/index.ts';
import { dayRules } from '../../server/day-rules.ts';
import type { Brought, DayRules } from '../../server/hub/index.ts';
import { type EventLog, type MemoryDisk, memoryDisk } from '../../server/store/index.ts';
import type { DayState } from '../../shared/day/index.ts';
import { instant, type ScreenId, type StationId } from '../../shared/kernel/index.ts';
import type { Face } from '../../shared/view/index.ts';
import { Agenda } from './agenda.ts';
import { disagreement } from './agreement.ts';
import { AnswerWitness } from './answer-witness.ts';
import { Chance } from './chance.ts';
import { CheckWitness } from './check-witness.ts';
import { ClockWitness } from './clock-witness.ts';
import { Crew } from './crew.ts';
import { DayWitness } from './day-witness.ts';
import { Device } from './device.ts';
import { DeviceClock } from './device-clock.ts';
import { HubMachine, type HubWatch } from './hub-machine.ts';
import { Journal } from './journal.ts';
import { LogWitness } from './log-witness.ts';
import { MachineClock } from './machine-clock.ts';
import { Mending } from './mending.ts';
import { Mischief, type MischiefParts, type Trouble } from './mischief.ts';
import { DiskTrouble } from './mortal-log.ts';
import { Replay } from './replay.ts';
import { TapWitness } from './tap-witness.ts';
import { type Broken, Verdict } from './verdict.ts';
import { ViewWitness } from './view-witness.ts';
import { Way } from './way.ts';

/** What a run may be given instead of the sound thing, to see whether it is found out. */
export type Planted = {
  readonly disk?: () => MemoryDisk;
  readonly rules?: DayRules<DayState>;
  readonly overLog?: (log: EventLog, agenda: Agenda) => EventLog;
  readonly createSync?: (ports: SyncPorts) => Sync;
};

export type RunOptions = {
  readonly seed: number;
  readonly day: Brought;
  readonly planted?: Planted;
  /** What befalls the kitchen, and for how long; by default everything, for some minutes. */
  readonly trouble?: (parts: MischiefParts) => Trouble;
  readonly troubleMs?: number;
};

export type RunResult = {
  readonly broken: Broken | null;
  readonly journal: Journal;
  /** How long it took all to agree once the trouble was over. */
  readonly agreedAfterMs: number | null;
};

const TROUBLE_MS = 150_000;
/**
 * Nothing may take longer once all is well: the longest waits of hub and screens, one after the
 * other.
 */
const AGREED_WITHIN_MS = 30_000;
const QUIET_MS = 20_000;
const LOOKS_AGAIN_MS = 5000;
const LOOK_EVERY_MS = 1000;

const WALLS: readonly { readonly name: string; readonly face: Face }[] = [
  { name: 'board', face: { kind: 'station', station: 'board' as StationId } },
  { name: 'pass', face: { kind: 'station', station: 'pass' as StationId } },
  { name: 'pit-1', face: { kind: 'smoker' } },
  { name: 'pit-2', face: { kind: 'smoker' } },
];

/**
 * Lives one day of trouble, all of it a function of the seed, and says what promise it broke if
 * any.
 */
export async function run(options: RunOptions): Promise<RunResult> {
  const world = new World(options);
  await world.live(options.troubleMs ?? TROUBLE_MS);
  const agreedAfterMs = world.isBroken ? null : await world.agree();
  return { broken: world.verdict.broken, journal: world.journal, agreedAfterMs };
}

const allTrouble = (parts: MischiefParts) => new Mischief(parts);

class World {
  readonly agenda = new Agenda();
  readonly journal = new Journal(() => this.agenda.nowMs);
  readonly verdict = new Verdict();
  readonly #chance: Chance;
  readonly #log: LogWitness;
  readonly #answers: AnswerWitness;
  readonly #replay: Replay;
  readonly #views: ViewWitness;
  readonly #taps: TapWitness;
  readonly #clocks: ClockWitness;
  readonly #hubClock: MachineClock;
  readonly #hub: HubMachine;
  readonly #devices: readonly Device[];
  readonly #crews: readonly Crew[];
  readonly #trouble: Trouble;
  readonly #mending: Mending;

  constructor({ seed, day, planted = {}, trouble = allTrouble }: RunOptions) {
    const { agenda, journal, verdict } = this;
    this.#chance = Chance.ofSeed(seed);
    const disk = (planted.disk ?? memoryDisk)();
    const hubClock = new MachineClock(agenda);
    this.#hubClock = hubClock;
    this.#log = new LogWitness(disk, verdict);
    this.#answers = new AnswerWitness(this.#log, verdict, journal);
    const days = new DayWitness(verdict);
    const checks = new CheckWitness(verdict);
    this.#replay = new Replay(this.#log, (live, event, before) => {
      days.look(live, event);
      checks.look(before, event, live.state);
    });
    this.#views = new ViewWitness(this.#log, this.#replay, verdict);
    this.#taps = new TapWitness(this.#answers, verdict);
    this.#clocks = new ClockWitness(agenda, hubClock, verdict);
    this.#hub = new HubMachine({
      agenda,
      chance: this.#chance.fork(),
      journal,
      clock: hubClock,
      disk,
      rules: planted.rules ?? dayRules,
      brought: day,
      watch: this.#hubWatch(),
      ...(planted.overLog && { overLog: planted.overLog }),
    });
    this.#devices = WALLS.map((wall) => this.#device(wall, planted));
    this.#crews = this.#devices.map(
      (device) =>
        new Crew({
          agenda,
          chance: this.#chance.fork(),
          journal,
          device,
          onRead: (command) => this.#taps.read(command),
        }),
    );
    this.#trouble = trouble({
      agenda,
      chance: this.#chance.fork(),
      journal,
      hub: this.#hub,
      hubClock,
      clocks: this.#clocks,
      devices: this.#devices,
    });
    this.#mending = new Mending({
      agenda,
      chance: this.#chance.fork(),
      journal,
      hub: this.#hub,
      clock: hubClock,
      onTaken: (command) => {
        this.#log.look();
        const isKept = this.#log.stretchOf(command) !== undefined;
        verdict.holds('once', isKept, () => `${command} was taken and is not in the log`, command);
      },
    });
  }

  get isBroken(): boolean {
    return this.verdict.broken !== null;
  }

  /** The day with all its trouble. */
  async live(untilMs: number): Promise<void> {
    this.#hub.start();
    this.#lookAtClocks();
    for (const device of this.#devices) device.load();
    await this.#passTo(untilMs);
    for (const crew of this.#crews) crew.leave();
    this.#mending.leave();
    this.#trouble.stop();
  }

  /**
   * How long it takes all screens to agree with the hub, from now on; null where they do not, or
   * something broke.
   */
  async agree(): Promise<number | null> {
    const agreedAfterMs = await this.#waitForAgreement(AGREED_WITHIN_MS);
    // Then time alone goes by, and moves what waits for a hand.
    await this.#passTo(this.agenda.nowMs + QUIET_MS);
    await this.#waitForAgreement(LOOKS_AGAIN_MS);
    if (this.isBroken) return null;
    this.#lookThrough(false);
    this.#taps.lookThrough(this.#devices);
    return agreedAfterMs;
  }

  async #waitForAgreement(mostMs: number): Promise<number | null> {
    const fromMs = this.agenda.nowMs;
    let why: string | null = null;
    for (let waitedMs = 0; waitedMs <= mostMs && !this.isBroken; waitedMs += LOOK_EVERY_MS) {
      await this.#passTo(fromMs + waitedMs);
      why = this.#disagreement();
      if (why === null) return waitedMs;
    }
    this.verdict.breaks('converges', `after ${mostMs / 1000} s ${why}`);
    return null;
  }

  async #passTo(untilMs: number): Promise<void> {
    while (!this.isBroken && (await this.agenda.step(untilMs))) {
      this.#log.look();
    }
  }

  #device({ name, face }: (typeof WALLS)[number], { createSync }: Planted): Device {
    const { agenda, journal } = this;
    const chance = this.#chance.fork();
    const clock = new DeviceClock({
      agenda,
      driftPpm: chance.between(-200, 200),
      wallErrorMs: chance.between(-600_000, 600_000),
      standsStillAsleep: chance.happens(0.5),
    });
    return new Device({
      screenId: name as ScreenId,
      face,
      agenda,
      chance,
      journal,
      clock,
      way: new Way({ name, agenda, chance: chance.fork(), journal }),
      door: this.#hub,
      watch: {
        kept: (command) => this.#taps.kept(command),
        changed: (device) => this.#views.changed(device),
        beaten: (device, tripMs) => this.#clocks.beaten(device, tripMs),
        clockLost: (device) => this.#clocks.lost(device),
      },
      ...(createSync && { create: createSync }),
    });
  }

  #hubWatch(): HubWatch {
    return {
      answered: (command, answer) => this.#answers.answered(command, answer),
      sent: (face, message) => this.#views.sent(face, message),
      died: (death) => this.#lookThrough(death === 'power cut'),
      reported: (line) => {
        if (line.level !== 'fault' || line['fault'] instanceof DiskTrouble) return;
        this.verdict.breaks('hale', inspect(line));
      },
    };
  }

  /** What was promised for ever must still be so. */
  #lookThrough(isAfterPowerCut: boolean): void {
    this.#log.lookThrough({ isAfterPowerCut });
    this.#replay.forget();
    this.#answers.lookThrough();
    this.#views.lookThrough();
  }

  #disagreement(): string | null {
    const drawNow = (face: Face) => this.#views.drawNow(face, instant(this.#hubClock.nowMs()));
    for (const device of this.#devices) {
      const why = disagreement(device, this.#hub, drawNow);
      if (why !== null) return why;
    }
    return null;
  }

  #lookAtClocks(): void {
    this.#clocks.look();
    this.agenda.after(LOOK_EVERY_MS, () => this.#lookAtClocks());
  }
}
