import { parentPort } from 'node:worker_threads';
import { must } from '../../shared/kernel/index.ts';
import { nearestOf } from '../nearest.ts';
import { conflictIn } from './conflict.ts';
import { draft } from './draft.ts';
import type { Asked } from './drafts.ts';
import { mendNow, stillMendsNow } from './mend.ts';

/** Runs in a thread of its own: one thing at a time is tried here, and taps are not held up. */
const port = must(parentPort, 'a thread beside another');
port.on('message', (asked: Asked) => port.postMessage(worked(asked)));

function worked(asked: Asked) {
  switch (asked.kind) {
    case 'draft':
      return draft(asked.ask);
    case 'nearest':
      return nearestOf(asked.ask);
    case 'conflict':
      return conflictIn(asked.ask);
    case 'mend':
      return mendNow(asked.ask);
    default:
      return stillMendsNow(asked.ask);
  }
}
