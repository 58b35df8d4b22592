import { describe, expect, it } from 'vitest';
import { dueAt } from '../../server/due.ts';
import { resolveLocal } from '../../shared/kernel/index.ts';
import type { CookPlan } from '../../shared/plan/index.ts';

const zone = 'America/Chicago';
const at = (day: string, time: string) => resolveLocal(day, time, zone).at;
const planOf = (day: string, ...closes: string[]) => ({
  day,
  plan: { day, services: closes.map((time) => ({ closes: time })) } as unknown as CookPlan,
});
const wednesday = planOf('2026-11-25', '14:00', '21:30');
const thursday = planOf('2026-11-26', '26:00');
const friday = planOf('2026-11-27', '21:30');
const plans = [wednesday, thursday, friday];

describe('the plan to work by', () => {
  it('is that of the day whose service is on, or still to come', () => {
    expect(dueAt(plans, at('2026-11-25', '05:00'), zone)).toBe(wednesday);
    expect(dueAt(plans, at('2026-11-25', '23:29'), zone)).toBe(wednesday);
  });

  it('is the next one two hours after the last service has closed', () => {
    expect(dueAt(plans, at('2026-11-25', '23:30'), zone)).toBe(thursday);
  });

  it('is yesterday’s while its service goes on past midnight', () => {
    expect(dueAt(plans, at('2026-11-27', '01:30'), zone)).toBe(thursday);
    expect(dueAt(plans, at('2026-11-27', '04:00'), zone)).toBe(friday);
  });

  it('is none when every day is over', () => {
    expect(dueAt(plans, at('2026-11-28', '00:00'), zone)).toBeNull();
  });

  it('is not a later one while today’s is broken', () => {
    const broken = { day: '2026-11-25', plan: null };
    expect(dueAt([broken, thursday], at('2026-11-25', '12:00'), zone)).toBe(broken);
  });
});
