import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { schemaFiles } from '../../docs/schema/schemas.ts';
import { must } from '../../shared/kernel/index.ts';
import { plain, spoilt } from '../shared/plan/three-elms.ts';

const folder = new URL('../../docs/schema/', import.meta.url);
const files = schemaFiles();

const piece = {
  piece: { cut: 'flat', thickness: '2 in', width: '8 in', length: '14 in', start: '40 °F' },
  smoker: { set: '250 °F', unknowns: { film: 9, humidity: { scale: 'between', low: 0, high: 1 } } },
  targets: [{ temp: '203 °F' }],
};

describe('the JSON Schemas in docs', () => {
  it('are the ones that the code reads by: npm run schemas writes them', () => {
    const kept = readdirSync(folder).filter((name) => name.endsWith('.json'));
    expect(kept.sort()).toEqual([...files.keys()].sort());
    for (const [name, text] of files) {
      expect(readFileSync(new URL(name, folder), 'utf8')).toBe(text);
    }
  });

  it.each([
    ['catalogue.schema.json', plain.catalogue, 'routes[0].steps[square].skil'],
    ['kitchen.schema.json', plain.kitchen, 'smokers[a].heat'],
    ['cook-plan.schema.json', plain.cookPlan, 'services[0].opens'],
    ['forecast.schema.json', piece, 'piece.thickness'],
  ])('let an editor check a file as it is typed: %s', (name, sound, place) => {
    const schema: object = JSON.parse(must(files.get(name), name));
    const isSound = new Ajv2020({ allErrors: true }).compile(schema);
    expect(isSound(sound)).toBe(true);
    expect(isSound(spoilt(sound, { [place]: 'nonsense' }))).toBe(false);
  });

  it('tell the person at the keyboard what a place is for', () => {
    const kitchen = must(files.get('kitchen.schema.json'), 'kitchen');
    expect(kitchen).toContain('From the top down, or from the hot end on; the first is slot 1');
    expect(kitchen).toContain('a length such as');
  });
});
