import {
  type ListSheet,
  type Paper,
  type PaperLine,
  paperWords,
} from '../../shared/paper/index.ts';
import { columns } from './columns.ts';

/** A planned day for a terminal: the same lines as on paper, all stations together. */
export function planText(paper: Paper): string {
  const words = paperWords(paper.language);
  const smokers = paper.stations.flatMap((station) => station.smokers);
  return [
    [paper.kitchen, paper.day, paper.edition].join(' · '),
    ...paper.services,
    ...byDay(paper).flatMap(({ day, rows }) => ['', day, ...columns(rows)]),
    ...smokers.flatMap(({ name, fire, racks }) => [
      '',
      `${name}: ${fire}`,
      ...columns(racks.map((rack) => [rack.name, rack.loads.join(' | ')])),
    ]),
    ...(paper.list ? listText(paper.list, words) : []),
    '',
  ].join('\n');
}

type Row = readonly string[];

/** The work of hands by time, each with who does it and where. */
function byDay({ stations }: Paper): { day: string; rows: Row[] }[] {
  const days = new Map<string, { line: PaperLine; station: string }[]>();
  for (const station of stations) {
    for (const { day, lines } of station.days) {
      const listed = lines.map((line) => ({ line, station: station.name }));
      days.set(day, [...(days.get(day) ?? []), ...listed]);
    }
  }
  const firstAt = (lines: readonly { readonly line: PaperLine }[]) =>
    Math.min(...lines.map(({ line }) => line.startAt));
  return [...days]
    .sort(([, a], [, b]) => firstAt(a) - firstAt(b))
    .map(([day, lines]) => ({
      day,
      rows: lines
        .filter(({ line }) => line.byHand)
        .sort((a, b) => a.line.startAt - b.line.startAt)
        .map(({ line, station }) => rowOf(line, station)),
    }));
}

function rowOf({ from, to, who, title, amount, batch, details }: PaperLine, station: string): Row {
  return [from, to, who, station, title, amount, batch, details.join('; ')];
}

function listText({ pull, mixes }: ListSheet, words: ReturnType<typeof paperWords>): string[] {
  return [
    ...['', words.pull],
    ...columns(pull.map(({ name, pieces, weight, by }) => [name, pieces, weight, by])),
    ...['', words.mixes],
    ...columns(
      mixes.map(({ name, weight, parts, allergens }) => [
        name,
        weight,
        [...parts.map((part) => `${part.ingredient} ${part.weight}`), allergens ?? []]
          .flat()
          .join(', '),
      ]),
    ),
  ];
}
