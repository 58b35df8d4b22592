import { expect, it } from 'vitest';
import { type Instant, minutes, seconds } from '../../../shared/kernel/index.ts';
import { type Problem, whatConflicts } from '../../../shared/schedule/index.ts';
import { type Language, type Say, sayConflicting } from '../../../shared/words/index.ts';
import { activity, goal, lag, need, problem, unit, work } from '../schedule/problems.ts';

const say = (language: Language): Say => ({
  language,
  zone: 'America/Chicago',
  clock: '12 h',
  temperature: '°F',
  weight: 'lb',
});

const names = {
  task: (id: string) => ({ en: id, es: `${id} (es)` }),
  resource: (id: string) => ({ en: id }),
  at: () => 0 as Instant,
  takesS: () => minutes(60),
};

/** Two cooks of an hour each on one rack, and at most half an hour from either to the table. */
const day: Problem = problem({
  horizonS: seconds(40_000),
  activities: [
    activity('ribs', work(minutes(60)), [need(['rack'])]),
    activity('wings', work(minutes(60)), [need(['rack'])]),
    activity('table', work(minutes(10))),
  ],
  lags: [
    lag('ribs.end', 'table.start', 0, minutes(30)),
    lag('wings.end', 'table.start', 0, minutes(30)),
  ],
  resources: [unit('rack')],
  goals: [goal('table', 30_000)],
});

const said = (language: Language, of: Problem = day, checksMost = 100) => {
  const found = whatConflicts(of, { checksMost });
  return found && sayConflicting(found, names, say(language));
};

it('says which few things cannot all be kept, in the language of the reader', () => {
  expect(said('en')).toBe(
    [
      'These cannot all be kept, whatever else is planned:',
      '“ribs” needs its hand or its place; “wings” needs its hand or its place;',
      'at most 30 min between “ribs” and “table”; at most 30 min between “wings” and “table”.',
      'Give way in one of them.',
    ].join(' '),
  );
  expect(said('es')).toBe(
    [
      'Esto no se puede cumplir todo, se planee como se planee:',
      '“ribs (es)” necesita su persona o su lugar; “wings (es)” necesita su persona o su lugar;',
      'máximo 30 min entre “ribs (es)” y “table (es)”;',
      'máximo 30 min entre “wings (es)” y “table (es)”.',
      'Ceda en una de estas cosas.',
    ].join(' '),
  );
});

it('says so where the list may be longer than it need be', () => {
  expect(said('en', day, 1)).toMatch(/Not all of them may be needed for that\.$/);
});
