import { beforeAll, describe, expect, it } from 'vitest';
import { demoLog } from '../../../server/demo/index.ts';
import {
  type Intent,
  type Live,
  type MendOffer,
  mendOf,
  openLive,
  stillMends,
} from '../../../shared/day/index.ts';
import {
  after,
  celsius,
  hours,
  type Instant,
  minutes,
  must,
  type PersonId,
  type SmokerId,
} from '../../../shared/kernel/index.ts';
import { check, type Rung, type Violation } from '../../../shared/schedule/index.ts';
import { type Say, sayMendChange, sayMendServices } from '../../../shared/words/index.ts';
import { plan, Telling, task } from './demo.ts';

const HOUR_S = hours(1);

/** The hour of the demo's day in which hands have most to do, as planned. */
function busiestHour(): Instant {
  const workedS = new Map<number, number>();
  for (const { uses, startS, endS } of plan.schedule.placements) {
    const hands = uses.filter(({ resource }) => resource.startsWith('hand:')).length;
    for (let at = startS; at < endS; at = minutes(at / 60 + 1)) {
      const hour = Math.floor(at / HOUR_S);
      workedS.set(hour, (workedS.get(hour) ?? 0) + 60 * hands);
    }
  }
  const [hour] = must([...workedS].sort((a, b) => b[1] - a[1])[0], 'an hour');
  return after(plan.built.origin, hours(hour));
}

const now = busiestHour();
const told = new Telling();
for (const { intent, at, personId } of demoLog(plan, { now, seed: 7 })) {
  told.ask(intent, at, personId);
}

const inHand = (live: Live) =>
  live.index.plan.built.services.map(({ id }) => live.outlookOf(id)?.inHandS ?? null);
const timesOf = (live: Live) =>
  live.index.plan.built.tasks.map(({ id }) => ({ id, ...live.timesOf(id) }));

/** What the checker, written apart from the planner, has against places in a day as it stands. */
function against(live: Live): string[] {
  const nameOf = (each: Violation) => JSON.stringify({ ...each, byS: 0, excess: 0, usedS: 0 });
  return check(live.index.plan.built.problem, live.timeline.schedule)
    .filter(({ kind }) => kind === 'capacity' || kind === 'state' || kind === 'clash')
    .map(nameOf);
}

const sayIn = (language: Say['language']): Say => ({
  ...{ language, zone: plan.built.zone, clock: '12 h', temperature: '°F', weight: 'lb' },
});

/** Whose hand, rack or table is another. */
const elsewhereIn = ({ changes }: MendOffer) =>
  changes.filter(({ hands, slot, place }) => hands || slot || place);

/** What mends a day takes some seconds to find, and more where much else is done. */
const A_WHILE_MS = 300_000;

/** So much late is not worth a word. */
const SLIGHT_S = minutes(2);
const holds = ({ services }: MendOffer) =>
  services.every(({ afterS }) => afterS === null || afterS > -SLIGHT_S);

type Bad = { readonly what: string; readonly intent: Intent; readonly rung: Rung };

const BAD: readonly Bad[] = [
  {
    what: 'a smoker that is out for an hour',
    intent: {
      kind: 'smokerDown',
      smoker: 'b' as SmokerId,
      tempC: celsius(60),
      backAt: after(now, hours(1)),
    },
    rung: 'elsewhere',
  },
  {
    what: 'a trim that runs 35 minutes long',
    intent: { kind: 'late', task: task('dinner-ribs-1', 'square'), byS: minutes(35) },
    rung: 'order',
  },
  {
    what: 'a trim that runs 40 minutes long',
    intent: { kind: 'late', task: task('dinner-ribs-1', 'square'), byS: minutes(40) },
    rung: 'all-anew',
  },
  {
    what: 'a hand that goes home for the day',
    intent: { kind: 'handOut', hand: 'omar' as PersonId, backAt: after(now, hours(20)) },
    rung: 'later-anew',
  },
];

describe.each(BAD)('in the busiest hour, $what', ({ intent, rung }) => {
  const telling = Object.assign(new Telling(), { state: told.state });
  const calm = openLive(told.state, now);
  let before: Live;
  let mend: ReturnType<typeof mendOf>;
  beforeAll(() => {
    expect(telling.ask(intent, now).ok).toBe(true);
    before = openLive(telling.state, now);
    mend = mendOf(before);
  }, A_WHILE_MS);

  it('costs a service its time, and what is offered gives back some of it', () => {
    const [was, is] = [calm, before].map((live) => inHand(live).map((each) => each ?? 0));
    expect(Math.min(...must(is, 'it'))).toBeLessThan(-SLIGHT_S);
    expect(must(is, 'it').some((each, i) => each < (was?.[i] ?? 0))).toBe(true);
    expect(stillMends(before, must(mend.fact, 'a proposal'))).toBe(true);
    const { services } = mend.offer;
    const gained = services.map(({ beforeS, afterS }) => (afterS ?? 0) - (beforeS ?? 0));
    expect(Math.max(...gained)).toBeGreaterThanOrEqual(SLIGHT_S);
  });

  it('is mended by no more than it takes', () => {
    const { offer } = mend;
    expect(offer.rung).toBe(rung);
    // By orders nobody and nothing goes elsewhere; by moves no more than four.
    if (rung === 'order') expect(elsewhereIn(offer)).toEqual([]);
    // All is planned anew for a day that holds then.
    if (rung === 'all-anew') expect(holds(offer)).toBe(true);
    if (rung === 'elsewhere') expect(elsewhereIn(offer).length).toBeLessThanOrEqual(4);
    if (rung !== 'later-anew') return;
    // Whoever goes home leaves more than four moves could give to others; and then it does hold.
    expect(elsewhereIn(offer).length).toBeGreaterThan(4);
    expect(holds(offer)).toBe(true);
    for (const { start } of offer.changes) {
      // Nothing that is near is planned anew.
      if (start) expect(Math.max(start.from, start.to)).toBeGreaterThanOrEqual(now);
    }
  });

  it.each(['en', 'es'] as const)('is a list of differences, each in words (%s)', (language) => {
    const say = sayIn(language);
    const { offer } = mend;
    expect(sayMendServices(offer, say).length).toBeGreaterThan(0);
    expect(offer.changes.length).toBeGreaterThan(0);
    for (const change of offer.changes) {
      const lines = Object.values(sayMendChange(change, say)).join('');
      expect(lines).toContain('→');
      expect(lines).not.toMatch(/undefined|null|NaN/);
    }
  });

  it('goes on as offered once it is taken, and as before once that is undone', () => {
    const known = new Set(against(before));
    const event = telling.keep(must(mend.fact, 'a proposal'), now, null);
    const next = openLive(telling.state, now);
    expect(mend.offer.services.map(({ afterS }) => afterS)).toEqual(inHand(next));
    expect(against(next).filter((each) => !known.has(each))).toEqual([]);
    const begun = timesOf(before).filter(({ id }) => before.timeline.times(id).stage !== 'waiting');
    expect(begun.length).toBeGreaterThan(50);
    const passed = new Map(timesOf(next).map((each) => [each.id, each.startS]));
    for (const { id, startS } of begun) expect(passed.get(id)).toBe(startS);

    expect(telling.ask({ kind: 'undo', command: event.commandId }, now).ok).toBe(true);
    expect(timesOf(openLive(telling.state, now))).toEqual(timesOf(before));
  });
});
