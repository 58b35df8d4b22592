import { quotedForStyle } from './markup.ts';

/** One page style for each sheet, so that its foot says which it is. */
export type RunningFoot = { readonly sheet: string; readonly text: string };

/** Cap height of the letters over their size, measured on Atkinson Hyperlegible Next. */
const CAP_HEIGHT = 0.672;
/** An arm's length (common practice, no source). */
const READ_FROM_M = 0.6;

/**
 * The size of letters whose capitals subtend so many minutes of arc at an arm's length; 16 is the
 * least for what must be read, 20 to 22 the usual (NUREG-0700 §1.3.1-4, ISO 9241-303).
 */
function points(arcmin: number): string {
  const capitalM = READ_FROM_M * Math.tan((arcmin / 60) * (Math.PI / 180));
  return `${((capitalM / CAP_HEIGHT / 0.0254) * 72).toFixed(1)}pt`;
}

/** The look of the sheets: black on white, ruled lines, heavy figures, room to write. */
export function paperStyle(page: string, feet: readonly RunningFoot[], font: string): string {
  return [font, pageRules(page, feet), letters, frame, tasks, writing, lists, onScreen].join('\n');
}

/** No size is named: the printer's own paper is taken, and the columns fit A4 and US Letter. */
function pageRules(page: string, feet: readonly RunningFoot[]): string {
  const figures = `${quotedForStyle(`${page} `)} counter(page) " / " counter(pages)`;
  const named = feet.map(
    ({ sheet, text }) => `.${sheet} { page: ${sheet}; }
@page ${sheet} { @bottom-left { content: ${quotedForStyle(text)}; } }`,
  );
  return `@page {
  margin: 11mm 12mm 16mm;
  @bottom-left {
    font: 700 9pt/1.2 Sheet, sans-serif;
    vertical-align: top;
    padding-top: 2.5mm;
    white-space: nowrap;
  }
  @bottom-right {
    content: ${figures};
    font: 700 9pt/1.2 Sheet, sans-serif;
    vertical-align: top;
    padding-top: 2.5mm;
    white-space: nowrap;
  }
}
${named.join('\n')}`;
}

const letters = `
* { box-sizing: border-box; margin: 0; padding: 0; }
html {
  color: #000;
  background: #fff;
  print-color-adjust: exact;
  -webkit-print-color-adjust: exact;
}
body {
  font: 500 ${points(16)}/1.22 Sheet, 'Atkinson Hyperlegible Next', sans-serif;
  font-variant-numeric: tabular-nums;
}
h1 { font-size: ${points(34)}; font-weight: 800; line-height: 1; }
h2 { font-size: ${points(22)}; font-weight: 800; line-height: 1.1; }
h2 small { font-size: ${points(16)}; font-weight: 600; }
.title { font-size: ${points(22)}; font-weight: 800; line-height: 1.08; }
.from { font-size: ${points(23)}; font-weight: 800; line-height: 1.05; white-space: nowrap; }
.who { font-size: ${points(20)}; font-weight: 800; line-height: 1.1; }`;

const frame = `
.sheet { break-before: page; }
.sheet:first-of-type { break-before: auto; }
.head { border-bottom: 1.4mm solid #000; padding-bottom: 2.2mm; }
.head .row { display: flex; justify-content: space-between; align-items: baseline; gap: 6mm; }
.head .day { font-weight: 700; text-align: right; }
.head .services { font-size: ${points(19)}; font-weight: 700; margin-top: 1.6mm; }
.head .how { margin-top: 1.4mm; font-size: 10pt; line-height: 1.2; }
.aside, .none { margin-top: 3mm; }`;

const tasks = `
table { border-collapse: collapse; width: 100%; }
th { text-align: left; font-weight: 700; }
.columns, .line { display: grid; grid-template-columns: 7mm 28mm 1fr; }
.columns {
  grid-template-columns: 35mm 1fr 50mm;
  font-size: 9.5pt;
  font-weight: 600;
  padding: 1mm 0 0.6mm;
  border-bottom: 0.3mm solid #000;
}
.line { padding: 1.4mm 0 1.5mm; border-bottom: 0.25mm solid #000; }
.tasks tr { break-inside: avoid; }
tr.day { break-after: avoid; }
tr.day th {
  font-size: ${points(22)};
  font-weight: 800;
  padding: 2.4mm 0 0.8mm;
  border-bottom: 0.8mm solid #000;
}
.from small { font-size: 0.62em; font-weight: 700; }
.to { font-weight: 600; white-space: nowrap; }
.hand .what, .again .what {
  display: grid;
  grid-template-columns: 1fr 50mm;
  column-gap: 3mm;
  align-items: baseline;
}
.detail, .heed { grid-column: 1 / 3; }
.check { font-weight: 600; }
.check:has(+ .readings) { grid-column: 1; }
.heed { display: flex; flex-wrap: wrap; gap: 0.6mm 7mm; align-items: baseline; }
.amount b { font-weight: 750; }
.mind { font-weight: 650; line-height: 1.3; }
.mind span { border-bottom: 0.7mm solid #000; }
.caution { padding-left: 4mm; position: relative; }
.caution::before {
  content: '!';
  position: absolute;
  left: 0.5mm;
  font-weight: 800;
  font-size: 1.25em;
  line-height: 1;
}
.quiet .line, .again .line { padding: 0.9mm 0 1mm; }
.again svg.tick { height: 4.6mm; }
.again .passage { padding-top: 0.6mm; }
.quiet .from, .again .from { font-size: ${points(16)}; line-height: 1.22; font-weight: 700; }`;

const writing = `
svg.tick { width: 5.4mm; height: 9mm; display: block; }
path { fill: none; stroke-linecap: round; stroke-width: 1.1; }
.guide { stroke: #8c8c8c; }
.ink { stroke: #000; stroke-width: 2.6; }
.tally { display: flex; flex-wrap: wrap; gap: 0.8mm 2.4mm; margin-top: 1mm; }
.five { height: 5.4mm; }
.blank {
  display: flex;
  flex: 1;
  align-items: baseline;
  gap: 1mm;
  font-size: 9.5pt;
  line-height: 1;
  white-space: nowrap;
}
.blank i { flex: 1; min-width: 12mm; border-bottom: 0.25mm solid #000; }
.passage, .reading { display: flex; gap: 2.4mm; }
.hand .readings { grid-column: 2; }
.hand .reading { gap: 0.8mm; }
.quiet .readings, .smoker .readings { padding-top: 2.6mm; }
.began { flex: 1; white-space: nowrap; font-size: 9.5pt; line-height: 1; }
.began b { font-size: 11.5pt; }
.readings { display: flex; flex-wrap: wrap; gap: 3.4mm 6mm; }
.reading { flex: 1 1 40mm; max-width: 48mm; }`;

const lists = `
.smoker, .list { margin-top: 3.4mm; }
.smoker { break-inside: avoid; padding-bottom: 1.5mm; border-bottom: 0.8mm solid #000; }
.racks { margin-top: 0.8mm; }
.racks th {
  width: 45mm;
  font-weight: 700;
  padding: 0.7mm 3mm 0.7mm 0;
  border-top: 0.25mm solid #000;
  vertical-align: top;
}
.racks td { padding: 0.7mm 0; border-top: 0.25mm solid #000; height: 7mm; }
.load { display: block; }
.list h2 { border-bottom: 0.8mm solid #000; padding-bottom: 0.6mm; break-after: avoid; }
.tubs { font-size: 10.5pt; }
.list .title { font-size: ${points(19)}; }
.entries { column-gap: 7mm; }
.entries.two { columns: 2; }
.entry {
  display: flex;
  gap: 1.5mm;
  padding: 1.4mm 0 1.6mm;
  border-bottom: 0.25mm solid #000;
  break-inside: avoid;
}
.entry .what { flex: 1; }
.blanks { display: flex; gap: 3mm; padding-top: 3.4mm; }
.parts { margin-top: 0.3mm; }
.parts td { padding: 0.1mm 2mm 0.1mm 0; vertical-align: baseline; }
.parts td:first-child { width: 27mm; font-weight: 700; white-space: nowrap; }
.tubs td, .tubs td:first-child {
  width: auto;
  font-weight: 500;
  white-space: normal;
  padding-top: 1mm;
}
.tubs td:last-child { width: 24mm; padding-right: 0; }`;

const onScreen = `
@media screen {
  body { max-width: 190mm; margin: 0 auto; padding: 8mm; }
  .sheet + .sheet { margin-top: 16mm; }
}`;
