import { html } from 'lit';
import type { LaidRow } from '../../shared/view/index.ts';
import { lanesOf } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { deskWords } from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';
import '../parts/choice-strip.ts';
import { isOfRacks } from './chart-drawing.ts';

/** Of a tap. */
export const ZOOM = 1.5;

/** Where its reader is on the chart. */
export type ChartSight = {
  readonly rows: readonly LaidRow[];
  readonly lanesInView: readonly [first: number, last: number];
  readonly isNarrow: boolean;
  /** The clock. */
  readonly isFollowing: boolean;
};

type Deeds = {
  readonly zoom: (factor: number) => void;
  readonly toNow: () => void;
  readonly scrollUp: (lane: number) => void;
};

/** Boxes: nearer, further, to now, and to the half of the rows that is out of sight. */
export function footDrawing(sight: ChartSight, deeds: Deeds, say: Say) {
  const words = deskWords[say.language];
  const toNow = { label: words.toNow, choose: deeds.toNow };
  const choices: Choice[] = [
    { label: '−', name: words.further, choose: () => deeds.zoom(ZOOM) },
    { label: '+', name: words.nearer, choose: () => deeds.zoom(1 / ZOOM) },
    // On a phone it has room only while it is of use.
    ...(sight.isNarrow && sight.isFollowing ? [] : [toNow]),
    ...otherHalf(sight, deeds, say),
  ];
  const { dayChart: name } = words;
  return html`<slot name="foot"></slot>
    <choice-strip .say=${say} .name=${name} .choices=${choices}></choice-strip>`;
}

/** To the racks where none is in sight, and back. */
function otherHalf(
  { rows, lanesInView: [first, last] }: ChartSight,
  { scrollUp }: Deeds,
  say: Say,
): Choice[] {
  const words = deskWords[say.language];
  if (lanesOf(rows) <= last - first) return [];
  const top = rows.find(isOfRacks)?.top ?? 0;
  if (top > last - 1.5) return [{ label: words.toSmokers, choose: () => scrollUp(top) }];
  return first > 0.5 ? [{ label: words.toCrew, choose: () => scrollUp(0) }] : [];
}
