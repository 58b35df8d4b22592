import { parentPort } from 'node:worker_threads';
import type { Forecasting } from '../../shared/cook/index.ts';
import { must } from '../../shared/kernel/index.ts';
import type { Sent } from './cook-thread.ts';
import { Keeper } from './keeper.ts';

/** Runs in a thread of its own: one load at a time is foreseen here, and taps are not held up. */
const port = must(parentPort, 'a thread beside another');
const keeper = new Keeper();
port.on('message', (sent: Sent) => {
  const found: Forecasting = keeper.foresee(sent);
  port.postMessage(found);
});
