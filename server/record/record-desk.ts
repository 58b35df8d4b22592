import { type DayState, drawsOf, lotsLeft, sentBackIn } from '../../shared/day/index.ts';
import { must } from '../../shared/kernel/index.ts';
import { dayRecordPage, labelsPage } from '../../shared/paper/index.ts';
import type {
  DayAnswered,
  LotTraced,
  RecordShown,
  SheetAsk,
  SheetMade,
} from '../../shared/protocol/index.ts';
import {
  csvOf,
  labelsOf,
  lotsOfBatch,
  lotsOfService,
  recordOf,
  tables,
} from '../../shared/record/index.ts';
import type { Say } from '../../shared/words/index.ts';
import type { EventLog } from '../store/index.ts';
import { type Archive, type ArchivedDay, archiveOf, printedDay } from './archive.ts';
import type { ChainCheck } from './check-chain.ts';
import { exportText } from './export-file.ts';
import type { RecordStore } from './record-store.ts';
import { fingerprintOf, type Signer } from './signing.ts';

/** What the desk asks of the record; null where there is nothing of that name. */
export type RecordDesk = {
  show(): RecordShown;
  trace(lot: string): LotTraced | null;
  day(day: string): DayAnswered | null;
  sheet(asked: SheetAsk): Promise<SheetMade | null>;
};

export type RecordDeskParts = {
  readonly log: EventLog;
  readonly store: RecordStore;
  readonly signer: Signer;
  readonly chain: ChainCheck;
  readonly state: () => DayState;
  readonly nowMs: () => number;
  /** The sheets' letters as a `data:` address. */
  readonly font: () => string;
};

/** Sheets of more days than these would be asked for by mistake. */
const MOST_DAYS = 400;

/** The record as the desk sees it. */
export function createRecordDesk(parts: RecordDeskParts): RecordDesk {
  const { store, signer, chain, state } = parts;
  const archive = archiveOf(store, state);
  return {
    show() {
      const seals = new Map(store.seals().map((seal) => [seal.day, seal]));
      return {
        days: archive.days().flatMap((day) => {
          const record = archive.record(day);
          const isRunning = day === state().plan?.built.day;
          const head = isRunning ? null : (seals.get(day)?.hash ?? null);
          return record ? [{ day: record.day, closed: record.closed, head }] : [];
        }),
        key: fingerprintOf(signer.publicKey),
        chain: chain.state,
        ...stockOf(state()),
      };
    },
    trace: (lot) => tracedBy(archive, lot),
    day(day) {
      const told = archive.told(day);
      if (!told) return null;
      const { checks, amended } = told.evidence;
      return { evidence: { checks, amended } };
    },
    sheet: (asked) => sheetOf(archive, parts, asked),
  };
}

function stockOf(state: DayState): Pick<RecordShown, 'lots' | 'pulls' | 'cuts' | 'trim'> {
  const { plan, happened } = state;
  if (!plan) return { lots: [], pulls: [], cuts: [], trim: [] };
  const { catalogue, built } = plan;
  const left = lotsLeft(state);
  const back = sentBackIn(state);
  const nameOf = (cut: string) => catalogue.cuts.find(({ id }) => id === cut)?.name ?? { en: cut };
  const draws = drawsOf(state);
  const pulled = new Map(built.pull.map(({ cut, pieces }) => [cut, pieces]));
  const bought = catalogue.cuts.filter(({ takenFrom, boughtAs }) => !takenFrom && !boughtAs);
  const cuts = bought.map(({ id, name, weightKg }) => {
    return { cut: id, name, listed: pulled.get(id) ?? null, usualKg: weightKg.typical };
  });
  return {
    trim: trimOf(state),
    cuts: cuts.toSorted((a, b) => Number(b.listed !== null) - Number(a.listed !== null)),
    lots: [...happened.lots.values()].map((lot) => {
      const { id, cut, pieces, weightKg, supplier, useBy } = lot;
      const leftPieces = left.get(id)?.leftPieces ?? 0;
      const isSentBack = back.has(id);
      const facts = { pieces, leftPieces, isSentBack, weightKg, supplier, useBy };
      return { id, cut, name: nameOf(cut), ...facts };
    }),
    pulls: built.batches.flatMap(({ id, name, bought }) => {
      const own = draws.filter(({ batch }) => batch === id);
      if (bought === null) return [];
      const lots = own.map(({ lot, pieces }) => ({ lot, pieces }));
      return [{ batch: id, name, cut: bought, isBegun: own.some((each) => each.isBegun), lots }];
    }),
  };
}

function trimOf(state: DayState): RecordShown['trim'] {
  return (recordOf(state)?.flows ?? []).flatMap(({ batch, name, tubs }) =>
    tubs.map(({ tub, name: tubName, weightKg, isWeighed = false }) => ({
      ...{ batch, name, tub, tubName, weightKg, isWeighed },
    })),
  );
}

function tracedBy(archive: Archive, lot: string): LotTraced | null {
  const trace = archive.trace(lot);
  if (!trace) return null;
  const on = (day: string) => must(archive.record(day), day);
  const services = new Map(trace.services.map((each) => [`${each.day} ${each.service}`, each]));
  return {
    trace,
    back: trace.batches.map(({ day, batch }) => ({
      ...{ day, batch, lots: lotsOfBatch(on(day), batch) },
    })),
    fed: [...services.values()].map(({ day, service }) => ({
      ...{ day, service, lots: lotsOfService(on(day), service) },
    })),
  };
}

async function sheetOf(
  archive: Archive,
  { log, signer, nowMs, font }: RecordDeskParts,
  { as, from, to, language, only, at }: SheetAsk,
): Promise<SheetMade | null> {
  const days = archive.between(from, to).slice(-MOST_DAYS);
  const [first, last] = [days[0], days.at(-1)];
  if (!first || !last) return null;
  const span = first === last ? from : `${first.record.day}-${last.record.day}`;
  const name = (ending: string) => `record-${span}.${ending}`;
  const say = sayOf(last, language);
  switch (as) {
    case 'csv':
      return { name: name('csv'), type: 'text/csv', text: csvOf(tables.batches(days)) };
    case 'json': {
      const text = await exportText(log, archive.stretch(days), signer, nowMs());
      return { name: name('json'), type: 'application/json', text };
    }
    case 'labels': {
      const labels = days.flatMap(({ record }) => labelsOf(record, only ?? null));
      if (labels.length === 0) return null;
      const print = {
        kitchen: last.record.kitchen,
        say,
        desk: outside(at),
        isAlone: only !== undefined,
      };
      const text = labelsPage(labels, print, font());
      return { name: `labels-${only ?? span}.html`, type: 'text/html', text };
    }
    case 'html': {
      const text = dayRecordPage(days.map(printedDay), say, font());
      return { name: name('html'), type: 'text/html', text };
    }
  }
}

const sayOf = ({ record: { zone, units } }: ArchivedDay, language: Say['language']): Say => ({
  ...{ language, zone, ...units },
});

/** Where other devices find the desk that asks; null where only its own machine does. */
function outside(at: string | undefined): string | null {
  const isHere = at === undefined || /^https?:\/\/(localhost|127\.|\[::1\])/.test(at);
  return isHere ? null : at;
}
