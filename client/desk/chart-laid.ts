import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { DayChart, LaidRow, WouldBe } from '../../shared/view/index.ts';
import { layRows, wouldBeBars } from '../../shared/view/index.ts';
import { kept } from './kept.ts';

/** Rows are ordered by what is left of the day, anew after so long: not in every frame. */
const STEP_MS = 15 * 60_000;
/** Who ended no longer ago has a row yet. */
const JUST_ENDED_MS = 4 * STEP_MS;

const stepBefore = (atMs: number): Instant => instant(Math.floor(atMs / STEP_MS) * STEP_MS);

/** The rows of a chart as they were laid last, while nothing is otherwise. */
export class LaidChart {
  readonly #rows = kept<readonly LaidRow[]>();

  /** `sight`: from when on the chart is looked at. */
  rowsOf(
    chart: DayChart,
    now: Instant,
    sight: Instant,
    wouldBe: readonly WouldBe[],
  ): readonly LaidRow[] {
    const since = stepBefore(now - JUST_ENDED_MS);
    const from = instant(Math.min(since, stepBefore(sight)));
    return this.#rows([chart, since, from, wouldBe], () =>
      layRows(chart, since, from, wouldBeBars(chart, wouldBe)),
    );
  }
}
