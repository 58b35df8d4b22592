import { existsSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { type FileRead, type Instant, meant } from '../../shared/kernel/index.ts';
import { readPlanFiles } from '../../shared/plan/index.ts';
import type { DayFiles } from '../day-files.ts';
import { dueAt } from '../due.ts';
import { readFolder, readJsonFile } from '../folder/index.ts';
import { cannot, faulty, makesNoSense, type Refused } from './refusal.ts';

export type FilesRead = { readonly ok: true; readonly files: DayFiles } | Refused;

/** Where the three files are to be found. */
export type Where = {
  /** A cook plan, or the folder of a kitchen. */
  readonly path: string;
  readonly kitchen?: string | undefined;
  readonly catalogue?: string | undefined;
  /** Of a folder: the plan of that day; left out: the one that is due. */
  readonly day?: string | undefined;
  readonly folder: string;
};

/** Reads what a day is planned from, or says all that is wrong with it at once. */
export function readKitchenFiles(where: Where, now: Instant): FilesRead {
  const path = resolve(where.folder, where.path);
  const kind = statSync(path, { throwIfNoEntry: false });
  if (!kind) return notThere(where.path, 'file or folder');
  if (!kind.isDirectory()) return filesBeside(where);
  if (where.kitchen === undefined && where.catalogue === undefined) {
    return filesOfFolder(path, where.day, now);
  }
  const sentence = '--kitchen and --catalogue go with a cook plan; a folder has its own.';
  return makesNoSense({ rule: 'folder-has-its-own', sentence });
}

/** @example notThere('mine', 'folder').refusals[0]?.sentence //=> 'mine: no such folder.' */
export function notThere(path: string, what: 'file or folder' | 'folder'): Refused {
  return cannot([{ rule: 'not-there', sentence: `${path}: no such ${what}.`, path }]);
}

function filesBeside(where: Where): FilesRead {
  if (where.day !== undefined) {
    const sentence = '--day chooses among the plans of a folder; a cook plan has its own day.';
    return makesNoSense({ rule: 'plan-has-its-day', sentence });
  }
  const names: Readonly<Record<Document, string>> = {
    catalogue: beside(where, 'catalogue'),
    kitchen: beside(where, 'kitchen'),
    cookPlan: where.path,
  };
  const read = (document: Document) => {
    const path = resolve(where.folder, names[document]);
    return existsSync(path) ? readJsonFile(path) : NOT_THERE;
  };
  const json: Readonly<Record<Document, FileRead<unknown>>> = {
    catalogue: read('catalogue'),
    kitchen: read('kitchen'),
    cookPlan: read('cookPlan'),
  };
  const readOf = (document: Document) => {
    const file = json[document];
    return file.ok ? file.value : undefined;
  };
  const files = readPlanFiles({
    catalogue: readOf('catalogue'),
    kitchen: readOf('kitchen'),
    cookPlan: readOf('cookPlan'),
  });
  if (files.ok) return { ok: true, files: files.value };
  const unread = (['catalogue', 'kitchen', 'cookPlan'] as const).flatMap((document) => {
    const file = json[document];
    return file.ok ? [] : file.problems.map((fault) => ({ ...fault, file: names[document] }));
  });
  const unsound = files.problems
    .filter(({ file }) => json[file].ok)
    .map((fault) => ({ ...fault, file: names[fault.file] }));
  return faulty([...unread, ...unsound]);
}

const NOT_THERE: FileRead<never> = {
  ok: false,
  problems: [
    {
      path: '(the whole file)',
      found: 'no such file',
      allowed: 'a JSON file; --kitchen and --catalogue say where those two are',
    },
  ],
};

/** Where it was said to be, else beside the plan, else one folder up, as a kitchen has it. */
function beside(where: Where, document: 'kitchen' | 'catalogue'): string {
  const said = where[document];
  if (said !== undefined) return said;
  const here = join(dirname(where.path), `${document}.json`);
  const above = join(dirname(where.path), '..', `${document}.json`);
  const isThere = (name: string) => existsSync(resolve(where.folder, name));
  return !isThere(here) && isThere(above) ? above : here;
}

type Document = 'kitchen' | 'catalogue' | 'cookPlan';

function filesOfFolder(folder: string, day: string | undefined, now: Instant): FilesRead {
  const { kitchen, catalogue, limitChanges, plans, faults } = readFolder(folder);
  const isMeant = (file: string) => !file.startsWith('plans/') || file === `plans/${day}.json`;
  if (kitchen === null || catalogue === null || limitChanges === null) {
    // Which plan is due, such a kitchen does not tell: all that is wrong with any is said.
    return faulty(day === undefined ? faults : faults.filter(({ file }) => isMeant(file)));
  }
  const chosen =
    day === undefined ? dueAt(plans, now, kitchen.zone) : plans.find((plan) => plan.day === day);
  if (!chosen) return noSuchPlan(day, plans);
  if (chosen.plan === null) {
    return faulty(faults.filter(({ file }) => file === `plans/${chosen.day}.json`));
  }
  return { ok: true, files: { kitchen, catalogue, cookPlan: chosen.plan, limitChanges } };
}

function noSuchPlan(day: string | undefined, plans: readonly { readonly day: string }[]): Refused {
  const days = plans.map((plan) => plan.day);
  const there = days.length > 0 ? `there are plans for ${days.join(', ')}` : 'there are no plans';
  if (day === undefined) {
    const sentence = `No plan is due: ${there}; choose one with --day.`;
    return cannot([{ rule: 'no-plan-due', sentence, days }]);
  }
  const likely = meant(day, days);
  const hint = likely === undefined ? '' : ` Did you mean ${likely}?`;
  const sentence = `No plan for ${day}: ${there}.${hint}`;
  return cannot([{ rule: 'no-plan-of-that-day', sentence, day, days }]);
}
