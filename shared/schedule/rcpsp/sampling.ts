import type { Random } from '../../kernel/index.ts';
import { cell } from './cell.ts';
import { heads, mirrored, type Precedence } from './precedence.ts';

/**
 * An activity list drawn at random with a liking for what must be done soonest: of those whose
 * predecessors are in, one with a chance that grows with how much later than it the last of them
 * may finish (regret-based biased random sampling by latest finish times; A. Drexl 1991,
 * R. Kolisch, EJOR 90, 1996). The liking is weak, a square root, since a search that begins with
 * more different lists ends better.
 */
export function sampler(precedence: Precedence, random: Random): () => Int32Array {
  const { durations, before, after } = precedence;
  const size = durations.length;
  // Latest finish times counted back from the end of the project: small is urgent.
  const tails = heads(mirrored(precedence));
  const indegree = Int32Array.from(
    { length: size },
    (_, i) => cell(before.first, i + 1) - cell(before.first, i),
  );
  const ready = new Int32Array(size);
  const weights = new Float64Array(size);
  return () => {
    const list = new Int32Array(size);
    const waitsFor = indegree.slice();
    let readies = 0;
    for (let i = 0; i < size; i++) if (cell(waitsFor, i) === 0) ready[readies++] = i;
    for (let place = 0; place < size; place++) {
      const chosen = drawn(ready, readies, tails, weights, random);
      const activity = cell(ready, chosen);
      ready[chosen] = cell(ready, --readies);
      list[place] = activity;
      for (let i = cell(after.first, activity); i < cell(after.first, activity + 1); i++) {
        const next = cell(after.list, i);
        waitsFor[next] = cell(waitsFor, next) - 1;
        if (cell(waitsFor, next) === 0) ready[readies++] = next;
      }
    }
    return list;
  };
}

function drawn(
  ready: Int32Array,
  readies: number,
  tails: Int32Array,
  weights: Float64Array,
  random: Random,
): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < readies; i++) least = Math.min(least, cell(tails, cell(ready, i)));
  let sum = 0;
  for (let i = 0; i < readies; i++) {
    const regret = cell(tails, cell(ready, i)) - least + 1;
    const weight = Math.sqrt(regret);
    weights[i] = weight;
    sum += weight;
  }
  let left = random() * sum;
  for (let i = 0; i < readies - 1; i++) {
    left -= weights[i] ?? 0;
    if (left < 0) return i;
  }
  return readies - 1;
}
