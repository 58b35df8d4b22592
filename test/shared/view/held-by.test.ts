import { describe, expect, it } from 'vitest';
import { demoLog } from '../../../server/demo/index.ts';
import { factsOf, openLive } from '../../../shared/day/index.ts';
import type { Instant, TaskId } from '../../../shared/kernel/index.ts';
import {
  after,
  celsius,
  hours,
  instant,
  minutes,
  must,
  seconds,
} from '../../../shared/kernel/index.ts';
import { type HeldBy, viewOf } from '../../../shared/view/index.ts';
import { type Say, sayHeldBy } from '../../../shared/words/index.ts';
import { noon, plan, Telling } from '../day/demo.ts';

const en: Say = {
  ...{ language: 'en', zone: plan.built.zone, clock: '12 h' },
  ...{ temperature: '°F', weight: 'lb' },
} as const;
const es: Say = { ...en, language: 'es' };
const smoker = must(plan.kitchen.smokers[0], 'a smoker').id;

/** The demo's crew at work till then. */
function workedTill(at: Instant): Telling {
  const told = new Telling();
  const taps = [...demoLog(plan, { now: at, seed: 1 })].sort((a, b) => a.at - b.at);
  for (const tap of taps) told.ask(tap.intent, tap.at, tap.personId);
  return told;
}

const servicesOf = ({ state }: Telling, at: Instant) =>
  viewOf(openLive(state, at), { kind: 'pass' }).services;

describe('what holds a late service up', () => {
  it('is said of no service that has time to spare', () => {
    const services = servicesOf(workedTill(noon), noon);
    expect(services.length).toBeGreaterThan(0);
    for (const { inHandS, heldBy } of services) {
      expect(heldBy === undefined, `${inHandS}`).toBe(inHandS > -60);
    }
  });

  it('is a cook that a cold fire draws out, with the dish and till when', () => {
    const at = after(noon, hours(-8));
    const told = workedTill(at);
    expect(told.ask({ kind: 'smokerCold', smoker, tempC: celsius(80) }, at).ok).toBe(true);
    const [lunch] = servicesOf(told, at);
    expect(lunch?.inHandS).toBeLessThan(-minutes(60));
    expect(lunch?.heldBy?.kind).toBe('cooks');
    const [said] = sayHeldBy(must(lunch?.heldBy, 'why'), at, en);
    expect(said).toMatch(/^(?:Pulled shoulder|Sliced brisket) cooks till ≈\s\d+:\d\d [ap]m$/);
  });

  it('is said at the desk also where only the cooks will likely make it late', () => {
    const at = after(noon, hours(-8));
    const live = openLive(workedTill(at).state, at);
    const standingOf = (likelyS: number) => {
      const spread = { lowS: seconds(-7_200), likelyS: seconds(likelyS), highS: seconds(7_200) };
      const spreads = plan.built.services.map(({ id }) => ({ service: id, ...spread }));
      const view = viewOf(live, { kind: 'desk' }, spreads);
      if (view.face !== 'desk') throw new Error('no desk');
      return must(view.standings[0], 'a service');
    };
    // By the plan's own times it holds.
    expect(standingOf(0).inHandS).toBeGreaterThan(0);
    expect(standingOf(-3_600).heldBy).toEqual({ kind: 'may run long' });
    expect(standingOf(3_600).heldBy).toBeNull();
  });

  it('is the work of hands that takes longer, by its name and till when', () => {
    const at = after(noon, minutes(-280));
    const { id, heldBy } = lateWork(workedTill(at), at);
    const { title } = must(
      plan.built.tasks.find((each) => each.id === id),
      id,
    );
    expect(heldBy).toMatchObject({ kind: 'runs', task: title });
    const [whole, short] = sayHeldBy(heldBy, at, en);
    expect(whole).toMatch(/^still: .*, till ≈\s\d+:\d\d/);
    expect(whole).toContain(short);
  });

  it('is said as what can be done about it, in both languages', () => {
    const task = { en: 'Load ribs', es: 'Cargue las costillas' };
    const slot = { id: 'b2' as never, smoker: { en: 'Smoker B', es: 'Ahumador B' }, rack: '2' };
    const until = instant(noon + 3_600_000);
    const all: readonly (readonly [HeldBy, string, string])[] = [
      [
        { kind: 'waits', task, because: { kind: 'place', slot, until } as never },
        'Load ribs: ',
        'Cargue las costillas: ',
      ],
      [{ kind: 'may run long' }, 'its cooks may run long', 'la carne puede tardar más'],
      [{ kind: 'begin', task }, 'not begun: Load ribs', 'sin empezar: Cargue las costillas'],
      [
        { kind: 'runs', task, till: null },
        'not finished: Load ribs',
        'sin acabar: Cargue las costillas',
      ],
    ];
    for (const [held, english, spanish] of all) {
      expect(sayHeldBy(held, noon, en)[0]).toContain(english);
      expect(sayHeldBy(held, noon, es)[0]).toContain(spanish);
    }
    expect(sayHeldBy(must(all[0], 'first')[0], noon, en)[0]).toMatch(/Smoker B, rack 2.*1:00 pm/);
  });
});

/** What runs just then, an hour late, till one of it is what a service waits for. */
function lateWork(told: Telling, at: Instant): { readonly id: TaskId; readonly heldBy: HeldBy } {
  for (const { id, work } of plan.built.tasks) {
    const { started, finished } = factsOf(told.state, id);
    if (work !== 'hands' || started === null || finished !== null) continue;
    const one = new Telling();
    one.state = told.state;
    one.ask({ kind: 'late', task: id, byS: minutes(60) }, at);
    const heldBy = servicesOf(one, at).find(({ hangsOn }) => hangsOn === id)?.heldBy;
    if (heldBy) return { id, heldBy };
  }
  throw new Error('no work holds a service up');
}
