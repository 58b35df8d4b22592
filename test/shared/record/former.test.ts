import { describe, expect, it } from 'vitest';
import type { Intent } from '../../../shared/day/index.ts';
import { after, must, seconds } from '../../../shared/kernel/index.ts';
import { evidenceOf, recordOf } from '../../../shared/record/index.ts';
import { handsInOrder, plan, Telling } from '../day/demo.ts';

const { origin, pull } = plan.built;
const at = (timeS: number) => after(origin, seconds(timeS));
const gone = must(plan.kitchen.crew[0], 'somebody');
const { cut, pieces, weightKg } = must(pull[0], 'something that comes');
const task = must(handsInOrder[0], 'work of hands');

/** Somebody takes meat in, works and writes a note; then the files have them no more. */
function leftSince(): Telling {
  const day = new Telling();
  const lot: Intent = {
    ...{ kind: 'receive', cut, pieces, weightKg, supplier: 'Elm Meats' },
    ...{ tempC: null, useBy: null, code: null, isSo: true },
  };
  day.ask(lot, at(10), gone.id);
  day.keep({ kind: 'taskStarted', task, hand: gone.id }, at(20), gone.id);
  day.keep({ kind: 'noteWritten', text: 'short of foil', task: null }, at(30), gone.id);
  const crew = plan.kitchen.crew.filter(({ id }) => id !== gone.id);
  const kitchen = { ...plan.kitchen, crew };
  const hashes = { ...plan.hashes, kitchen: 'without them' };
  const without = { ...plan, version: 2, kitchen, hashes };
  day.keep({ kind: 'planAdopted', plan: without }, at(40), null);
  return day;
}

describe('who has left since', () => {
  it('stands on the record by name, not by the id that the files gave them', () => {
    const day = leftSince();
    const evidence = must(evidenceOf(day.state), 'evidence');
    const lot = must(recordOf(day.state)?.lots[0], 'the lot');
    const said = [lot, ...evidence.work, ...evidence.notes].map(({ by }) => by);
    expect(said).toEqual([gone.name, gone.name, gone.name]);
  });
});
