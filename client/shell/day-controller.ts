import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Instant } from '../../shared/kernel/index.ts';
import type { Drawn, Mark, View } from '../../shared/view/index.ts';
import { drawnView } from '../../shared/view/index.ts';
import type { Language, Say } from '../../shared/words/index.ts';
import { onceAFrame } from '../parts/ink.ts';
import type { Sync, SyncState } from '../sync/index.ts';
import { OvertakenRefusals } from './overtaken.ts';
import { ownZone } from './own-zone.ts';
import { SPEAKS } from './speak.ts';

const TICK_MS = 1000;

/**
 * Keeps a wall drawn: at each word from the hub and each tap, though no more than once a frame, and
 * once a second for what only time moves.
 */
export class DayController<V extends View> implements ReactiveController {
  readonly sync: Sync;
  readonly #host: ReactiveControllerHost;
  #language: Language;
  readonly #isOurs: (view: View) => view is V;
  readonly #overtaken: OvertakenRefusals;
  #said: Say | null = null;
  #stop: () => void = () => {};
  #ticking: ReturnType<typeof setInterval> | undefined;

  constructor(
    host: ReactiveControllerHost,
    parts: { sync: Sync; language: Language; isOurs: (view: View) => view is V },
  ) {
    this.#host = host;
    this.sync = parts.sync;
    this.#language = parts.language;
    this.#isOurs = parts.isOurs;
    this.#overtaken = new OvertakenRefusals(parts.sync);
    host.addController(this);
  }

  hostConnected(): void {
    this.#stop = this.sync.subscribe(onceAFrame(() => this.#host.requestUpdate()));
    this.#ticking = setInterval(() => this.#tick(), TICK_MS);
    addEventListener(SPEAKS, this.#speaks);
  }

  hostDisconnected(): void {
    this.#stop();
    clearInterval(this.#ticking);
    removeEventListener(SPEAKS, this.#speaks);
  }

  readonly #speaks = (event: Event): void => {
    this.#language = (event as CustomEvent<Language>).detail;
    this.#host.requestUpdate();
  };

  #tick(): void {
    this.#overtaken.drop(performance.now());
    this.#host.requestUpdate();
  }

  get state(): SyncState {
    return this.sync.state;
  }

  get now(): Instant {
    return this.sync.hubNow();
  }

  /** The hub's own view, without this screen's taps. */
  get hub(): V | null {
    const { view } = this.state;
    return view && this.#isOurs(view) ? view : null;
  }

  /** What is to be drawn now; null before the first view. */
  get drawn(): Drawn<V> | null {
    const { pending, aloneSince } = this.state;
    const { hub, now } = this;
    return hub && drawnView(hub, pending, { now, isAlone: aloneSince !== null });
  }

  /** The same object until any of it changes: what it is handed to need not be drawn anew. */
  get say(): Say {
    const { zone, clock, temperature, weight } = this.hub ?? {
      ...unknownKitchen,
      zone: ownZone(),
    };
    const say = { language: this.#language, zone, clock, temperature, weight };
    if (!this.#said || !isSame(say, this.#said)) this.#said = say;
    return this.#said;
  }
}

const isSame = (a: Say, b: Say) =>
  Object.entries(a).every(([name, value]) => b[name as keyof Say] === value);

/** Before the hub has said how its kitchen measures. */
const unknownKitchen = { clock: '24 h', temperature: '°C', weight: 'kg' } as const;

/** How far the last tap on something has come; null when the hub has it. */
export const markOf = ({ marks }: Drawn, key: string): Mark | null => marks.get(key) ?? null;

/** The service that is nearest to falling short. */
export function worstService({ services }: View) {
  const byMargin = [...services].sort((a, b) => a.inHandS - b.inHandS);
  return byMargin[0] ?? null;
}
