import type { Language } from '../words/index.ts';
import { element, escaped, quotedForStyle } from './markup.ts';
import { fontFace } from './page.ts';

type Cell = string | number | null;

/** A ruled table; nothing where it has no rows. Columns named in `figures` are set to the right. */
export function ruledTable(
  header: readonly string[],
  rows: readonly (readonly Cell[])[],
  figures: readonly number[] = [],
): string {
  const kind = (i: number) => (figures.includes(i) ? ' class="figure"' : '');
  const cell = (name: string) => (value: Cell, i: number) =>
    `<${name}${kind(i)}>${escaped(String(value ?? '–'))}</${name}>`;
  const line = (cells: readonly Cell[], name: string) =>
    `<tr>${cells.map(cell(name)).join('')}</tr>`;
  return `<table><thead>${line(header, 'th')}</thead><tbody>
${rows.map((row) => line(row, 'td')).join('\n')}
</tbody></table>`;
}

/** A part of a sheet under its heading; what is missing is said. */
export function part(heading: string, isEmpty: boolean, none: string, body: string): string {
  const inside = isEmpty ? element('p', 'none', escaped(none)) : body;
  return element('section', 'part', `<h2>${escaped(heading)}</h2>\n${inside}`);
}

/** Sheets as one page that needs nothing else: no script, nothing to fetch. */
export function recordPage({
  language,
  title,
  foot,
  page,
  sheets,
  font,
}: {
  readonly language: Language;
  readonly title: string;
  /** At the foot of every page. */
  readonly foot: string;
  readonly page: string;
  readonly sheets: readonly string[];
  readonly font: string | null;
}): string {
  return `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<title>${escaped(title)}</title>
<style>
${fontFace(font)}
${pageStyle(foot, page)}
</style>
</head>
<body>
${sheets.map((sheet) => element('article', 'sheet', sheet)).join('\n')}
</body>
</html>
`;
}

/** Black on white, ruled lines; read at a table, so smaller than what a crew reads at work. */
const pageStyle = (foot: string, page: string) => `@page {
  margin: 12mm 12mm 16mm;
  @bottom-left { content: ${quotedForStyle(foot)}; font: 600 8pt/1.2 Sheet, sans-serif; }
  @bottom-right {
    content: ${quotedForStyle(`${page} `)} counter(page) " / " counter(pages);
    font: 600 8pt/1.2 Sheet, sans-serif;
  }
}
* { box-sizing: border-box; margin: 0; padding: 0; }
html { color: #000; background: #fff; }
body { font: 500 10pt/1.3 Sheet, 'Atkinson Hyperlegible Next', sans-serif;
  font-variant-numeric: tabular-nums; }
.sheet { break-after: page; }
.sheet:last-child { break-after: auto; }
h1 { font-size: 17pt; font-weight: 800; }
h2 { font-size: 11.5pt; font-weight: 800; border-bottom: 1.5pt solid #000; break-after: avoid; }
.head { display: flex; justify-content: space-between; align-items: baseline; gap: 6mm; }
.day { font-size: 13pt; font-weight: 700; text-align: right; }
.part { padding-top: 4mm; }
.lead, .none { padding-top: 1mm; }
table { width: 100%; border-collapse: collapse; }
thead { display: table-header-group; }
tr { break-inside: avoid; border-bottom: 0.4pt solid #000; }
th { font-weight: 600; font-size: 8.5pt; text-align: left; vertical-align: bottom; }
td { vertical-align: top; }
td:first-child { white-space: nowrap; }
th, td { padding: 0.6mm 3mm 0.6mm 0; }
.figure { text-align: right; white-space: nowrap; }
.chain { padding-top: 4mm; break-inside: avoid; }
.chain code { font: 8.5pt/1.3 ui-monospace, monospace; overflow-wrap: anywhere; }
@media screen {
  body { background: #ddd; padding: 6mm; }
  .sheet { background: #fff; max-width: 210mm; margin: 0 auto 6mm; padding: 12mm; }
}`;
