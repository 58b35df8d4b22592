import { unreachable } from '../../kernel/index.ts';

/** Says statements that together hold a conclusion up. */
export type Say = (bound: number, value: number) => void;

/** Who drew a conclusion; each explains its own. */
export type Author = 'lag' | 'order' | 'timetable' | 'nogood';

const AUTHORS: readonly Author[] = ['lag', 'order', 'timetable', 'nogood'];

/** A reason in one number: who concluded, and which of his rules. */
export function reasonOf(author: Author, rule: number): number {
  switch (author) {
    case 'lag':
      return rule * 4;
    case 'order':
      return rule * 4 + 1;
    case 'timetable':
      return rule * 4 + 2;
    case 'nogood':
      return rule * 4 + 3;
    default:
      return unreachable(author);
  }
}

/** Who concluded. */
export const authorOf = (reason: number): Author => AUTHORS[reason & 3] ?? 'lag';
/** By which of his rules. */
export const ruleOf = (reason: number) => reason >> 2;
