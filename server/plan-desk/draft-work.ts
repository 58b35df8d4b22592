import { parentPort } from 'node:worker_threads';
import { must } from '../../shared/kernel/index.ts';
import { makePlan } from '../adopt.ts';
import { nearestOf } from '../nearest.ts';
import { conflictIn } from './conflict.ts';
import { draft } from './draft.ts';
import type { Sent } from './drafts.ts';
import { mendNow, stillMendsNow } from './mend.ts';

/** Runs in a thread of its own: one thing at a time is tried here, and taps are not held up. */
const port = must(parentPort, 'a thread beside another');
port.on('message', (sent: Sent) => port.postMessage(worked(sent)));

function worked(asked: Sent) {
  const shouldStop = () => Atomics.load(asked.stop, 0) === 1;
  switch (asked.kind) {
    case 'draft':
      return draft(asked.ask, shouldStop);
    case 'nearest':
      return nearestOf(asked.ask, undefined, shouldStop);
    case 'conflict':
      return conflictIn(asked.ask, undefined, shouldStop);
    case 'make':
      return makePlan(asked.ask.files, asked.ask.version, { before: asked.ask.before });
    case 'mend':
      return mendNow(asked.ask);
    default:
      return stillMendsNow(asked.ask);
  }
}
