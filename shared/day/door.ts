import type { Instant, Seconds, SmokerId } from '../kernel/index.ts';
import { after, minutes, seconds } from '../kernel/index.ts';

/** Somebody had the door of a smoker open for so long, until just now; 0: it was not open. */
export type DoorFact = {
  readonly kind: 'doorOpened';
  readonly smoker: SmokerId;
  readonly openS: Seconds;
};

/** The same, asked for. */
export type DoorIntent = {
  readonly kind: 'doorOpen';
  readonly smoker: SmokerId;
  readonly openS: Seconds;
};

/** An opening that somebody told: when it began, and for how long. */
export type Door = { readonly smoker: SmokerId; readonly at: Instant; readonly openS: Seconds };

/** Who taps twice so soon tells one opening anew. */
const SAME_WITHIN_MS = minutes(10) * 1000;

/** The doors after one more word; it replaces what was said of the same opening. */
export function doorsAfter(
  doors: readonly Door[],
  { smoker, openS, at }: DoorFact & { readonly at: Instant },
): readonly Door[] {
  const ended = ({ at: began, openS: lasted }: Door) => after(began, lasted);
  const others = doors.filter(
    (door) => door.smoker !== smoker || Math.abs(at - ended(door)) > SAME_WITHIN_MS,
  );
  if (openS === 0) return others;
  return [...others, { smoker, at: after(at, seconds(-openS)), openS }];
}
