import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { CannotStart } from '../../../server/cannot-start.ts';
import { createClosing } from '../../../server/closing.ts';
import { furnish } from '../../../server/folder/furnish.ts';
import { faultLine, openFolder, readFolder, writePlan } from '../../../server/folder/index.ts';
import { starterFiles } from '../../../server/starter/index.ts';
import { instant, must } from '../../../shared/kernel/index.ts';

const starter = () => starterFiles(instant(Date.now()), 'America/Chicago', 'three dishes');

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-folder-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const edit = (file: string, change: (json: Record<string, unknown>) => void) => {
  const path = join(folder, file);
  const json = JSON.parse(readFileSync(path, 'utf8'));
  change(json);
  writeFileSync(path, JSON.stringify(json));
};
const planFile = () => `plans/${readFolder(folder).plans[0]?.day}.json`;

describe('an empty folder', () => {
  it('is given a kitchen, a catalogue and a plan, all of them sound', () => {
    expect(furnish(folder, starter)).toBe('furnished');
    const { kitchen, catalogue, plans, faults } = readFolder(folder);
    expect(faults).toEqual([]);
    expect([kitchen, catalogue, plans[0]?.plan]).not.toContain(null);
  });

  it('stays empty where its files cannot all be written', () => {
    // Stands for a disk that is full half-way: what this plan would lie in is not there.
    const half = () => ({ ...starter(), cookPlan: { day: 'no/such', services: [] } });
    expect(() => furnish(folder, half)).toThrow();
    expect(readdirSync(folder)).toEqual([]);
    expect(furnish(folder, starter)).toBe('furnished');
  });

  it('is left alone once a kitchen is in it', () => {
    furnish(folder, starter);
    edit('kitchen.json', (kitchen) => {
      kitchen['name'] = 'Ours';
    });
    expect(furnish(folder, starter)).toBe('ready');
    expect(readFolder(folder).kitchen?.name).toBe('Ours');
  });
});

describe('an editor', () => {
  it('finds the schema of each file beside it, also once the hub has written a plan', async () => {
    const closing = createClosing();
    await openFolder({ kind: 'kitchen', path: folder }, closing).log.close();
    await closing.run();
    const [plan] = readFolder(folder).plans;
    writePlan(folder, must(plan?.plan ?? null, 'a plan'));
    for (const file of ['kitchen.json', 'catalogue.json', planFile()]) {
      const { $schema } = JSON.parse(readFileSync(join(folder, file), 'utf8'));
      const schema = JSON.parse(readFileSync(join(folder, dirname(file), $schema), 'utf8'));
      expect(schema.title).toMatch(/kitchen/i);
    }
  });
});

describe('a folder of other things', () => {
  it('is not written to, and the hub does not start there', () => {
    writeFileSync(join(folder, 'taxes.txt'), '');
    const open = () => openFolder({ kind: 'kitchen', path: folder }, createClosing());
    expect(open).toThrow(CannotStart);
    expect(open).toThrow('holds other things and no kitchen.json');
  });

  it.each(['taxes.txt', 'taxes.txt/kitchen'])('is told from a file: %s', (name) => {
    writeFileSync(join(folder, 'taxes.txt'), 'as it was');
    const path = join(folder, name);
    const open = () => openFolder({ kind: 'kitchen', path }, createClosing());
    expect(open).toThrow(CannotStart);
    expect(open).toThrow(`${path} is, or lies in, a file: name a folder.`);
    expect(readFileSync(join(folder, 'taxes.txt'), 'utf8')).toBe('as it was');
  });
});

describe('broken files', () => {
  beforeEach(() => {
    furnish(folder, starter);
  });

  it('are all named at once, each fault with its place, what was found and what is allowed', () => {
    const plan = planFile();
    edit('kitchen.json', (kitchen) => {
      kitchen['zone'] = 'Mars/Olympus';
    });
    edit('catalogue.json', (catalogue) => {
      catalogue['dishes'] = 7;
    });
    edit(plan, (file) => {
      file['services'] = [];
    });
    const { kitchen, catalogue, plans, faults } = readFolder(folder);
    expect([kitchen, catalogue, plans[0]?.plan]).toEqual([null, null, null]);
    expect(new Set(faults.map(({ file }) => file))).toEqual(
      new Set(['kitchen.json', 'catalogue.json', plan]),
    );
    for (const fault of faults) {
      expect(fault.path).not.toBe('');
      expect(fault.found).not.toBe('');
      expect(fault.allowed).not.toBe('');
    }
  });

  it('read as a sentence', () => {
    const fault = { file: 'kitchen.json', path: 'zone', found: '"x"', allowed: 'a time zone' };
    expect(faultLine(fault)).toBe('kitchen.json: zone: found "x"; allowed: a time zone.');
    expect(faultLine({ ...fault, meant: 'y' })).toContain(' Maybe "y".');
  });

  it('of one day keep no other day from being read', () => {
    writeFileSync(join(folder, 'plans/2199-01-01.json'), '{');
    const { plans, faults } = readFolder(folder);
    expect(plans.map(({ plan }) => plan !== null)).toEqual([true, false]);
    expect(faults).toMatchObject([{ file: 'plans/2199-01-01.json', path: 'line 1, column 2' }]);
  });

  it('may be missing altogether', () => {
    rmSync(join(folder, 'catalogue.json'));
    expect(readFolder(folder).faults).toMatchObject([
      { file: 'catalogue.json', found: 'no such file' },
    ]);
  });

  it('include a plan in the file of another day, and one that is named after no day', () => {
    const plan = readFileSync(join(folder, planFile()), 'utf8');
    writeFileSync(join(folder, 'plans/2199-01-01.json'), plan);
    writeFileSync(join(folder, 'plans/soon.json'), plan);
    expect(readFolder(folder).faults).toMatchObject([
      { file: 'plans/2199-01-01.json', path: 'day' },
      { file: 'plans/soon.json', path: '(its name)' },
    ]);
  });

  it('include a kitchen that speaks of what its catalogue does not have', () => {
    edit('kitchen.json', (kitchen) => {
      const [person] = kitchen['crew'] as { trained: string[] }[];
      person?.trained.push('kinfe');
    });
    const { kitchen, faults } = readFolder(folder);
    expect(kitchen).toBeNull();
    expect(faults).toMatchObject([
      { file: 'kitchen.json', path: 'crew[0].trained[2]', found: '"kinfe"', meant: 'knife' },
    ]);
  });

  it('include a plan that speaks of what the kitchen does not have', () => {
    edit(planFile(), (plan) => {
      const [service] = plan['services'] as { dishes: { dish: string }[] }[];
      const [dish] = service?.dishes ?? [];
      if (dish) dish.dish = 'unheard-of';
    });
    expect(readFolder(folder).faults).toMatchObject([
      { path: 'services[0].dishes[0].dish', found: '"unheard-of"' },
    ]);
  });
});

describe('a folder that is open already', () => {
  it('keeps a second hub out, which says who holds it', async () => {
    const closing = createClosing();
    const open = openFolder({ kind: 'kitchen', path: folder }, closing);
    const again = () => openFolder({ kind: 'kitchen', path: folder }, createClosing());
    expect(again).toThrow(`is held by another hub: process ${process.pid} on `);
    expect(again).toThrow('its door is not open yet');
    open.sayAddress('http://127.0.0.1:4600');
    expect(again).toThrow('its screens are at http://127.0.0.1:4600');
    await open.log.close();
    await closing.run();
    const next = createClosing();
    await openFolder({ kind: 'kitchen', path: folder }, next).log.close();
    await next.run();
  });

  it('refuses a log that is none, in words', () => {
    furnish(folder, starter);
    mkdirSync(join(folder, 'log.sqlite'));
    const open = () => openFolder({ kind: 'kitchen', path: folder }, createClosing());
    expect(open).toThrow(/log\.sqlite cannot be opened: /);
  });
});
