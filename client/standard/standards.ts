import type { StandardsShown } from '../../shared/view/index.ts';

/** As last read: a wall that is alone still shows what it has read before. */
let kept: StandardsShown | null = null;

/** The standards of the hub's kitchen; null where it cannot be reached and never was. */
export async function readStandards(): Promise<StandardsShown | null> {
  try {
    const response = await fetch('/standards.json');
    if (response.ok) kept = await response.json();
  } catch {
    // What was read before is as good: standards change with a plan, not with the hour.
  }
  return kept;
}
