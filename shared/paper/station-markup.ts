import { blank, readingBlanks, tallyGuides, tickStroke } from './marks.ts';
import { element, escaped, paragraphs } from './markup.ts';
import type { DayStretch, PaperLine, SmokerBlock, StationSheet } from './paper.ts';
import type { PaperWords } from './phrases.ts';

/** The body of a station's sheet: its smokers if it has any, then its work, day by day. */
export function stationMarkup(sheet: StationSheet, words: PaperWords): string {
  const { smokers, days, doneCount } = sheet;
  const work = days.length > 0 ? tasksTable(sheet, words) : paragraphs('none', words.nothing);
  return [
    ...smokers.map((smoker) => smokerMarkup(smoker, words)),
    work,
    paragraphs('aside', doneCount > 0 ? words.leftOut(doneCount) : null),
  ].join('\n');
}

/** A table, so that its head is printed again at the top of every page. */
function tasksTable({ name, days }: StationSheet, words: PaperWords): string {
  const { time, what, write } = words.columns;
  const columns = [time, `${name}: ${what}`, write].map(
    (column) => `<span>${escaped(column)}</span>`,
  );
  return [
    '<table class="tasks">',
    `<thead><tr><th scope="col"><div class="columns">${columns.join('')}</div></th></tr></thead>`,
    ...days.map((day) => dayMarkup(day, words)),
    '</table>',
  ].join('\n');
}

function dayMarkup({ day, lines }: DayStretch, words: PaperWords): string {
  const heading = `<tr class="day"><th scope="rowgroup">${escaped(day)}</th></tr>`;
  const rows = lines.map((line) => rowOf(line, words));
  return `<tbody>\n${[heading, ...rows].join('\n')}\n</tbody>`;
}

function rowOf(line: PaperLine, words: PaperWords): string {
  if (!line.byHand) return quietRow(line, words);
  return line.again ? againRow(line, words) : handRow(line, words);
}

/** A round once more: who, when, and room for when it was done. */
function againRow(line: PaperLine, words: PaperWords): string {
  const { title, batch, amount, who } = line;
  const what = [
    element('p', 'amount', `<b>${escaped(title)}</b> · ${escaped(`${batch} · ${amount}`)}`),
    element('p', 'passage', `<b>${escaped(who)}</b>${blank(words.blanks.done)}`),
  ];
  return lineRow('again', [
    tickStroke(line.running),
    element('div', 'time', startMarkup(line)),
    element('div', 'what', what.join('')),
  ]);
}

/** Who and the blanks stand beside title and amount; all else has the width below. */
function handRow(line: PaperLine, words: PaperWords): string {
  const { blanks } = words;
  const began = line.running
    ? element('span', 'began', `${escaped(blanks.began)} <b>${escaped(line.from)}</b>`)
    : blank(blanks.began);
  const what = [
    paragraphs('title', line.title),
    paragraphs('who', line.who),
    element('p', 'amount', `<b>${escaped(line.amount)}</b> · ${escaped(line.batch)}`),
    element('p', 'passage', began + blank(blanks.done)),
    paragraphs('detail', line.details.join(' · ')),
    paragraphs('detail check', line.doneWhen),
    ...line.readings.map((reading) => readingBlanks(reading, blanks.time)),
    element('div', 'heed', mindMarkup(line) + paragraphs('caution', line.caution)),
  ];
  const tally = line.tally === null ? '' : tallyGuides(line.tally);
  return lineRow('hand', [
    tickStroke(line.running),
    timeMarkup(line, words, tally),
    element('div', 'what', what.join('')),
  ]);
}

const mindMarkup = ({ mind }: PaperLine) =>
  mind === null ? '' : element('p', 'mind', `<span>${escaped(mind)}</span>`);

/** What nobody does is one thin line, with room for the temperatures that it must keep. */
function quietRow(line: PaperLine, words: PaperWords): string {
  const said = [line.amount, line.batch, line.between, line.mind].filter((part) => part !== null);
  const what = [
    element('p', 'amount', `<b>${escaped(line.title)}</b> · ${escaped(said.join(' · '))}`),
    ...line.readings.map((reading) => readingBlanks(reading, words.blanks.time)),
  ];
  return lineRow('quiet', [
    element('span', 'tick', ''),
    timeMarkup(line, words),
    element('div', 'what', what.join('')),
  ]);
}

const lineRow = (kind: string, cells: readonly string[]) =>
  `<tr class="${kind}"><td>${element('div', 'line', cells.join(''))}</td></tr>`;

function timeMarkup(line: PaperLine, words: PaperWords, below = ''): string {
  return element('div', 'time', startMarkup(line) + paragraphs('to', words.to(line.to)) + below);
}

function startMarkup({ from }: PaperLine): string {
  const [clock = '', half] = from.split(' ');
  const start = escaped(clock) + (half ? ` <small>${escaped(half)}</small>` : '');
  return element('p', 'from', start);
}

function smokerMarkup({ name, fire, racks, air }: SmokerBlock, words: PaperWords): string {
  const shelves = racks.map(({ name: rack, loads }) => {
    const listed = loads.map((load) => element('span', 'load', escaped(load))).join('');
    return `<tr><th scope="row">${escaped(rack)}</th><td>${listed}</td></tr>`;
  });
  return element(
    'section',
    'smoker',
    [
      `<h2>${escaped(name)} <small>${escaped(fire)}</small></h2>`,
      `<table class="racks">${shelves.join('')}</table>`,
      readingBlanks(air, words.blanks.time),
    ].join('\n'),
  );
}
