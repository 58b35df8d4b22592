import { describe, expect, it } from 'vitest';
import { demoLog } from '../../../server/demo/index.ts';
import { loadsOf, openLive } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import type { Instant, SmokerId } from '../../../shared/kernel/index.ts';
import { after, celsius, minutes, must, seconds } from '../../../shared/kernel/index.ts';
import {
  type Alert,
  alertsIn,
  emptyBook,
  heed,
  type Ring,
  ratesOf,
  type View,
  viewOf,
} from '../../../shared/view/index.ts';
import { type Say, sayAlert, sayRates } from '../../../shared/words/index.ts';
import { plan, Telling } from '../day/demo.ts';

const { origin, tasks, zone } = plan.built;
const placed = new Map(plan.schedule.placements.map((each) => [each.activity, each]));
const spanOf = (id: (typeof tasks)[number]['id']) => must(placed.get(id), id);
const hands = tasks.filter(({ work }) => work === 'hands').map(({ id }) => spanOf(id));

/** When each load lies in which smoker. */
const stays = tasks
  .filter(({ work }) => work === 'place')
  .flatMap(({ id }) => loadsOf(new Telling().state, indexOf(plan), id))
  .flatMap(({ slot, stay }) => {
    const at = plan.kitchen.smokers.find(({ racks }) => racks.some((rack) => rack.slot === slot));
    return at ? [{ smoker: at.id, ...spanOf(stay) }] : [];
  });

const runsAt = (s: number) => (each: { readonly startS: number; readonly endS: number }) =>
  each.startS <= s && s < each.endS;

/** When most hands are at work while meat lies in the fires. */
function busiestMinute(): Instant {
  const all = Array.from({ length: 36 * 60 }, (_, min) => minutes(min));
  const busy = (s: number) => (stays.some(runsAt(s)) ? hands.filter(runsAt(s)).length : 0);
  return after(
    origin,
    all.reduce((a, b) => (busy(b) > busy(a) ? b : a)),
  );
}

/** The crew goes on as it does, a smoker goes out, and for two hours it is looked who is wanted. */
function badDay() {
  const outAt = busiestMinute();
  const lying = stays.filter(runsAt((outAt - origin) / 1000)).map((stay) => stay.smoker);
  const count = (id: SmokerId) => lying.filter((each) => each === id).length;
  const smoker = must([...lying].sort((a, b) => count(b) - count(a))[0], 'a smoker in use');
  const until = after(outAt, minutes(120));
  const telling = new Telling();
  const taps = [...demoLog(plan, { now: until, seed: 1 })].sort((a, b) => a.at - b.at);
  const tapUntil = (at: Instant) => {
    for (let next = taps[0]; next && next.at <= at; next = taps[0]) {
      taps.shift();
      telling.ask(next.intent, next.at, next.personId);
    }
  };
  tapUntil(outAt);
  const down = { kind: 'smokerDown', smoker, tempC: celsius(60), backAt: null } as const;
  expect(telling.ask(down, outAt, null).ok).toBe(true);
  const live = openLive(telling.state, outAt);
  let known = telling.events.length;
  let book = emptyBook(outAt);
  const seen: { at: Instant; alerts: readonly Alert[] }[] = [];
  const calls = new Map<Instant, Ring>();
  let pit: View | null = null;
  for (let at = outAt; at <= until; at = after(at, seconds(60))) {
    tapUntil(at);
    for (const event of telling.events.slice(known)) live.apply(event);
    known = telling.events.length;
    live.tick(at);
    pit ??= viewOf(live, { kind: 'smoker' });
    const alerts = alertsIn(live);
    seen.push({ at, alerts });
    // Looked at every few seconds, nothing else happens within the minute.
    for (const s of [0, 30]) book = heed(book, alerts, after(at, seconds(s)));
    for (const ring of book.rings) calls.set(ring.at, ring);
  }
  return { smoker, outAt, until, seen, pit, book, calls: [...calls.values()] };
}

const say: Say = { language: 'en', zone, clock: '24 h', temperature: '°F', weight: 'lb' };

describe('a smoker that goes out at the busiest minute', () => {
  const { smoker, outAt, until, seen, pit, book, calls } = badDay();
  const all = seen.flatMap(({ alerts }) => alerts);

  it('calls somebody at the pit to it, with what to do and by when', () => {
    const fire = all.find(({ key }) => key === `smoker ${smoker}`);
    expect(fire?.byAt).toBe(after(outAt, minutes(15)));
    expect(sayAlert({ first: must(fire, 'a call'), more: 0 }, say)).toMatch(
      /^\w.+: .+ is out: light it, or move what lies in it, by \d+:\d\d\.$/,
    );
    expect(calls.map(({ at }) => at)).toContainEqual(outAt);
  });

  it('stands at the pit with the same person, and the same time, as at the desk', () => {
    const fire = seen[0]?.alerts.find(({ key }) => key === `smoker ${smoker}`);
    const { who, name, byAt } = must(fire, 'a call');
    const shown = pit?.face === 'smoker' ? pit.smokers : [];
    const called = shown.map(({ id, spell }) => [id, spell?.call ?? null]);
    expect(called.filter(([, call]) => call !== null)).toEqual([[smoker, { who, name, byAt }]]);
  });

  it('has for each alert a person who is here, an action and a time, in both languages', () => {
    const crew = new Set(plan.kitchen.crew.map(({ id }) => id));
    for (const first of all) {
      expect(crew.has(first.who)).toBe(true);
      for (const language of ['en', 'es'] as const) {
        const said = sayAlert({ first, more: 0 }, { ...say, language });
        expect(said).toContain(first.name);
        expect(said).toMatch(/\d:\d\d/);
      }
    }
  });

  it('calls nobody oftener than a person can follow, though far more goes wrong', () => {
    // Each alert by itself, each time that it comes up.
    const names = seen.map(({ alerts }) => alerts.map(({ who, key }) => `${who} ${key}`));
    const ungrouped = names.flatMap((now, n) => now.filter((key) => !names[n - 1]?.includes(key)));
    expect(ungrouped.length).toBeGreaterThan(calls.length);
    for (const { lastHour, mostInTenMin } of ratesOf(book, until)) {
      expect(mostInTenMin).toBeLessThanOrEqual(2);
      expect(lastHour).toBeLessThanOrEqual(8);
    }
    expect(sayRates(ratesOf(book, until), say)).toMatch(/^Calls in the last hour: \w+ \d/);
  });
});
