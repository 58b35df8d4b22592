import { describe, expect, it } from 'vitest';
import {
  brokenDoors,
  deadExports,
  parsingInside,
  undocumented,
  valuesFromAfar,
} from './module-rules.ts';
import { parseModule } from './source.ts';
import {
  forbiddenWords,
  impureCalls,
  longFiles,
  longLines,
  strayFiles,
  vagueNames,
} from './text-rules.ts';

const source = (path: string, text = '') => ({ path, text });
const code = (path: string, text: string) => parseModule(source(path, text));

describe('a planted fault of the text is found', () => {
  it('in the line that is one column too wide, and not in the one that just fits', () => {
    const text = `${'x'.repeat(100)}\n${'x'.repeat(101)}\n`;
    expect(longLines(source('client/a.css', text))).toEqual([
      'client/a.css:2 is 101 columns wide, 100 are allowed',
    ]);
  });

  it('in a file with one line too many, while a test may be longer', () => {
    const text = 'x\n'.repeat(251);
    expect(longFiles(source('server/a.ts', text))).toHaveLength(1);
    expect(longFiles(source('server/a.ts', 'x\n'.repeat(250)))).toEqual([]);
    expect(longFiles(source('test/a.test.ts', text))).toEqual([]);
    expect(longFiles(source('test/a.test.ts', 'x\n'.repeat(401)))).toHaveLength(1);
  });

  it.each(['shared/day/utils.ts', 'client/helpers/tap.ts', 'server/misc.mjs'])(
    'in the name %s',
    (path) => {
      expect(vagueNames(source(path))).toHaveLength(1);
    },
  );

  it.each([
    '// TODO: count the racks',
    '// FIXME',
    "it.only('turns the fat side', () => {});",
    "describe.skip('the hub', () => {});",
    "test.fixme('the wall', () => {});",
    '// @ts-ignore',
    "const data = '/home/ana/kitchen';",
  ])('in the words %s', (text) => {
    expect(forbiddenWords(source('server/a.ts', text))).toHaveLength(1);
  });

  it.each([
    'const roll = Math.random();',
    'const now = Date.now();',
    'const now = new Date();',
    'const now = new TZDate();',
    'const now = new Date;',
  ])('in shared/ where %s', (text) => {
    expect(impureCalls(source('shared/kernel/local-time.ts', text))).toHaveLength(1);
    expect(impureCalls(source('server/clock.ts', text))).toEqual([]);
  });

  it('but an instant that is given may be read in a zone', () => {
    expect(impureCalls(source('shared/kernel/local-time.ts', 'new TZDate(atMs, zone);'))).toEqual(
      [],
    );
  });

  it('in a file that lies at the top of the project', () => {
    expect(strayFiles(source('notes.md'))).toHaveLength(1);
    expect(strayFiles(source('src/index.ts'))).toHaveLength(1);
    expect(strayFiles(source('.ci/run'))).toEqual([]);
  });
});

describe('a planted fault of the code is found', () => {
  it('where plan/ calls the engine instead of naming its types', () => {
    const value = code('shared/plan/a.ts', "import { retime } from '../schedule/index.ts';");
    const type = code('shared/plan/a.ts', "import type { Lag } from '../schedule/index.ts';");
    expect(valuesFromAfar(value)).toEqual([
      'shared/plan/a.ts:1 takes a value from schedule/, where only types may come from',
    ]);
    expect(valuesFromAfar(type)).toEqual([]);
  });

  it('where a value is passed on, or loaded late, from a room too far', () => {
    const passed = code('shared/view/a.ts', "export { build } from '../plan/index.ts';");
    const late = code('shared/view/a.ts', "const plan = await import('../plan/index.ts');");
    expect(valuesFromAfar(passed)).toHaveLength(1);
    expect(valuesFromAfar(late)).toHaveLength(1);
  });

  it('where a room is not on the map', () => {
    expect(valuesFromAfar(code('shared/attic/a.ts', ''))).toHaveLength(1);
  });

  it('where someone climbs in past the door of a room', () => {
    const text = "import { fold } from '../../shared/day/fold.ts';";
    expect(brokenDoors([code('server/hub/a.ts', text)])).toEqual([
      'server/hub/a.ts:1 goes past the door of shared/day/',
    ]);
    expect(brokenDoors([code('test/shared/day/fold.test.ts', text)])).toEqual([]);
    expect(brokenDoors([code('shared/day/decide.ts', "import './fold.ts';")])).toEqual([]);
  });

  it('where someone climbs in past the door of any folder that has one', () => {
    const door = code('server/store/index.ts', "export { open } from './open.ts';");
    const inside = code('server/hub/a.ts', "import { open } from '../store/open.ts';");
    const byTheDoor = code('server/hub/a.ts', "import { open } from '../store/index.ts';");
    expect(brokenDoors([door, inside])).toHaveLength(1);
    expect(brokenDoors([door, byTheDoor])).toEqual([]);
    expect(brokenDoors([inside])).toEqual([]);
  });

  it('where input is parsed in the middle of a room', () => {
    const text = "import { z } from 'zod';";
    expect(parsingInside(code('shared/day/fold.ts', text))).toHaveLength(1);
    expect(parsingInside(code('shared/day/schema.ts', text))).toEqual([]);
    expect(parsingInside(code('shared/protocol/messages.ts', text))).toEqual([]);
  });

  it('where an exported function has no sentence of its own', () => {
    const bare = 'export function a() {}\nexport const b = () => 1;\nexport const c = 1;';
    const said = '/** Says a. */\nexport function a() {}';
    const apart = '/** Says nothing of a. */\nconst x = 1;\nexport function a() { return x; }';
    expect(undocumented(code('shared/day/a.ts', bare))).toHaveLength(2);
    expect(undocumented(code('shared/day/a.ts', said))).toEqual([]);
    expect(undocumented(code('shared/day/a.ts', apart))).toHaveLength(1);
  });

  it('where an export is used by nothing but the door that passes it on', () => {
    const text = 'export const a = 1;\nexport type B = { c: C };\nexport type C = string;';
    const room = code('shared/day/a.ts', text);
    const door = code('shared/day/index.ts', "export { a, type B } from './a.ts';");
    const use = code('test/a.test.ts', "import { a, type B } from '../shared/day/index.ts';");
    expect(deadExports([room, door])).toEqual([
      'shared/day/a.ts:1 exports a, which nothing uses',
      'shared/day/a.ts:2 exports B, which nothing uses',
    ]);
    expect(deadExports([room, door, use])).toEqual([]);
  });
});
