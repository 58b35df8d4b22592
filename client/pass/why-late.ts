import type { Instant } from '../../shared/kernel/index.ts';
import type { ServiceOutlook } from '../../shared/view/index.ts';
import { type Say, sayHeldBy, sayInHand } from '../../shared/words/index.ts';
import type { SeenWall } from '../shell/seen-size.ts';
import { isNarrow } from './room.ts';

/** In minutes of arc: a small letter, and what stands beside the service in a head. */
const LETTER = 12.2;
const BESIDE = 190;
/** A small row: where a finger asks for so high a head it has two of them. */
const ROW = 30;

type Head = { readonly name: string; readonly say: Say; readonly now: Instant };

/**
 * What the service that a head tells of waits for, in as many words as have room behind how late it
 * is; nothing where it is not late.
 */
export function whyLate(outlook: ServiceOutlook | null, wall: SeenWall, head: Head): string {
  const { name, say, now } = head;
  if (!outlook?.heldBy) return '';
  const [whole, short] = sayHeldBy(outlook.heldBy, now, say);
  const { widthPx, touchPx, arcminPx } = wall;
  if (isNarrow(wall) || touchPx >= 2 * ROW * arcminPx) return whole;
  const beside = name.length * 1.25 + sayInHand(outlook, say, now).length + whole.length;
  return beside * LETTER <= widthPx / arcminPx - BESIDE ? whole : short;
}
