import { describe, expect, it } from 'vitest';
import type { Intent } from '../../../shared/day/index.ts';
import type { LocalDay, LotId, PersonId } from '../../../shared/kernel/index.ts';
import { after, celsius, kilograms, must, seconds } from '../../../shared/kernel/index.ts';
import { labelsPage } from '../../../shared/paper/index.ts';
import { type Label, labelsOf, recordOf } from '../../../shared/record/index.ts';
import { lastDay, profiles } from '../../../shared/safety/index.ts';
import type { Say } from '../../../shared/words/index.ts';
import { handsInOrder, noon, plan, Telling } from '../day/demo.ts';
import { readQr } from './read-qr.ts';

const { origin, batches, pull } = plan.built;
const day = plan.built.day as LocalDay;
const at = (timeS: number) => after(origin, seconds(timeS));
const [person] = plan.kitchen.crew;
const who = must(person, 'somebody');
const say: Say = { language: 'en', zone: 'UTC', clock: '24 h', temperature: '°C', weight: 'kg' };

/** A day on which every cut came, and every work of hands was done up to an instant. */
function day1(upTo: number): Telling {
  const telling = new Telling();
  for (const line of pull) {
    const { cut, pieces, weightKg } = line;
    const came: Intent = {
      ...{ kind: 'receive', cut, pieces, weightKg, supplier: 'Elm <& Sons', tempC: celsius(3) },
      ...{ useBy: '2026-03-09' as LocalDay, code: 'E-7' },
    };
    const taken = telling.ask(came, origin, who.id as PersonId);
    expect(taken.ok).toBe(true);
  }
  for (const task of handsInOrder) {
    const placed = plan.schedule.placements.find(({ activity }) => activity === task);
    const { startS, endS } = must(placed, task);
    if (endS > upTo) continue;
    telling.keep({ kind: 'taskStarted', task, hand: who.id as PersonId }, at(startS), null);
    telling.keep({ kind: 'taskFinished', task }, at(endS), null);
  }
  return telling;
}

const labelsOn = (telling: Telling, only: string | null = null) =>
  labelsOf(must(recordOf(telling.state), 'a record'), only);
const lastS = Math.max(...plan.schedule.placements.map(({ endS }) => endS));

/** The modules of every code of a page, back from its drawing. */
function codesOn(page: string): string[] {
  return [...page.matchAll(/<svg class="qr" viewBox="0 0 (\d+) \1"[^>]*><path d="([^"]*)"/g)].map(
    ([, side, path = '']) => {
      const size = Number(side) - 8;
      const rows = Array.from({ length: size }, () => new Array<boolean>(size).fill(false));
      for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H\d+z/g)) {
        for (let i = 0; i < Number(run); i++) {
          const row = must(rows[Number(y) - 4], 'a row inside of the quiet zone');
          row[Number(x) - 4 + i] = true;
        }
      }
      return readQr(rows).text;
    },
  );
}
const page = (labels: readonly Label[], print: Partial<Parameters<typeof labelsPage>[1]> = {}) =>
  labelsPage(labels, { kitchen: 'Ours', say, desk: null, isAlone: false, ...print });

describe('the label of a case', () => {
  it('has its lot, cut, supplier, use-by, when it came and who took it in', () => {
    const [label] = labelsOn(day1(0));
    const made = page([must(label, 'a label')]);
    const { name } = must(pull[0], 'a line');
    for (const said of [`${day}-1`, name.en, 'Elm &lt;&amp; Sons', 'E-7', 'Mon, Mar 9', who.name]) {
      expect(made).toContain(said);
    }
    expect(made).toContain('none named: read the package');
  });

  it('leads to where its lot went, and names the lot alone where no device could follow', () => {
    const labels = labelsOn(day1(0), `${day}-2`);
    expect(labels.map(({ on, id }) => [on, id])).toEqual([['case', `${day}-2`]]);
    expect(codesOn(page(labels))).toEqual([`${day}-2`]);
    expect(codesOn(page(labels, { desk: 'http://192.168.10.24:4220' }))).toEqual([
      `http://192.168.10.24:4220/desk.html#record/${day}-2`,
    ]);
  });
});

describe('the label of a batch', () => {
  it('names its lots, what allergens went on it, when it was begun and by whom', () => {
    const telling = day1(must(plan.schedule.placements[0], 'one').endS + 3600 * 3);
    const trays = labelsOn(telling).filter(({ on }) => on === 'tray');
    expect(trays.length).toBeGreaterThan(0);
    for (const tray of trays) {
      expect(tray.lots.length).toBeGreaterThan(0);
      expect(tray.since.by).toBe(who.name);
      expect(tray.useBy).toBe('2026-03-09');
    }
    // Yellow mustard and mustard powder are in the demo's rib rub and binder.
    const ribs = must(
      trays.find(({ name }) => /rib/i.test(name.en)),
      'ribs',
    );
    expect(ribs.allergens).toContain('mustard');
    expect(page([ribs])).toContain('<b>mustard');
    expect(page([ribs], { say: { ...say, language: 'es' } })).toContain('<b>mostaza');
  });

  it('says on its pans till when they may be held', () => {
    const pans = labelsOn(day1(lastS)).filter(({ on }) => on === 'pan');
    expect(pans.length).toBeGreaterThan(0);
    expect(pans.some(({ heldUntil, since }) => heldUntil !== null && heldUntil > since.at)).toBe(
      true,
    );
    expect(page(pans)).toContain('Hold until');
  });

  it('says of what is kept which day is its last, by the limits of the day', () => {
    const telling = day1(lastS);
    const batch = must(batches[0], 'a batch').id;
    const weightKg = kilograms(1.5);
    expect(telling.ask({ kind: 'carryOver', batch, weightKg }, noon, who.id as PersonId).ok).toBe(
      true,
    );
    const kept = must(
      labelsOn(telling, batch).find(({ on }) => on === 'kept'),
      'what is kept',
    );
    const limits = must(
      profiles.find(({ id }) => id === plan.kitchen.limits),
      'limits',
    );
    expect(kept).toMatchObject({ weightKg, useBy: lastDay(limits, day), since: { by: who.name } });
    expect(kept.lots).toContain(`${day}-1` as LotId);
  });
});

describe('a page of labels', () => {
  it('has one code a label, each to be read', () => {
    const labels = labelsOn(day1(lastS));
    expect(codesOn(page(labels))).toEqual(labels.map(({ lots }) => lots[0]));
  });

  it('is of a label a page where they are printed one by one', () => {
    const labels = labelsOn(day1(0), `${day}-1`);
    expect(page(labels, { isAlone: true })).toContain('@page { size: 100mm 62mm');
    expect(page(labels)).not.toContain('100mm 62mm');
  });
});
