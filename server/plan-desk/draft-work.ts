import { parentPort } from 'node:worker_threads';
import { must } from '../../shared/kernel/index.ts';
import { type NearestAsk, nearestOf } from '../nearest.ts';
import { type DraftAsk, draft } from './draft.ts';

/** Runs in a thread of its own: one plan at a time is tried here, and taps are not held up. */
const port = must(parentPort, 'a thread beside another');
port.on('message', (asked: DraftAsk | NearestAsk) => {
  port.postMessage('before' in asked ? nearestOf(asked) : draft(asked));
});
