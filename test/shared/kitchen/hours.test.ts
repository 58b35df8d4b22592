import { describe, expect, it } from 'vitest';
import { must, type SkillId } from '../../../shared/kernel/index.ts';
import { type CrewMember, workingHours } from '../../../shared/kitchen/index.ts';
import { filesWith } from '../plan/three-elms.ts';

const { kitchen } = filesWith();
const marcus = must(kitchen.crew[0], 'Marcus');

const withShifts = (shifts: CrewMember['shifts']): CrewMember => ({ ...marcus, shifts });
const hoursIn = (person: CrewMember, days: readonly string[], zone: string) =>
  workingHours(person, days, zone).map(({ start, end }) => (end - start) / 3_600_000);

describe('working hours', () => {
  it('leave the breaks out', () => {
    expect(hoursIn(marcus, ['2026-11-24'], 'America/Chicago')).toEqual([4, 4.5]);
  });

  it('fall on weekdays as on dates', () => {
    const person = withShifts([{ on: ['wed'], from: '09:00', to: '17:00', breaks: [] }]);
    const week = ['2026-11-23', '2026-11-24', '2026-11-25', '2026-11-26'];
    expect(hoursIn(person, week, 'UTC')).toEqual([8]);
  });

  it('join shifts that touch', () => {
    const shift = (from: string, to: string) => ({ on: ['2026-11-25'], from, to, breaks: [] });
    const person = withShifts([shift('12:00', '16:00'), shift('08:00', '12:00')]);
    expect(hoursIn(person, ['2026-11-25'], 'UTC')).toEqual([8]);
  });

  it('are the hours that pass on a night when the clock changes', () => {
    const night = (day: string) =>
      withShifts([{ on: [day], from: '22:00', to: '30:00', breaks: [] }]);
    // 2026: forward on 8 March, back on 1 November (IANA tzdata, America/Chicago).
    expect(hoursIn(night('2026-03-07'), ['2026-03-07'], 'America/Chicago')).toEqual([7]);
    expect(hoursIn(night('2026-10-31'), ['2026-10-31'], 'America/Chicago')).toEqual([9]);
  });

  it('say nothing of skills', () => {
    const bare = { ...marcus, trained: [] as SkillId[] };
    expect(workingHours(bare, ['2026-11-24'], 'UTC')).toEqual(
      workingHours(marcus, ['2026-11-24'], 'UTC'),
    );
  });
});
