import type { CheckOn, Live } from '../day/index.ts';
import { soldAt, whereKept } from '../day/index.ts';
import type { Text } from '../kernel/index.ts';
import { leftInPans } from './pass-page.ts';
import { passPan } from './pass-pan.ts';

/** What goes once its time is over: how many portions are left of it, and where they are kept. */
export type OldFood = { readonly portions: number; readonly where: Text | null };

/** Of a check of how long food is held; null of any other, and where nothing is known of it. */
export function oldFood(live: Live, on: CheckOn): OldFood | null {
  if (on.kind !== 'discard-time') return null;
  const { built } = live.index.plan;
  const own = built.batches.find(({ id }) => id === on.batch);
  if (!own) return null;
  const batches = built.batches.filter(({ dish }) => dish === own.dish);
  const sold = built.services.reduce((sum, { id }) => sum + soldAt(live.state, id, own.dish), 0);
  const pans = batches.map((batch) => passPan(live, batch));
  const left = leftInPans({ pans, soldBefore: 0, sold }).find(({ pan }) => pan.batch === own.id);
  return left ? { portions: left.left, where: whereKept(live, own.id) } : null;
}
