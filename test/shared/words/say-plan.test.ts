import { describe, expect, it } from 'vitest';
import type { ActivityId } from '../../../shared/kernel/index.ts';
import { celsius, instant, kilograms, metres, seconds } from '../../../shared/kernel/index.ts';
import type { PlanRefusal } from '../../../shared/plan/index.ts';
import type { Conflict, GoalId, ResourceId } from '../../../shared/schedule/index.ts';
import type { ConflictNames, Say } from '../../../shared/words/index.ts';
import { sayConflict, sayPlanRefusal } from '../../../shared/words/index.ts';

const english: Say = {
  language: 'en',
  zone: 'UTC',
  clock: '24 h',
  temperature: '°F',
  weight: 'lb',
};
const spanish: Say = { ...english, language: 'es' };

const of = {
  service: { en: 'Dinner', es: 'Cena' },
  dish: { en: 'Ribs', es: 'Costillas' },
};
const step = { ...of, step: { en: 'Trim', es: 'Limpiar' } };
const skill = { en: 'knife', es: 'cuchillo' };

const refusals: readonly [PlanRefusal, string][] = [
  [
    { rule: 'unknown-word', path: 'services[0]', found: '"x"', allowed: 'one of: y' },
    'services[0]: found "x"; allowed: one of: y.',
  ],
  [
    { rule: 'closes-before-opening', service: of.service, opens: '17:00', closes: '01:00' },
    [
      'Dinner opens at 17:00 and closes at 01:00, which is before it:',
      'a time after midnight is written 25:00, or 1:00 am +1.',
    ].join(' '),
  ],
  [
    { rule: 'sales-after-closing', ...of, counted: 12, open: 10 },
    'Dinner, Ribs: sales are counted for 12 quarters of an hour, and it is open for 10.',
  ],
  [
    {
      rule: 'portion-over-piece',
      ...of,
      portionKg: kilograms(0.45359237 * 3),
      pieceGivesKg: kilograms(0.45359237 * 2),
    },
    'Dinner, Ribs: a portion is 3 lb, and one piece gives 2 lb: make the portion that or less.',
  ],
  [
    {
      rule: 'no-smoker',
      ...of,
      setC: celsius(107.2),
      smokers: [
        { smoker: { en: 'A' }, why: 'heat', coolestC: celsius(150), hottestC: celsius(200) },
        { smoker: { en: 'B' }, why: 'size', needs: metres(0.5), most: metres(0.3) },
        { smoker: { en: 'C' }, why: 'weight', needs: kilograms(9), most: kilograms(5) },
        { smoker: { en: 'D' }, why: 'not-wished' },
      ],
    },
    [
      'Dinner, Ribs: no smoker can take it at 225 °F: A holds 302 °F to 392 °F;',
      'B has 12 in on a rack and a piece takes 20 in; C carries 11 lb on a rack',
      'and a piece is 20 lb; D is not among its slots; nearest: A at 302 °F.',
    ].join(' '),
  ],
  [
    { rule: 'no-skill', ...step, skill, needs: 2, has: 1 },
    'Dinner, Ribs, “Trim” needs 2 with the skill “knife”; the crew has 1: 1 more must be on it.',
  ],
  [
    { rule: 'hand-lacks-skill', ...step, hand: 'Ana', skill },
    'Dinner, Ribs, “Trim” is given to Ana, who has not been shown “knife”.',
  ],
  [
    { rule: 'no-shift', ...step, needS: seconds(7200), longestS: seconds(3600) },
    [
      'Dinner, Ribs, “Trim” takes 2 h for one piece; the',
      'longest anyone who can do it is there in one go is 1 h.',
    ].join(' '),
  ],
  [
    { rule: 'no-station', ...step, bench: { en: 'trim' } },
    'Dinner, Ribs, “Trim” needs a bench for “trim”; no station has one.',
  ],
  [
    { rule: 'no-room-to-keep', ...step, where: 'pans', needs: 9, has: 4 },
    'Dinner, Ribs, “Trim” needs 9 pan places in the cabinets; there are 4.',
  ],
  [
    {
      rule: 'limit-too-short',
      ...of,
      from: { en: 'off' },
      to: { en: 'sliced' },
      needS: seconds(5400),
      allowedS: seconds(3600),
    },
    [
      'Dinner, Ribs: from “off” to “sliced” takes 1 h 30',
      'min even for one piece; at most 1 h is allowed.',
    ].join(' '),
  ],
  [
    {
      rule: 'service-too-early',
      ...of,
      opens: '11:30',
      needS: seconds(36_000),
      hasS: seconds(18_000),
      canOpenAt: instant(Date.UTC(2026, 10, 25, 16, 30)),
    },
    'Dinner, Ribs needs 10 h before it opens at 11:30, and there are 5 h: it can open at 16:30.',
  ],
  [
    {
      rule: 'trim-short',
      ...of,
      cut: { en: 'rib tips' },
      needKg: kilograms(0.45359237 * 12),
      hasKg: kilograms(0.45359237 * 8),
      portions: 30,
    },
    [
      'Dinner, Ribs needs 12 lb of rib tips, and what it is',
      'taken from leaves 8 lb: that is enough for 30 portions.',
    ].join(' '),
  ],
  [
    {
      rule: 'limit-broken',
      ...step,
      row: {
        id: 'end-poultry',
        what: { en: 'End of cooking: poultry' },
        section: '3-401.11(A)(3)',
        source: 'the code',
        edition: '2017',
      },
      asked: '165 °F',
      found: '160 °F',
    },
    [
      'Dinner, Ribs, “Trim” breaks a limit: End of cooking: poultry',
      '(3-401.11(A)(3), the code, 2017); asked 165 °F, planned 160 °F.',
    ].join(' '),
  ],
];

describe('a cook plan that cannot be worked out', () => {
  it.each(refusals)('is refused in one sentence with its amounts: $rule', (refusal, sentence) => {
    expect(sayPlanRefusal(refusal, english)).toBe(sentence);
  });

  it.each(refusals)('is refused in Spanish too: $rule', (refusal) => {
    const sentence = sayPlanRefusal(refusal, spanish);
    expect(sentence).not.toMatch(/undefined|Dinner|Ribs|“/);
    expect(sentence.endsWith('.')).toBe(true);
  });
});

const id = (name: string) => name as ActivityId;
const names: ConflictNames = {
  task: (name) => ({ en: `task ${name}`, es: `tarea ${name}` }),
  resource: (name) => ({ en: `place ${name}`, es: `lugar ${name}` }),
  at: (fromOriginS) => instant(fromOriginS * 1000),
  takesS: (name) => seconds(60 * name.length),
};

const conflicts: readonly [Conflict, string][] = [
  [
    { kind: 'lags-contradict', activities: [id('a'), id('b'), id('a')], excessS: seconds(600) },
    'The times between “task a”, “task b” cannot all be kept: they are 10 min too long together.',
  ],
  [
    { kind: 'no-resource', activity: id('a'), role: 'hand', amount: 3, most: 2 },
    '“task a” needs 3 at once of what there is 2 of.',
  ],
  [
    {
      kind: 'no-room',
      activity: id('a'),
      role: 'slot',
      resources: ['r' as ResourceId],
      window: { start: seconds(3600), end: seconds(7200) },
      shortS: seconds(1200),
      blockedBy: [id('b')],
    },
    [
      '“task a” finds no room on place r between 01:00',
      'and 02:00: 20 min are lacking, taken by “task b”.',
    ].join(' '),
  ],
  [
    {
      kind: 'goal-too-early',
      goal: 'g' as GoalId,
      shortS: seconds(5400),
      chain: [id('a'), id('b')],
    },
    'The chain “task a” → “task b” is 1 h 30 min too long for its service.',
  ],
  [
    {
      kind: 'goal-too-early',
      goal: 'g' as GoalId,
      shortS: seconds(5400),
      chain: ['trim', 'rub', 'set', 'smoking', 'wrap', 'finishing', 'rest', 'rest'].map(id),
    },
    [
      'A chain of 7 steps is 1 h 30 min too long for its service. Its longest:',
      '“task trim” 4 min → “task smoking” 7 min → “task wrap” 4 min → “task finishing” 9 min.',
    ].join(' '),
  ],
  [
    { kind: 'malformed', where: 'lags[3]', what: 'an unknown activity' },
    'The plan makes no sense at lags[3]: an unknown activity.',
  ],
];

describe('a plan for which hands, places and time do not suffice', () => {
  it.each(conflicts)('is refused in one sentence with its amounts: $kind', (conflict, sentence) => {
    expect(sayConflict(conflict, names, english)).toBe(sentence);
  });

  it.each(conflicts)('is refused in Spanish too: $kind', (conflict) => {
    const sentence = sayConflict(conflict, names, spanish);
    expect(sentence).not.toMatch(/undefined|task|place r|“/);
  });
});
