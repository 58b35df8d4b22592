import type { Live } from '../day/index.ts';
import type { CutId, DishId, Instant } from '../kernel/index.ts';
import { instant } from '../kernel/index.ts';
import type { MixLine, PlannedService } from '../plan/index.ts';
import {
  clockTime,
  countPieces,
  sayAllergen,
  scaleWeight,
  textIn,
  weight,
} from '../words/index.ts';
import { shortDay } from './day-words.ts';
import type { ListSheet, MixRow, PullRow, ServiceRow, TubRow } from './paper.ts';
import type { Press } from './press.ts';

/** What is served, pulled, mixed and weighed, all of it for the whole day. */
export function listSheet(press: Press): ListSheet {
  const { services, mixes } = press.live.index.plan.built;
  return {
    services: services.map((service) => serviceRow(press, service)),
    pull: pullRows(press),
    mixes: mixes.map((mix) => mixRow(press, mix)),
    tubs: tubRows(press),
  };
}

function serviceRow(press: Press, { name, opensAt, closesAt, demand }: PlannedService): ServiceRow {
  const { say, words } = press;
  return {
    name: textIn(name, say),
    hours: words.span(clockTime(opensAt, say), clockTime(closesAt, say)),
    dishes: demand.map(({ dish, portionsPerQuarter }) => ({
      name: dishName(press, dish),
      portions: words.portions(portionsPerQuarter.reduce((sum, portions) => sum + portions, 0)),
    })),
  };
}

function dishName({ live, say }: Press, dish: DishId): string {
  const known = live.index.plan.catalogue.dishes.find(({ id }) => id === dish);
  return known ? textIn(known.name, say) : dish;
}

function pullRows(press: Press): PullRow[] {
  const { live, say, words } = press;
  const { pull } = live.index.plan.built;
  return pull.map(({ cut, name, pieces, weightKg }) => ({
    name: textIn(name, say),
    pieces: countPieces(pieces, pieceOf(press, cut), say),
    weight: weight(weightKg, say),
    by: words.by(timeOnDay(press, firstWanted(live, cut))),
  }));
}

/** The clock alone on the day of the services, with the day before it on any other. */
function timeOnDay({ live, say }: Press, at: Instant): string {
  const [day, today] = [at, ...live.index.plan.built.services.map(({ opensAt }) => opensAt)].map(
    (each) => shortDay(each, say),
  );
  const time = clockTime(at, say);
  return day === today ? time : `${time}, ${day}`;
}

function pieceOf({ live }: Press, cut: CutId) {
  const known = live.index.plan.catalogue.cuts.find(({ id }) => id === cut);
  return known?.piece ?? { one: { en: cut }, many: { en: cut } };
}

/** When hands first want a cut, as the day now stands: its batches begin with their first step. */
export function firstWanted(live: Live, cut: CutId): Instant {
  const { batches, tasks } = live.index.plan.built;
  const starts = batches
    .filter(({ bought }) => bought === cut)
    .flatMap(({ id }) => tasks.find(({ batch }) => batch === id) ?? [])
    .map(({ id }) => live.instantOf(live.timesOf(id).startS));
  return instant(Math.min(...starts));
}

function mixRow({ say, words }: Press, { name, weightKg, parts, allergens }: MixLine): MixRow {
  const listed = allergens.map((each) => sayAllergen(each, say)).join(', ');
  return {
    name: textIn(name, say),
    weight: scaleWeight(weightKg, say),
    parts: parts.map((part) => ({
      ingredient: textIn(part.ingredient, say),
      weight: scaleWeight(part.weightKg, say),
    })),
    allergens: listed === '' ? null : words.contains(listed),
  };
}

function tubRows(press: Press): TubRow[] {
  const { live, say, words } = press;
  const { batches, tubs } = live.index.plan.built;
  const rows = batches.map(({ id, name }) => ({
    batch: textIn(name, say),
    tubs: tubs
      .filter(({ batch }) => batch === id)
      .map((tub) => ({
        name: textIn(tub.name, say),
        weight: weight(tub.weightKg, say),
        goes: words.goes[tub.goes],
      })),
  }));
  return rows.filter((row) => row.tubs.length > 0);
}
