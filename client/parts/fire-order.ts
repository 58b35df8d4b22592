import type { Instant } from '../../shared/kernel/index.ts';
import type { SmokerDrawing } from '../../shared/view/index.ts';
import { fireWords, nearClock, type Say } from '../../shared/words/index.ts';

/**
 * What is to be done about a fire that fails or that nobody has read, by whom and when; empty where
 * all is well.
 */
export function fireOrder(
  { spell, unread }: Pick<SmokerDrawing, 'spell' | 'unread'>,
  now: Instant,
  say: Say,
): string {
  if (!spell && !unread) return '';
  const fire = fireWords[say.language];
  const asked = spell?.call ?? unread;
  const what = !spell ? fire.readAir : spell.kind === 'cold' ? fire.tendFire : fire.lightAgain;
  return asked?.name ? fire.called(asked.name, what, nearClock(asked.byAt, now, say)) : what;
}
