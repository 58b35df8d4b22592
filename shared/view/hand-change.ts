import type { Side, TaskView } from './view.ts';

/**
 * Where raw and clean would meet at a wall: hands that come off raw meat to clean work, clean work
 * on a panel that raw hands touch, or raw work on a panel that is kept for clean hands.
 */
export type HandChange = 'off-raw' | 'raw-panel' | 'clean-panel';

/**
 * What has to be said at a line before hands go on; null where nothing meets. `panel`: for whose
 * hands this panel is set up, null for anybody's.
 */
export function handChange(
  { side, offRaw, state }: Pick<TaskView, 'side' | 'offRaw' | 'state'>,
  panel: Side | null,
): HandChange | null {
  if (state === 'done' || state === 'waiting') return null;
  if (panel === 'raw' && side === 'clean') return 'raw-panel';
  if (panel === 'clean' && side === 'raw') return 'clean-panel';
  return offRaw ? 'off-raw' : null;
}
