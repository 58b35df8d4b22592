import { ensureBuilt } from '../server/ensure-built.mjs';

/** Before playwright's first test, and in one place: two workers would build over each other. */
export default function setup(): void {
  ensureBuilt();
}
