import type { WouldBe } from '../day/index.ts';
import type { ChartBar, ChartRow, DayChart } from './day-chart.ts';

/** What of the chart would stand elsewhere, as bars on its rows, by their starts. */
export function wouldBeBars(
  { rows, bars }: Pick<DayChart, 'rows' | 'bars'>,
  wouldBe: readonly WouldBe[],
): ChartBar[] {
  const places = new Map(rows.map((row, place) => [ownerOf(row), place]));
  const known = new Map(bars.map((bar) => [bar.id, bar]));
  return wouldBe.flatMap(({ task, owners, startAt, endAt }): ChartBar[] => {
    const bar = known.get(task);
    // What has begun since it was thought out stays where it is.
    if (bar?.state !== 'waiting') return [];
    const its = owners.flatMap((owner) => places.get(owner) ?? []);
    return [{ ...bar, rows: its, startAt, endAt, ranges: [], because: null }];
  });
}

const ownerOf = (row: ChartRow): string => (row.kind === 'hand' ? row.person.id : row.slot.id);
