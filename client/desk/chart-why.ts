import { html, nothing } from 'lit';
import type { Instant, ServiceId, TaskId } from '../../shared/kernel/index.ts';
import type { DayChart, DeskView } from '../../shared/view/index.ts';
import { whyOf } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { deskWords, sayBar, sayWhy, textIn } from '../../shared/words/index.ts';

/** Why what is picked is when it is; how to pick where nothing is. */
export function whyDrawing(
  { chart, services }: Pick<DeskView, 'chart' | 'services'>,
  picked: TaskId | null,
  say: Say,
  now: Instant,
) {
  const words = deskWords[say.language];
  const bars = picked ? whyOf(chart, picked) : [];
  const [bar] = bars;
  if (!bar) return chart.bars.length > 0 ? html`<p>${words.pickOne}</p>` : nothing;
  const decided = services.filter(({ id }) => chainOf(chart, id).includes(bar.id));
  const names = decided.map(({ name }) => textIn(name, say)).join(', ');
  return html`<p class="what">
      ${sayBar(bar, chart, say, now)}${names ? ` · ${words.decides(names)}` : ''}
    </p>
    ${sayWhy(bars, say, now).map((sentence) => html`<p>${sentence}</p>`)}`;
}

const chainOf = ({ chains }: DayChart, service: ServiceId): readonly TaskId[] =>
  chains.find((chain) => chain.service === service)?.tasks ?? [];
