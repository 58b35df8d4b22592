import { describe, expect, it } from 'vitest';
import { ifMoved, loadsOf, openLive, slotsWorkedAt } from '../../../shared/day/index.ts';
import { must, type TaskId } from '../../../shared/kernel/index.ts';
import { noon, plan, Telling } from './demo.ts';

const { state } = new Telling();
const { index } = openLive(state, noon);

const routeOf = (batch: string) => {
  const route = plan.built.batches.find(({ id }) => id === batch)?.route;
  return plan.catalogue.routes.find(({ id }) => id === route)?.steps ?? [];
};

const stays = plan.built.tasks.filter(({ work }) => work === 'place');
/** Every stay in a smoker with the step that lays its load in and the one that takes it off. */
const ends = stays.flatMap((stay) => {
  const step = routeOf(stay.batch).find(({ id }) => id === stay.step);
  if (step?.work !== 'place') return [];
  const { from, to } = step.spans;
  return [from.step, to.step].map((end) => ({ stay, end }));
});

describe('where a task is done at a smoker', () => {
  it('is where its load lies, from the loading to the taking off', () => {
    let seen = 0;
    for (const { stay, end } of ends) {
      const slots = loadsOf(state, index, stay.id).map(({ slot }) => slot);
      const task = plan.built.tasks.find(
        ({ batch, step, work }) => batch === stay.batch && step === end && work === 'hands',
      );
      if (!task) continue;
      seen += 1;
      expect(slotsWorkedAt(state, index, task.id)).toEqual(expect.arrayContaining(slots));
    }
    expect(seen).toBeGreaterThan(10);
  });

  it('is nowhere at a table', () => {
    const atTables = plan.built.tasks.filter(({ step }) => /^(?:trim|rub|square)/.test(step));
    expect(atTables.length).toBeGreaterThan(0);
    for (const { id } of atTables) expect(slotsWorkedAt(state, index, id)).toEqual([]);
  });

  it('goes with a load that somebody moves', () => {
    const telling = new Telling();
    const before = openLive(telling.state, plan.built.origin);
    const slots = plan.kitchen.smokers.flatMap(({ racks }) => racks.map(({ slot }) => slot));
    const moved = ends.flatMap(({ stay, end }) =>
      slots.flatMap((to) => {
        const asked = ifMoved(before, { stay: stay.id, need: 0, to });
        return asked.ok && asked.offer.moves.length === 1 ? [{ stay, end, to, asked }] : [];
      }),
    );
    const { stay, end, to, asked } = must(moved[0], 'a load that can lie elsewhere');
    const { basedOnSeq } = asked.offer;
    const moves = [{ stay: stay.id, need: 0, to }];
    telling.ask({ kind: 'moveSlots', moves, basedOnSeq }, plan.built.origin);
    const after = slotsWorkedAt(telling.state, index, `${stay.batch}/${end}` as TaskId);
    expect(after).toContain(to);
    expect(slotsWorkedAt(state, index, `${stay.batch}/${end}` as TaskId)).not.toContain(to);
  });
});
