/**
 * FDA Food Code, cooking, 3-401.11 to 3-401.14. Secondary copies: the 2022 text itself was not
 * read, so each check names the adoption it was read in.
 */
import { describe, expect, it } from 'vitest';
import { kilograms, minutes, seconds } from '../../shared/kernel/index.ts';
import type { Kind, Oven } from '../../shared/safety/index.ts';
import {
  creditsRoastTable,
  foodCode,
  judgeEndTemperature,
  judgeFirstHeat,
} from '../../shared/safety/index.ts';
import { degF } from '../shared/safety/series.ts';

const bigConvection: Oven = { heat: 'convection', setC: degF(250), pieceKg: kilograms(5) };

const ended = (kind: Kind, tempF: number, heldS: number, oven: Oven | undefined = bigConvection) =>
  judgeEndTemperature(foodCode, { kind, coreC: degF(tempF), heldS: seconds(heldS), oven });

/**
 * Each row: kept as printed, broken by a degree less and, where a time is printed, by a second
 * less.
 */
function expectRow(kind: Kind, tempF: number, heldS: number) {
  expect(ended(kind, tempF, heldS).ok).toBe(true);
  expect(ended(kind, tempF - 1, heldS).ok).toBe(false);
  if (heldS > 0) expect(ended(kind, tempF, heldS - 1).ok).toBe(false);
}

describe('the end of a cook, 3-401.11', () => {
  // (A)(1), Minn. R. 4626.0340 and Wis. Admin. Code ATCP 75 (2020), secondary copies.
  it.each(['intact', 'fish'] as const)('of %s is 145 °F for 15 s', (kind) => {
    expectRow(kind, 145, 15);
  });

  // (A)(2), 2017 text quoted by Florida inspections (17 s; 15 s before 2017), secondary copy.
  it.each(['injected', 'ground'] as const)('of %s meat is 155 °F for 17 s', (kind) => {
    expectRow(kind, 155, 17);
  });

  // (A)(2), the chart beside it, Wis. Admin. Code ATCP 75 (2020), secondary copy.
  it.each([
    [145, 180],
    [150, 60],
    [158, 0],
  ])('of injected meat may also be %d °F for %d s', (tempF, heldS) => {
    expect(ended('injected', tempF, heldS).ok).toBe(true);
    if (heldS > 0) expect(ended('injected', tempF, heldS - 1).ok).toBe(false);
  });

  // (A)(3), excerpt of the 2017 text (<1 s); Minnesota and Wisconsin have 15 s. Secondary copy.
  it.each(['chicken', 'turkey', 'poultry', 'stuffed'] as const)('of %s is 165 °F', (kind) => {
    expectRow(kind, 165, 0);
  });

  // 3-401.13, S.C. Code Regs. 61-25, secondary copy.
  it('of vegetables for hot holding is 135 °F', () => {
    expectRow('plant', 135, 0);
  });

  it('of an injected shoulder is not that of an intact one', () => {
    expect(ended('intact', 145, 15).ok).toBe(true);
    expect(ended('injected', 145, 15)).toMatchObject({
      ok: false,
      row: { id: 'end-injected', section: '3-401.11(A)(2)', sure: 'secondary copy' },
      measured: { value: 0.25, unit: 'min' },
      limit: { value: 3, unit: 'min' },
    });
  });
});

/** 3-401.11(B)(1), S.C. Code Regs. 61-25.3-401 and Florida, which agree. Secondary copies. */
const roastTable = [
  [130, 112 * 60],
  [131, 89 * 60],
  [133, 56 * 60],
  [135, 36 * 60],
  [136, 28 * 60],
  [138, 18 * 60],
  [140, 12 * 60],
  [142, 8 * 60],
  [144, 5 * 60],
  [145, 4 * 60],
  [147, 134],
  [149, 85],
  [151, 54],
  [153, 34],
  [155, 22],
  [157, 14],
  [158, 0],
] as const;

describe('the roast table, 3-401.11(B)(1)', () => {
  it.each(roastTable)('has %d °F for %d s', (tempF, heldS) => {
    expectRow('roast', tempF, heldS);
  });
});

/**
 * 3-401.11(B)(2), S.C. Code Regs. 61-25.3-401; secondary copy. The weight at which it changes is 10
 * lb.
 */
const ovens: readonly (readonly [Oven['heat'], number, number, boolean])[] = [
  ['still, dry', 8, 350, true],
  ['still, dry', 8, 349, false],
  ['still, dry', 12, 250, true],
  ['still, dry', 12, 249, false],
  ['convection', 8, 325, true],
  ['convection', 8, 324, false],
  ['convection', 12, 250, true],
  ['humid', 8, 250, true],
  ['humid', 12, 225, true],
  ['humid', 12, 251, false],
];

describe('the ovens in which the roast table counts, 3-401.11(B)(2)', () => {
  it.each(ovens)('%s, %d lb, at %d °F: %s', (heat, pounds, setF, counts) => {
    const oven = { heat, setC: degF(setF), pieceKg: kilograms(pounds * 0.45359237) };
    expect(creditsRoastTable(foodCode, 'roast', oven)).toBe(counts);
  });

  it('do not hold a dry smoker at 225 °F, where only the row without a time holds', () => {
    const smoker: Oven = { heat: 'still, dry', setC: degF(225), pieceKg: kilograms(6) };
    expect(ended('roast', 145, 3600, smoker)).toMatchObject({
      ok: false,
      limit: { value: 158, unit: '°F' },
    });
    expect(ended('roast', 158, 0, smoker).ok).toBe(true);
  });

  it('are asked for: a roast whose oven nobody named gets no credit', () => {
    const unnamed = { kind: 'roast', coreC: degF(145), heldS: minutes(60) } as const;
    expect(judgeEndTemperature(foodCode, unnamed).ok).toBe(false);
  });
});

describe('cooking in two goes, 3-401.14', () => {
  // As adopted in Delaware, Minnesota, Virginia and Wisconsin; secondary copies.
  it('has a first heat of at most 60 min', () => {
    expect(judgeFirstHeat(foodCode, minutes(60)).ok).toBe(true);
    expect(judgeFirstHeat(foodCode, minutes(61))).toMatchObject({
      ok: false,
      measured: { value: 61, unit: 'min' },
      limit: { value: 60, unit: 'min' },
    });
  });
});
