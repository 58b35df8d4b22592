import type { Catalogue, Round } from '../catalogue/index.ts';
import type { BatchId, Seconds, Text } from '../kernel/index.ts';
import { hours, must, seconds, textOf } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import type { Need, ResourceId } from '../schedule/index.ts';
import type { Upkeep, UpkeepRound } from './built.ts';
import { handModes, teamsFor } from './hands.ts';
import type { Frame } from './order.ts';
import { resourceId } from './resources.ts';
import type { CookPlan } from './schema.ts';
import { stationOf } from './station.ts';
import { tableNumbers } from './tables.ts';

/** A thing of the kitchen, as its rounds see it. */
type Thing = Pick<Upkeep, 'uses' | 'board' | 'aheadS' | 'quietS'> & {
  readonly id: string;
  readonly name: Text;
  readonly rounds: readonly string[];
};

/** A table stays dirty however long nobody is at it; so do we count its use (our choice). */
const TABLE_QUIET_S = hours(4);
/** Between two batches a cabinet or a cooler is not looked at (our choice). */
const STORE_QUIET_S = hours(1);
const AT_ONCE_S = seconds(0);

/** What the things of a kitchen ask for while they are in use. */
export function upkeepOf(
  { services }: Pick<CookPlan, 'services'>,
  { kitchen }: Frame,
  catalogue: Catalogue,
): Upkeep[] {
  const service = must(services.at(-1), 'a service').id;
  return thingsOf(kitchen).flatMap(({ id, name, rounds, ...thing }) => {
    const group = `keep-${id}` as BatchId;
    const asked = catalogue.rounds.filter((round) => rounds.includes(round.id));
    if (asked.length === 0) return [];
    return [
      {
        id: group,
        name,
        service,
        ...thing,
        rounds: asked.map((round) => upkeepRound(round, group, thing, kitchen)),
      },
    ];
  });
}

function upkeepRound(
  round: Round,
  group: BatchId,
  { uses, board }: Pick<Thing, 'uses' | 'board'>,
  kitchen: Kitchen,
): UpkeepRound {
  const { when, everyS, earlyS, lateS, skill, what, takesS } = round;
  const work = { time: { per: 'batch', takesS }, hands: 1 } as const;
  const teams = teamsFor(kitchen, skill === undefined ? work : { ...work, skill });
  // A table is washed with nothing on it; a smoker is fed with everything in it.
  const needs = board === null ? [] : uses.map((table): Need => tableNeed(table));
  return {
    when,
    ...(everyS === undefined ? {} : { everyS }),
    earlyS,
    lateS,
    task: {
      batch: group,
      step: round.id,
      work: 'hands',
      title: round.title,
      ...(round.short ? { short: round.short } : {}),
      ...(round.mind ? { mind: round.mind } : {}),
      ...(round.caution ? { caution: round.caution } : {}),
      pieces: what.count,
      piece: what.piece,
      weightKg: what.weightKg,
      station: stationOf(kitchen, round.bench).id,
      ...(round.check ? { check: round.check } : {}),
    },
    modes: handModes(work, 1, teams, {
      tables: [{ id: '', needs, states: [] }],
      wished: undefined,
    }),
  };
}

const tableNeed = (table: ResourceId): Need => ({ role: 'table', amount: 1, oneOf: [table] });

function thingsOf({ smokers, cabinets, coolers, stations }: Kitchen): Thing[] {
  return [
    ...smokers.map(({ racks, preheatS, ...smoker }) => ({
      ...smoker,
      uses: racks.map(({ slot }) => resourceId({ kind: 'slot', slot })),
      board: null,
      aheadS: preheatS,
      quietS: untilColdS(preheatS),
    })),
    ...cabinets.map((cabinet) => ({
      ...cabinet,
      uses: (['pans', 'whole'] as const).map((holds) =>
        resourceId({ kind: 'cabinet', cabinet: cabinet.id, holds }),
      ),
      board: null,
      aheadS: AT_ONCE_S,
      quietS: STORE_QUIET_S,
    })),
    ...coolers.map((cooler) => ({
      ...cooler,
      uses: [resourceId({ kind: 'cooler', cooler: cooler.id })],
      board: null,
      aheadS: AT_ONCE_S,
      quietS: STORE_QUIET_S,
    })),
    ...stations.filter(({ side }) => side === 'raw').flatMap(tablesOf),
  ];
}

/** It is not let go out where it would have to be lit again before it is cold (our choice). */
const untilColdS = (preheatS: Seconds) => seconds(2 * preheatS);

function tablesOf(station: Kitchen['stations'][number]): Thing[] {
  return tableNumbers(station).map((number) => ({
    id: `${station.id}-${number}`,
    name: textOf([station.name], ([name]) => `${name} ${number}`),
    rounds: station.rounds,
    uses: [resourceId({ kind: 'table', station: station.id, number })],
    board: resourceId({ kind: 'board', station: station.id, number }),
    aheadS: AT_ONCE_S,
    quietS: TABLE_QUIET_S,
  }));
}
