import { quantiles } from '../cook/index.ts';
import type { Seconds, ServiceId } from '../kernel/index.ts';
import { hours, must, seconds } from '../kernel/index.ts';
import type { InHand } from '../schedule/index.ts';
import { inHandIf } from '../schedule/index.ts';
import { chancesOf } from './chances.ts';
import { fireDoubts } from './fire-doubts.ts';
import type { Live } from './live.ts';
import { promisesOn } from './outlook.ts';

/**
 * What a service may have in hand by how its cooks come out: in one of ten cases less than the
 * low, in one of ten more than the high; null where it is as good as never.
 */
export type ServiceSpread = {
  readonly service: ServiceId;
  readonly lowS: Seconds | null;
  readonly likelyS: Seconds | null;
  readonly highS: Seconds | null;
};

/** In so many cases the day is worked out anew: enough for one in ten, four times over (judged). */
const CASES = 40;

/** A service so much too late is as good as never. */
const NEVER_S = hours(12);

/**
 * The spread of each service that still waits for a batch: the day is worked out in a few dozen
 * cases, each on a copy, with every cook that is not over as long as it is in that case, and what
 * each service then has in hand is looked at. Of what else may run long nothing is known. Work
 * that can be put down after each case; the day it is about is as it was when it was begun.
 */
export function* spreading(live: Live, cases = CASES): Generator<void, readonly ServiceSpread[]> {
  const { state, index, now } = live;
  const doubts = fireDoubts(state, index, now);
  const begun = live.timeline.fork();
  const things = doubts.flatMap(({ chances }) => chances);
  // Of a load with several stages the last says the most of its smoker.
  const chances = chancesOf([...new Map(things.map((each) => [each.name, each])).values()], cases);
  const promised = [...promisesOn(begun, index)];
  const goals = promised.map(([, each]) => each);
  const found: InHand[][] = [];
  for (let place = 0; place < cases; place++) {
    const score = (name: string) => must(chances.get(name)?.[place], name);
    const lengths = doubts.map(({ stage, lengthS }) => [stage, lengthS(score)] as const);
    found.push(inHandIf(begun, lengths, goals));
    yield;
  }
  return promised.map(([service], which) => {
    const values = found.map((inCase) => must(inCase[which], service).inHandS);
    const [lowS, likelyS, highS] = quantiles(values, [0.1, 0.5, 0.9]).map(sooner);
    return { service, lowS: lowS ?? null, likelyS: likelyS ?? null, highS: highS ?? null };
  });
}

const sooner = (inHandS: number) => (inHandS < -NEVER_S ? null : seconds(Math.round(inHandS)));
