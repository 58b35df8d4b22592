import type { RunResult } from './run.ts';
import { PROMISES } from './verdict.ts';

const LAST_LINES = 30;

/**
 * A broken run for somebody who has never seen one: what broke, the way there, and how to live that
 * day again.
 */
export function reportOf(seed: number, { broken, journal }: RunResult): string {
  if (!broken) return `seed ${seed} kept every promise`;
  const { promise, found, about } = broken;
  const its = about === null ? [] : journal.lines.filter((line) => isAbout(line, about));
  return [
    `seed ${seed} broke a promise: ${PROMISES[promise]}.`,
    `Found: ${found}`,
    ...(its.length > 0 ? [`All that was written of ${about}:`, ...its.map(indented)] : []),
    `The last ${LAST_LINES} lines before:`,
    ...journal.lines.slice(-LAST_LINES).map(indented),
    `Alone: SIM_SEED=${seed} npx vitest run test/sim/seeds`,
  ].join('\n');
}

const indented = (line: string) => `  ${line}`;

/** Whether a line names this command, and not one whose name only begins alike. */
const isAbout = (line: string, command: string) =>
  line.split(/[^\w-]+/).some((word) => word === command);
