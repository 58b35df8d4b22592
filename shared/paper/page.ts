import { listMarkup } from './list-markup.ts';
import { element, escaped, paragraphs } from './markup.ts';
import type { Paper } from './paper.ts';
import type { PaperWords } from './phrases.ts';
import { stationMarkup } from './station-markup.ts';
import { paperStyle } from './style.ts';
import { paperWords } from './words-of.ts';

type Sheet = { readonly name: string; readonly title: string; readonly body: string };

/**
 * The sheets as one page that needs nothing else: no script, nothing to fetch. `font` is the
 * sheets' own letters as a `data:` address; without it the reader's sans serif has to do.
 */
export function paperPage(paper: Paper, font: string | null = null): string {
  const words = paperWords(paper.language);
  const sheets = sheetsOf(paper, words);
  const foot = [paper.day, paper.edition, paper.kitchen].join(' · ');
  const feet = sheets.map(({ name, title }) => ({ sheet: name, text: `${title} · ${foot}` }));
  const title = [paper.kitchen, paper.day, paper.edition].join(', ');
  return `<!doctype html>
<html lang="${paper.language}">
<head>
<meta charset="utf-8">
<title>${escaped(title)}</title>
<style>
${paperStyle(words.page, feet, fontFace(font))}
</style>
</head>
<body>
${sheets.map((sheet) => sheetMarkup(sheet, paper, words)).join('\n')}
</body>
</html>
`;
}

function sheetsOf({ stations, list }: Paper, words: PaperWords): Sheet[] {
  const named = stations.map((station) => ({
    name: `sheet-${station.id}`,
    title: station.name,
    body: stationMarkup(station, words),
  }));
  const lists = list
    ? [{ name: 'list-of-the-day', title: words.dayList, body: listMarkup(list, words) }]
    : [];
  return [...named, ...lists];
}

function sheetMarkup({ name, title, body }: Sheet, paper: Paper, words: PaperWords): string {
  const head = [
    `<div class="row"><h1>${escaped(title)}</h1>`,
    element('p', 'day', `${escaped(paper.day)}<br>${escaped(paper.edition)}`),
    '</div>',
    paragraphs('services', paper.services.join(' · ')),
    paragraphs('how', `${words.howTo} ${words.overruled}`),
  ];
  return element(
    'section',
    `sheet ${name}`,
    `${element('header', 'head', head.join(''))}\n${body}`,
  );
}

/** The letters of the sheets, where their address is known. */
export function fontFace(address: string | null): string {
  if (address === null) return '';
  const source = `url(${address}) format('woff2')`;
  return `@font-face { font-family: Sheet; font-weight: 200 800; src: ${source}; }`;
}
