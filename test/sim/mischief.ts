import type { Agenda } from './agenda.ts';
import type { Chance } from './chance.ts';
import type { ClockWitness } from './clock-witness.ts';
import type { Device } from './device.ts';
import type { Death, HubMachine } from './hub-machine.ts';
import type { Happening, Journal } from './journal.ts';
import type { MachineClock } from './machine-clock.ts';
import { CALM, type Weather } from './way.ts';

export type MischiefParts = {
  readonly agenda: Agenda;
  readonly chance: Chance;
  readonly journal: Journal;
  readonly hub: HubMachine;
  readonly hubClock: MachineClock;
  readonly clocks: ClockWitness;
  readonly devices: readonly Device[];
};

/** Something that befalls the kitchen, until it is over. */
export type Trouble = { stop(): void };

const ROUGH: Weather = {
  delayMs: [3, 350],
  lost: 0.06,
  doubled: 0.1,
  unordered: 0.4,
  dead: 'nowhere',
};
const SLOW: Weather = { ...CALM, delayMs: [150, 3000], unordered: 0.2 };
const CUT: Weather = { ...CALM, dead: 'everywhere' };
const DEAF: Weather = { ...CALM, dead: 'toScreen' };
const DUMB: Weather = { ...CALM, dead: 'toHub' };

/** How likely each kind of trouble is. */
const KINDS = {
  hubDies: 4,
  hubDiesWriting: 6,
  rough: 8,
  slow: 4,
  cut: 6,
  cutOnOneSide: 5,
  sleep: 5,
  loadAnew: 6,
  deviceClock: 2,
  hubClock: 1,
  slowDisk: 3,
  fullDisk: 2,
  failingDisk: 2,
  fullStore: 2,
} as const;
type Kind = keyof typeof KINDS;

const BETWEEN_MS = [800, 9000] as const;
/** Steps of the log until the hub dies in one; a write has about eight. */
const DEADLY_STEPS = 24;
/** Steps of the log that opening takes: reading it, claiming it, bringing the plan. */
const OPENING_STEPS = 5;

/**
 * Brings trouble, one kind after the other, each for its time; when told to stop it leaves all well
 * behind it.
 */
export class Mischief implements Trouble {
  readonly #parts: MischiefParts;
  #isOn = true;

  constructor(parts: MischiefParts) {
    this.#parts = parts;
    this.#wait();
  }

  /** All is well from now on, and what was broken is mended. */
  stop(): void {
    const { hub, devices } = this.#parts;
    this.#isOn = false;
    hub.spare();
    hub.mood = 'well';
    hub.writeMs = [0, 0];
    for (const device of devices) {
      device.way.weather = CALM;
      device.isStoreFull = false;
      device.wake();
    }
  }

  #wait(): void {
    const { agenda, chance } = this.#parts;
    agenda.after(chance.between(...BETWEEN_MS), () => {
      if (!this.#isOn) return;
      this.#deeds()[chance.weighted(KINDS)]();
      this.#wait();
    });
  }

  #deeds(): Readonly<Record<Kind, () => void>> {
    const { chance, hub } = this.#parts;
    const device = chance.oneOf(this.#parts.devices);
    return {
      hubDies: () => this.#killHub(),
      hubDiesWriting: () => hub.killAtStep(1 + chance.below(DEADLY_STEPS), this.#death()),
      rough: () => this.#weather(ROUGH, [10_000, 60_000], 'way worse'),
      slow: () => this.#weather(SLOW, [10_000, 40_000], 'way worse'),
      cut: () => this.#weather(CUT, [2000, 120_000], 'way cut'),
      cutOnOneSide: () =>
        this.#weather(chance.oneOf([DEAF, DUMB]), [2000, 30_000], 'way cut on one side'),
      sleep: () => this.#sleep(device),
      loadAnew: () => {
        this.#happened('page loaded anew', device);
        device.loadAnew();
      },
      deviceClock: () => {
        this.#happened('device clock set', device);
        device.setClockBy(chance.between(-86_400_000, 86_400_000));
      },
      hubClock: () => this.#setHubClock(),
      slowDisk: () => this.#slowDisk(),
      fullDisk: () => this.#troubleDisk('full', 'disk full'),
      failingDisk: () => this.#troubleDisk('keeps and fails', 'write failed though kept'),
      fullStore: () => this.#fillStore(device),
    };
  }

  /** Sometimes the next one dies, too, before it is open. */
  #killHub(): void {
    const { chance, hub } = this.#parts;
    hub.kill(this.#death());
    if (chance.happens(0.4)) hub.killAtStep(1 + chance.below(OPENING_STEPS), this.#death());
  }

  #death(): Death {
    return this.#parts.chance.oneOf(['killed', 'power cut']);
  }

  /** Over one way, or over all of them at once as when the switch fails. */
  #weather(weather: Weather, forMs: readonly [number, number], as: Happening): void {
    const { chance, devices } = this.#parts;
    const hit = chance.happens(0.3) ? devices : [chance.oneOf(devices)];
    for (const { way, screenId } of hit) {
      way.weather = weather;
      this.#parts.journal.happened(as, screenId, as);
    }
    this.#later(forMs, () => {
      for (const { way, screenId } of hit) {
        if (way.weather !== weather) continue;
        way.weather = CALM;
        this.#parts.journal.happened('way mended', screenId);
      }
    });
  }

  #sleep(device: Device): void {
    this.#happened('device asleep', device);
    device.sleep();
    this.#later([1000, 100_000], () => {
      this.#happened('device awake', device);
      device.wake();
    });
  }

  #setHubClock(): void {
    const { chance, hubClock, clocks, journal } = this.#parts;
    const byMs = chance.oneOf([1, -1]) * chance.between(3000, 20_000);
    journal.happened('hub clock set', 'hub', `has its clock set by ${(byMs / 1000).toFixed(1)} s`);
    hubClock.setBy(byMs);
    clocks.hubClockSet();
  }

  #slowDisk(): void {
    const { hub, journal, chance } = this.#parts;
    journal.happened('disk slow', 'hub', 'writes slowly');
    hub.writeMs = [1, chance.between(20, 1500)];
    this.#later([5000, 40_000], () => {
      hub.writeMs = [0, 0];
    });
  }

  #troubleDisk(mood: HubMachine['mood'], as: Happening): void {
    const { hub, journal } = this.#parts;
    journal.happened(as, 'hub', as);
    hub.mood = mood;
    this.#later([1000, 20_000], () => {
      hub.mood = 'well';
    });
  }

  #fillStore(device: Device): void {
    this.#happened('device store full', device);
    device.isStoreFull = true;
    this.#later([2000, 30_000], () => {
      device.isStoreFull = false;
    });
  }

  #happened(happening: Happening, { screenId }: Device): void {
    this.#parts.journal.happened(happening, screenId);
  }

  #later(range: readonly [number, number], run: () => void): void {
    const { agenda, chance } = this.#parts;
    agenda.after(chance.between(...range), () => {
      if (this.#isOn) run();
    });
  }
}
