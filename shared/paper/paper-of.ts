import type { Live } from '../day/index.ts';
import { must } from '../kernel/index.ts';
import { viewOf } from '../view/index.ts';
import type { Language, Say } from '../words/index.ts';
import { clockTime, sayInHand } from '../words/index.ts';
import { fullDay } from './day-words.ts';
import { listSheet } from './list-sheet.ts';
import type { Paper } from './paper.ts';
import type { Press } from './press.ts';
import { stationSheet } from './station-sheet.ts';
import { paperWords } from './words-of.ts';

/** A day on paper: as planned, or, once something has happened in it, as it stands now. */
export function paperOf(live: Live, language: Language): Paper {
  const { kitchen, built } = live.index.plan;
  const say: Say = { language, zone: built.zone, ...kitchen.units };
  const press: Press = { live, say, words: paperWords(language) };
  return {
    language,
    kitchen: kitchen.name,
    day: fullDay(must(built.services[0], 'a service').opensAt, say),
    edition: editionOf(press),
    services: viewOf(live, { kind: 'smoker' }).services.map((outlook) => sayInHand(outlook, say)),
    stations: kitchen.stations.map((station) => stationSheet(press, station)),
    list: listSheet(press),
  };
}

function editionOf({ live, say, words }: Press): string {
  const plan = words.plan(live.index.plan.version);
  const isUnderWay = live.state.sincePlan.length > 0 || live.state.tasks.size > 0;
  return isUnderWay ? `${plan}, ${words.asOf(clockTime(live.now, say))}` : plan;
}
