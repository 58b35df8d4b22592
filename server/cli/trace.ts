import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { lotRecordPage } from '../../shared/paper/index.ts';
import { csvOf, type LotTrace, traceTable } from '../../shared/record/index.ts';
import { type Say, sayDay, textIn, weight } from '../../shared/words/index.ts';
import { lettersAddress } from '../letters.ts';
import { columns } from './columns.ts';
import { allWell, type Command, type Ended, refused, type Shell } from './command.ts';
import { asJson } from './json.ts';
import { openArchive } from './open-archive.ts';
import { languageOption } from './planned.ts';
import { sayOf } from './record.ts';
import { notWritten } from './unusable.ts';

const FORMS = ['text', 'html', 'csv', 'json'] as const;

export const trace: Command = {
  name: 'trace',
  takes: 'LOT DIR',
  about: 'Where a lot went: its batches, the services they fed, and what is left of it.',
  more: [
    'LOT is the number on the label, as 2026-11-28-2. DIR is the folder of a kitchen; nothing in',
    'it is written. The weights add up to what came.',
  ],
  options: [
    { name: 'as', value: 'FORM', about: `One of ${FORMS.join(', ')}; usually text.`, oneOf: FORMS },
    { name: 'out', value: 'FILE', about: 'Where to write it; usually to the terminal.' },
    languageOption,
  ],
  run: async ({ path: lot, also: [folder = ''], options }, shell) => {
    const opened = await openArchive(folder, shell.folder);
    if (!opened.ok) return refused(opened.refusals.map(({ sentence }) => sentence));
    const { archive, close, broken } = opened.read;
    try {
      if (broken) return refused([`The log is broken at entry ${broken.seq}: nothing is traced.`]);
      const found = archive.trace(lot);
      if (!found) {
        return refused([
          `No day of ${folder} knows a lot “${lot}”: read its label again, such as 2026-11-28-2.`,
        ]);
      }
      const days = archive.between(lot.slice(0, 10), '9999-12-31').slice(-1);
      const say = sayOf(days, options.get('language'));
      const kitchen = days[0]?.record.kitchen ?? '';
      return putOut(textOf(found, options.get('as'), { say, kitchen }), options.get('out'), shell);
    } finally {
      await close();
    }
  },
};

function putOut(text: string, out: string | undefined, shell: Shell): Ended {
  if (out === undefined) {
    shell.say(text);
    return allWell;
  }
  try {
    writeFileSync(resolve(shell.folder, out), text);
    return allWell;
  } catch (fault) {
    return refused([notWritten(out, fault)]);
  }
}

function textOf(
  found: LotTrace,
  form: string | undefined,
  told: { readonly say: Say; readonly kitchen: string },
): string {
  switch (form) {
    case 'html':
      return lotRecordPage(found, told, lettersAddress());
    case 'csv':
      return csvOf(traceTable(found));
    case 'json':
      return asJson(found);
    default:
      return inWords(found, told.say);
  }
}

function inWords({ lot, ...found }: LotTrace, say: Say): string {
  const amount = (kg: LotTrace['lossKg']) => weight(kg, say);
  const rows = [
    ...found.services.map((each) => [
      ...[amount(each.weightKg), sayDay(each.day, say), textIn(each.name, say)],
      textIn(each.dishName, say),
    ]),
    ...found.kept.map((each) => [
      ...[amount(each.weightKg), sayDay(each.day, say), 'kept for another day'],
      textIn(each.dishName, say),
    ]),
    ...found.thrown.map((each) => [
      ...[amount(each.weightKg), sayDay(each.day, say), 'thrown out', textIn(each.dishName, say)],
    ]),
    ...found.tubs
      .filter(({ weightKg }) => weightKg > 0.0005)
      .map((each) => [
        ...[amount(each.weightKg), sayDay(each.day, say), each.goes],
        `${textIn(each.name, say)}${each.isWeighed ? ', weighed' : ''}`,
      ]),
    [amount(found.lossKg), '', 'lost in trimming, cooking and carving'],
    [amount(found.leftKg), '', 'left'],
    ...(found.sentBackKg > 0 ? [[amount(found.sentBackKg), '', 'sent back']] : []),
  ];
  const fed = found.kept.flatMap(({ dishName, mayHaveFed }) =>
    mayHaveFed.map(({ day, name }) => [
      ...['may have fed', sayDay(day, say), textIn(name, say), textIn(dishName, say)],
    ]),
  );
  const head = `${lot.id}: ${textIn(lot.name, say)}, ${amount(lot.weightKg)}, ${lot.supplier}`;
  return `${[head, ...columns([...rows, ...fed])].join('\n')}\n`;
}
