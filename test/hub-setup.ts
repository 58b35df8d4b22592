import { ensureHubBuilt } from '../server/ensure-built.mjs';

/** Before vitest's first test of the hub: its threads and its processes run what was built. */
export function setup(): void {
  ensureHubBuilt();
}
