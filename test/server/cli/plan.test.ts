import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makePlan } from '../../../server/adopt.ts';
import { demoDay } from '../../../server/demo/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { kitchenFolder, noon, today, typed } from './kitchen-at-work.ts';

let folder: ReturnType<typeof kitchenFolder>;
beforeAll(() => {
  folder = kitchenFolder();
});
afterAll(() => folder.remove());

const planned = () => typed(folder.path, 'plan', `plans/${today}.json`, '--json');
const jsonOf = async (answer: Promise<{ readonly said: string }>) =>
  JSON.parse((await answer).said);

describe('a plan that is sound', () => {
  it('is one JSON document with every activity, its times, hands and places', async () => {
    const { exit, complaints, said } = await planned();
    const plan = JSON.parse(said);
    expect({ exit, complaints, refusals: plan.refusals }).toEqual({
      exit: 0,
      complaints: [],
      refusals: [],
    });
    const made = makePlan(demoDay(noon, 'America/Chicago'), 1);
    const { built } = must(made.ok ? made.plan : null, 'a plan');
    const ids = plan.activities.map(({ id }: { id: string }) => id);
    expect(new Set(ids)).toEqual(new Set(built.tasks.map(({ id }) => id)));
    const load = plan.activities.find(({ id }: { id: string }) => id === 'dinner-ribs-1/load');
    expect(load).toMatchObject({
      kind: 'hands',
      batch: 'dinner-ribs-1',
      resources: load.resources,
    });
    expect(load.resources[0]).toMatch(/^hand:/);
    const stay = plan.activities.find(({ id }: { id: string }) => id === 'dinner-ribs-1/stay-1');
    expect(stay.resources[0]).toMatch(/^slot:[abc]\/\d$/);
    expect([stay.start, stay.states[0].state]).toEqual([load.start, '135.0 °C']);
  });

  it('gives instants in UTC with the wall clock beside, and weights in kilograms', async () => {
    const plan = await jsonOf(planned());
    const dinner = plan.services.find(({ id }: { id: string }) => id === 'dinner');
    // Central Standard Time is six hours behind UTC.
    expect(dinner).toMatchObject({
      opens: '2026-03-04T23:00:00.000Z',
      opensLocal: '2026-03-04T17:00',
    });
    expect(Number.isInteger(dinner.inHandMin)).toBe(true);
    for (const { pieces, weight, weightKg } of plan.pull) {
      expect(weight).toBe(weightKg);
      expect(weightKg / pieces).toBeLessThan(8);
    }
  });

  it('is the one that is due, where a folder is named, and the one of a day that is', async () => {
    const { day } = await jsonOf(typed(folder.path, 'plan', '.', '--json'));
    expect(day).toBe(today);
    const other = await typed(folder.path, 'plan', '.', '--day', '2026-03-05');
    expect(other).toMatchObject({ exit: 1, said: '' });
    expect(other.complaints).toEqual([
      'No plan for 2026-03-05: there are plans for 2026-03-04. Did you mean 2026-03-04?',
    ]);
  });

  it('is printed by time and hand, with pull list, mixes and minutes to spare', async () => {
    const { exit, said } = await typed(folder.path, 'plan', '.');
    expect(exit).toBe(0);
    expect(said).toMatch(/^Three Elms · Wednesday, March 4, 2026 · plan 1$/m);
    expect(said).toMatch(/^Dinner 5:00 pm: .*to spare$/m);
    expect(said).toMatch(/^ {2}\d+:\d\d [ap]m +\d+:\d\d [ap]m +Rosa +Trim +Square spare ribs/m);
    expect(said).toMatch(/^ {2}Spare ribs +\d+ slabs +\d+ lb +by /m);
    expect(said).toMatch(/^ {2}Rib rub .*Contains mustard: label it\.$/m);
  });

  it('is printed in Spanish when that is asked for', async () => {
    const { said } = await typed(folder.path, 'plan', '.', '--language', 'es');
    expect(said).toContain('Cuadre las costillas');
    expect(said).toContain('Sacar de la cámara');
  });
});

describe('a plan that cannot be', () => {
  const withDish = (change: Record<string, unknown>) => {
    const [lunch, ...others] = folder.files.cookPlan.services;
    const [dish, ...rest] = must(lunch, 'lunch').dishes;
    const services = [{ ...lunch, dishes: [{ ...dish, ...change }, ...rest] }, ...others];
    folder.write('changed.json', { ...folder.files.cookPlan, services });
    return typed(folder.path, 'plan', 'changed.json', '--json');
  };

  it('is refused with the rule, a sentence and its data, in JSON that is complete', async () => {
    const { exit, complaints, said } = await withDish({ hands: { square: 'bea' } });
    expect({ exit, complaints }).toEqual({ exit: 1, complaints: [] });
    const { refusals, ...rest } = JSON.parse(said);
    const nothing = { activities: [], pull: [], mixes: [], tubs: [], services: [] };
    expect(rest).toEqual({ ...nothing, nearest: null });
    expect(refusals).toMatchObject([{ rule: 'hand-lacks-skill', hand: 'Bea' }]);
    expect(refusals[0].sentence).toBe(
      'Lunch, Spare ribs, “Square spare ribs” is given to Bea, who has not been shown “Knife”.',
    );
  });

  it('is refused in sentences on stderr and nothing on stdout, for a person', async () => {
    await withDish({ hands: { square: 'bea' } });
    const { exit, complaints, said } = await typed(folder.path, 'plan', 'changed.json');
    expect({ exit, said }).toEqual({ exit: 1, said: '' });
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toContain('who has not been shown');
  });

  it('has the faults of all three files named at once, with place and find', async () => {
    const { kitchen, catalogue, cookPlan } = folder.files;
    folder.write('k.json', { ...kitchen, zone: 'Mars/Olympus' });
    folder.write('c.json', { ...catalogue, dishes: 7 });
    folder.write('p.json', { ...cookPlan, servces: [] });
    const places = ['--kitchen', 'k.json', '--catalogue', 'c.json'];
    const { exit, said } = await typed(folder.path, 'plan', 'p.json', '--json', ...places);
    expect(exit).toBe(1);
    expect(JSON.parse(said).refusals).toMatchObject([
      { rule: 'file-fault', file: 'c.json', path: 'dishes', found: '7' },
      { rule: 'file-fault', file: 'k.json', path: 'zone', found: '"Mars/Olympus"' },
      { rule: 'file-fault', file: 'p.json', path: 'servces', meant: 'services' },
    ]);
  });

  it('says of what is no JSON or is not there that it is so', async () => {
    folder.write('half.json', '{"day": ');
    const { complaints } = await typed(folder.path, 'plan', 'half.json', '--catalogue', 'no.json');
    expect(complaints).toEqual([
      expect.stringMatching(/^no\.json: \(the whole file\): found no such file;/),
      expect.stringMatching(
        /^half\.json: line 1, column 9: found the end of the file; allowed: a text/,
      ),
    ]);
    expect(await typed(folder.path, 'plan', 'nowhere')).toMatchObject({
      exit: 1,
      complaints: ['nowhere: no such file or folder.'],
    });
  });

  it('is named with its place where the clock skips its time that night', async () => {
    const [lunch, ...others] = folder.files.cookPlan.services;
    const late = { ...lunch, opens: '26:30', closes: '29:00' };
    const night = { ...folder.files.cookPlan, day: '2026-03-07', services: [late, ...others] };
    folder.write('night.json', night);
    expect(await typed(folder.path, 'plan', 'night.json')).toEqual({
      exit: 1,
      said: '',
      complaints: [
        'night.json: services[0].opens: found "26:30"; allowed: ' +
          'a time that the clock does not skip that night, such as "25:30" or "27:00".',
      ],
    });
  });

  it('leaves the files as they were', async () => {
    await planned();
    const text = readFileSync(join(folder.path, `plans/${today}.json`), 'utf8');
    expect(JSON.parse(text)).toEqual(folder.files.cookPlan);
  });
});
