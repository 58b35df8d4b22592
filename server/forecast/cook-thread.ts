import { Worker } from 'node:worker_threads';
import type { ForecastAsk, Forecasting } from '../../shared/cook/index.ts';
import { builtHub } from '../built.mjs';

/** Foresees cooks beside the hub's own thread, one at a time. */
export type CookThread = {
  /**
   * Rejects where the thread broke or was closed; the next begins it anew. What is asked under the
   * same name again, with nothing new but what is heard of its smoker, is only weighed anew.
   */
  foresee(ask: ForecastAsk, keep?: KeptUnder): Promise<Forecasting>;
  close(): Promise<void>;
};

/** `key` is of all that was asked but what was heard. */
export type KeptUnder = { readonly name: string; readonly key: string };

/** What the thread is sent. */
export type Sent = ForecastAsk & { readonly keep: KeptUnder | undefined };

/** The thread is begun with the first cook that is asked about. */
export function createCookThread(): CookThread {
  type Asked = { resolve(found: Forecasting): void; reject(fault: unknown): void };
  let worker: Worker | null = null;
  const asked: Asked[] = [];

  function thread(): Worker {
    if (worker) return worker;
    const begun = new Worker(builtHub('forecast-work'));
    begun.on('message', (found: Forecasting) => asked.shift()?.resolve(found));
    begun.on('error', (fault) => fail(begun, fault));
    begun.on('exit', () => fail(begun, new Error('the thread that foresees cooks has ended')));
    begun.unref();
    worker = begun;
    return begun;
  }

  function fail(of: Worker, fault: unknown) {
    if (worker !== of) return;
    worker = null;
    for (const each of asked.splice(0)) each.reject(fault);
  }

  return {
    foresee: ({ piece, smoker, readings, options }, keep) =>
      new Promise((resolve, reject) => {
        asked.push({ resolve, reject });
        const sent: Sent = { piece, smoker, readings, options, keep };
        thread().postMessage(sent);
      }),
    async close() {
      const last = worker;
      if (last) fail(last, new Error('closed'));
      await last?.terminate();
    },
  };
}
