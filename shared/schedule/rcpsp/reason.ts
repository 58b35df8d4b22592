import { unreachable } from '../../kernel/index.ts';

/** Says statements that together hold a conclusion up. */
export type Say = (bound: number, value: number) => void;

/** Who drew a conclusion; each explains its own. */
export type Author = 'lag' | 'order' | 'timetable' | 'nogood' | 'energy';

const AUTHORS: readonly Author[] = ['lag', 'order', 'timetable', 'nogood', 'energy'];

/** A reason in one number: who concluded, and which of his rules. */
export function reasonOf(author: Author, rule: number): number {
  switch (author) {
    case 'lag':
      return rule * 8;
    case 'order':
      return rule * 8 + 1;
    case 'timetable':
      return rule * 8 + 2;
    case 'nogood':
      return rule * 8 + 3;
    case 'energy':
      return rule * 8 + 4;
    default:
      return unreachable(author);
  }
}

/** Who concluded. */
export const authorOf = (reason: number): Author => AUTHORS[reason & 7] ?? 'lag';
/** By which of his rules. */
export const ruleOf = (reason: number) => reason >> 3;
