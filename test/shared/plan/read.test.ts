import { describe, expect, it } from 'vitest';
import { readCookPlan, readPlanFiles, timesTwice } from '../../../shared/plan/index.ts';
import { filesWith, plain, spoilt } from './three-elms.ts';

describe('reading a cook plan', () => {
  it('says all that is wrong at once', () => {
    const read = readCookPlan(
      spoilt(plain.cookPlan, {
        day: '2026-02-30',
        'services[0].opens': '11.30',
        'services[0].dishes[0].sales.shape': 'erly',
        'services[1].dishes[0].sales.portions': 0,
        'services[1].id': 'lunch',
      }),
    );
    expect(read.ok ? [] : read.problems).toEqual([
      { path: 'day', found: '"2026-02-30"', allowed: 'a day such as "2026-11-25"' },
      {
        path: 'services[0].opens',
        found: '"11.30"',
        allowed: 'a wall-clock time such as "17:00"; from "24:00" on it is the day after',
        meant: '11:30',
      },
      {
        path: 'services[0].dishes[0].sales.shape',
        found: '"erly"',
        allowed: 'one of: even, early, middle, late',
        meant: 'early',
      },
      { path: 'services[1].dishes[0].sales.portions', found: '0', allowed: '1 or more' },
      { path: 'services[1].id', found: '"lunch"', allowed: 'a name that is given only once' },
    ]);
  });

  it('knows the kitchen and the catalogue that it speaks of', () => {
    const read = readCookPlan(
      spoilt(plain.cookPlan, {
        'services[0].dishes[0].dish': 'rib',
        'services[0].dishes[1].choices': { finsh: 'pull', wrap: 'paper' },
        'services[1].dishes[0].hands': { rubb: 'rosa', square: 'rosie' },
        'services[1].dishes[0].slots': ['a/9'],
      }),
      filesWith(),
    );
    expect(read.ok ? [] : read.problems.map(({ path, meant }) => [path, meant])).toEqual([
      ['services[0].dishes[0].dish', 'ribs'],
      ['services[0].dishes[1].choices.finsh', 'finish'],
      ['services[1].dishes[0].slots[0]', 'a/1'],
      ['services[1].dishes[0].hands.square', undefined],
      ['services[1].dishes[0].hands.rubb', 'rub'],
    ]);
  });
});

describe('a time of a plan on the night a clock is changed', () => {
  const on = (day: string, changes: Readonly<Record<string, unknown>>) =>
    spoilt(plain.cookPlan, { day, ...changes });
  const batch = { number: 1, portions: 10, ready: '26:59' };

  // Clocks go forward at 2:00 on 8 March 2026 in Chicago (IANA tzdata).
  it('is not taken for another where the clock skips it, and says which are near', () => {
    const plan = on('2026-03-07', {
      'services[0].opens': '26:00',
      'services[0].closes': '27:00',
      'services[0].dishes[0].batches': [batch],
    });
    const read = readCookPlan(plan, filesWith());
    const allowed = 'a time that the clock does not skip that night, such as ';
    expect(read.ok ? [] : read.problems).toEqual([
      {
        path: 'services[0].opens',
        found: '"26:00"',
        allowed: `${allowed}"25:30" or "27:00"`,
      },
      {
        path: 'services[0].dishes[0].batches[0].ready',
        found: '"26:59"',
        allowed: `${allowed}"25:59" or "27:29"`,
      },
    ]);
  });

  it('is one of that place alone: where no clock is changed then, it is taken', () => {
    const phoenix = { ...filesWith().kitchen, zone: 'America/Phoenix' };
    const plan = on('2026-03-07', { 'services[0].opens': '26:30', 'services[0].closes': '28:00' });
    expect(readCookPlan(plan, { ...filesWith(), kitchen: phoenix })).toMatchObject({ ok: true });
  });

  it('is taken where it comes twice, and said to', () => {
    const plan = on('2026-10-31', { 'services[1].closes': '25:30' });
    const read = readCookPlan(plan, filesWith());
    expect(read.ok && timesTwice(read.value, 'America/Chicago')).toMatchObject([
      { of: 'closes', time: '25:30' },
    ]);
    expect(read.ok && timesTwice(read.value, 'America/Phoenix')).toEqual([]);
  });
});

describe('reading the files of a day together', () => {
  it('says which file each fault is in, also where one speaks of another', () => {
    const read = readPlanFiles({
      ...plain,
      kitchen: spoilt(plain.kitchen, {
        'crew[0].trained': ['knife', 'crave'],
        'stations[0].benches': ['trimm'],
      }),
      cookPlan: spoilt(plain.cookPlan, { 'services[0].dishes[0].dish': 'rib' }),
    });
    const told = read.ok ? [] : read.problems.map(({ file, path, meant }) => [file, path, meant]);
    expect(told).toEqual([
      ['kitchen', 'crew[0].trained[1]', 'carve'],
      ['kitchen', 'stations[0].benches[0]', 'trim'],
      ['cookPlan', 'services[0].dishes[0].dish', 'ribs'],
    ]);
  });

  it('takes a file that names its JSON Schema for the editor', () => {
    const named = { $schema: '../docs/schema/cook-plan.schema.json', ...plain.cookPlan };
    expect(readCookPlan(named)).toEqual(readCookPlan(plain.cookPlan));
  });
});
