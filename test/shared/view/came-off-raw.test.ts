import { describe, expect, it } from 'vitest';
import { currentHand, openLive } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import { after, minutes, must, type PersonId, type TaskId } from '../../../shared/kernel/index.ts';
import { LagsAmong, taskView } from '../../../shared/view/index.ts';
import { plan, Telling } from '../day/demo.ts';

const sideOf = (station: string) => plan.kitchen.stations.find(({ id }) => id === station)?.side;
const index = indexOf(plan);
const hands = plan.built.tasks.filter(({ work }) => work === 'hands');
const handOf = (telling: Telling, id: TaskId) => currentHand(telling.state, index, id);
const startOf = (id: TaskId) =>
  must(
    plan.schedule.placements.find(({ activity }) => activity === id),
    id,
  ).startS;

/** Somebody's first work at a raw table, and work at a clean station that is theirs as well. */
function bothOf(telling: Telling): { who: PersonId; raw: TaskId; clean: TaskId } {
  const sorted = hands.toSorted((a, b) => startOf(a.id) - startOf(b.id));
  const raw = must(
    sorted.find(({ station, id }) => sideOf(station) === 'raw' && handOf(telling, id)),
    'raw work',
  );
  const who = must(handOf(telling, raw.id), 'a hand');
  const clean = must(
    sorted.find(({ station, id }) => sideOf(station) === 'clean' && handOf(telling, id) === who),
    'clean work',
  );
  return { who, raw: raw.id, clean: clean.id };
}

describe('hands that come off raw meat', () => {
  const telling = new Telling();
  const { raw, clean } = bothOf(telling);
  const at = after(plan.built.origin, startOf(raw));
  const line = (id: TaskId) => {
    const live = openLive(telling.state, after(at, minutes(30)));
    return taskView(live, id, new LagsAmong(live, new Set()));
  };

  it('are told at the next clean work once they have begun at the raw table, not before', () => {
    expect(line(clean)).toMatchObject({ side: 'clean', offRaw: false });
    expect(telling.ask({ kind: 'start', task: raw }, at).ok).toBe(true);
    expect(line(clean)).toMatchObject({ side: 'clean', offRaw: true });
  });

  it('are told nothing at raw work', () => {
    expect(line(raw)).toMatchObject({ side: 'raw', offRaw: false });
  });
});
