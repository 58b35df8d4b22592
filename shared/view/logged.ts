import type { Happening, LimitsFact, Live, Told } from '../day/index.ts';
import { cureOf, isCheckFact, isWhoFact } from '../day/index.ts';
import type { Celsius, Instant, Kilograms, LotId, Seconds, TaskId, Text } from '../kernel/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { SlotName } from '../plan/index.ts';
import { type LoggedCheck, loggedCheck } from './logged-check.ts';
import {
  batchOf,
  cutOf,
  type Deed,
  deedOn,
  dishOf,
  placeRead,
  slotOf,
  smokerOf,
} from './logged-names.ts';
import { type LoggedWho, loggedWho, nameOf } from './logged-who.ts';

export type Logged =
  | { readonly kind: 'plan'; readonly version: number; readonly takesBack: number | null }
  | ({ readonly kind: 'limits' } & Pick<LimitsFact, 'from' | 'to' | 'changes'>)
  | ({ readonly kind: 'task'; readonly what: TaskWord } & Deed)
  | ({ readonly kind: 'counted'; readonly done: number; readonly pieces: number } & Deed)
  | ({ readonly kind: 'late'; readonly byS: Seconds } & Deed)
  | ({ readonly kind: 'given'; readonly to: string } & Deed)
  | {
      readonly kind: 'read';
      readonly where: Text;
      /** Which of its batch, where that has several. */
      readonly load: number | null;
      /** Where it lay then, of meat. */
      readonly slot: SlotName | null;
      readonly tempC: Celsius;
    }
  | {
      readonly kind: 'moved';
      readonly moves: readonly { readonly batch: Text; readonly to: SlotName }[];
    }
  | { readonly kind: 'mended'; readonly tasks: number }
  | { readonly kind: 'note'; readonly text: string; readonly about: Text | null }
  | LoggedWho
  | LoggedCheck
  | LoggedHappening;

type LoggedHappening =
  | {
      readonly kind: 'smokerWentDown';
      readonly smoker: Text;
      readonly tempC: Celsius;
      readonly backAt: Instant | null;
    }
  | {
      readonly kind: 'smokerRunsCold' | 'smokerCameUp';
      readonly smoker: Text;
      readonly tempC: Celsius;
    }
  | { readonly kind: 'doorOpened'; readonly smoker: Text; readonly openS: Seconds }
  | { readonly kind: 'handWentOut'; readonly hand: string; readonly backAt: Instant | null }
  | { readonly kind: 'handCameIn'; readonly hand: string }
  | {
      readonly kind: 'deliveryCame';
      readonly cut: Text;
      readonly pieces: number;
      readonly weightKg: Kilograms;
    }
  | {
      readonly kind: 'lotCame';
      readonly lot: LotId;
      readonly cut: Text;
      readonly pieces: number;
      readonly weightKg: Kilograms;
      readonly supplier: string;
      readonly tempC: Celsius | null;
    }
  | { readonly kind: 'batchCutFrom'; readonly batch: Text; readonly lots: readonly LotId[] }
  | {
      readonly kind: 'cureWeighed';
      readonly mix: Text;
      readonly batch: Text;
      readonly weightKg: Kilograms;
      readonly first: string;
      readonly second: string;
    }
  | {
      readonly kind: 'tubWeighed';
      readonly tub: Text;
      readonly batch: Text;
      readonly weightKg: Kilograms;
    }
  | { readonly kind: 'portionsSold'; readonly dish: Text; readonly sold: number }
  | { readonly kind: 'dishSoldOut'; readonly dish: Text }
  | { readonly kind: 'panEmptied'; readonly batch: Text }
  | { readonly kind: 'leftCarriedOver'; readonly batch: Text; readonly weightKg: Kilograms }
  | { readonly kind: 'dayClosed'; readonly goesOn: readonly Text[] }
  /** Null where what was undone is not of this day. */
  | { readonly kind: 'undone'; readonly what: Logged | null };

type TaskWord =
  | 'taskStarted'
  | 'taskFinished'
  | 'startTakenBack'
  | 'finishTakenBack'
  | 'helpAsked'
  | 'helpCame';

/** What happened, with its subjects by name. */
export function logged(live: Live, told: Told): Logged {
  switch (told.kind) {
    case 'planAdopted':
      return { kind: 'plan', version: told.planVersion, takesBack: told.takesBack ?? null };
    case 'limitsChanged':
      return { kind: 'limits', from: told.from, to: told.to, changes: told.changes };
    case 'taskStarted':
    case 'taskFinished':
    case 'startTakenBack':
    case 'finishTakenBack':
    case 'helpAsked':
    case 'helpCame':
      return { kind: 'task', what: told.kind, ...deedOn(live, told.task) };
    case 'piecesCounted': {
      const pieces = live.index.tasks.get(told.task)?.pieces ?? told.done;
      return { kind: 'counted', done: told.done, pieces, ...deedOn(live, told.task) };
    }
    case 'taskRunsLate':
      return { kind: 'late', byS: told.byS, ...deedOn(live, told.task) };
    case 'taskGiven':
      return { kind: 'given', to: nameOf(live, told.hand), ...deedOn(live, told.task) };
    case 'temperatureRead':
      return { kind: 'read', ...placeRead(live, told), tempC: told.tempC };
    case 'slotsMoved':
      return {
        kind: 'moved',
        moves: told.moves.map(({ stay, to }) => ({
          batch: deedOn(live, stay).batch,
          to: slotOf(live, to),
        })),
      };
    case 'dayMended':
      return { kind: 'mended', tasks: told.changes.filter(isByHand(live)).length };
    case 'noteWritten': {
      const about = told.task && deedOn(live, told.task).title;
      return { kind: 'note', text: told.text, about };
    }
    default:
      if (isCheckFact(told)) return loggedCheck(live, told);
      return isWhoFact(told) ? loggedWho(live, told) : happened(live, told);
  }
}

type Happened = Extract<Told, { kind: Happening['kind'] }>;

/** What nobody planned, and what was counted at the pass. */
function happened(live: Live, told: Happened): Logged {
  switch (told.kind) {
    case 'smokerWentDown':
      return {
        kind: told.kind,
        smoker: smokerOf(live, told.smoker),
        tempC: told.tempC,
        backAt: told.backAt,
      };
    case 'smokerRunsCold':
    case 'smokerCameUp':
      return { kind: told.kind, smoker: smokerOf(live, told.smoker), tempC: told.tempC };
    case 'doorOpened':
      return { kind: told.kind, smoker: smokerOf(live, told.smoker), openS: told.openS };
    case 'handWentOut':
      return { kind: told.kind, hand: nameOf(live, told.hand), backAt: told.backAt };
    case 'handCameIn':
      return { kind: told.kind, hand: nameOf(live, told.hand) };
    case 'deliveryCame': {
      const { kind, pieces, weightKg } = told;
      return { kind, cut: cutOf(live, told.cut), pieces, weightKg };
    }
    case 'lotCame': {
      const { kind, lot, pieces, weightKg, supplier, tempC } = told;
      return { kind, lot, cut: cutOf(live, told.cut), pieces, weightKg, supplier, tempC };
    }
    case 'batchCutFrom':
      return { kind: told.kind, batch: batchOf(live, told.batch), lots: told.lots };
    case 'tubWeighed': {
      const { batch, tub, weightKg } = told;
      const its = live.index.plan.built.tubs.find(
        (each) => each.batch === batch && each.tub === tub,
      );
      return {
        kind: told.kind,
        tub: its?.name ?? { en: tub },
        batch: batchOf(live, batch),
        weightKg,
      };
    }
    case 'cureWeighed': {
      const mix = cureOf(live.index, told.task)?.mix ?? { en: told.task };
      const { batch } = deedOn(live, told.task);
      const [first, second] = [nameOf(live, told.first), nameOf(live, told.second)];
      return { kind: told.kind, mix, batch, weightKg: told.weightKg, first, second };
    }
    case 'portionsSold':
      return { kind: told.kind, dish: dishOf(live, told.dish), sold: told.sold };
    case 'dishSoldOut':
      return { kind: told.kind, dish: dishOf(live, told.dish) };
    case 'panEmptied':
      return { kind: told.kind, batch: batchOf(live, told.batch) };
    case 'leftCarriedOver':
      return { kind: told.kind, batch: batchOf(live, told.batch), weightKg: told.weightKg };
    case 'dayClosed':
      return { kind: told.kind, goesOn: told.goesOn.map((batch) => batchOf(live, batch)) };
    case 'undone':
      return { kind: told.kind, what: undoneBy(live, told) };
    default:
      return unreachable(told);
  }
}

/** What an undoing took back, the first of it; null where that is not of this day. */
function undoneBy(live: Live, { command }: Extract<Happened, { kind: 'undone' }>): Logged | null {
  const found = live.state.story.find(({ commandId, kind }) => {
    return commandId === command && kind !== 'undone';
  });
  return found ? logged(live, found) : null;
}

const isByHand =
  ({ index }: Live) =>
  ({ activity }: { readonly activity: TaskId }) =>
    index.tasks.get(activity)?.work === 'hands';
