import { constants, setPriority } from 'node:os';
import { parentPort } from 'node:worker_threads';
import type { Forecasting } from '../../shared/cook/index.ts';
import { must } from '../../shared/kernel/index.ts';
import type { Sent } from './cook-thread.ts';
import { Keeper } from './keeper.ts';

/** Runs in a thread of its own: one load at a time is foreseen here, and taps are not held up. */
const port = must(parentPort, 'a thread beside another');
// Where cores are few a tap goes first. Elsewhere than on Linux this would be of the whole hub.
if (process.platform === 'linux') setPriority(0, constants.priority.PRIORITY_BELOW_NORMAL);
const keeper = new Keeper();
port.on('message', (sent: Sent) => {
  const found: Forecasting = keeper.foresee(sent);
  port.postMessage(found);
});
