import type { Catalogue, Cut, Route, Standard, Step, StepOf } from '../../catalogue/index.ts';
import type { CutId, Kilograms, RouteId, Seconds, Text } from '../../kernel/index.ts';
import type { Kitchen } from '../../kitchen/index.ts';
import type { Drawing } from './drawing.ts';
import { drawings } from './drawings/index.ts';

/** A part that comes off or stays; `figure` is written beside it in words and drawing. */
export type StandardPart = {
  readonly figure: number | null;
  readonly part: string | null;
  readonly name: Text;
  readonly why: Text;
};

/** One thing that hands do at a table, as a learner ticks it off. */
export type StandardMove = {
  readonly step: string;
  readonly title: Text;
  readonly mind: Text | null;
  readonly caution: Text | null;
  /** What a trained hand takes for one piece; null where it is counted by the batch. */
  readonly pieceS: Seconds | null;
};

type Share = { readonly low: number; readonly typical: number; readonly high: number };

/** All that a cut is trimmed by, on one sheet. */
export type CutStandard = {
  readonly cut: CutId;
  readonly name: Text;
  readonly piece: Cut['piece'];
  readonly weightKg: {
    readonly low: Kilograms;
    readonly typical: Kilograms;
    readonly high: Kilograms;
  };
  /** Trimmed weight of raw weight. */
  readonly trimYield: Share;
  readonly drawing: Drawing | null;
  readonly off: readonly StandardPart[];
  readonly stays: readonly StandardPart[];
  readonly right: Text | null;
  readonly caution: Text | null;
  readonly ways: readonly { readonly route: RouteId; readonly moves: readonly StandardMove[] }[];
};

/** What a screen needs to show any of them: the cuts, and how their kitchen says amounts. */
export type StandardsShown = {
  readonly zone: string;
  readonly units: Kitchen['units'];
  readonly cuts: readonly CutStandard[];
};

/** The standards of all cuts that a kitchen knows, in the order of its catalogue. */
export function standardsOf(
  { cuts, routes }: Catalogue,
  { zone, units }: Pick<Kitchen, 'zone' | 'units'>,
): StandardsShown {
  return { zone, units, cuts: cuts.map((cut) => standardOf(cut, routes)) };
}

function standardOf(cut: Cut, routes: Catalogue['routes']): CutStandard {
  const { standard } = cut;
  const drawing = standard?.drawing ? drawings[standard.drawing] : null;
  const named = [...(standard?.off ?? []), ...(standard?.stays ?? [])].map(
    ({ part = null, name, why }, i): StandardPart => {
      return { figure: part === null ? null : i + 1, part, name, why };
    },
  );
  const offs = standard?.off.length ?? 0;
  return {
    cut: cut.id,
    name: cut.name,
    piece: cut.piece,
    weightKg: amounts(cut.weightKg),
    trimYield: amounts(cut.yields.trim),
    drawing,
    off: named.slice(0, offs),
    stays: named.slice(offs),
    right: standard?.right ?? null,
    caution: standard?.caution ?? null,
    ways: routes.flatMap((route) => {
      const taken = takenAs(route, cut.id);
      if (!taken) return [];
      return [{ route: route.id, moves: movesOf(route.steps, taken, standard).map(moveOf) }];
    }),
  };
}

function amounts<Amount>({ low, typical, high }: Record<'low' | 'typical' | 'high', Amount>) {
  return { low, typical, high };
}

/** By choice, the options that make the meat of a route this cut; null where none do. */
type Taken = ReadonlyMap<string, readonly string[]>;

function takenAs({ cut, choices }: Route, wanted: CutId): Taken | null {
  const deciding = choices.filter(({ options }) => options.some(({ as }) => as !== undefined));
  const taken = new Map(
    deciding.map(({ id, options }): [string, string[]] => {
      return [id, options.filter(({ as = cut }) => as === wanted).map((option) => option.id)];
    }),
  );
  const isIt = [...taken.values()].every((options) => options.length > 0);
  if (deciding.length === 0) return cut === wanted ? taken : null;
  return isIt ? taken : null;
}

/**
 * What is done piece by piece at the table where work on the cut begins, whatever is chosen; of a
 * cut without a standard all that is done there, which is then all there is to go by.
 */
function movesOf(steps: readonly Step[], taken: Taken, standard: Standard | undefined) {
  const hands = steps.filter((step): step is StepOf<'hands'> => step.work === 'hands');
  const [first] = hands;
  return hands.filter(({ bench, time, when = {} }) => {
    const isMeant = Object.entries(when).every(([choice, options]) =>
      options.some((option) => taken.get(choice)?.includes(option)),
    );
    return bench === first?.bench && isMeant && (time.per === 'piece' || !standard);
  });
}

function moveOf({ id, title, mind, caution, time }: StepOf<'hands'>): StandardMove {
  const pieceS = time.per === 'piece' ? time.takesS.typical : null;
  return { step: id, title, mind: mind ?? null, caution: caution ?? null, pieceS };
}
