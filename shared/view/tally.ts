import type { TaskView } from './view.ts';

/** What is counted with one stroke: a piece, or a tray of them. */
export type Tally = {
  readonly strokes: number;
  /** Of these, such as the hub already has. */
  readonly keptStrokes: number;
  /** Pieces that are done with one stroke more; the last tray may hold fewer. */
  readonly next: number;
  /** Pieces that are done with one stroke less. */
  readonly before: number;
};

/**
 * How work that is counted in strokes goes on from `counted` pieces, whoever counted them, and
 * however: a tray that is begun has its stroke, and one more stroke fills it.
 */
export function tallyOf(
  { pieces, counted, trayHolds = 1 }: Pick<TaskView, 'pieces' | 'counted' | 'trayHolds'>,
  kept: number,
): Tally {
  const strokes = Math.ceil(counted / trayHolds);
  return {
    strokes,
    keptStrokes: kept >= counted ? strokes : Math.floor(kept / trayHolds),
    next: Math.min(pieces, (Math.floor(counted / trayHolds) + 1) * trayHolds),
    before: Math.max(0, (strokes - 1) * trayHolds),
  };
}
