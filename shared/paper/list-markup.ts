import { blank, tickStroke } from './marks.ts';
import { element, escaped, paragraphs } from './markup.ts';
import type { ListSheet, MixRow, PullRow, ServiceRow, TubRow } from './paper.ts';
import type { PaperWords } from './phrases.ts';

type Part = {
  readonly heading: string;
  readonly entries: readonly string[];
  readonly columns: 1 | 2;
};

/** The body of the sheet that belongs to no station: what is served, pulled, mixed and weighed. */
export function listMarkup(list: ListSheet, words: PaperWords): string {
  const parts: readonly Part[] = [
    { heading: words.services, entries: list.services.map(serviceMarkup), columns: 2 },
    { heading: words.pull, entries: list.pull.map((line) => pullMarkup(line, words)), columns: 1 },
    { heading: words.mixes, entries: list.mixes.map((mix) => mixMarkup(mix, words)), columns: 2 },
    { heading: words.tubs, entries: list.tubs.map((line) => tubMarkup(line, words)), columns: 2 },
  ];
  return parts
    .filter(({ entries }) => entries.length > 0)
    .map(partMarkup)
    .join('\n');
}

function partMarkup({ heading, entries, columns }: Part): string {
  const listed = element('div', columns === 2 ? 'entries two' : 'entries', entries.join('\n'));
  return element('section', 'list', `<h2>${escaped(heading)}</h2>\n${listed}`);
}

function entryOf(what: readonly string[], write: readonly string[] = []): string {
  const blanks =
    write.length > 0 ? element('p', 'blanks', write.map((of) => blank(of)).join('')) : '';
  return element(
    'div',
    'entry',
    tickStroke(false) + element('div', 'what', what.join('') + blanks),
  );
}

function serviceMarkup({ name, hours, dishes }: ServiceRow): string {
  const listed = dishes.map((dish) => `${dish.name}: ${dish.portions}`);
  const what = paragraphs('title', `${name}, ${hours}`) + paragraphs('amount', ...listed);
  return element('div', 'entry', element('div', 'what', what));
}

function pullMarkup({ name, pieces, weight, by }: PullRow, { blanks }: PaperWords): string {
  return entryOf(
    [paragraphs('title', `${name}: ${pieces}, ${weight}, ${by}`)],
    [blanks.pieces, blanks.weighed, blanks.temperature, blanks.lot],
  );
}

function mixMarkup({ name, weight, parts, allergens }: MixRow, { blanks }: PaperWords): string {
  const rows = parts.map(
    (part) => `<tr><td>${escaped(part.weight)}</td><td>${escaped(part.ingredient)}</td></tr>`,
  );
  return entryOf(
    [
      paragraphs('title', `${name}, ${weight}`),
      `<table class="parts">${rows.join('')}</table>`,
      paragraphs('caution', allergens),
    ],
    [blanks.done, blanks.by],
  );
}

function tubMarkup({ batch, tubs }: TubRow, { blanks }: PaperWords): string {
  const rows = tubs.map(({ name, weight, goes }) => {
    const said = escaped(`${name} ≈\u00a0${weight.replace(' ', '\u00a0')}, ${goes}`);
    return `<tr><td>${said}</td><td>${blank(blanks.weighed)}</td></tr>`;
  });
  const what = [paragraphs('title', batch), `<table class="parts tubs">${rows.join('')}</table>`];
  return element('div', 'entry', element('div', 'what', what.join('')));
}
