import { isDeepStrictEqual } from 'node:util';
import type { Instant } from '../../shared/kernel/index.ts';
import type { ViewMessage } from '../../shared/protocol/index.ts';
import { type Face, type View, viewOf } from '../../shared/view/index.ts';
import type { Device } from './device.ts';
import type { LogWitness } from './log-witness.ts';
import type { Replay } from './replay.ts';
import type { Verdict } from './verdict.ts';

type LastShown = { readonly page: number; readonly seq: number };

/**
 * Draws every view that the hub sends once more, from the log alone, and looks at what the screens
 * then show.
 */
export class ViewWitness {
  readonly #log: LogWitness;
  readonly #replay: Replay;
  readonly #verdict: Verdict;
  /** What the hub sent, and which entry it said it was. */
  readonly #sent = new WeakMap<View, number>();
  readonly #shown = new Map<Device, LastShown>();

  constructor(log: LogWitness, replay: Replay, verdict: Verdict) {
    this.#log = log;
    this.#replay = replay;
    this.#verdict = verdict;
  }

  /** The same message goes to every screen that shows this face; it is looked at once. */
  sent(face: Face, { seq, view }: ViewMessage): void {
    if (this.#sent.has(view)) return;
    this.#sent.set(view, seq);
    this.#log.look();
    if (seq > this.#log.seq) {
      this.#verdict.breaks('confirmed', `a view shows entry ${seq}, of ${this.#log.seq}`);
      return;
    }
    const drawn = viewOf(this.#replay.at(seq, view.at), face);
    this.#verdict.holds('confirmed', isDeepStrictEqual(view, drawn), () => {
      return `the view of entry ${seq} differs from the log: ${difference(view, drawn)}`;
    });
  }

  /** How a face should stand now, whatever was sent. */
  drawNow(face: Face, now: Instant): View {
    return viewOf(this.#replay.at(this.#log.seq, now), face);
  }

  changed(device: Device): void {
    const { sync, page } = device;
    if (!sync?.state.view) return;
    const { view, seq } = sync.state;
    this.#verdict.holds('confirmed', this.#sent.get(view) === seq, () => {
      return `${device.screenId} shows as entry ${seq} what was sent as ${this.#sent.get(view)}`;
    });
    const before = this.#shown.get(device);
    this.#verdict.holds('forward', before?.page !== page || before.seq <= seq, () => {
      return `${device.screenId} showed entry ${before?.seq} and now shows ${seq}`;
    });
    this.#shown.set(device, { page, seq });
  }

  /** What a power cut took must not stand on any wall. */
  lookThrough(): void {
    for (const [{ screenId }, { seq }] of this.#shown) {
      this.#verdict.holds('confirmed', seq <= this.#log.seq, () => {
        return `${screenId} shows entry ${seq}, and the log ends at ${this.#log.seq}`;
      });
    }
  }
}

/** The first place at which two values differ, as a path. */
export function difference(a: unknown, b: unknown, path = ''): string {
  if (isDeepStrictEqual(a, b)) return 'nothing';
  if (!isPlain(a) || !isPlain(b)) return `${path}: ${JSON.stringify(a)} / ${JSON.stringify(b)}`;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  const key = [...keys].find((each) => !isDeepStrictEqual(a[each], b[each])) ?? '';
  return difference(a[key], b[key], `${path}.${key}`);
}

const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
