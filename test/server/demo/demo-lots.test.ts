import { describe, expect, it } from 'vitest';
import { demoLots } from '../../../server/demo/index.ts';
import { openChecks } from '../../../shared/day/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { recordOf, traceOf } from '../../../shared/record/index.ts';
import { handsInOrder, plan, Telling } from '../../shared/day/demo.ts';

describe('the cooler of the demo', () => {
  it('holds enough for its day, so that everything that is cut is known by its lot', () => {
    const telling = new Telling();
    for (const fact of demoLots(plan, 1)) telling.keep(fact, plan.built.origin, null);
    for (const task of handsInOrder) {
      telling.keep({ kind: 'taskStarted', task, hand: null }, plan.built.origin, null);
    }
    const record = must(recordOf(telling.state), 'a record');
    const sources = record.flows.flatMap(({ from }) => from);
    expect(sources.filter(({ lot, of }) => lot === null && of === null)).toEqual([]);
    const fed = record.lots.map(({ id }) => must(traceOf([record], id), id).services.length);
    expect(Math.min(...fed)).toBeGreaterThan(0);
  });

  it('says nothing of what was delivered: no line of the pull list is short of it', () => {
    expect(demoLots(plan, 1).every(({ kind }) => kind === 'lotCame')).toBe(true);
  });

  it('was read as it came, so that the demo begins with nothing that nobody looked at', () => {
    const telling = new Telling();
    for (const fact of demoLots(plan, 1)) telling.keep(fact, plan.built.origin, null);
    expect(openChecks(telling.state).filter(({ on }) => on.kind === 'receiving')).toEqual([]);
  });
});
