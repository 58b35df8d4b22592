import type { LocalDay } from '../kernel/index.ts';
import { wallTime } from '../kernel/index.ts';
import type { Label } from '../record/index.ts';
import { clockTime, type Say, sayAllergen, sayDay, textIn, weight } from '../words/index.ts';
import { type LabelWords, labelWords } from './label-words.ts';
import { element, escaped } from './markup.ts';
import { fontFace } from './page.ts';
import { qrMarkup } from './qr.ts';

export type LabelPrint = {
  readonly kitchen: string;
  readonly say: Say;
  /** Where a device of the kitchen's network finds the desk; null: the code holds the lot alone. */
  readonly desk: string | null;
  /** Each on a page of its own, as a label printer takes it; else to be cut from a sheet. */
  readonly isAlone: boolean;
};

/** Labels to print, as one page that needs nothing else. */
export function labelsPage(
  labels: readonly Label[],
  print: LabelPrint,
  font: string | null = null,
): string {
  const { language } = print.say;
  const kind = print.isAlone ? 'alone' : 'together';
  return `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<title>${escaped(`${labelWords[language].labels}: ${print.kitchen}`)}</title>
<style>
${fontFace(font)}
${style}
${print.isAlone ? alone : together}
</style>
</head>
<body class="${kind}">
${labels.map((label) => labelMarkup(label, print)).join('\n')}
</body>
</html>
`;
}

/**
 * Where the record of a lot is to be opened.
 * @example lotAddress('http://10.0.0.5:4220', '2026-11-28-2')
 * //=> 'http://10.0.0.5:4220/desk.html#record/2026-11-28-2'
 */
const lotAddress = (hub: string, lot: string) => `${hub}/desk.html#record/${lot}`;

function labelMarkup(label: Label, { kitchen, say, desk }: LabelPrint): string {
  const words = labelWords[say.language];
  const [lot = null] = label.lots;
  const lots = label.lots.join(', ') || words.nobodyKnows;
  const code = lot === null ? '' : qrMarkup(desk === null ? lot : lotAddress(desk, lot));
  const line = (name: string, value: string) =>
    `<dt>${escaped(name)}</dt><dd>${escaped(value)}</dd>`;
  const facts = [
    line(words.since[label.on], signedIn(label, say)),
    ...(label.service ? [line(words.forService, textIn(label.service, say))] : []),
    ...(label.supplier === null ? [] : [line(label.supplier, fromIn(label, words))]),
  ];
  return element(
    'article',
    'label',
    [
      element('p', 'name', escaped(textIn(label.name, say))),
      element('p', 'amount', escaped(amountOf(label, say).join(' · '))),
      element('p', 'allergens', allergensIn(label, say)),
      element('dl', 'facts', facts.join('')),
      element('p', 'lots', `${escaped(words.lots)} <b>${escaped(lots)}</b>`),
      element('p', 'until', untilIn(label, say)),
      element('div', 'code', code),
      element('p', 'foot', escaped([kitchen, lot ?? label.id].join(' · '))),
    ].join('\n'),
  );
}

function amountOf({ pieces, weightKg }: Label, say: Say): string[] {
  return [
    ...(pieces === null ? [] : [labelWords[say.language].pieces(pieces)]),
    ...(weightKg === null ? [] : [weight(weightKg, say)]),
  ];
}

function allergensIn({ allergens }: Label, say: Say): string {
  const words = labelWords[say.language];
  const named = allergens.map((each) => sayAllergen(each, say)).join(', ');
  const value = named === '' ? escaped(words.noAllergens) : `<b>${escaped(named)}</b>`;
  return `${escaped(words.allergens)}: ${value}`;
}

/** The last day, or the last hour; a line to write on where nobody knows. */
function untilIn({ on, useBy, heldUntil }: Label, say: Say): string {
  const words = labelWords[say.language];
  const name = on === 'pan' ? words.heldUntil : words.useBy;
  const until = on === 'pan' ? heldUntil && momentIn(heldUntil, say) : useBy && dayIn(useBy, say);
  return `${escaped(name)} ${until ? `<b>${escaped(until)}</b>` : '<i></i>'}`;
}

const dayIn = (day: LocalDay, say: Say) => sayDay(day, say);

const momentIn = (at: Label['since']['at'], say: Say) =>
  `${sayDay(wallTime(at, say.zone).day, say)} ${clockTime(at, say)}`;

const signedIn = ({ since: { at, by } }: Label, say: Say) =>
  [momentIn(at, say), by].filter((each) => each !== null).join(', ');

const fromIn = ({ code }: Label, words: LabelWords) =>
  code === null ? '–' : `${words.code} ${code}`;

/** Read in a cooler at an arm's length: what it is and its day are largest. */
const style = `* { box-sizing: border-box; margin: 0; padding: 0; }
html { color: #000; background: #fff; print-color-adjust: exact; }
body { font: 500 9pt/1.2 Sheet, 'Atkinson Hyperlegible Next', sans-serif;
  font-variant-numeric: tabular-nums; }
.label { display: grid; grid-template-columns: 1fr 26mm;
  grid-template-rows: auto auto auto 1fr auto auto auto;
  column-gap: 2mm; width: 94mm; height: 56mm; padding: 1mm; overflow: hidden; }
.name { grid-column: 1 / -1; font-size: 15pt; line-height: 1.05; font-weight: 800;
  border-bottom: 1.2pt solid #000; padding-bottom: 0.6mm; }
.amount { padding-top: 1mm; }
.amount, .allergens, .facts, .lots { grid-column: 1; }
.allergens b { font-weight: 800; text-transform: uppercase; }
.facts { display: grid; grid-template-columns: auto 1fr; column-gap: 1.6mm; align-content: start;
  padding-top: 0.8mm; }
dt { font-weight: 500; }
dd { font-weight: 700; }
.lots { font-size: 11pt; }
.lots b { font-weight: 800; }
.until { grid-column: 1 / -1; font-size: 13pt; font-weight: 600; }
.until b { font-weight: 800; }
.until i { display: inline-block; width: 24mm; border-bottom: 0.8pt solid #000; }
.code { grid-column: 2; grid-row: 2 / 6; align-self: center; }
.qr { display: block; width: 26mm; height: 26mm; }
.foot { grid-column: 1 / -1; font-size: 8pt; border-top: 0.4pt solid #000; padding-top: 0.5mm; }`;

/** A roll of 100 by 62 mm, which the common label printers take. */
const alone = `@page { size: 100mm 62mm; margin: 3mm; }
.label { break-after: page; }
.label:last-child { break-after: auto; }`;

const together = `@page { margin: 10mm; }
.together { display: grid; grid-template-columns: 94mm 94mm; justify-content: center; }
.label { break-inside: avoid; outline: 0.3pt dashed #000; }`;
