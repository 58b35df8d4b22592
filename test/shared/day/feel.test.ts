import { describe, expect, it } from 'vitest';
import type { CheckOn, Event, FeelAsked, Intent } from '../../../shared/day/index.ts';
import { barsOf, feelAsked, fold, indexOf, openChecks } from '../../../shared/day/index.ts';
import type { BatchId, Instant } from '../../../shared/kernel/index.ts';
import { after, celsius, minutes, must } from '../../../shared/kernel/index.ts';
import { messageSchemas } from '../../../shared/protocol/index.ts';
import { evidenceOf, tables } from '../../../shared/record/index.ts';
import { noon, plan, Telling } from './demo.ts';

const at = (min: number): Instant => after(noon, minutes(min));
const by = must(plan.kitchen.crew[0], 'somebody').id;
const batch = 'dinner-pulled-shoulder-1' as BatchId;
const on: CheckOn = { kind: 'end-temperature', batch };
const probe = must(
  plan.built.tasks.findLast(
    (each) => each.batch === batch && each.check?.coreAtLeastC !== undefined,
  ),
  'a probe',
).id;

type Found = 'there' | 'not-yet';
const felt = (feel?: Found, tempC = 96): Intent => {
  const read = { kind: 'check', on, tempC: celsius(tempC), thermometer: null } as const;
  return feel ? { ...read, feel } : read;
};

function probing(): Telling {
  const day = new Telling();
  day.keep({ kind: 'taskStarted', task: probe, hand: by }, at(0), by);
  return day;
}

const open = (day: Telling) =>
  openChecks(day.state).find((check) => JSON.stringify(check.on) === JSON.stringify(on));

describe('the end of a cook as hand and eye find it', () => {
  it('is asked in the words of its own finish', () => {
    const words = (of: string): FeelAsked | null =>
      feelAsked(indexOf(plan), { kind: 'end-temperature', batch: of as BatchId });
    expect(words('dinner-pulled-shoulder-1')).toMatchObject({
      there: { en: 'The probe slides in as into butter' },
      notYet: { en: 'The probe still grips' },
    });
    expect(words('lunch-chicken-1')?.there.en).toBe('Juices clear, the leg turns');
    expect(feelAsked(indexOf(plan), { kind: 'hot-hold', batch })).toBeNull();
  });

  it('is kept beside the number, with the words as they were then', () => {
    const day = probing();
    expect(day.ask(felt('there'), at(2), by).ok).toBe(true);
    expect(day.state.checks).toMatchObject([
      {
        ...{ tempC: 96, by },
        feel: { is: 'there', words: { en: 'The probe slides in as into butter' } },
      },
    ]);
    expect(open(day)).toBeUndefined();
  });

  it('is asked for again while it is not yet so, and ends with the probing', () => {
    const day = probing();
    day.ask(felt('not-yet'), at(2), by);
    expect(open(day)).toMatchObject({ dueAt: at(22), failed: null, isMending: false });
    day.ask(felt('there'), at(20), by);
    expect(open(day)).toBeUndefined();
    day.ask(felt('not-yet'), at(21), by);
    expect(open(day)).toBeDefined();
    day.keep({ kind: 'taskFinished', task: probe }, at(25), by);
    expect(open(day)).toBeUndefined();
  });

  it('bars nothing by itself: the number keeps the limit, or breaks it', () => {
    const day = probing();
    day.ask(felt('not-yet'), at(2), by);
    day.keep({ kind: 'taskFinished', task: probe }, at(5), by);
    expect(barsOf(day.state, at(200)).has(batch)).toBe(false);
    const cold = probing();
    cold.ask(felt('there', 40), at(2), by);
    expect(open(cold)?.failed?.tempC).toBe(40);
  });

  it('is not made up of a log from before it was asked', () => {
    const day = probing();
    day.ask(felt(), at(2), by);
    const last = must(day.events.at(-1), 'an event');
    expect(last).not.toHaveProperty('feel');
    const stored: Event = JSON.parse(JSON.stringify(last));
    expect(fold(probing().state, stored).checks).toMatchObject([{ tempC: 96 }]);
    expect(open(day)).toBeUndefined();
  });
});

describe('what was felt, in the record', () => {
  const day = probing();
  day.ask(felt('not-yet', 92), at(2), by);
  day.ask(felt('there'), at(22), by);
  const evidence = must(evidenceOf(day.state), 'evidence');

  it('stands beside the number of each time', () => {
    expect(evidence.checks.map(({ tempC, feel }) => [tempC, feel?.is, feel?.words?.en])).toEqual([
      [92, 'not-yet', 'The probe still grips'],
      [96, 'there', 'The probe slides in as into butter'],
    ]);
  });

  it('is in the table of checks', () => {
    const record = { day: plan.built.day, zone: plan.built.zone };
    const { header, rows } = tables.checks([{ record: record as never, evidence }]);
    const [first] = rows;
    expect(header.slice(-2)).toEqual(['felt', 'felt_words']);
    expect(first?.slice(-2)).toEqual(['not-yet', 'The probe still grips']);
    expect(first).toHaveLength(header.length);
  });
});

describe('a tap as a screen sends it', () => {
  const sent = {
    ...{ id: 'a', personId: by, screenId: 'wall', tappedAt: noon },
    ...{ kind: 'check', on, tempC: 96, thermometer: null },
  };

  it('may say what was felt, and need not: a screen that waited long sends the old one', () => {
    expect(messageSchemas().command.safeParse(sent).success).toBe(true);
    expect(messageSchemas().command.safeParse({ ...sent, feel: 'there' }).success).toBe(true);
    expect(messageSchemas().command.safeParse({ ...sent, feel: 'tender' }).success).toBe(false);
  });
});
