import { describe, expect, it } from 'vitest';
import {
  type DayState,
  decideLanguage,
  decideWho,
  EVENT_VERSION,
  type Event,
  emptyDay,
  fold,
  isUnclaimed,
  languageReadBy,
  livingScreens,
  type WhoAction,
  type WhoActor,
  type WhoFact,
} from '../../../shared/day/index.ts';
import type { CommandId, PersonId, ScreenId } from '../../../shared/kernel/index.ts';
import { instant, must } from '../../../shared/kernel/index.ts';
import { Telling } from './demo.ts';

const [office, spare] = ['office', 'spare'] as [ScreenId, ScreenId];
const atOffice: WhoActor = { screenId: office, personId: null };

function after(state: DayState, ...facts: WhoFact[]): DayState {
  return facts.reduce((so, fact): DayState => {
    const at = instant(so.keptAt + 1000);
    const head = { seq: so.seq + 1, version: EVENT_VERSION, day: so.day, at, keptAt: at } as const;
    const who = { commandId: `c${so.seq}` as CommandId, personId: null, screenId: office };
    const event: Event = { ...fact, ...head, ...who };
    return fold(so, event);
  }, state);
}

function done(state: DayState, action: WhoAction, actor: WhoActor = atOffice): DayState {
  const decision = decideWho(state, action, actor);
  if (!decision.ok) throw new Error(decision.refusal.rule);
  return after(state, ...(decision.facts as WhoFact[]));
}
const whyNot = (state: DayState, action: WhoAction, actor: WhoActor = atOffice) => {
  const decision = decideWho(state, action, actor);
  return decision.ok ? null : decision.refusal.rule;
};

const claim = { kind: 'claim', screen: office, name: 'Office' } as const;
const claimed = () => done(emptyDay(), claim);
const pitOf = (screen: ScreenId, name: string) =>
  ({ kind: 'pair', screen, name, place: { role: 'pit', stations: [] } }) as const;

describe('who belongs to the hub', () => {
  it('is nobody until it is claimed', () => {
    expect(isUnclaimed(emptyDay().who)).toBe(true);
    expect(isUnclaimed(claimed().who)).toBe(false);
  });

  it('stays known by name after it was taken off, for the log tells of it', () => {
    const state = done(done(claimed(), pitOf(spare, 'Fire')), { kind: 'revoke', screen: spare });
    expect(livingScreens(state.who).map(({ id }) => id)).toEqual([office]);
    expect(state.who.screens.get(spare)).toMatchObject({ name: 'Fire', revokedAt: state.keptAt });
  });

  it('outlasts the day it was written on', () => {
    const plan = must(new Telling().events[0], 'the plan');
    const before = done(claimed(), pitOf(spare, 'Fire'));
    const next = fold(before, { ...plan, seq: before.seq + 1 });
    expect(next.plan).not.toBeNull();
    expect(next.who).toBe(before.who);
  });
});

describe('what somebody reads', () => {
  const telling = new Telling();
  const { crew } = must(telling.state.plan, 'a plan').kitchen;
  const person = must(crew[0], 'somebody');
  const said = (state: DayState, language: 'en' | 'es' | null) => {
    const decision = decideLanguage(state, { person: person.id, language });
    return decision.ok ? after(state, ...(decision.facts as WhoFact[])) : state;
  };

  it('is what the kitchen’s file says until a desk says otherwise, and nobody else’s', () => {
    expect(languageReadBy(telling.state.who, { ...person, language: 'es' })).toBe('es');
    const english = said(telling.state, 'en');
    expect(languageReadBy(english.who, { ...person, language: 'es' })).toBe('en');
    expect(languageReadBy(said(english, null).who, { ...person, language: 'es' })).toBeNull();
    const other = must(crew[1], 'somebody else');
    expect(languageReadBy(english.who, other)).toBe(other.language ?? null);
  });

  it('is asked of nobody who is not of the crew', () => {
    const asked = { person: 'x' as PersonId, language: 'es' } as const;
    expect(decideLanguage(telling.state, asked)).toEqual({
      ok: false,
      refusal: { rule: 'unknown-person' },
    });
  });
});

describe('a change at the desk', () => {
  it('is refused to every screen that is no desk', () => {
    const state = done(claimed(), pitOf(spare, 'Fire'));
    const revoke = { kind: 'revoke', screen: spare } as const;
    expect(whyNot(state, revoke, { screenId: spare, personId: null })).toBe('not-the-desk');
    const stranger = { screenId: 'x' as ScreenId, personId: null };
    expect(whyNot(state, revoke, stranger)).toBe('screen-unknown');
  });

  it('takes an owner once there is one', () => {
    const ines = 'ines' as PersonId;
    const state = after(claimed(), { kind: 'pinSet', person: ines, isOwner: true });
    expect(whyNot(state, pitOf(spare, 'Fire'))).toBe('needs-owner');
    expect(whyNot(state, pitOf(spare, 'Fire'), { screenId: office, personId: ines })).toBeNull();
    expect(done(state, { ...claim, screen: spare }).who.pins.size).toBe(0);
  });

  it('leaves no two screens of one name, and no wall without a station', () => {
    const state = done(claimed(), pitOf(spare, 'Fire'));
    expect(whyNot(state, pitOf('third' as ScreenId, 'Fire'))).toBe('name-taken');
    expect(whyNot(state, { kind: 'rename', screen: spare, name: 'Office' })).toBe('name-taken');
    const place = { role: 'wall', stations: [] } as const;
    expect(whyNot(state, { kind: 'move', screen: spare, place })).toBe('needs-station');
  });

  it('leaves a desk, and touches no screen that is gone', () => {
    const state = claimed();
    expect(whyNot(state, { kind: 'revoke', screen: office })).toBe('last-desk');
    expect(whyNot(state, { kind: 'revoke', screen: spare })).toBe('unknown-screen');
    expect(whyNot(state, { kind: 'clearPin', person: 'ines' as PersonId })).toBe('unknown-person');
  });
});
