import { beforeAll, describe, expect, it, vi } from 'vitest';
import { type Guard, mayAsk, mayShow, OPEN } from '../../../server/who/index.ts';
import { type Command, type DayState, emptyDay, type Place } from '../../../shared/day/index.ts';
import {
  type CommandId,
  instant,
  type PersonId,
  type ScreenId,
} from '../../../shared/kernel/index.ts';
import { rights } from '../../../shared/protocol/index.ts';

const [pit, office, off] = ['pit', 'office', 'off'] as [ScreenId, ScreenId, ScreenId];
const [ines, theo] = ['ines', 'theo'] as [PersonId, PersonId];
const smoker = { kind: 'smoker' } as const;
const desk = { kind: 'desk' } as const;

const guard: Guard = {
  isOpen: false,
  personAt: (screen) => (screen === pit ? ines : null),
};

let state: DayState;
beforeAll(() => {
  const screen = (id: ScreenId, role: Place['role'], revokedAt: number | null = null) => ({
    id,
    name: id,
    place: { role, stations: [] },
    pairedAt: instant(0),
    revokedAt: revokedAt === null ? null : instant(revokedAt),
  });
  const screens = [screen(pit, 'pit'), screen(office, 'desk'), screen(off, 'pit', 5)];
  const pins = new Map([[ines, { isOwner: false }]]);
  const who = {
    screens: new Map(screens.map((each) => [each.id, each])),
    pins,
    languages: new Map(),
  };
  state = { ...emptyDay(), who };
});

function note(personId: PersonId | null = null): Command {
  const head = { id: 'c' as CommandId, personId, screenId: null, tappedAt: instant(0) };
  return { ...head, kind: 'note', text: 'ash', task: null };
}

describe('the guard', () => {
  it('lets a screen show and ask what its role may', () => {
    expect(mayShow(state, { screenId: pit, face: smoker }, guard)).toBeNull();
    expect(mayAsk(state, { screenId: pit, face: smoker }, note(), guard)).toBeNull();
    expect(mayAsk(state, { screenId: office, face: smoker }, note(), guard)).toBeNull();
  });

  it.each([
    ['of another face', pit, desk, 'screen-elsewhere'],
    ['that was taken off', off, smoker, 'screen-revoked'],
    ['that nobody let in', 'x' as ScreenId, smoker, 'screen-unknown'],
  ])('refuses every command of a screen %s', (_what, screenId, face, rule) => {
    expect(mayAsk(state, { screenId, face }, note(), guard)).toEqual({ rule });
  });

  it('asks no screen anything where the hub is open', () => {
    expect(mayAsk(state, { screenId: off, face: smoker }, note(), OPEN)).toBeNull();
  });
});

describe('what needs a PIN by the table', () => {
  const asker = { screenId: pit, face: smoker };
  const why = (personId: PersonId | null, day = state, by = guard) => {
    const needsPin = vi.spyOn(rights, 'note', 'get');
    try {
      needsPin.mockReturnValue({ ...rights.reading, needsPin: true });
      return mayAsk(day, asker, note(personId), by);
    } finally {
      needsPin.mockRestore();
    }
  };

  it('is taken from a person who has just proved to be at this screen, and from no other', () => {
    expect(why(ines)).toBeNull();
    for (const person of [theo, null]) expect(why(person)).toEqual({ rule: 'needs-pin' });
  });

  it('is taken from anybody while nobody has a PIN, and where the hub is open', () => {
    const bare = { ...state, who: { ...state.who, pins: new Map() } };
    expect(why(null, bare)).toBeNull();
    expect(why(null, state, OPEN)).toBeNull();
  });
});
