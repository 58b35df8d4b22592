import { describe, expect, it } from 'vitest';
import type { Inks } from '../../client/theme/index.ts';
import { grounds } from '../../client/theme/index.ts';

/**
 * Machado, Oliveira and Fernandes (2009), "A Physiologically-based Model for Simulation of Color
 * Vision Deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (6), 1291–1298:
 * matrices of severity 1.0, over linear sRGB. Second-hand: as several programs print them alike.
 * Grey is the luminance of WCAG 2.2 alone.
 */
const EYES: Readonly<Record<string, readonly number[]>> = {
  usual: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  protan: [
    0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998,
  ],
  deutan: [
    0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881,
  ],
  tritan: [
    1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039,
  ],
  grey: [0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722],
};

/** IEC 61966-2-1: light of each primary from its figure. */
const lightOf = (colour: string): number[] =>
  [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));

/** What is seen is on the screen again: between black and its brightest. */
const seen = (eye: readonly number[], light: readonly number[]): number[] =>
  [0, 3, 6].map((row) => {
    const sum = light.reduce((all, part, n) => all + part * (eye[row + n] ?? 0), 0);
    return Math.min(1, Math.max(0, sum));
  });

const luminance = ([red = 0, green = 0, blue = 0]: readonly number[]): number =>
  0.2126 * red + 0.7152 * green + 0.0722 * blue;

function contrast(a: number, b: number): number {
  const [low = 0, high = 0] = [a, b].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

/** CIE 1976 lightness, 0 to 100. */
const lightness = (y: number): number => (y > 0.008856 ? 116 * Math.cbrt(y) - 16 : 903.3 * y);

/**
 * Two greys so far apart are told apart at a glance: a just noticeable difference is 2.3
 * (Mahy et al. 1994, from memory).
 */
const APART = 15;

const looks = Object.entries(grounds).flatMap(([ground, inks]) =>
  Object.entries(EYES).map(([eye, matrix]) => ({ ground, eye, matrix, inks })),
);
const seenInks = (inks: Inks, eye: readonly number[]) => {
  const y = (name: keyof Inks) => luminance(seen(eye, lightOf(inks[name])));
  const on = (name: keyof Inks) => contrast(y(name), y('ground'));
  return { y, on };
};

describe('the inks, as eyes see them that lack a kind of cone', () => {
  it('a matrix leaves white and black as they are', () => {
    for (const eye of Object.values(EYES)) {
      for (const part of seen(eye, [1, 1, 1])) expect(part).toBeCloseTo(1, 4);
      expect(seen(eye, [0, 0, 0])).toEqual([0, 0, 0]);
    }
  });

  it('pure red is dark to a protan eye and pure green is not', () => {
    const { protan = [] } = EYES;
    expect(luminance(seen(protan, [1, 0, 0]))).toBeLessThan(0.2126 * 0.6);
    expect(luminance(seen(protan, [0, 1, 0]))).toBeGreaterThan(0.7152);
  });

  it.each(looks)('words on $ground keep 7 to 1: $eye', ({ inks, matrix }) => {
    const { on } = seenInks(inks, matrix);
    expect(on('ink')).toBeGreaterThanOrEqual(7);
    expect(on('soft')).toBeGreaterThanOrEqual(7);
  });

  it.each(looks)('marks on $ground keep 3 to 1: $eye', ({ inks, matrix }) => {
    const { on } = seenInks(inks, matrix);
    expect(on('brick')).toBeGreaterThanOrEqual(3);
    expect(on('pencil')).toBeGreaterThanOrEqual(3);
  });

  it.each(looks)('brick on $ground is not as dark or as light as ink: $eye', ({ inks, matrix }) => {
    const { y } = seenInks(inks, matrix);
    expect(Math.abs(lightness(y('brick')) - lightness(y('ink')))).toBeGreaterThan(APART);
  });
});
