import { describe, expect, it } from 'vitest';
import { fireLengthS } from '../../../shared/day/fire-pace.ts';
import { heatNeededC, openLive, passagesOf } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import type { Instant } from '../../../shared/kernel/index.ts';
import { after, celsius, minutes, must } from '../../../shared/kernel/index.ts';
import { handsInOrder, plan, Telling } from './demo.ts';

/** A day in which one batch has just been loaded, and its first stage of smoke begun. */
function loaded() {
  const telling = new Telling();
  const stay = must(
    plan.built.tasks.find(({ work }) => work === 'place'),
    'a stay',
  );
  let at = after(plan.built.origin, minutes(600));
  for (const id of handsInOrder.filter((each) => each.startsWith(`${stay.batch}/`))) {
    telling.ask({ kind: 'start', task: id }, at);
    at = after(at, minutes(3));
    telling.ask({ kind: 'finish', task: id }, at);
    at = after(at, minutes(20));
    if (id.endsWith('/load')) break;
  }
  const stage = must(
    [...passagesOf(telling.state)].find(
      ([id, { startedAt }]) =>
        startedAt !== null && plan.built.tasks.find((each) => each.id === id)?.work === 'fire',
    ),
    'a stage of smoke',
  )[0];
  const live = openLive(telling.state, at);
  const setC = must(heatNeededC(telling.state, live.index, stay.id), 'a set temperature');
  const placed = must(
    plan.schedule.placements.find(({ activity }) => activity === stay.id),
    'a place',
  );
  const smoker = must(
    plan.kitchen.smokers.find(({ racks }) => racks.some(({ slot }) => slot === placed.mode)),
    'a smoker',
  ).id;
  return { telling, at, stage, stay: stay.id, setC, smoker };
}

const endS = (telling: Telling, at: Instant, stage: ReturnType<typeof loaded>['stage']) =>
  openLive(telling.state, at).timesOf(stage).endS;

describe('the pace of a fire', () => {
  it('puts a cook off by the heat that is missing while the air is read cold', () => {
    const { telling, at, stage, setC, smoker } = loaded();
    const before = endS(telling, at, stage);
    // Half of the difference between the set air and a drying surface at 65 °C is missing …
    const coldC = celsius((setC + 65) / 2);
    telling.ask({ kind: 'reading', where: { kind: 'air', smoker }, tempC: coldC }, at);
    // … for the hour that a reading is believed: half an hour's cooking is to be made up.
    expect(endS(telling, at, stage) - before).toBe(minutes(30));
  });

  it('counts the cold only until the air is read right again', () => {
    const { telling, at, stage, setC, smoker } = loaded();
    const before = endS(telling, at, stage);
    const air = { kind: 'air', smoker } as const;
    telling.ask({ kind: 'reading', where: air, tempC: celsius((setC + 65) / 2) }, at);
    const soon = after(at, minutes(20));
    telling.ask({ kind: 'reading', where: air, tempC: setC }, soon);
    expect(endS(telling, soon, stage) - before).toBe(minutes(10));
  });

  it('lets a fire swing by a few degrees without moving a time', () => {
    const { telling, at, stage, setC, smoker } = loaded();
    const before = endS(telling, at, stage);
    const air = { kind: 'air', smoker } as const;
    for (const offC of [-7, 5, 8]) {
      telling.ask({ kind: 'reading', where: air, tempC: celsius(setC + offC) }, at);
      expect(endS(telling, at, stage)).toBe(before);
    }
  });

  it('does not give back the time in a dead smoker to a load that is moved out of it', () => {
    const { telling, at, stage, stay, smoker } = loaded();
    const down = { kind: 'smokerDown', smoker, tempC: celsius(80), backAt: null } as const;
    expect(telling.ask(down, at).ok).toBe(true);
    const elsewhere = must(
      plan.kitchen.smokers.find(({ id }) => id !== smoker),
      'another smoker',
    );
    const to = must(elsewhere.racks[0], 'a rack').slot;
    const now = after(at, minutes(26));
    // Whether that rack takes it is not asked: only what its fires have done to it.
    telling.keep({ kind: 'slotsMoved', moves: [{ stay, need: 0, to }] }, now, null);
    const { state } = telling;
    const startedAt = must(passagesOf(state).get(stage)?.startedAt, 'a beginning');
    const cook = { stage, startedAt, plannedS: minutes(120), now };
    expect(fireLengthS(state, indexOf(plan), cook)).toBe(minutes(120 + 26));
  });

  it('holds what another smoker reads against nobody else', () => {
    const { telling, at, stage, smoker } = loaded();
    const before = endS(telling, at, stage);
    const other = must(
      plan.kitchen.smokers.find(({ id }) => id !== smoker),
      'another smoker',
    ).id;
    const air = { kind: 'air', smoker: other } as const;
    telling.ask({ kind: 'reading', where: air, tempC: celsius(70) }, at);
    expect(endS(telling, at, stage)).toBe(before);
  });
});
