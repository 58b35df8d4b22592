import { element, escaped } from './markup.ts';
import type { Blank, PaperLine } from './paper.ts';

/** The stroke that is drawn over at the start and crossed at the end; in ink once it has begun. */
export function tickStroke(begun: boolean): string {
  const kind = begun ? 'ink' : 'guide';
  return drawing('tick', [20, 30], `<path class="${kind}" d="M4 27 16 3"/>`);
}

const APART = 7;
const HIGH = 24;

/** Strokes in fives with the fifth across, faint to be drawn over; those counted are in ink. */
export function tallyGuides({ done, pieces }: NonNullable<PaperLine['tally']>): string {
  const groups = Array.from({ length: Math.ceil(pieces / 5) }, (_, group) => {
    const first = group * 5;
    const many = Math.min(5, pieces - first);
    const strokes = Array.from({ length: many }, (_, place) => stroke(place, first + place < done));
    const wide = many === 5 ? 5 * APART : many * APART + 2;
    return drawing('five', [wide, HIGH], strokes.join(''));
  });
  return element('p', 'tally', groups.join(''));
}

function drawing(kind: string, [wide, high]: readonly [number, number], inside: string): string {
  return `<svg class="${kind}" viewBox="0 0 ${wide} ${high}" aria-hidden="true">${inside}</svg>`;
}

function stroke(place: number, counted: boolean): string {
  const x = 4 + place * APART;
  const path = place === 4 ? `M1 ${HIGH - 5}L${4.6 * APART} 5` : `M${x} 2v${HIGH - 4}`;
  return `<path class="${counted ? 'ink' : 'guide'}" d="${path}"/>`;
}

/** A ruled blank with its word before it and its unit behind. */
export function blank(of: string, unit = ''): string {
  const word = of === '' ? '' : `${escaped(of)} `;
  return element('span', 'blank', `${word}<i></i>${escaped(unit)}`);
}

/** Blanks for temperatures, each with the time that it was read. */
export function readingBlanks({ of, times, unit }: Blank, time: string): string {
  const one = element('span', 'reading', blank(of, unit) + blank(time));
  return element('p', 'readings', one.repeat(times));
}
