import { isLate, type Live, type ServiceSpread } from '../day/index.ts';
import type { Instant, Seconds, ServiceId, Text } from '../kernel/index.ts';
import { type HeldBy, heldBy } from './held-by.ts';

/** How a service of the day stands, for whoever answers for it. */
export type ServiceStanding = {
  readonly id: ServiceId;
  readonly name: Text;
  readonly opensAt: Instant;
  readonly closesAt: Instant;
  /** By the plan as it runs, with every cook as long as usual; null: it waits for nothing more. */
  readonly inHandS: Seconds | null;
  /** By how the cooks may come out; null where they leave no doubt. */
  readonly spread: SpreadView | null;
  /** What holds it up, where it will be late, or likely will. */
  readonly heldBy: HeldBy | null;
};

/** The spread of a service, with where it lies on a rule that is common to all of them. */
export type SpreadView = Omit<ServiceSpread, 'service'> & {
  /** Shares of the rule's length from its left: where it may end up, and where nothing is left. */
  readonly mark: {
    readonly low: number;
    readonly likely: number;
    readonly high: number;
    readonly due: number;
  };
};

/** The rule reaches no further than this to either side: what is worse is off its end. */
const FURTHEST_S = 3 * 3600;

/** Every service of the day, in its order. */
export function standingsOf(live: Live, spreads: readonly ServiceSpread[]): ServiceStanding[] {
  const shown = spreadsShown(live, spreads);
  return live.index.plan.built.services.map(({ id, name, opensAt, closesAt }) => {
    const inHandS = live.outlookOf(id)?.inHandS ?? null;
    const spread = shown.get(id) ?? null;
    const heldBy = whatHolds(live, id, spread);
    return { id, name, opensAt, closesAt, inHandS, spread, heldBy };
  });
}

function whatHolds(live: Live, id: ServiceId, spread: SpreadView | null): HeldBy | null {
  const { inHandS, hangsOn = null } = live.outlookOf(id) ?? {};
  if (inHandS === undefined || hangsOn === null) return null;
  if (isLate(inHandS)) return heldBy(live, hangsOn);
  if (spread === null || (spread.likelyS !== null && !isLate(spread.likelyS))) return null;
  const held = heldBy(live, hangsOn);
  // By the plan there is time: work that goes as it should is not what makes it late.
  const isOnTime = held.kind === 'begin' || (held.kind === 'runs' && held.till !== null);
  return isOnTime ? { kind: 'may run long' } : held;
}

/** Spreads to be shown: of services that still wait, where the cooks leave a doubt of a minute. */
function spreadsShown(live: Live, spreads: readonly ServiceSpread[]): Map<ServiceId, SpreadView> {
  const shown = spreads.filter((each) => live.outlookOf(each.service) !== null && isInDoubt(each));
  const within = (s: number | null) =>
    Math.max(-FURTHEST_S, Math.min(FURTHEST_S, s ?? -FURTHEST_S));
  const ends = shown.flatMap(({ lowS, highS }) => [within(lowS), within(highS)]);
  const [from, to] = [Math.min(0, ...ends), Math.max(0, ...ends)];
  const share = (s: number | null) => (within(s) - from) / Math.max(60, to - from);
  return new Map(
    shown.map(({ service, lowS, likelyS, highS }) => {
      const mark = { low: share(lowS), likely: share(likelyS), high: share(highS), due: share(0) };
      return [service, { lowS, likelyS, highS, mark }];
    }),
  );
}

const isInDoubt = ({ lowS, highS }: ServiceSpread) =>
  highS === null || lowS === null || highS - lowS >= 60;
