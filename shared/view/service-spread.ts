import type { Live, ServiceSpread } from '../day/index.ts';

/** The spread of a service, with where it lies on a rule that is common to all of them. */
export type SpreadView = ServiceSpread & {
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

/** Spreads to be shown: of services that still wait, where the cooks leave a doubt of a minute. */
export function spreadsShown(live: Live, spreads: readonly ServiceSpread[]): SpreadView[] {
  const shown = spreads.filter((each) => live.outlookOf(each.service) !== null && isInDoubt(each));
  const within = (s: number | null) =>
    Math.max(-FURTHEST_S, Math.min(FURTHEST_S, s ?? -FURTHEST_S));
  const ends = shown.flatMap(({ lowS, highS }) => [within(lowS), within(highS)]);
  const [from, to] = [Math.min(0, ...ends), Math.max(0, ...ends)];
  const share = (s: number | null) => (within(s) - from) / Math.max(60, to - from);
  return shown.map((each) => ({
    ...each,
    mark: {
      low: share(each.lowS),
      likely: share(each.likelyS),
      high: share(each.highS),
      due: share(0),
    },
  }));
}

const isInDoubt = ({ lowS, highS }: ServiceSpread) =>
  highS === null || lowS === null || highS - lowS >= 60;
