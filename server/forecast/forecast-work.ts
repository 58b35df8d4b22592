import { parentPort } from 'node:worker_threads';
import { type ForecastAsk, forecast } from '../../shared/cook/index.ts';
import { must } from '../../shared/kernel/index.ts';

/** Runs in a thread of its own: one load at a time is foreseen here, and taps are not held up. */
const port = must(parentPort, 'a thread beside another');
port.on('message', ({ piece, smoker, readings, options }: ForecastAsk) =>
  port.postMessage(forecast(piece, smoker, readings, options)),
);
