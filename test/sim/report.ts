import type { RunResult } from './run.ts';
import { PROMISES } from './verdict.ts';

/**
 * A broken run as somebody reads it who has never seen one: what broke, the way there, and how to
 * see it again.
 */
export function reportOf(seed: number, { broken, journal }: RunResult): string {
  if (!broken) return `seed ${seed} kept every promise`;
  return [
    `seed ${seed} broke a promise: ${PROMISES[broken.promise]}.`,
    `Found: ${broken.found}`,
    `The last ${journal.lines.length} steps before:`,
    ...journal.lines.map((line) => `  ${line}`),
    `Alone: SIM_SEED=${seed} npx vitest run test/sim`,
  ].join('\n');
}
