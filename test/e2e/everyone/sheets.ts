import { readLog } from '../../../server/cli/read-log.ts';
import { lettersAddress } from '../../../server/letters.ts';
import { openLive } from '../../../shared/day/index.ts';
import { paperOf, paperPage } from '../../../shared/paper/index.ts';
import type { RecordAnswer, SheetAsk, SheetMade } from '../../../shared/protocol/index.ts';
import type { Language } from './reader.ts';

/** What is left of A4, the narrower of both papers, between a sheet's edges, at 96 to the inch. */
const px = (mm: number) => Math.round((mm / 25.4) * 96);
export const SHEET = { width: px(210 - 2 * 12), height: px(297 - 11 - 16) };
/** Labels come on sheets of their own, with less round them. */
const LABELS = { width: px(210 - 2 * 10), height: px(297 - 2 * 10) };

type Sheet = { readonly name: string; readonly html: string; readonly size: typeof SHEET };

/** What is printed of a day: its sheets, its record, and the labels of what came. */
export async function sheetsOf(
  { folder, address }: { readonly folder: string; readonly address: string },
  language: Language,
): Promise<readonly Sheet[]> {
  const read = await readLog(folder);
  if (!read.ok) throw new Error('the log of a running hub can be read');
  const live = openLive(read.state, read.state.keptAt);
  const { day } = live.index.plan.cookPlan;
  const made = async (as: SheetAsk['as']) => {
    const asked: SheetAsk = { as, from: day, to: day, language, at: address };
    const response = await fetch(`${address}/api/record/sheet`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(asked),
    });
    const answer = (await response.json()) as RecordAnswer<SheetMade>;
    if (!answer.ok) throw new Error(`no ${as}: ${JSON.stringify(answer.refusal)}`);
    return answer.text;
  };
  return [
    { name: 'the day', html: paperPage(paperOf(live, language), lettersAddress()), size: SHEET },
    { name: 'the record', html: await made('html'), size: SHEET },
    { name: 'the labels', html: await made('labels'), size: LABELS },
  ];
}
