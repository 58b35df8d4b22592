import type { Composition } from './meat.ts';
import type { Unknown } from './prior.ts';

/** What cannot be read off a piece, in the order in which a belief about it is kept. */
export const pieceUnknowns = [
  'thickness',
  'shape',
  'conductivity',
  'wetness',
  'stock',
  'juice',
  'seep',
  'probeDepth',
  'wrapPassage',
  'wrapContact',
] as const;

export type PieceUnknowns = Readonly<Record<(typeof pieceUnknowns)[number], Unknown>>;

/** What is believed of a cut before the kitchen has cooked one. */
export type CutPrior = {
  readonly composition: Composition;
  readonly unknowns: PieceUnknowns;
};

/** Common to all cuts: of the measured thickness, of the shape of a brick, of Choi and Okos. */
const anyCut = {
  thickness: {
    scale: 'ratio',
    median: 1,
    spread: 1.1,
    sureness: 'judged',
    source: 'a tape on a soft piece; it also draws together by a tenth or two as it cooks',
  },
  shape: {
    scale: 'shift',
    median: 0,
    spread: 0.15,
    sureness: 'judged',
    source: 'no piece is a brick',
  },
  conductivity: {
    scale: 'ratio',
    median: 1,
    spread: 1.06,
    sureness: 'textbook',
    source: 'Choi and Okos 1986 against measured meats; fibres run one way',
  },
  wetness: {
    scale: 'ratio',
    median: 0.35,
    spread: 1.6,
    sureness: 'judged',
    source: 'surfaces of 60 to 70 °C in air of 110 °C; fat, rub and bark give off nothing',
  },
  stock: {
    scale: 'ratio',
    median: 0.06,
    spread: 1.7,
    sureness: 'judged',
    source: 'share of the weight in the outermost millimetres, which become bark',
  },
  juice: {
    scale: 'between',
    low: 0.05,
    high: 0.55,
    sureness: 'judged',
    source: 'share of what is pressed out that comes to the surface to stay; the rest drips',
  },
  seep: {
    scale: 'ratio',
    median: 0.014,
    spread: 1.6,
    sureness: 'textbook',
    source: 'kg/m² a root second, 2·c·√(D/π) for 650 kg/m³ of water and a D of 3e-10 m²/s',
  },
  probeDepth: {
    scale: 'between',
    low: 0,
    high: 0.15,
    sureness: 'judged',
    source: 'a steady hand finds the middle within a few millimetres',
  },
  wrapPassage: {
    scale: 'ratio',
    median: 1,
    spread: 2,
    sureness: 'judged',
    source: 'how tight it is folded; papers differ, and soak with fat',
  },
  wrapContact: {
    scale: 'ratio',
    median: 1,
    spread: 1.3,
    sureness: 'judged',
    source: 'air left under the wrap',
  },
} as const satisfies PieceUnknowns;

const cut = (composition: Composition, unknowns: Partial<PieceUnknowns> = {}): CutPrior => ({
  composition,
  unknowns: { ...anyCut, ...unknowns },
});

/**
 * Shares of weight as food tables give them for the raw cut, untrimmed of what is cooked with it.
 */
export const cutPriors = {
  shoulder: cut({ water: 0.64, protein: 0.17, fat: 0.18, ash: 0.01 }),
  brisket: cut({ water: 0.555, protein: 0.17, fat: 0.266, ash: 0.009 }),
  flat: cut({ water: 0.7, protein: 0.21, fat: 0.08, ash: 0.01 }),
  ribs: cut({ water: 0.58, protein: 0.16, fat: 0.25, ash: 0.01 }),
  'short ribs': cut({ water: 0.53, protein: 0.15, fat: 0.31, ash: 0.01 }),
  chicken: cut(
    { water: 0.66, protein: 0.186, fat: 0.146, ash: 0.008 },
    {
      wetness: {
        scale: 'ratio',
        median: 0.15,
        spread: 1.6,
        sureness: 'judged',
        source: 'skin lets little through',
      },
      juice: {
        scale: 'between',
        low: 0,
        high: 0.3,
        sureness: 'judged',
        source: 'what is pressed out runs off under the skin',
      },
    },
  ),
} as const satisfies Record<string, CutPrior>;
