import type { Instant } from '../kernel/index.ts';
import type { PassDish, PassPan, PassService } from './pass-dish.ts';
import { type RunsOut, runsOut } from './runs-out.ts';

/** A dish on the pass: what can be sold of it, what stands behind, and how long that lasts. */
export type PassLine = {
  readonly dish: PassDish;
  /** Portions that can be handed out. */
  readonly ready: number;
  /** Portions in the cabinet that are still to be cut or set out. */
  readonly held: number;
  /** Where neither is there: before the first of it, between two batches, or after the last. */
  readonly empty: 'before' | 'between' | 'after' | null;
  /** What is left, and what must go first comes first. */
  readonly pans: readonly LeftInPan[];
  readonly next: PassPan | null;
  readonly runsOut: RunsOut | null;
};

/** A batch with the portions that are left of it. */
export type LeftInPan = { readonly pan: PassPan; readonly left: number };

/**
 * The line of a dish at a moment. What has been sold is taken from what must go first; what a
 * hand has called empty holds nothing, whatever was counted.
 */
export function passLine(dish: PassDish, service: PassService, now: Instant): PassLine {
  const pans = leftInPans(dish);
  const open = pans.filter(({ pan }) => !pan.barred);
  const sumOf = (stage: PassPan['stage']) =>
    open.filter(({ pan }) => pan.stage === stage).reduce((sum, { left }) => sum + left, 0);
  const coming = dish.pans.filter(({ stage, isEmptied }) => stage === 'coming' && !isEmptied);
  return {
    dish,
    ready: sumOf('ready'),
    held: sumOf('held'),
    empty: pans.length > 0 ? null : whenEmpty(dish, coming),
    pans,
    next: coming[0] ?? null,
    runsOut: dish.soldOutAt === null ? runsOut({ dish, pans: open, coming }, service, now) : null,
  };
}

function whenEmpty({ pans }: PassDish, coming: readonly PassPan[]): PassLine['empty'] {
  if (coming.length === 0) return 'after';
  return coming.length === pans.length ? 'before' : 'between';
}

/**
 * What is left in each pan after what has been sold, and what must go first comes first. What was
 * counted after a pan could be sold from no more came out of another.
 */
export function leftInPans({
  pans,
  soldBefore,
  sold,
}: Pick<PassDish, 'pans' | 'soldBefore' | 'sold'>): LeftInPan[] {
  const here = pans.filter(({ stage }) => stage !== 'coming').sort(byGoing);
  let taken = 0;
  const take = ({ portions, soldTill }: PassPan): number => {
    const most = Math.min(soldBefore + sold, soldTill ?? Number.POSITIVE_INFINITY);
    const its = Math.min(portions, Math.max(0, most - taken));
    taken += its;
    return its;
  };
  // What a hand says is empty went out whole; what was thrown out sold in its turn till then.
  const wentOut = ({ isEmptied, soldTill }: PassPan) => isEmptied && soldTill === null;
  for (const pan of here) if (wentOut(pan)) take(pan);
  return here
    .filter((pan) => !wentOut(pan))
    .flatMap((pan): LeftInPan[] => {
      const left = pan.portions - take(pan);
      return left > 0 && !pan.isEmptied ? [{ pan, left }] : [];
    });
}

/** What is cut goes before what is whole, and of these what may not be held for long. */
function byGoing(a: PassPan, b: PassPan): number {
  if (a.stage !== b.stage) return a.stage === 'ready' ? -1 : 1;
  return until(a) - until(b) || a.readyAt - b.readyAt;
}

const until = ({ heldUntil }: PassPan) => heldUntil ?? Number.MAX_SAFE_INTEGER;
