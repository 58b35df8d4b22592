import type { Brought, DayRules } from '../../server/hub/index.ts';
import { type Hub, openHub } from '../../server/hub/index.ts';
import type { ReportLine } from '../../server/report.ts';
import { type EventLog, type MemoryDisk, openMemoryLog } from '../../server/store/index.ts';
import type { DayState } from '../../shared/day/index.ts';
import type {
  Answer,
  CommandMessage,
  ScreenLink,
  ScreenLinkListener,
  ViewMessage,
} from '../../shared/protocol/index.ts';
import { messageSchemas } from '../../shared/protocol/index.ts';
import type { Face } from '../../shared/view/index.ts';
import type { Agenda } from './agenda.ts';
import type { Chance } from './chance.ts';
import type { Journal } from './journal.ts';
import { Life } from './life.ts';
import type { Door, Host } from './line.ts';
import type { MachineClock } from './machine-clock.ts';
import { type DiskMood, mortalLog } from './mortal-log.ts';

export type Death = 'killed' | 'power cut';

/** What a hub has to tell those who watch the run. */
export type HubWatch = {
  /** The hub's word on a command, before it goes on its way. */
  answered(command: CommandMessage, answer: Answer): void;
  /** A view leaves the hub. */
  sent(face: Face, message: ViewMessage): void;
  died(death: Death): void;
  reported(line: ReportLine): void;
};

export type HubMachineParts = {
  readonly agenda: Agenda;
  readonly chance: Chance;
  readonly journal: Journal;
  readonly clock: MachineClock;
  readonly disk: MemoryDisk;
  readonly rules: DayRules<DayState>;
  /** What the hub is given to keep whenever it opens: the plan. */
  readonly brought: Brought;
  readonly watch: HubWatch;
  /** Puts something between the hub and its log; a planted fault does. */
  readonly overLog?: (log: EventLog, agenda: Agenda) => EventLog;
};

/** One life of the hub's program. */
type Process = { readonly life: Life; host: Host | null };

const RESTART_MS = [300, 6000] as const;
const schemas = messageSchemas();

/**
 * The machine that the real hub runs on: it has a disk and a clock, and its process can die at any
 * moment.
 */
export class HubMachine implements Door {
  readonly #parts: HubMachineParts;
  #process: Process | null = null;
  #hub: Hub<DayState> | null = null;
  #epochs = 0;
  #death: Death = 'killed';
  /** Steps of the log until it dies. */
  #deadlyIn: number | null = null;
  mood: DiskMood = 'well';
  /** What a step of a write takes. */
  writeMs: readonly [least: number, most: number] = [0, 0];

  constructor(parts: HubMachineParts) {
    this.#parts = parts;
  }

  host(): Host | null {
    return this.#process?.host ?? null;
  }

  get hub(): Hub<DayState> | null {
    return this.host() ? this.#hub : null;
  }

  start(): void {
    const { clock, disk, rules, brought, watch, agenda, overLog = (log) => log } = this.#parts;
    const life = new Life();
    const process: Process = { life, host: null };
    this.#process = process;
    const onDisk = overLog(
      openMemoryLog(disk, (name) => this.#step(process, name)),
      agenda,
    );
    const log = mortalLog(onDisk, {
      life,
      step: (name) => this.#step(process, name),
      mood: () => this.mood,
    });
    const open = async () => {
      const epoch = `epoch-${++this.#epochs}`;
      const report = life.guard(watch.reported);
      const hub = await openHub({ log, rules, clock: clock.forProcess(life), epoch, report });
      await hub.bring(brought);
      this.#serve(process, hub);
    };
    life.during(open()).catch((fault: unknown) => {
      // A hub that cannot open ends, and is started again by whoever looks after the machine.
      if (this.mood === 'well') watch.reported({ level: 'fault', what: 'no hub', fault });
      this.kill('killed');
    });
  }

  /** Ends the process as it stands; some time later it is started again. */
  kill(death: Death): void {
    const { agenda, chance, journal, disk, watch } = this.#parts;
    const process = this.#process;
    if (!process) return;
    journal.happened(death === 'killed' ? 'hub killed' : 'power cut', 'hub', death);
    this.#death = death;
    this.#process = null;
    this.#deadlyIn = null;
    process.life.end();
    if (death === 'power cut') disk.cutPower();
    watch.died(death);
    agenda.after(chance.between(...RESTART_MS), () => {
      if (!this.#process) this.start();
    });
  }

  /** Has it die so many steps of the log later, wherever in a write that may be. */
  killAtStep(steps: number, death: Death): void {
    this.#deadlyIn = steps;
    this.#death = death;
  }

  spare(): void {
    this.#deadlyIn = null;
  }

  async #step(process: Process, name: string): Promise<void> {
    const { agenda, chance, journal } = this.#parts;
    if (process.life.isOver) return never();
    if (this.#deadlyIn !== null && --this.#deadlyIn <= 0) {
      journal.happened(
        process.host ? 'hub killed in a write' : 'hub killed while opening',
        'hub',
        `dies at step "${name}"`,
      );
      this.kill(this.#death);
      return never();
    }
    const takesMs = chance.between(...this.writeMs);
    if (takesMs === 0) return;
    await new Promise<void>((resolve) => agenda.after(takesMs, process.life.guard(resolve)));
  }

  #serve(process: Process, hub: Hub<DayState>): void {
    const { journal } = this.#parts;
    this.#hub = hub;
    process.host = {
      accept: (link) => this.#accept(process, hub, link),
      life: process.life,
      hangsUp: () => this.#death === 'killed',
    };
    journal.happened('hub opened', 'hub', `opens at entry ${hub.health.seq}`);
  }

  /** Lets in what the hub's own door lets in, and shows those who watch what it says. */
  #accept(process: Process, hub: Hub<DayState>, link: ScreenLink): ScreenLinkListener {
    const { watch } = this.#parts;
    const listener = hub.accept({
      ...link,
      view: (message) => {
        watch.sent(link.hello.face, message);
        link.view(message);
      },
    });
    return {
      ...listener,
      command: async (message) => {
        const command = schemas.command.parse(message);
        const answer = await process.life.during(listener.command(command));
        watch.answered(command, answer);
        return answer;
      },
    };
  }
}

const never = () => new Promise<never>(() => {});
