/**
 * Every kind of thing that a run can bring about; what never happens in any run is not tested by
 * one.
 */
export const HAPPENINGS = [
  'message lost',
  'message doubled',
  'message overtaken',
  'message from a line that is gone',
  'line opened',
  'line found dead',
  'hub opened',
  'hub killed',
  'hub killed in a write',
  'hub killed while opening',
  'power cut',
  'disk slow',
  'disk full',
  'write failed though kept',
  'hub clock set',
  'way worse',
  'way cut',
  'way cut on one side',
  'way mended',
  'page loaded anew',
  'device asleep',
  'device awake',
  'device clock set',
  'device store full',
  'tapped',
  'tapped alone',
  'tapped twice',
  'tapped wrong',
  'moved a load',
  'asked what a move does',
  'something is away',
  'asked what mends the day',
  'day mended',
  'mend refused',
  'mend taken back',
  'looked at',
  'found wrong',
  'put right',
  'sold',
  'refused for a limit',
  'answered yes',
  'answered no',
  'answered again',
] as const;
export type Happening = (typeof HAPPENINGS)[number];

/** What happened in a run, in words, and how often each kind of it did. */
export class Journal {
  readonly #nowMs: () => number;
  readonly #lines: string[] = [];
  readonly #counts = new Map<Happening, number>();
  #digest = 0;

  constructor(nowMs: () => number) {
    this.#nowMs = nowMs;
  }

  /** All of it, oldest first. */
  get lines(): readonly string[] {
    return this.#lines;
  }

  /** A number that two runs share only if the same was written in both. */
  get digest(): number {
    return this.#digest;
  }

  write(who: string, what: string): void {
    const line = `${clockText(this.#nowMs())}  ${who.padEnd(8)}  ${what}`;
    this.#lines.push(line);
    for (let i = 0; i < line.length; i++) {
      this.#digest = (Math.imul(this.#digest, 31) + line.charCodeAt(i)) | 0;
    }
  }

  count(happening: Happening): void {
    this.#counts.set(happening, this.countOf(happening) + 1);
  }

  /** Writes it down and counts it. */
  happened(happening: Happening, who: string, what: string = happening): void {
    this.count(happening);
    this.write(who, what);
  }

  countOf(happening: Happening): number {
    return this.#counts.get(happening) ?? 0;
  }
}

/** @example clockText(61_250.4) //=> '0:01:01.250' */
export function clockText(ms: number): string {
  const digits = (value: number, count: number) => String(Math.floor(value)).padStart(count, '0');
  const [hours, minutes, seconds] = [ms / 3_600_000, (ms / 60_000) % 60, (ms / 1000) % 60];
  const clock = [digits(hours, 1), digits(minutes, 2), digits(seconds, 2)].join(':');
  return `${clock}.${digits(ms % 1000, 3)}`;
}
