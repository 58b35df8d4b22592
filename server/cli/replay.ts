import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { openLive } from '../../shared/day/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { type Asked, allWell, type Command, type Ended, misused, refused } from './command.ts';
import { asJson } from './json.ts';
import { notThere } from './kitchen-files.ts';
import { dayOption, languageOf, languageOption, wrongDay } from './planned.ts';
import { type LogRead, readLog } from './read-log.ts';
import type { Refused } from './refusal.ts';
import { replayJson } from './replay-json.ts';
import { replayText } from './replay-text.ts';
import { soMany } from './so-many.ts';

export const replay: Command = {
  name: 'replay',
  takes: 'DIR',
  about: 'Goes through a kitchen’s log: is it whole, what was done, what runs, what is next.',
  more: ['DIR is the folder of a kitchen. Its log is only read, also while a hub writes to it.'],
  options: [
    { name: 'json', value: null, about: 'As one JSON document.' },
    { ...dayOption, about: 'Which day of the log; usually the latest.' },
    languageOption,
  ],
  run: async (asked, shell) => {
    const read = await readAsked(asked, shell.folder);
    const isJson = asked.options.has('json');
    if (read.ok) {
      shell.say(isJson ? asJson(toldJson(read)) : toldText(read, asked));
      return read.broken && !isJson ? refused([read.broken.sentence]) : endOf(read);
    }
    if (isJson) shell.say(asJson({ ...nothingTold, refusals: read.refusals }));
    const sentences = isJson ? [] : read.refusals.map(({ sentence }) => sentence);
    return read.misused ? misused(sentences) : refused(sentences);
  },
};

const endOf = ({ broken }: LogRead): Ended => (broken ? refused([]) : allWell);

const nothingTold = { entries: 0, whole: false, days: [] };

async function readAsked({ path, options }: Asked, folder: string): Promise<LogRead | Refused> {
  const day = options.get('day');
  const wrong = wrongDay(day);
  if (wrong) return wrong;
  const place = resolve(folder, path);
  const isFolder = statSync(place, { throwIfNoEntry: false })?.isDirectory() ?? false;
  return isFolder ? readLog(place, day) : notThere(path, 'folder');
}

function toldJson(read: LogRead) {
  const { entries, broken, days, state } = read;
  const refusals = broken ? [broken] : [];
  const log = { entries, whole: broken === null, days, refusals };
  return state.plan ? { ...log, ...replayJson(openLive(state, state.keptAt)) } : log;
}

function toldText({ entries, broken, days, state }: LogRead, { options }: Asked): string {
  const isWhole = broken === null ? 'The log is whole' : 'The log holds as far as it goes';
  const head = [
    `${isWhole}: ${soMany(entries, 'entry', 'entries')}, of ${days.join(', ') || 'no day'}.`,
  ];
  if (!state.plan) return `${[...head, 'It has no plan yet.'].join('\n')}\n`;
  const { kitchen } = state.plan;
  const language = languageOf(options, kitchen);
  const say: Say = { language, zone: kitchen.zone, ...kitchen.units };
  return replayText(openLive(state, state.keptAt), say, head);
}
