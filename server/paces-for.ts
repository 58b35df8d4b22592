import { type DayState, handTimesAfter, pacesOf } from '../shared/day/index.ts';
import type { DayFiles } from './day-files.ts';

/**
 * How fast the hands of a kitchen are, to plan that day by. The day that runs goes on as it was
 * planned; another is planned by all that was done up to now.
 */
export function pacesFor(day: string, state: DayState): Pick<DayFiles, 'paces'> {
  const isRunning = state.plan?.built.day === day;
  const paces = isRunning ? (state.plan?.paces ?? []) : pacesOf(handTimesAfter(state));
  return paces.length > 0 ? { paces } : {};
}
