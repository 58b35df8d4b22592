import type { LotRow, LotTrace } from '../record/index.ts';
import { type Say, sayDay, temperature, textIn, weight } from '../words/index.ts';
import { labelWords } from './label-words.ts';
import { element, escaped } from './markup.ts';
import { part, recordPage, ruledTable } from './record-page.ts';
import { recordWords } from './record-words.ts';

/** Where a lot went, as a sheet to print; its weights add up to what came. */
export function lotRecordPage(
  { lot, ...trace }: LotTrace,
  { kitchen, say }: { readonly kitchen: string; readonly say: Say },
  font: string | null = null,
): string {
  const words = recordWords[say.language];
  const on = (day: string) => sayDay(day, say);
  const rows = partsOf({ lot, ...trace }, say);
  const fed = [...trace.kept, ...trace.thrown].flatMap(({ dishName, mayHaveFed }) =>
    mayHaveFed.map(({ day, name }) => [on(day), textIn(name, say), textIn(dishName, say)]),
  );
  const batches = trace.batches.map(({ day, name, weightKg }) => [
    ...[on(day), textIn(name, say), weight(weightKg, say)],
  ]);
  const sheet = [
    element(
      'header',
      'head',
      `<h1>${escaped(`${words.lotRecord}: ${lot.id}`)}</h1>` +
        element('p', 'day', escaped(textIn(lot.name, say))),
    ),
    element('p', 'lead', escaped(factsOf(lot, say).join(' · '))),
    part(
      words.batches,
      batches.length === 0,
      words.none,
      ruledTable([words.day, words.batch, words.weight], batches, [2]),
    ),
    part(
      words.where,
      false,
      words.none,
      ruledTable([words.day, words.where, words.what, words.weight, words.how], rows, [3]),
    ),
    ...(fed.length > 0
      ? [part(words.mayHaveFed, false, '', ruledTable([words.day, words.where, words.what], fed))]
      : []),
  ].join('\n');
  return recordPage({
    ...{ language: say.language, page: words.page, sheets: [sheet], font },
    title: `${words.lotRecord}: ${lot.id}`,
    foot: [kitchen, lot.id].join(' · '),
  });
}

/** All that became of it, a row for each part; the last is the whole. */
function partsOf({ lot, ...trace }: LotTrace, say: Say): string[][] {
  const words = recordWords[say.language];
  const on = (day: string) => sayDay(day, say);
  return [
    ...trace.services.map((each) => [
      ...[on(each.day), textIn(each.name, say), textIn(each.dishName, say)],
      ...[weight(each.weightKg, say), words.reckoned],
    ]),
    ...trace.kept.map((each) => [
      ...[on(each.day), words.kept, textIn(each.dishName, say), weight(each.weightKg, say)],
      words.weighed,
    ]),
    ...trace.thrown.map((each) => [
      ...[on(each.day), words.thrown, textIn(each.dishName, say), weight(each.weightKg, say)],
      words.reckoned,
    ]),
    ...trace.tubs
      .filter(({ weightKg }) => weightKg > 0.0005)
      .map((each) => [
        ...[on(each.day), each.goes, textIn(each.name, say), weight(each.weightKg, say)],
        each.isWeighed ? words.weighed : words.reckoned,
      ]),
    ['', words.lost, '', weight(trace.lossKg, say), words.reckoned],
    ['', words.left, '', weight(trace.leftKg, say), words.reckoned],
    ...(trace.sentBackKg > 0
      ? [['', words.sentBack, '', weight(trace.sentBackKg, say), words.weighed]]
      : []),
    ['', words.whole, '', weight(lot.weightKg, say), words.weighed],
  ];
}

/** What is known of a lot, a word or two each. */
function factsOf(lot: LotRow, say: Say): string[] {
  const words = recordWords[say.language];
  return [
    `${words.came} ${sayDay(lot.id.slice(0, 10), say)}`,
    labelWords[say.language].pieces(lot.pieces),
    weight(lot.weightKg, say),
    lot.supplier,
    ...(lot.code === null ? [] : [`${words.code} ${lot.code}`]),
    ...(lot.tempC === null ? [] : [temperature(lot.tempC, say)]),
    ...(lot.useBy === null ? [] : [`${words.useBy} ${sayDay(lot.useBy, say)}`]),
  ];
}
