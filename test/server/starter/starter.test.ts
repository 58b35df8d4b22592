import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { schemaFiles } from '../../../docs/schema/schemas.ts';
import { makePlan } from '../../../server/adopt.ts';
import { catalogue } from '../../../server/demo/index.ts';
import { pageOf } from '../../../server/folder/page-of.ts';
import { starterFiles } from '../../../server/starter/index.ts';
import { onlyDishes } from '../../../server/starter/only-dishes.ts';
import { type Instant, instant, must } from '../../../shared/kernel/index.ts';
import { readPlanFiles } from '../../../shared/plan/index.ts';

const at = (iso: string) => instant(Date.parse(iso));
const AFTERNOON = at('2026-11-25T21:00:00Z');

function planned(now: Instant, zone: string, from: 'three dishes' | 'all dishes') {
  const files = readPlanFiles(starterFiles(now, zone, from));
  if (!files.ok) return { files, plan: null };
  const made = makePlan(files.value, 1);
  return { files, plan: made.ok ? made.plan : null };
}

describe('the kitchen that an empty folder is given', () => {
  it.each([
    ['three dishes', 'America/Chicago', AFTERNOON],
    ['all dishes', 'America/Chicago', AFTERNOON],
    ['three dishes', 'Pacific/Auckland', at('2026-11-25T11:30:00Z')],
    ['three dishes', 'Europe/Madrid', at('2027-03-27T20:00:00Z')],
  ] as const)('is sound and can be done as it stands: %s in %s', (from, zone, now) => {
    const { files, plan } = planned(now, zone, from);
    expect(files.ok).toBe(true);
    expect(plan).not.toBeNull();
  });

  it('is small: two smokers, three hands, three dishes, one service on the day after', () => {
    const { kitchen, catalogue, cookPlan } = starterFiles(
      AFTERNOON,
      'America/Chicago',
      'three dishes',
    );
    expect([kitchen.smokers.length, kitchen.crew.length]).toEqual([2, 3]);
    expect(catalogue.dishes.map(({ id }) => id)).toEqual(['ribs', 'chicken', 'slaw']);
    expect(cookPlan.day).toBe('2026-11-26');
    expect(cookPlan.services).toHaveLength(1);
  });

  it('works every day of the week, so that the plan of any day finds hands', () => {
    const { kitchen } = starterFiles(AFTERNOON, 'America/Chicago', 'three dishes');
    for (const { shifts } of kitchen.crew) {
      expect(shifts.flatMap(({ on }) => on)).toEqual([
        'mon',
        'tue',
        'wed',
        'thu',
        'fri',
        'sat',
        'sun',
      ]);
    }
  });

  it('needs nobody before tomorrow', () => {
    const { plan } = planned(AFTERNOON, 'America/Chicago', 'three dishes');
    const first = Math.min(...must(plan, 'a plan').schedule.placements.map(({ startS }) => startS));
    expect(first).toBeGreaterThan(24 * 3600);
  });
});

describe('a catalogue of some dishes', () => {
  it.each(catalogue.dishes.map(({ id }) => [id]))('has all that %s is made with', (id) => {
    const { cookPlan, ...files } = starterFiles(AFTERNOON, 'America/Chicago', 'three dishes');
    const only = onlyDishes(catalogue, [id]);
    const services = cookPlan.services.map((service) => ({
      ...service,
      dishes: [{ dish: id, sales: { by: 'shape', portions: 1, shape: 'even' } }],
    }));
    const read = readPlanFiles({ ...files, catalogue: only, cookPlan: { ...cookPlan, services } });
    expect(read.ok ? [] : read.problems).toEqual([]);
    expect(only.dishes).toHaveLength(1);
  });
});

describe('a file as it is written', () => {
  it('is read back as it was, and fits the page', () => {
    const files = starterFiles(AFTERNOON, 'America/Chicago', 'all dishes');
    for (const file of Object.values(files)) {
      const page = pageOf(file);
      expect(JSON.parse(page)).toEqual(JSON.parse(JSON.stringify(file)));
      const long = page.split('\n').filter((line) => line.length > 100);
      expect(long.every((line) => /^ *"[a-z]+": "/.test(line))).toBe(true);
    }
  });

  it('is one that an editor finds sound by its schema', () => {
    const files = starterFiles(AFTERNOON, 'America/Chicago', 'three dishes');
    for (const [name, file] of [
      ['kitchen', files.kitchen],
      ['catalogue', files.catalogue],
      ['cook-plan', files.cookPlan],
    ] as const) {
      const schema = JSON.parse(must(schemaFiles().get(`${name}.schema.json`), name));
      expect(new Ajv2020({ allErrors: true }).compile(schema)(file)).toBe(true);
    }
  });
});
