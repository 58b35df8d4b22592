import {
  type Celsius,
  type CommandId,
  type PersonId,
  seconds,
  type TaskId,
} from '../../shared/kernel/index.ts';
import { LinkLost } from '../../shared/protocol/index.ts';
import {
  type Intent,
  isWork,
  overlay,
  type SmokerView,
  type TaskState,
  type TaskView,
  type View,
} from '../../shared/view/index.ts';
import type { Agenda } from './agenda.ts';
import type { Chance } from './chance.ts';
import type { Device } from './device.ts';
import type { Happening, Journal } from './journal.ts';
import { type Asked, isSafety, type SafetyDeed, SafetyTaps } from './safety-taps.ts';

export type CrewParts = {
  readonly agenda: Agenda;
  readonly chance: Chance;
  readonly journal: Journal;
  readonly device: Device;
  /** Told when somebody has read why a tap was refused. */
  readonly onRead: (command: CommandId) => void;
};

/** How often each thing is done where it can be. Work goes on more often than it is disturbed. */
const DEEDS = {
  start: 30,
  finish: 30,
  count: 10,
  takeBack: 5,
  late: 5,
  help: 6,
  giveTo: 5,
  note: 2,
  reading: 6,
  move: 12,
  wrong: 7,
  again: 6,
  look: 12,
  mend: 8,
  sell: 4,
  receive: 1,
  hurry: 4,
  read: 6,
} as const;
type Deed = keyof typeof DEEDS;

const BETWEEN_TAPS_MS = [700, 9000] as const;
const THINKING_MS = [800, 6000] as const;

/**
 * Whoever stands before one screen: does what a crew does, from what the screen shows, and errs as
 * a crew errs.
 */
export class Crew {
  readonly #parts: CrewParts;
  readonly #safety: SafetyTaps;
  #isAtWork = true;
  #last: Intent | null = null;

  constructor(parts: CrewParts) {
    this.#parts = parts;
    this.#safety = new SafetyTaps(parts.chance);
    this.#wait();
  }

  leave(): void {
    this.#isAtWork = false;
  }

  #wait(): void {
    const { agenda, chance } = this.#parts;
    agenda.after(chance.between(...BETWEEN_TAPS_MS), () => {
      if (!this.#isAtWork) return;
      this.#act();
      this.#wait();
    });
  }

  #act(): void {
    const { device, chance } = this.#parts;
    const state = device.sync?.state;
    if (!state?.view) return;
    const { view } = overlay(state.view, state.pending);
    const deed = chance.weighted(DEEDS);
    if (deed === 'move') this.#askForMove(view);
    else if (deed === 'read') this.#readRefusal();
    else if (isSafety(deed)) this.#tapAll(this.#safety.deed(deed, view), view);
    else if (deed === 'again') this.#tap(this.#last, view, 'tapped twice');
    else if (deed === 'wrong') this.#tap(this.#wrong(view), view, 'tapped wrong');
    else this.#tap(this.#intent(deed, view), view, 'tapped');
  }

  #tap(intent: Intent | null, view: View, as: Happening): void {
    const { device, chance, journal } = this.#parts;
    if (!intent || !device.sync) return;
    const person = chance.happens(0.5) ? null : this.#somebody(view);
    if (!device.sync.state.isUp) journal.count('tapped alone');
    const { id } = device.sync.tap(intent, person);
    this.#last = intent;
    journal.happened(as, device.screenId, `taps ${inWords(intent)} (${id})`);
  }

  #tapAll(asked: Asked | null, view: View): void {
    if (asked) this.#tap(asked.intent, view, asked.as);
  }

  #intent(
    deed: Exclude<Deed, 'move' | 'read' | 'again' | 'wrong' | SafetyDeed>,
    view: View,
  ): Intent | null {
    const { chance } = this.#parts;
    switch (deed) {
      case 'start':
        return this.#on(view, ['ready'], ({ id: task }) => ({ kind: 'start', task }));
      case 'finish':
        return this.#on(view, ['running'], ({ id: task }) => ({ kind: 'finish', task }));
      case 'count':
        return this.#on(view, ['running', 'ready'], ({ id: task, pieces }) => {
          return { kind: 'count', task, done: chance.below(pieces + 1) };
        });
      case 'takeBack':
        return this.#on(view, ['running', 'done'], ({ id: task }) => ({ kind: 'takeBack', task }));
      case 'late':
        return this.#on(view, ['running', 'ready', 'waiting'], ({ id: task }) => {
          return { kind: 'late', task, byS: seconds(60 * (1 + chance.below(20))) };
        });
      case 'help':
        return this.#on(view, ['running', 'ready'], ({ id: task, helpAskedAt }) => {
          return { kind: helpAskedAt === null ? 'needHelp' : 'helpCame', task };
        });
      case 'giveTo':
        return this.#on(view, ['running', 'ready', 'waiting'], ({ id: task }) => {
          return { kind: 'giveTo', task, hand: this.#somebody(view) };
        });
      case 'note':
        return { kind: 'note', text: `tray ${chance.below(40)} is short`, task: null };
      case 'reading':
        return view.face === 'smoker' ? this.#reading(view) : null;
      default:
        return deed satisfies never;
    }
  }

  #on(view: View, states: readonly TaskState[], make: (task: TaskView) => Intent): Intent | null {
    const tasks = isWork(view) ? view.tasks : [];
    const fit = tasks.filter(({ state }) => states.includes(state));
    return fit.length === 0 ? null : make(this.#parts.chance.oneOf(fit));
  }

  #reading(view: SmokerView): Intent {
    const { chance } = this.#parts;
    const smoker = chance.oneOf(view.smokers);
    const here = smoker.racks.flatMap(({ loads }) => loads).filter((load) => load.here);
    if (here.length === 0 || chance.happens(0.5)) {
      const tempC = chance.between(90, 150) as Celsius;
      return { kind: 'reading', where: { kind: 'air', smoker: smoker.id }, tempC };
    }
    const { stay } = chance.oneOf(here);
    const tempC = chance.between(10, 99) as Celsius;
    return { kind: 'reading', where: { kind: 'core', stay }, tempC };
  }

  /** A slip of the finger, or somebody who does not know better. */
  #wrong(view: View): Intent | null {
    const { chance } = this.#parts;
    const slips: (() => Intent | null)[] = [
      () => this.#on(view, ['waiting', 'done'], ({ id: task }) => ({ kind: 'start', task })),
      () => this.#on(view, ['waiting', 'done'], ({ id: task }) => ({ kind: 'finish', task })),
      () => this.#on(view, ['waiting', 'ready'], ({ id: task }) => ({ kind: 'takeBack', task })),
      () =>
        this.#on(view, ['running'], ({ id: task, pieces }) => {
          return { kind: 'count', task, done: pieces + 1 };
        }),
      () => ({ kind: 'finish', task: 'a-task-that-never-was' as TaskId }),
    ];
    return chance.oneOf(slips)();
  }

  /** The pitmaster asks what a move would do, looks at it, and takes it. */
  #askForMove(view: View): void {
    const { device, chance, journal, agenda } = this.#parts;
    const { sync, screenId } = device;
    if (view.face !== 'smoker' || !sync) return;
    const racks = view.smokers.flatMap((smoker) => smoker.racks);
    const loads = racks.flatMap((rack) => rack.loads);
    if (loads.length === 0) return;
    // What is moved is mostly what lies in the fire.
    const lying = loads.filter(({ here }) => here);
    const from = lying.length > 0 && chance.happens(0.7) ? lying : loads;
    const { stay, need } = chance.oneOf(from);
    const to = chance.oneOf(racks).slot.id;
    journal.happened('asked what a move does', screenId, `asks: ${stay} to ${to}?`);
    sync.ask({ kind: 'ifMoved', stay, need, to }).then(
      (answer) => {
        if (!answer.ok) return;
        const { moves, basedOnSeq } = answer.offer;
        const taken = moves.map((move) => ({ stay: move.stay, need: move.need, to: move.to.id }));
        agenda.after(chance.between(...THINKING_MS), () => {
          if (!this.#isAtWork || device.sync !== sync) return;
          this.#tap({ kind: 'moveSlots', moves: taken, basedOnSeq }, view, 'moved a load');
        });
      },
      (fault: unknown) => {
        if (!(fault instanceof LinkLost)) throw fault;
      },
    );
  }

  #readRefusal(): void {
    const { sync } = this.#parts.device;
    const refused = sync?.state.refused[0];
    if (!sync || !refused) return;
    this.#parts.journal.write(this.#parts.device.screenId, `reads why not ${refused.command.id}`);
    sync.seen(refused.command.id);
    this.#parts.onRead(refused.command.id);
  }

  #somebody({ people }: View): PersonId {
    return this.#parts.chance.oneOf(people).id;
  }
}

/** @example inWords({ kind: 'start', task }) //=> 'start ribs-1/rub' */
function inWords(intent: Intent): string {
  switch (intent.kind) {
    case 'moveSlots':
      return `move ${intent.moves.map(({ stay, to }) => `${stay} to ${to}`).join(', ')}`;
    case 'reading':
      return `reading of ${intent.tempC.toFixed(0)} °C`;
    case 'note':
      return `note "${intent.text}"`;
    case 'giveTo':
      return `give ${intent.task} to ${intent.hand}`;
    case 'late':
      return `late ${intent.task} by ${intent.byS / 60} min`;
    default:
      return 'task' in intent ? `${intent.kind} ${intent.task}` : intent.kind;
  }
}
