import { expect, it } from 'vitest';
import { currentHand, openLive } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import { must } from '../../../shared/kernel/index.ts';
import type { Face, StationView } from '../../../shared/view/index.ts';
import { viewOf } from '../../../shared/view/index.ts';
import { noon, plan, Telling } from '../day/demo.ts';

const [station, ...beside] = plan.kitchen.stations.map(({ id }) => id);
const wall: Face = { kind: 'station', station: must(station, 'a station'), beside };

function shown(telling: Telling, face: Face): StationView {
  const view = viewOf(openLive(telling.state, noon), face);
  if (view.face !== 'station') throw new Error('a station was asked for');
  return view;
}

it('shows on a phone of their own the work of one person wherever it is, and all of it', () => {
  const telling = new Telling();
  const handOf = (task: StationView['tasks'][number]) =>
    currentHand(telling.state, indexOf(plan), task.id);
  const busy = plan.kitchen.crew.filter(({ id }) => {
    const { tasks, later } = shown(telling, { ...wall, hand: id });
    expect(tasks.every((task) => handOf(task) === id)).toBe(true);
    return tasks.length + later > 0;
  });
  expect(busy.length).toBeGreaterThan(3);
  const all = plan.kitchen.crew.map(({ id }) => shown(telling, { ...wall, hand: id }));
  const count = ({ tasks, later }: StationView) => tasks.length + later;
  const given = all.reduce((sum, view) => sum + count(view), 0);
  expect(given).toBeLessThanOrEqual(count(shown(telling, wall)));
});

it('takes from a phone what is given to somebody else, and puts it on theirs', () => {
  const telling = new Telling();
  const [own, other] = plan.kitchen.crew
    .map(({ id }) => id)
    .filter((id) => shown(telling, { ...wall, hand: id }).tasks.length > 0);
  const on = (hand = own) => shown(telling, { ...wall, hand }).tasks.map(({ id }) => id);
  const given = on().find(
    (task) => telling.ask({ kind: 'giveTo', task, hand: must(other, 'another') }, noon).ok,
  );
  expect(given).toBeDefined();
  expect(on()).not.toContain(given);
  expect(on(other)).toContain(given);
});
