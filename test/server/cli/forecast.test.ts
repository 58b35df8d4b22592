import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { typed } from './kitchen-at-work.ts';

const folder = mkdtempSync(join(tmpdir(), 'coalface-forecast-'));
afterAll(() => rmSync(folder, { recursive: true }));

const piece = {
  cut: 'shoulder',
  thickness: '10 cm',
  width: '18 cm',
  length: '22 cm',
  start: '5 °C',
};
const shoulder = {
  members: 40,
  piece,
  smoker: { set: '115 °C' },
  stays: [{ core: '72 °C', wrap: 'paper' }],
  targets: [
    { id: 'wrap', temp: '72 °C' },
    { id: 'done', temp: '96 °C' },
  ],
  readings: [
    { at: '1 h', core: '20 °C', by: 'probe' },
    { at: '3 h', core: '57 °C', by: 'probe' },
  ],
};

function foreseen(change: object, ...words: string[]) {
  writeFileSync(join(folder, 'piece.json'), JSON.stringify({ ...shoulder, ...change }));
  return typed(folder, 'forecast', 'piece.json', ...words);
}
async function documentOf(change: object) {
  const { exit, said } = await foreseen(change, '--json');
  return { exit, ...JSON.parse(said) };
}

type Target = { tempC: number; p10_h: number; p50_h: number; p90_h: number; never: number };
type CurvePoint = { t_h: number; core_c: number; surface_c: number; evaporated: number };

describe('the forecast of a file', () => {
  it('is one JSON document with ranges for the targets and the curve of the model', async () => {
    const found = await documentOf({});
    expect(found).toMatchObject({ exit: 0, members: 40, leftOut: 0, lastReading_h: 3, now_h: 3 });
    const targets: Target[] = found.targets;
    expect(targets.map(({ tempC }) => tempC)).toEqual([72, 96]);
    for (const { p10_h, p50_h, p90_h, never } of targets) {
      expect(3).toBeLessThan(p10_h);
      expect(p10_h).toBeLessThan(p50_h);
      expect(p50_h).toBeLessThan(p90_h);
      expect(never).toBe(0);
    }
    const curve: CurvePoint[] = found.curve;
    const last = curve.at(-1);
    expect(curve[0]).toMatchObject({ t_h: 0, core_c: 5, surface_c: 5, evaporated: 0 });
    expect(last?.core_c).toBeGreaterThan(96);
    expect(last?.core_c).toBeLessThan(115);
    expect(last?.evaporated).toBeGreaterThan(0.05);
    expect(last?.evaporated).toBeLessThan(0.5);
  });

  it('is the same each time, and another with another seed', async () => {
    const first = await documentOf({});
    expect(await documentOf({})).toEqual(first);
    expect((await documentOf({ seed: 2 })).targets).not.toEqual(first.targets);
  });

  it('says the same to a person, in the degrees of the file and in either language', async () => {
    const { exit, said } = await foreseen({});
    expect(exit).toBe(0);
    expect(said).toMatch(/^ {2}done 96 °C +\d+ h \d+ min/m);
    expect(said).toMatch(/^Not yet calibrated here\.$/m);
    const other = await foreseen({ smoker: { set: '240 °F' } }, '--language', 'es');
    expect(other.said).toMatch(/^ {2}done 205 °F +\d+ h \d+ min/m);
    expect(other.said).toMatch(/^Aún sin calibrar aquí\.$/m);
  });

  it.each([
    ['a fan', { smoker: { set: '115 °C', air: 'fan' } }, -1],
    ['a film of air that is known', { smoker: { set: '115 °C', unknowns: { film: 17 } } }, -1],
    ['a hotter fire', { smoker: { set: '135 °C' } }, -1],
    ['moist air', { smoker: { set: '115 °C', unknowns: { humidity: 0.2 } } }, -1],
    ['a thicker piece', { piece: { ...piece, thickness: '13 cm' } }, 1],
    ['a wetter surface', { piece: { ...piece, unknowns: { wetness: 0.9, stock: 0.2 } } }, 1],
    ['a colder start', { piece: { ...piece, start: '0 °C' } }, 1],
    ['paper that lets all through', { wraps: { paper: { contactWPerM2K: 120, passes: 1 } } }, 1],
  ])('follows %s', async (_what, change, sign) => {
    const p50Of = async (of: object) =>
      (await documentOf({ readings: [], ...of })).targets[1].p50_h;
    expect(Math.sign((await p50Of(change)) - (await p50Of({})))).toBe(sign);
  });

  it('follows a piece into a room and down to what it cools to', async () => {
    const stays = [
      { core: '70 °C', in: { room: 'bench' } },
      {
        at: '12 h',
        in: { room: { air: '2 °C', filmWPerM2K: 25, emissivity: 0.5, humidityRatio: 0 } },
      },
    ];
    const targets = [{ temp: '70 °C' }, { temp: '21 °C', way: 'falling' }];
    const found = await documentOf({ stays, targets, readings: [] });
    expect(found.targets[1].p50_h).toBeGreaterThan(12);
  });

  it('says how many of the cooks that were tried found no balance', async () => {
    const film = { scale: 'shift', median: 1, spread: 30 };
    const change = { members: 80, smoker: { set: '115 °C', unknowns: { film } } };
    const { leftOut, members, doubts } = await documentOf(change);
    expect(leftOut).toBeGreaterThan(0);
    expect(leftOut + members).toBe(80);
    const sentence = `${leftOut} of 80 cooks tried found no balance and count for nothing.`;
    expect(doubts).toContain(sentence);
    expect((await foreseen(change)).said).toContain(sentence);
  });
});

describe('what cannot be is one sentence, and nothing is computed', () => {
  const parts = { water: 0.6, protein: 0.2, fat: 0.1, ash: 0.01 };
  it.each([
    [
      { piece: { ...piece, thickness: '0 cm' } },
      'impossible-size',
      'No piece has a thickness of 0 cm: from 0.5 cm to 2 m is one.',
    ],
    [
      { piece: { ...piece, composition: parts } },
      'composition-does-not-sum',
      'The parts of the meat sum to 0.91; they must sum to 1.',
    ],
    [
      { targets: [{ id: 'done', temp: '120 °C' }] },
      'target-above-fire',
      'Target “done” of 120 °C is above the fire: the hottest air is 115 °C.',
    ],
    [
      { readings: [{ at: '-5 min', core: '5 °C', by: 'hand' }] },
      'reading-before-start',
      'A reading was taken 5 min before the piece went in.',
    ],
    [{ now: '2 h' }, 'reading-after-now', 'The reading at 3 h lies after now.'],
    [
      { readings: [{ at: '1 h', core: '180 °C', by: 'probe' }] },
      'impossible-reading',
      'No core shows 180 °C, as the reading at 1 h says.',
    ],
    [
      { piece: { ...piece, start: '-8 °C' } },
      'impossible-start',
      'A piece at -8 °C cannot go in: ice must thaw first, and what boils is cooked.',
    ],
    [
      {
        stays: [
          { at: '3 h', wrap: 'foil' },
          { at: '2 h', in: { room: 'bench' } },
        ],
      },
      'stays-out-of-order',
      'Stay 3, where it goes in being the first, begins before the one above it.',
    ],
  ])('%j', async (change, rule, sentence) => {
    const found = await documentOf(change);
    expect(found).toMatchObject({
      exit: 1,
      targets: [],
      curve: [],
      refusals: [{ rule, sentence }],
    });
    const { exit, complaints, said } = await foreseen(change);
    expect({ exit, complaints, said }).toEqual({ exit: 1, complaints: [sentence], said: '' });
    const spanish = (await foreseen(change, '--language', 'es')).complaints;
    expect(spanish).toHaveLength(1);
    expect(spanish).not.toEqual([sentence]);
  });

  it.each([
    [{ piece: { ...piece, thickness: '-3 cm' } }, 'piece.thickness: found "-3 cm"'],
    [{ piece: { ...piece, cut: 'shoulde' } }, 'piece.cut: found "shoulde"'],
    [{ smoker: { set: '115 °C', wetBulb: '130 °C' } }, 'no warmer than the air it is in'],
    [{ stays: [{ wrap: 'foil' }] }, 'either "at" or "core"'],
    [{ members: 10 }, 'allowed: 40 or more'],
  ])('a file with %j is told where and what is allowed', async (change, part) => {
    const { exit, complaints } = await foreseen(change);
    expect(exit).toBe(1);
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toContain(part);
  });

  it('nor is a file read that is no JSON or is not there', async () => {
    writeFileSync(join(folder, 'half.json'), '{"piece":');
    expect((await typed(folder, 'forecast', 'half.json')).complaints[0]).toMatch(
      /^half\.json: line 1, column 10: found the end of the file/,
    );
    expect(await typed(folder, 'forecast', 'nowhere.json')).toMatchObject({
      exit: 1,
      complaints: [expect.stringContaining('no such file')],
    });
  });
});
