import type { Seconds } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import { type CutPrior, cutPriors } from './cut-priors.ts';
import type { ForecastFile, SmokerInFile, StayInFile } from './forecast-file-schema.ts';
import type { Piece, Place, Reading, Smoker, Stay } from './piece.ts';
import { rooms, type Wrap } from './rooms.ts';
import { smokerPriors, withWetBulb } from './smoker-priors.ts';
import type { ForecastOptions } from './tell.ts';

/** What a forecast is made from. */
export type ForecastAsk = {
  readonly piece: Piece;
  readonly smoker: Smoker;
  readonly readings: readonly Reading[];
  readonly options: ForecastOptions;
};

/** What a file asks, in the terms of the model. */
export function askIn(file: ForecastFile): ForecastAsk {
  const { piece, readings, targets, stays, seed, members } = file;
  const { thickness, width, length } = piece;
  const taken: readonly Reading[] = readings.map(({ at, core, by }) => ({
    ...{ atS: at, tempC: core, by },
  }));
  const first: Stay = {
    from: { by: 'time', atS: seconds(0) },
    place: { kind: 'home' },
    wrap: 'none',
  };
  // Who says how it begins says all of it.
  const saysFirst = stays[0]?.at !== undefined && stays[0].at <= 0;
  return {
    piece: {
      cut: cutIn(piece),
      sides: { thicknessM: thickness, widthM: width, lengthM: length },
      startC: piece.start,
      stays: [...(saysFirst ? [] : [first]), ...stays.map(stayIn)],
      targets: targets.map(({ id, temp, way }, index) => ({
        id: id ?? String(index + 1),
        tempC: temp,
        way,
      })),
    },
    smoker: smokerIn(file.smoker),
    readings: taken,
    options: { nowS: nowIn(file), seed, members, wraps: wrapsIn(file) },
  };
}

function nowIn({ now, readings }: ForecastFile): Seconds {
  return now ?? seconds(Math.max(0, ...readings.map(({ at }) => at)));
}

function cutIn({ cut, composition, unknowns }: ForecastFile['piece']): CutPrior {
  const usual = cutPriors[cut];
  return {
    composition: composition ?? usual.composition,
    unknowns: { ...usual.unknowns, ...unknowns },
  };
}

function smokerIn(said: SmokerInFile): Smoker {
  const usual = smokerPriors[said.air];
  const prior = {
    unknowns: usual.unknowns,
    wallsBelowAirK: said.wallsBelowAirK ?? usual.wallsBelowAirK,
    swingK: said.swingK ?? usual.swingK,
  };
  const wet =
    said.wetBulb === undefined
      ? undefined
      : withWetBulb(prior, said.set, said.wetBulb, said.pressurePa);
  const { unknowns, ...rest } = wet ?? prior;
  return {
    id: said.id,
    prior: { ...rest, unknowns: { ...unknowns, ...said.unknowns } },
    setC: said.set,
    log: said.log.map(({ at, air }) => ({ atS: at, tempC: air })),
    doors: said.doors.map(({ at, open }) => ({ atS: at, openS: open })),
    ...(said.pressurePa === undefined ? {} : { pressurePa: said.pressurePa }),
  };
}

function stayIn({ at, core, wrap, in: where }: StayInFile): Stay {
  return {
    // One of the two is there; the file was read so.
    from: core === undefined ? { by: 'time', atS: at ?? seconds(0) } : { by: 'core', tempC: core },
    place: placeIn(where),
    wrap,
  };
}

function placeIn(where: StayInFile['in']): Place {
  if (where === undefined) return { kind: 'home' };
  if ('smoker' in where) return { kind: 'smoker', smoker: smokerIn(where.smoker) };
  const { room } = where;
  if (typeof room === 'string') return { kind: 'room', room: rooms[room] };
  const { air, ...rest } = room;
  return { kind: 'room', room: { airC: air, ...rest } };
}

function wrapsIn({ wraps }: ForecastFile): Partial<Record<'paper' | 'foil', Wrap>> {
  const { paper, foil } = wraps;
  return {
    ...(paper === undefined ? {} : { paper: { ...paper, sureness: 'measured' } }),
    ...(foil === undefined ? {} : { foil: { ...foil, sureness: 'measured' } }),
  };
}
