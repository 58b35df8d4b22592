import type { Broken, Judgement } from './judgement.ts';
import type { Amount } from './printed.ts';
import type { Row } from './row-schema.ts';

/** A row that was broken, with both amounts in words; null where no number says it. */
export type RowBroken = {
  readonly row: Pick<Row, 'id' | 'what' | 'section' | 'source' | 'edition'>;
  readonly asked: string | null;
  readonly found: string | null;
};

/** What a judgement refuses, or null. @example breachOf({ ok: true, warnings: [] }) //=> null */
export const breachOf = (judgement: Judgement): RowBroken | null =>
  judgement.ok ? null : rowBroken(judgement, judgement);

/** A row with by how much it was missed. */
export function rowBroken(
  { row }: Pick<Broken, 'row'>,
  miss: Pick<Broken, 'measured' | 'limit'>,
): RowBroken {
  const { id, what, section, source, edition } = row;
  return {
    row: { id, what, section, source, edition },
    asked: miss.limit && inWords(miss.limit),
    found: miss.measured && inWords(miss.measured),
  };
}

const inWords = ({ value, unit }: Amount) => `${Math.round(value * 10) / 10} ${unit}`;
