import { html } from 'lit';
import type { DeskView, ServiceOutlook } from '../../shared/view/index.ts';
import { isLate } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import {
  clockTime,
  durationWords,
  mendWords,
  sayMargin,
  sayOverlong,
  sayStanding,
  textIn,
} from '../../shared/words/index.ts';

/** What speaks for asking, in a sentence each; else that nothing does, and what is tightest. */
export function needsOf(view: DeskView, say: Say): string[] {
  const said = mendWords[say.language];
  const { services, overlong } = view;
  const late = services.filter(({ inHandS }) => isLate(inHandS));
  const lines = late.map((service) => {
    const by = durationWords(service.inHandS);
    return said.willBeLate(textIn(service.name, say), by) + hangsOn(service, view, say);
  });
  const [first] = overlong.map((each) => sayOverlong(each, say));
  if (first && overlong.length === 1) lines.push(`${first.what}, ${first.batch}: ${first.by}.`);
  if (overlong.length > 1) lines.push(said.overlong(overlong.length));
  if (lines.length > 0) return lines;
  const doubted = likelyLate(view, say);
  if (doubted.length > 0) return [said.holdsByPlan, ...doubted];
  const [tightest] = services.toSorted((a, b) => a.inHandS - b.inHandS);
  if (!tightest) return [said.holds];
  const { name, opensAt, inHandS } = tightest;
  const service = `${textIn(name, say)} ${clockTime(opensAt, say)}`;
  const margin = sayMargin(inHandS, say);
  return [said.holds, `${said.tightest(service, margin)}.${hangsOn(tightest, view, say)}`];
}

/** What the head says of a service that its cooks will likely make late. */
const likelyLate = ({ standings, at }: DeskView, say: Say): string[] =>
  standings.flatMap((standing) => {
    const stood = sayStanding(standing, at, say);
    if (!stood?.isLate) return [];
    return [mendWords[say.language].likelyLate(stood.service, stood.stands)];
  });

/** The work that decides it, as a sentence of its own behind another. */
function hangsOn({ hangsOn: task }: ServiceOutlook, { chart }: DeskView, say: Say): string {
  const bar = chart.bars.find(({ id }) => id === task);
  if (!bar) return '';
  const title = textIn(bar.title, say);
  const batch = chart.batches[bar.batch];
  const named = batch ? `${title}, ${textIn(batch, say)}` : title;
  return ` ${mendWords[say.language].hangsOn(named)}`;
}

/** Each rest and hold that is too long, in a row: by how much, from when to when, what then. */
export function tooLong({ overlong }: DeskView, say: Say) {
  return html`<h2>${mendWords[say.language].tooLong}</h2>
    <ul class="rows waits">
      ${overlong.map((each) => {
        const { what, batch, by, when, after } = sayOverlong(each, say);
        return html`<li>
          <span class="what">${what} <span class="soft">${batch}</span></span>
          <span class="strong">${by}</span>
          <span>${when}</span>
          <span class="soft">${after}</span>
        </li>`;
      })}
    </ul>`;
}
