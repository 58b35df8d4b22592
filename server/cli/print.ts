import { statSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Live, openLive } from '../../shared/day/index.ts';
import { type Instant, instant } from '../../shared/kernel/index.ts';
import { type Paper, paperOf, paperPage } from '../../shared/paper/index.ts';
import { dueAt } from '../due.ts';
import { lettersAddress } from '../letters.ts';
import { unknownWord } from './arguments.ts';
import { type Asked, type Command, type Ended, misused, refused, type Shell } from './command.ts';
import { fileOptions, languageOf, languageOption, liveFrom, planFrom } from './planned.ts';
import { hasLog, type LogRead, readLog } from './read-log.ts';
import type { Refused } from './refusal.ts';
import { notWritten } from './unusable.ts';

export const print: Command = {
  name: 'print',
  takes: 'FILE|DIR',
  about: 'The day on paper: a sheet for each station, and one for what is pulled and mixed.',
  more: [
    'FILE is a cook plan. DIR is the folder of a kitchen: the day that runs there is printed as it',
    'stands now, else the plan that is due. It is one HTML page with all it needs inside; print it',
    'from any browser, on A4 or US Letter.',
  ],
  options: [
    { name: 'out', value: 'FILE.html', about: 'Where to write it; usually to the terminal.' },
    { name: 'station', value: 'ID', about: 'The sheet of this station alone.' },
    languageOption,
    ...fileOptions,
  ],
  run: async (asked, shell) => {
    const found = await dayToPrint(asked, shell);
    if (!found.ok) {
      const sentences = found.refusals.map(({ sentence }) => sentence);
      return found.misused ? misused(sentences) : refused(sentences);
    }
    const { live, warnings } = found;
    const paper = paperOf(live, languageOf(asked.options, live.index.plan.kitchen));
    const chosen = onlyStation(paper, asked.options.get('station'));
    return chosen.ok ? putOut(chosen.paper, warnings, asked, shell) : misused([chosen.wrong]);
  },
};

type Found = { readonly ok: true; readonly live: Live; readonly warnings: readonly string[] };

/** A running day goes before the files: on paper it must be what the crew has begun. */
async function dayToPrint(asked: Asked, shell: Shell): Promise<Found | Refused> {
  const running = await runningDay(asked, shell);
  if (running) return running;
  const made = planFrom(asked, shell);
  return made.ok ? { ok: true, live: liveFrom(made.plan), warnings: [] } : made;
}

async function runningDay({ path, options }: Asked, shell: Shell): Promise<Found | null> {
  const folder = resolve(shell.folder, path);
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory() || !hasLog(folder)) return null;
  const day = options.get('day');
  const read = await readLog(folder);
  if (!read.ok) return null;
  // A clock that was sped up may have written what is still to come for this machine's.
  const now = instant(Math.max(shell.now(), read.state.keptAt));
  if (!isOn(read, day, now)) return null;
  const warnings = read.broken ? [read.broken.sentence] : [];
  return { ok: true, live: openLive(read.state, now), warnings };
}

function isOn({ state: { plan } }: LogRead, day: string | undefined, now: Instant): boolean {
  if (!plan) return false;
  const { cookPlan, kitchen } = plan;
  if (day !== undefined) return cookPlan.day === day;
  return dueAt([{ day: cookPlan.day, plan: cookPlan }], now, kitchen.zone) !== null;
}

type Chosen =
  | { readonly ok: true; readonly paper: Paper }
  | { readonly ok: false; readonly wrong: string };

function onlyStation(paper: Paper, id: string | undefined): Chosen {
  if (id === undefined) return { ok: true, paper };
  const stations = paper.stations.filter((station) => station.id === id);
  if (stations.length > 0) return { ok: true, paper: { ...paper, stations, list: null } };
  const known = paper.stations.map((station) => station.id);
  return { ok: false, wrong: `--station: ${unknownWord(id, known)}` };
}

function putOut(paper: Paper, warnings: readonly string[], asked: Asked, shell: Shell): Ended {
  const page = paperPage(paper, lettersAddress());
  const out = asked.options.get('out');
  if (out === undefined) {
    shell.say(page);
  } else {
    try {
      writeFileSync(resolve(shell.folder, out), page);
    } catch (fault) {
      return refused([notWritten(out, fault)]);
    }
    const count = paper.stations.length + (paper.list ? 1 : 0);
    const sheets = count === 1 ? '1 sheet' : `${count} sheets`;
    shell.say(`${out}: ${sheets}, ${paper.day}, ${paper.edition}. Print it in a browser.\n`);
  }
  return warnings.length > 0 ? refused(warnings) : { exit: 0, complaints: [] };
}
