import { describe, expect, it } from 'vitest';
import { AlertWatch, alertsDoor } from '../../../client/shell/alert-watch.ts';
import { AlertDesk } from '../../../server/alerts/index.ts';
import { type Clock, manualClock } from '../../../server/clock.ts';
import type { Hub } from '../../../server/hub/index.ts';
import type { DayState } from '../../../shared/day/index.ts';
import { instant, type ScreenId } from '../../../shared/kernel/index.ts';
import type { AlertsShown } from '../../../shared/protocol/index.ts';

const NOW = instant(Date.UTC(2026, 2, 4, 18));
const screen = (id: string) => ({ screen: id as ScreenId, sounds: true });

const answered = (calledAt: number | null, isHeard = true): AlertsShown => ({
  ...{ ok: true, notices: [], rates: [], isHeard },
  calledAt: calledAt === null ? null : instant(calledAt),
});

/** A screen that asks, once for each of these answers. */
async function heard(answers: readonly (AlertsShown | null)[]) {
  let sounds = 0;
  let asks = 0;
  const watch = new AlertWatch({
    ask: async () => answers[asks++] ?? null,
    asked: screen('pit'),
    now: () => NOW,
    changed: () => {},
    call: () => {
      sounds += 1;
    },
  });
  for (const _ of answers) await watch.look();
  return sounds;
}

describe('a screen that is put up to sound', () => {
  it('sounds once for a call, however often it hears of it', async () => {
    expect(await heard([answered(null), answered(NOW - 5_000), answered(NOW - 5_000)])).toBe(1);
    expect(await heard([answered(NOW - 5_000), null, answered(NOW - 5_000)])).toBe(1);
  });

  it('sounds for each new call', async () => {
    expect(await heard([answered(NOW - 20_000), answered(NOW - 1_000)])).toBe(2);
  });

  it('is silent while another one sounds, and for what is long past', async () => {
    expect(await heard([answered(NOW - 5_000, false)])).toBe(0);
    expect(await heard([answered(NOW - 600_000)])).toBe(0);
  });

  it('knows nothing where the hub is away or lets it not in', async () => {
    const away = alertsDoor(null, async () => Promise.reject(new Error('away')));
    expect(await away(screen('pit'))).toBeNull();
    const refused = alertsDoor('t', async () => Response.json({ ok: false, refusal: {} }));
    expect(await refused(screen('pit'))).toBeNull();
  });
});

describe('of several screens that are put up to sound', () => {
  const hub = { state: { plan: null, happened: { closed: null } } } as unknown as Pick<
    Hub<DayState>,
    'running' | 'state'
  >;
  const deskWith = (clock: Clock) => new AlertDesk({ hub, clock, report: () => {} });

  it('one does, and none that is not put up to', () => {
    const desk = deskWith(manualClock(NOW));
    const all = ['pit', 'desk', 'pit', 'desk'].map((id) => desk.show(screen(id)).isHeard);
    expect(all).toEqual([true, false, true, false]);
    expect(desk.show({ ...screen('pit'), sounds: false }).isHeard).toBe(false);
    desk.close();
  });

  it.each([1, 60])(
    'another takes over 15 s after the first was last there, at %d times',
    (speed) => {
      const clock = { ...manualClock(NOW), speed };
      const desk = deskWith(clock);
      const heard = (id: string) => desk.show(screen(id)).isHeard;
      expect(heard('pit')).toBe(true);
      clock.advance(10_000 * speed);
      expect(heard('pit')).toBe(true);
      clock.advance(14_000 * speed);
      expect(heard('desk')).toBe(false);
      clock.advance(1_000 * speed);
      expect([heard('desk'), heard('pit')]).toEqual([true, false]);
      desk.close();
    },
  );

  it('the one that sounds goes on when somebody sets the clock of the machine', () => {
    const clock = manualClock(NOW);
    const desk = deskWith(clock);
    expect(desk.show(screen('pit')).isHeard).toBe(true);
    clock.jump(instant(NOW + 3_600_000));
    expect(desk.show(screen('desk')).isHeard).toBe(false);
    desk.close();
  });
});
