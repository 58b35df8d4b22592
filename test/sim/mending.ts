import type { Hub } from '../../server/hub/index.ts';
import { mendNow, stillMendsNow } from '../../server/plan-desk/mend.ts';
import { createMendDesk } from '../../server/plan-desk/mend-desk.ts';
import type { Entitled } from '../../server/who/index.ts';
import type { DayState, Intent } from '../../shared/day/index.ts';
import {
  after,
  type CommandId,
  celsius,
  type Instant,
  instant,
  must,
  seconds,
} from '../../shared/kernel/index.ts';
import type { Agenda } from './agenda.ts';
import type { Chance } from './chance.ts';
import type { HubMachine } from './hub-machine.ts';
import type { Journal } from './journal.ts';
import type { MachineClock } from './machine-clock.ts';
import { DiskTrouble } from './mortal-log.ts';

type Parts = {
  readonly agenda: Agenda;
  readonly chance: Chance;
  readonly journal: Journal;
  readonly hub: HubMachine;
  readonly clock: MachineClock;
  /** Told what was taken, when the hub has said that it is kept. */
  readonly onTaken: (command: CommandId) => void;
};

const BETWEEN_MS = [10_000, 60_000] as const;
/** What would mend a day takes long to work out: it is asked for on one day of so many. */
const DAYS_TO_ONE = 5;
/** The hub’s word where its disk fails again and again. */
const KEEPS_NOTHING = 'the log keeps nothing';
/** What is worked out beside the hub takes so long. */
const WORKING_MS = [200, 5000] as const;
const THINKING_MS = [500, 8000] as const;
const AWAY_MIN = [10, 240] as const;

const pitmaster: Entitled = {
  personId: null,
  screenId: null,
  caller: 'desk',
  whyNot: () => null,
} as Entitled;

/**
 * Whoever answers for the day: says that somebody is out or a smoker is down, asks what would mend
 * the day, takes it a little later, and sometimes takes that back.
 */
export class Mending {
  readonly #parts: Parts;
  #isAtWork = true;
  #said = 0;

  constructor(parts: Parts) {
    this.#parts = parts;
    if (parts.chance.below(DAYS_TO_ONE) === 0) this.#wait();
  }

  leave(): void {
    this.#isAtWork = false;
  }

  #wait(): void {
    this.#later(BETWEEN_MS, () => {
      const hub = this.#hub;
      if (hub) this.#act(hub).catch((fault: unknown) => this.#notKept(hub, fault));
      this.#wait();
    });
  }

  get #hub(): Hub<DayState> | null {
    const { hub } = this.#parts.hub;
    return hub?.state.plan && hub.health.readOnly === null ? hub : null;
  }

  get #now(): Instant {
    return instant(Math.round(this.#parts.clock.nowMs()));
  }

  /** A disk that keeps nothing is told to whoever asked, and reported. */
  #notKept(hub: Hub<DayState>, fault: unknown): void {
    const isKept = !(fault instanceof Error) || fault.message !== KEEPS_NOTHING;
    if (this.#hub === hub && isKept && !(fault instanceof DiskTrouble)) throw fault;
    this.#parts.journal.write('desk', 'is told that nothing was kept');
  }

  /** From bad news to what mends it; whatever the hub dies under ends there. */
  async #act(hub: Hub<DayState>): Promise<void> {
    const { chance, journal } = this.#parts;
    if (chance.happens(0.6)) await this.#say(hub, this.#badNews(hub.state), 'something is away');
    const desk = createMendDesk({
      hub,
      now: () => this.#now,
      newId: () => `${++this.#said}`,
      drafts: {
        mend: (_by, asked) => this.#workedOut(hub, () => mendNow(asked())),
        stillMends: (_by, asked) => this.#workedOut(hub, () => stillMendsNow(asked())),
      },
    });
    const asked = await desk.mend(pitmaster);
    if (!('mend' in asked) || !asked.mend?.id) return;
    const { id, offer } = asked.mend;
    journal.happened('asked what mends the day', 'desk', `asks: ${offer.rung}`);
    await this.#pause(THINKING_MS);
    if (this.#hub !== hub) return;
    const taken = await desk.takeMend(pitmaster, id);
    if (this.#hub !== hub) return;
    if (!('command' in taken)) {
      journal.happened('mend refused', 'desk', `is told: ${JSON.stringify(taken)}`);
      return;
    }
    this.#parts.onTaken(taken.command as CommandId);
    journal.happened('day mended', 'desk', `takes ${id}: ${offer.rung}`);
    await this.#pause(THINKING_MS);
    if (this.#hub !== hub || !chance.happens(0.3)) return;
    await this.#say(hub, { kind: 'undo', command: taken.command as CommandId }, 'mend taken back');
  }

  #badNews({ plan, happened }: DayState): Intent {
    const { chance } = this.#parts;
    const { crew, smokers } = must(plan, 'a plan').kitchen;
    const backAt = after(this.#now, seconds(60 * Math.round(chance.between(...AWAY_MIN))));
    const hand = chance.oneOf(crew).id;
    if (happened.out.has(hand)) return { kind: 'handIn', hand };
    if (chance.happens(0.6)) return { kind: 'handOut', hand, backAt };
    const smoker = chance.oneOf(smokers).id;
    const isDown = happened.spells.some((each) => each.smoker === smoker && each.until === null);
    const tempC = celsius(chance.between(90, 130));
    if (isDown) return { kind: 'smokerUp', smoker, tempC };
    return { kind: 'smokerDown', smoker, tempC, backAt };
  }

  async #say(hub: Hub<DayState>, intent: Intent, as: 'something is away' | 'mend taken back') {
    const id = `desk-${++this.#said}` as CommandId;
    const head = { id, personId: null, screenId: null, tappedAt: this.#now };
    const answer = await hub.command({ ...head, ...intent });
    const word = answer.ok ? 'yes' : `no, ${answer.refusal.rule}`;
    if (answer.ok) this.#parts.journal.happened(as, 'desk', `says ${intent.kind}: ${word}`);
    else this.#parts.journal.write('desk', `says ${intent.kind}: ${word}`);
  }

  /** Looked at when its turn comes, and told some time later. */
  async #workedOut<Found>(hub: Hub<DayState>, work: () => Found): Promise<Found | null> {
    const found = work();
    await this.#pause(WORKING_MS);
    return this.#hub === hub ? found : null;
  }

  #pause(range: readonly [number, number]): Promise<void> {
    return new Promise((resolve) => this.#later(range, resolve));
  }

  #later(range: readonly [number, number], run: () => void): void {
    const { agenda, chance } = this.#parts;
    agenda.after(chance.between(...range), () => {
      if (this.#isAtWork) run();
    });
  }
}
