import { describe, expect, it } from 'vitest';
import { makePlan } from '../../../server/adopt.ts';
import { starterFiles } from '../../../server/starter/index.ts';
import { cookAsks, mendOf, openLive } from '../../../shared/day/index.ts';
import type { BatchId, DishId, PersonId, SlotId, TaskId } from '../../../shared/kernel/index.ts';
import { after, celsius, kilograms, minutes, must } from '../../../shared/kernel/index.ts';
import { kitchenResource, readPlanFiles } from '../../../shared/plan/index.ts';
import { type Face, viewOf } from '../../../shared/view/index.ts';
import { sayLogged } from '../../../shared/words/index.ts';
import { handsInOrder, noon, plan, Telling } from '../day/demo.ts';
import { hourAt } from '../day/edits.ts';

const { kitchen } = plan;
const { origin } = plan.built;
const placed = new Map(plan.schedule.placements.map((each) => [each.activity, each]));
const english = {
  language: 'en',
  zone: 'America/Chicago',
  clock: '24 h',
  temperature: '°F',
  weight: 'lb',
} as const;
const slot = (id: string) => id as SlotId;
const brisket = 'lunch-sliced-brisket-1/stay' as TaskId;

function facesOf({ state }: Telling, hour: number) {
  const live = openLive(state, hourAt(hour));
  const { stations } = live.index.plan.kitchen;
  const faces: Face[] = [
    { kind: 'desk' },
    { kind: 'pass' },
    { kind: 'smoker' },
    ...stations.map(({ id }): Face => ({ kind: 'station', station: id })),
  ];
  return faces.map((face) => viewOf(live, face));
}

function logOf(day: Telling, hour: number): string[] {
  const view = viewOf(openLive(day.state, hourAt(hour)), { kind: 'desk' });
  return view.face === 'desk' ? view.log.map(({ said }) => sayLogged(said, english)) : [];
}

/** The demo's kitchen after a rack that nothing is planned for was taken away. */
const withoutRack5 = {
  kitchen: {
    ...plan.kitchen,
    smokers: plan.kitchen.smokers.map((smoker) => ({
      ...smoker,
      racks: smoker.racks.filter(({ slot }) => slot !== 'a/5'),
    })),
  },
  hashes: { ...plan.hashes, kitchen: 'without rack 5' },
};

/** A kitchen that has nothing in common with the demo's. */
const files = readPlanFiles(starterFiles(noon, 'America/Chicago', 'three dishes'));
if (!files.ok) throw new Error(JSON.stringify(files));
const small = makePlan(files.value, 2);
if (!small.ok) throw new Error(JSON.stringify(small));
const other = small.plan;

describe('a day whose kitchen was changed', () => {
  it('names a rack that was taken away as it was called, and draws every wall', () => {
    const day = new Telling();
    const at = hourAt(26);
    for (const task of handsInOrder.filter((id) => id.startsWith('lunch-sliced-brisket-1/'))) {
      const { startS, endS, uses } = must(placed.get(task), task);
      const [hand] = uses.flatMap(({ resource }) => {
        const thing = kitchenResource(resource);
        return thing.kind === 'hand' ? [thing.person] : [];
      });
      if (endS > 26 * 3600) break;
      day.keep({ kind: 'taskStarted', task, hand: must(hand, task) }, after(origin, startS), null);
      day.keep({ kind: 'taskFinished', task }, after(origin, endS), null);
    }
    const move = (to: string, min: number) => {
      const moves = [{ stay: brisket, need: 0, to: slot(to) }];
      day.keep({ kind: 'slotsMoved', moves }, after(at, minutes(min)), null);
    };
    const read = (min: number) =>
      day.keep(
        {
          kind: 'temperatureRead',
          where: { kind: 'core', stay: brisket },
          tempC: celsius(60 + min / 5),
        },
        after(at, minutes(min)),
        null,
      );
    move('a/5', -40);
    read(-35);
    move('a/1', -30);
    read(-10);
    day.keep({ kind: 'planAdopted', plan: { ...plan, version: 2, ...withoutRack5 } }, at, null);
    expect(facesOf(day, 26).length).toBeGreaterThan(3);
    const said = logOf(day, 26);
    expect(said[2]).toBe('Sliced brisket · Lunch moved to Smoker A, rack 1');
    expect(said[3]).toBe('Sliced brisket · Lunch (Smoker A, rack 5) read 127 °F');
    expect(said[4]).toBe('Sliced brisket · Lunch moved to Smoker A, rack 5');
    expect(cookAsks(day.state, at).map(({ stay }) => stay)).toContain(brisket);
  });

  it('tells all that happened to what is no longer there', () => {
    const day = new Telling();
    const at = hourAt(20);
    const tell = (fact: Parameters<Telling['keep']>[0]) => day.keep(fact, at, 'gone' as PersonId);
    const [task, batch, dish] = ['gone-1/cure' as TaskId, 'gone-1' as BatchId, 'gone' as DishId];
    const pit = must(kitchen.smokers.at(-1), 'a smoker');
    const { id: smoker } = pit;
    const { id: hand, name } = must(kitchen.crew.at(-1), 'a hand');
    tell({ kind: 'smokerRunsCold', smoker, tempC: celsius(80) });
    tell({ kind: 'doorOpened', smoker, openS: minutes(2) });
    tell({
      kind: 'temperatureRead',
      where: { kind: 'air', smoker },
      tempC: celsius(80),
    });
    tell({ kind: 'handWentOut', hand, backAt: null });
    tell({
      kind: 'slotsMoved',
      moves: [{ stay: 'gone-1/stay' as TaskId, need: 0, to: slot('c/2') }],
    });
    tell({
      kind: 'temperatureRead',
      where: { kind: 'core', stay: 'gone-1/stay' as TaskId },
      tempC: celsius(60),
    });
    tell({ kind: 'cureWeighed', task, weightKg: kilograms(0.02), first: hand, second: hand });
    tell({ kind: 'taskStarted', task, hand });
    tell({ kind: 'piecesCounted', task, done: 2 });
    tell({ kind: 'taskRunsLate', task, byS: minutes(5) });
    tell({ kind: 'helpAsked', task });
    tell({ kind: 'taskGiven', task, hand });
    tell({ kind: 'noteWritten', text: 'odd', task });
    tell({ kind: 'tubWeighed', batch, tub: 'trim' as never, weightKg: kilograms(1) });
    tell({ kind: 'panEmptied', batch });
    tell({ kind: 'leftCarriedOver', batch, weightKg: kilograms(1) });
    tell({ kind: 'portionsSold', service: 'gone' as never, dish, sold: 3 });
    tell({ kind: 'dishSoldOut', service: 'gone' as never, dish });
    tell({ kind: 'deliveryCame', cut: 'gone' as never, pieces: 1, weightKg: kilograms(1) });
    tell({
      ...{ kind: 'lotCame', lot: 'gone-lot' as never, cut: 'gone' as never, pieces: 4 },
      ...{ weightKg: kilograms(9), supplier: 'x', tempC: null, useBy: null, code: null },
    });
    tell({ kind: 'batchCutFrom', batch, lots: ['gone-lot' as never] });
    const checks = [
      { kind: 'receiving', cut: 'gone' },
      { kind: 'cold-hold', cooler: 'gone' },
      { kind: 'thermometer', thermometer: 'gone' },
      { kind: 'clean', station: 'gone', table: null },
      { kind: 'hot-hold', batch },
    ];
    for (const on of checks) {
      tell({ kind: 'checkRecorded', on: on as never, tempC: celsius(50), thermometer: null });
      tell({ kind: 'correctionRecorded', on: on as never, action: 'discard' });
    }
    tell({ kind: 'dayMended', changes: [], links: [] });
    const kept = day.state.story.length;
    day.keep({ kind: 'planAdopted', plan: other }, at, null);
    expect(facesOf(day, 21).length).toBeGreaterThan(3);
    const said = logOf(day, 21);
    expect(said).toHaveLength(kept + 1);
    expect(said).toContain(`${pit.name.en} runs cold: 176 °F`);
    expect(said).toContain(`gone-1/stay moved to ${pit.name.en}, rack 2`);
    expect(said).toContain(`${name} is out`);
    const live = openLive(day.state, hourAt(21));
    expect(mendOf(live).offer.services.length).toBeGreaterThan(0);
    expect(cookAsks(day.state, hourAt(21))).toEqual([]);
  });
});
