import type { Instant, Seconds, Span } from '../kernel/index.ts';
import { seconds, since } from '../kernel/index.ts';
import { resourceId, type Shut } from '../plan/index.ts';
import type { Live } from './live.ts';

/**
 * What an edit of the running day may not count on: who is out, and the racks of a smoker that is
 * down or cold. Until somebody expects it back; where nobody knows, or what was said is past, for
 * as long as the day lasts. How long a cold smoker stays so nobody says, so that what is new is
 * never planned into it; what lies in it cooks on at its pace.
 */
export function shutIn({ state, index, now, nowS }: Live): Shut {
  const { built, kitchen } = index.plan;
  const until = (backAt: Instant | null): Span<Seconds> => {
    const isKnown = backAt !== null && backAt > now;
    const end = isKnown ? since(built.origin, backAt) : built.problem.horizonS;
    return { start: nowS, end: seconds(Math.max(nowS, end)) };
  };
  const { out, spells } = state.happened;
  const hands = [...out].map(
    ([person, { backAt }]) => [resourceId({ kind: 'hand', person }), until(backAt)] as const,
  );
  const racks = spells
    .filter((spell) => spell.until === null)
    .flatMap(({ smoker: id, backAt }) => {
      const smoker = kitchen.smokers.find((each) => each.id === id);
      const slots = smoker?.racks.map(({ slot }) => resourceId({ kind: 'slot', slot })) ?? [];
      return slots.map((slot) => [slot, until(backAt)] as const);
    });
  return new Map([...hands, ...racks]);
}
