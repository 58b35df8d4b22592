import { describe, expect, it } from 'vitest';
import type { Inks } from '../../client/theme/index.ts';
import { grounds } from '../../client/theme/index.ts';

/** WCAG 2.2, definitions of relative luminance and contrast ratio (w3.org/TR/WCAG22/). */
function luminance(colour: string): number {
  const parts = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255);
  const [red = 0, green = 0, blue = 0] = parts.map((part) =>
    part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(a: string, b: string): number {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

describe('ink on its ground', () => {
  it('is measured as the standard measures it: black on white is 21 to 1', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    // The lightest grey that passes 4.5 to 1 on white, as its techniques name it.
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });

  it.each(Object.entries(grounds))('on %s keeps text at 7 to 1 or more (1.4.6, AAA)', (_, inks) => {
    const text: readonly (keyof Inks)[] = ['ink', 'soft'];
    for (const ink of text) {
      expect(contrast(inks[ink], inks.ground), ink).toBeGreaterThanOrEqual(7);
    }
  });

  it.each(Object.entries(grounds))('on %s keeps marks at 3 to 1 or more (1.4.11)', (_, inks) => {
    const marks: readonly (keyof Inks)[] = ['brick', 'pencil'];
    for (const ink of marks) {
      expect(contrast(inks[ink], inks.ground), ink).toBeGreaterThanOrEqual(3);
    }
  });
});
