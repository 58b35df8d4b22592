import type { ComeUp } from './come-up.ts';
import { comeUpOf } from './come-up.ts';
import type { Cooling } from './cooling.ts';
import { coolingsOf, decidingCooling } from './cooling.ts';
import { judgeEndOfCook } from './end-of-cook.ts';
import type { Interruption } from './interruption.ts';
import { interruptionsOf } from './interruption.ts';
import type { Judgement } from './judgement.ts';
import type { Kill } from './kill.ts';
import { killOf } from './kill.ts';
import { limitOf } from './profile.ts';
import type { Watch } from './watch.ts';

/** All that was found in the readings of one piece, before it is judged. */
export type Findings = {
  readonly kill: Kill | null;
  readonly end: Judgement;
  readonly comeUp: ComeUp | null;
  readonly cooling: Cooling | null;
  readonly interruptions: readonly Interruption[];
  /**
   * The readings fall from the first one on: they are of the cooling, and the cook is not in them.
   */
  readonly coolingAlone: boolean;
};

/** Looks for everything that the rules ask of one piece. */
export function findIn(watch: Watch, fatPercent?: number): Findings {
  const { readings, profile, errorK, apartAtMostS } = watch;
  const kill = killOf(watch, fatPercent);
  const lethalAtS = kill?.lethality.metAtS ?? null;
  const band = limitOf(profile, 'come-up');
  const options = { errorK, apartAtMostS, untilS: lethalAtS };
  const cooling = coolingIn(watch, lethalAtS);
  const [first] = readings;
  return {
    kill,
    end: judgeEndOfCook(watch),
    comeUp: band === null ? null : comeUpOf(readings, band, options),
    cooling,
    interruptions: interruptionsOf(readings, lethalAtS),
    coolingAlone: cooling !== null && readings.every(({ tempC }) => tempC <= (first?.tempC ?? 0)),
  };
}

function coolingIn(watch: Watch, notBeforeS: number | null): Cooling | null {
  const { warmest, profile, errorK, apartAtMostS } = watch;
  const limit = limitOf(profile, 'cooling');
  if (limit === null) return null;
  const reheat = limitOf(profile, 'reheat', { only: ({ way }) => way === 'oven' });
  const reheatTo = reheat?.anyOf[0]?.temp;
  const options = { errorK, apartAtMostS, notBeforeS, reheatTo };
  return decidingCooling(coolingsOf(warmest, limit, options));
}
