import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../../server/fingerprint.mjs';
import { cookEnglish } from '../../../shared/words/cook-english.ts';
import { cookSpanish } from '../../../shared/words/cook-spanish.ts';
import { englishTongue } from '../../../shared/words/english-tongue.ts';
import { planDeskWords } from '../../../shared/words/plan-desk.ts';
import { planEnglish } from '../../../shared/words/plan-english.ts';
import { planSpanish } from '../../../shared/words/plan-spanish.ts';
import { spanishTongue } from '../../../shared/words/spanish-tongue.ts';

export type Table = Readonly<Record<string, unknown>>;
export type Both = { readonly name: string; readonly en: Table; readonly es: Table };

const asTable = (words: object) => words as Table;
const isTable = (value: unknown): value is Table => typeof value === 'object' && value !== null;

/** The words of a wall, and every table of words that a module lets out. */
export async function everyTable(): Promise<Both[]> {
  const tongues = Object.keys(englishTongue).map((name) => ({
    name,
    en: englishTongue[name as keyof typeof englishTongue] as unknown as Table,
    es: spanishTongue[name as keyof typeof spanishTongue] as unknown as Table,
  }));
  const rooms = ['shared/words', 'shared/paper'];
  const files = rooms.flatMap((room) =>
    readdirSync(join(root, room)).map((file) => join(room, file)),
  );
  const modules = await Promise.all(
    files.filter((file) => file.endsWith('.ts')).map((file) => import(join(root, file))),
  );
  const others = modules
    .flatMap((module: Table) => Object.entries(module))
    .filter(([name]) => !['ui', 'logWords', 'checkWords', 'planDeskWords'].includes(name))
    .flatMap(([name, value]) =>
      isTable(value) && isTable(value['en']) && isTable(value['es'])
        ? [{ name, en: value['en'], es: value['es'] }]
        : [],
    );
  return [
    ...tongues,
    ...others,
    { name: 'plan', en: asTable(planEnglish), es: asTable(planSpanish) },
    { name: 'cook', en: asTable(cookEnglish), es: asTable(cookSpanish) },
    { name: 'planDesk', en: asTable(planDeskWords.en), es: asTable(planDeskWords.es) },
  ];
}

export type Leaf = { readonly path: string; readonly key: string; readonly value: unknown };

export function leavesOf(table: Table, above: string): Leaf[] {
  return Object.entries(table).flatMap(([key, value]) => {
    const path = `${above}.${key}`;
    return isTable(value) ? leavesOf(value, path) : [{ path, key, value }];
  });
}
