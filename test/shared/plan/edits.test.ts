import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../../../shared/kernel/index.ts';
import { type CookPlan, edited, type PlanEdit } from '../../../shared/plan/index.ts';
import { dayWith, filesWith, onePlan } from './three-elms.ts';

const file = onePlan({ sales: { by: 'shape', portions: 60, shape: 'even' } });
const built = dayWith({ cookPlan: file });
const { cookPlan } = filesWith({ cookPlan: file });
const at = { service: 'noon', dish: 'ribs' };
const after = (plan: CookPlan, edit: PlanEdit) => must(edited(plan, edit, built), edit.kind);
const lineOf = (plan: CookPlan) => must(plan.services[0]?.dishes[0], 'a line');

/** The same with its batches written out, which a plan by its sales leaves to the builder. */
const named = (() => {
  const added = after(cookPlan, { kind: 'addBatch', ...at, portions: 1, ready: '12:30' });
  const last = must(lineOf(added).batches?.at(-1), 'a batch').number;
  return after(added, { kind: 'dropBatch', ...at, number: last });
})();

describe('an edit of a cook plan', () => {
  it('writes the batches out as they are made, so that none is renamed by another', () => {
    expect(lineOf(named).batches?.map(({ number }) => `noon-ribs-${number}`)).toEqual(
      built.batches.map(({ id }) => id),
    );
    const ready = '12:45';
    const split = after(named, { kind: 'splitBatch', ...at, number: 1, portions: 20, ready });
    const idsOf = (plan: CookPlan) => dayWith({ cookPlan: plan }).batches.map(({ id }) => id);
    expect(idsOf(split)).toEqual(['noon-ribs-1', 'noon-ribs-2']);
    const dropped = after(split, { kind: 'dropBatch', ...at, number: 1 });
    expect(idsOf(dropped)).toEqual(['noon-ribs-2']);
  });

  it('followed by its reverse gives the same document', () => {
    const first = must(lineOf(named).batches?.[0], 'a batch');
    const next = Math.max(...(lineOf(named).batches ?? []).map(({ number }) => number)) + 1;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: first.portions - 1 }), (portions) => {
        const { number, ready } = first;
        const split = after(named, { kind: 'splitBatch', ...at, number, portions, ready });
        const joined = after(split, { kind: 'mergeBatches', ...at, number, other: next });
        expect(joined).toEqual(named);
        const more = after(cookPlan, { kind: 'portions', ...at, portions });
        expect(after(more, { kind: 'portions', ...at, portions: 60 })).toEqual(cookPlan);
        const added = after(named, { kind: 'addBatch', ...at, portions, ready });
        expect(after(added, { kind: 'dropBatch', ...at, number: next })).toEqual(named);
      }),
    );
    const chosen = after(cookPlan, { kind: 'choose', ...at, choice: 'wrap', option: 'bare' });
    expect(lineOf(chosen).choices).toEqual({ wrap: 'bare' });
    expect(after(chosen, { kind: 'choose', ...at, choice: 'wrap', option: null })).toEqual(
      cookPlan,
    );
  });

  it('keeps the sum of portions when a batch is split', () => {
    const total = (plan: CookPlan) =>
      (lineOf(plan).batches ?? []).reduce((sum, { portions }) => sum + portions, 0);
    const split = after(named, {
      kind: 'splitBatch',
      ...at,
      number: 1,
      portions: 3,
      ready: '12:30',
    });
    expect(total(split)).toBe(total(named));
  });

  it('is none where it speaks of what is not there', () => {
    expect(edited(named, { kind: 'dropBatch', ...at, number: 99 }, built)).toBeNull();
    expect(edited(named, { kind: 'mergeBatches', ...at, number: 1, other: 1 }, built)).toBeNull();
    const elsewhere = { service: 'night', dish: 'ribs' };
    expect(edited(named, { kind: 'portions', ...elsewhere, portions: 3 }, built)).toBeNull();
  });
});
