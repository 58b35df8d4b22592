// @vitest-environment happy-dom
import { render } from 'lit';
import { expect, it } from 'vitest';
import { type Paper, rowDrawing } from '../../../client/desk/chart-drawing.ts';
import type { LaidRow } from '../../../shared/view/index.ts';
import { at, NOW, stationView, theo } from '../fixtures.ts';

const { zone, clock, temperature, weight, people } = stationView;

it.each([
  ['en', 'Theo · out'],
  ['es', 'Theo · fuera'],
] as const)('the row of a hand that is out says so (%s)', (language, said) => {
  const paper: Paper = {
    window: { from: at(-60), to: at(60) },
    namesPx: 100,
    widthPx: 800,
    lanePx: 30,
    now: NOW,
    chained: new Set(),
    picked: null,
    say: { language, zone, clock, temperature, weight },
  };
  const rows = people.map((person): LaidRow => {
    const isOut = person.id === theo;
    return { row: { kind: 'hand', person: { ...person, isOut } }, top: 0, lanes: 1, bars: [] };
  });
  const paperSvg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  render(
    rows.map((row) => rowDrawing(paper, row)),
    paperSvg,
  );
  const names = [...paperSvg.querySelectorAll('.name')].map(({ textContent }) => textContent);
  expect(names).toEqual(['Ines', said, 'Mara']);
});
