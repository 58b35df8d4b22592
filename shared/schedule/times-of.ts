import { must, seconds } from '../kernel/index.ts';
import { WAITING } from './facts.ts';
import type { Live } from './live.ts';
import { at } from './network.ts';
import type { Stage, Times } from './timeline-types.ts';

const STAGES: readonly Stage[] = ['waiting', 'running', 'done'];

/** The times of one activity as they stand, by its number. */
export function timesOf({ facts, earliest, latest }: Live, activity: number): Times {
  const stage = at(facts.stage, activity);
  const startS = at(earliest.rule.timeS, activity * 2);
  const endS = at(earliest.rule.timeS, activity * 2 + 1);
  const latestStartS = 0 - at(latest.rule.timeS, activity * 2 + 1);
  const latestEndS = 0 - at(latest.rule.timeS, activity * 2);
  const endSlackS = latestEndS - endS;
  const slackS = stage === WAITING ? Math.min(endSlackS, latestStartS - startS) : endSlackS;
  return {
    stage: must(STAGES[stage], 'a stage'),
    startS: seconds(startS),
    endS: seconds(endS),
    latestStartS: seconds(latestStartS),
    latestEndS: seconds(latestEndS),
    slackS: seconds(slackS),
  };
}
