import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { isLocalDay } from '../../shared/kernel/index.ts';
import { dayRecordPage, labelsPage } from '../../shared/paper/index.ts';
import { csvOf, labelsOf, type TableName, tables } from '../../shared/record/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { lettersAddress } from '../letters.ts';
import { type ArchivedDay, exportText, printedDay, type ReadArchive } from '../record/index.ts';
import {
  type Asked,
  allWell,
  type Command,
  type Ended,
  misused,
  refused,
  type Shell,
} from './command.ts';
import { daysAsked, openArchive } from './open-archive.ts';
import { LANGUAGES, languageOption } from './planned.ts';
import { notWritten } from './unusable.ts';

const FORMS = ['html', 'csv', 'json', 'labels'] as const;
const tableNames = Object.keys(tables) as TableName[];

export const record: Command = {
  name: 'record',
  takes: 'DIR',
  about: 'What the days of a kitchen leave behind: lots, checks, temperatures, who closed.',
  more: [
    'DIR is the folder of a kitchen; nothing in it is written. As html it is sheets to print,',
    'each with the signed head of its chain; as csv one table; as json all of it with the entries',
    'of the log, which verify can look through without a hub; as labels what came, what stands',
    'and what is kept, with a code on each.',
  ],
  options: [
    { name: 'day', value: 'DAY', about: 'That day alone; usually all there are.' },
    { name: 'from', value: 'DAY', about: 'From that day on.' },
    { name: 'to', value: 'DAY', about: 'Up to that day, and with it.' },
    { name: 'as', value: 'FORM', about: `One of ${FORMS.join(', ')}; usually html.`, oneOf: FORMS },
    {
      name: 'table',
      value: 'NAME',
      about: `Of a csv: one of ${tableNames.join(', ')}; usually lots.`,
      oneOf: tableNames,
    },
    { name: 'only', value: 'ID', about: 'Of labels: of that lot or batch alone, a page each.' },
    {
      name: 'at',
      value: 'URL',
      about: 'Of labels: the hub as devices of the kitchen find it; their codes lead there.',
    },
    { name: 'out', value: 'FILE', about: 'Where to write it; usually to the terminal.' },
    languageOption,
  ],
  run: async (asked, shell) => {
    const wrong = ['day', 'from', 'to'].flatMap((name) => {
      const day = asked.options.get(name);
      return day === undefined || isLocalDay(day)
        ? []
        : [`--${name}: found ${day}; allowed: a day such as 2026-11-28.`];
    });
    const [from, to] = [asked.options.get('from'), asked.options.get('to')];
    if (from && to && from > to) wrong.push(`--from ${from} lies after --to ${to}: change them.`);
    if (wrong.length > 0) return misused(wrong);
    const opened = await openArchive(asked.path, shell.folder);
    if (!opened.ok) return refused(opened.refusals.map(({ sentence }) => sentence));
    try {
      return await putOut(opened.read, asked, shell);
    } finally {
      await opened.read.close();
    }
  },
};

async function putOut(read: ReadArchive, asked: Asked, shell: Shell): Promise<Ended> {
  const { archive, broken } = read;
  if (broken) {
    return refused([
      `The log is broken at entry ${broken.seq}: verify says more. Nothing is made.`,
    ]);
  }
  const known = archive.days();
  const [from, to] = daysAsked(asked, known);
  const days = archive.between(from, to);
  if (days.length === 0) {
    return refused([`The log tells nothing of ${from} to ${to}; it tells of ${known.join(', ')}.`]);
  }
  const text = await textOf(read, days, asked, shell);
  if (text === null) return refused(['The folder has no key yet: start its hub once, then sign.']);
  const out = asked.options.get('out');
  if (out === undefined) {
    shell.say(text);
    return allWell;
  }
  try {
    writeFileSync(resolve(shell.folder, out), text);
  } catch (fault) {
    return refused([notWritten(out, fault)]);
  }
  shell.say(`${out}: ${days.length === 1 ? from : `${days.length} days, ${from} to ${to}`}.\n`);
  return allWell;
}

async function textOf(
  { archive, log, signer }: ReadArchive,
  days: readonly ArchivedDay[],
  { options }: Asked,
  { now }: Shell,
): Promise<string | null> {
  const say = sayOf(days, options.get('language'));
  const [first] = days;
  switch (options.get('as') ?? 'html') {
    case 'csv': {
      const name = tableNames.find((each) => each === options.get('table')) ?? 'lots';
      return csvOf(tables[name](days));
    }
    case 'json':
      return signer && exportText(log, archive.stretch(days), signer, now());
    case 'labels': {
      const only = options.get('only') ?? null;
      const labels = days.flatMap(({ record: each }) => labelsOf(each, only));
      const kitchen = first?.record.kitchen ?? '';
      const print = { kitchen, say, desk: options.get('at') ?? null, isAlone: only !== null };
      return labelsPage(labels, print, lettersAddress());
    }
    default:
      return dayRecordPage(days.map(printedDay), say, lettersAddress());
  }
}

/** As the kitchen has things said, in the language that is asked for. */
export function sayOf(days: readonly ArchivedDay[], asked: string | undefined): Say {
  const record = days.at(-1)?.record;
  const language = LANGUAGES.find((one) => one === asked) ?? record?.languages[0] ?? 'en';
  const units = record?.units ?? { clock: '24 h', temperature: '°C', weight: 'kg' };
  return { language, zone: record?.zone ?? 'UTC', ...units };
}
