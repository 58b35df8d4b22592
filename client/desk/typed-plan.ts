import type { CookPlan } from '../../shared/protocol/index.ts';

const KEY = 'coalface typed plan';

/** A plan that somebody has begun to change at this device; it outlives the page. */
export function typedPlan(): CookPlan | null {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? 'null') as CookPlan | null;
  } catch {
    // A private window keeps nothing, or what is kept is no plan: then nothing was typed.
    return null;
  }
}

/** Keeps what is typed; null once it was taken or given up. */
export function keepTyped(plan: CookPlan | null): void {
  try {
    if (plan) localStorage.setItem(KEY, JSON.stringify(plan));
    else localStorage.removeItem(KEY);
  } catch {
    // It stays on the page for as long as that is open.
  }
}
