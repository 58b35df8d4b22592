import type { PersonId } from '../kernel/index.ts';
import { unreachable } from '../kernel/index.ts';
import { whySaleBarred } from './barred.ts';
import { impossibleAmount, isCount, MOST_KG } from './came-amounts.ts';
import type { CommandHead } from './command.ts';
import { decideCure } from './cure.ts';
import { decideCutFrom, decideReceive } from './decide-lot.ts';
import type { Decision } from './decision.ts';
import { happen, refuse } from './decision.ts';
import { decideDoor } from './doors.ts';
import type { DayClosed } from './happened.ts';
import { soldAt, spellOf } from './happened-to.ts';
import type { HappeningIntent } from './happening.ts';
import { oddDelivery } from './odd-delivery.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import { personName, smokerName } from './plan-index.ts';
import { isPlausibleAir } from './readings.ts';
import type { DayState } from './state.ts';
import { decideTub } from './tub.ts';
import { decideUndo } from './undo.ts';

type Asked<K extends HappeningIntent['kind'] = HappeningIntent['kind']> = {
  readonly state: DayState;
  readonly index: PlanIndex;
  readonly command: CommandHead & Extract<HappeningIntent, { kind: K }>;
};

/** What something that happened to the day makes of it, or why it cannot be. */
export function decideHappening({ state, index, command }: Asked): Decision {
  switch (command.kind) {
    case 'smokerDown':
    case 'smokerCold':
    case 'smokerUp':
      return decideSmoker({ state, index, command });
    case 'doorOpen':
      return decideDoor(index, command);
    case 'handOut':
    case 'handIn':
      return decideHand({ state, index, command });
    case 'delivery':
      return decideDelivery({ state, index, command });
    case 'receive':
      return decideReceive(state, index, command);
    case 'cutFrom':
      return decideCutFrom(state, index, command);
    case 'weighTub':
      return decideTub(state, index, command);
    case 'weighCure':
      return decideCure(state, index, command);
    case 'sold':
    case 'soldOut':
      return decideSale({ state, index, command });
    case 'panEmpty':
    case 'carryOver':
      return decidePan({ state, index, command });
    case 'closeDay':
      return decideClose(state);
    case 'undo':
      return decideUndo(state, index, command.command);
    default:
      return unreachable(command);
  }
}

type SmokerKind = 'smokerDown' | 'smokerCold' | 'smokerUp';

function decideSmoker({ state, index, command }: Asked<SmokerKind>): Decision {
  const { smoker, tempC } = command;
  const name = smokerName(index.plan.kitchen, smoker);
  if (!name) return refuse({ rule: 'unknown-place' });
  if (!isPlausibleAir(tempC)) return refuse({ rule: 'impossible-temperature', tempC });
  const spell = spellOf(state, smoker);
  switch (command.kind) {
    case 'smokerDown':
      if (command.backAt !== null && command.backAt <= command.tappedAt) {
        return refuse({ rule: 'back-too-soon' });
      }
      return happen({ kind: 'smokerWentDown', smoker, tempC, backAt: command.backAt });
    case 'smokerCold':
      return happen({ kind: 'smokerRunsCold', smoker, tempC });
    case 'smokerUp':
      if (!spell) return refuse({ rule: 'smoker-is-up', smoker: name });
      return happen({ kind: 'smokerCameUp', smoker, tempC });
    default:
      return unreachable(command);
  }
}

function decideHand({ state, index, command }: Asked<'handOut' | 'handIn'>): Decision {
  const { hand } = command;
  const person = personName(index.plan.kitchen, hand);
  if (!person) return refuse({ rule: 'unknown-person' });
  const isOut = state.happened.out.has(hand);
  if (command.kind === 'handIn') {
    return isOut ? happen({ kind: 'handCameIn', hand }) : refuse({ rule: 'hand-is-here', person });
  }
  const { backAt } = command;
  if (backAt !== null && backAt <= command.tappedAt) return refuse({ rule: 'back-too-soon' });
  return happen({ kind: 'handWentOut', hand, backAt });
}

function decideDelivery({ index, command }: Asked<'delivery'>): Decision {
  const { cut, pieces, weightKg, isSo } = command;
  const line = index.plan.built.pull.find((each) => each.cut === cut);
  if (!line) return refuse({ rule: 'not-of-this-day' });
  const impossible = impossibleAmount(pieces, weightKg);
  if (impossible) return impossible;
  const odd = isSo ? [] : oddDelivery({ pieces, weightKg }, line);
  if (odd.length > 0) return refuse({ rule: 'odd-delivery', cut: line.name, odd });
  return happen({ kind: 'deliveryCame', cut, pieces, weightKg });
}

function decideSale({ state, index, command }: Asked<'sold' | 'soldOut'>): Decision {
  const { service, dish } = command;
  const asked = index.plan.built.services.find(({ id }) => id === service);
  if (!asked?.demand.some((each) => each.dish === dish)) {
    return refuse({ rule: 'not-of-this-day' });
  }
  if (command.kind === 'soldOut') return happen({ kind: 'dishSoldOut', service, dish });
  const { sold } = command;
  if (!isCount(sold)) return refuse({ rule: 'impossible-amount', amount: sold });
  const barred = sold > soldAt(state, service, dish) && whySaleBarred(state, index, command);
  return barred ? refuse(barred) : happen({ kind: 'portionsSold', service, dish, sold });
}

function decidePan({ index, command }: Asked<'panEmpty' | 'carryOver'>): Decision {
  const batch = index.batches.get(command.batch);
  if (!batch) return refuse({ rule: 'not-of-this-day' });
  if (command.kind === 'panEmpty') return happen({ kind: 'panEmptied', batch: batch.id });
  const { weightKg } = command;
  if (!(weightKg >= 0 && weightKg <= MOST_KG)) {
    return refuse({ rule: 'impossible-amount', weightKg });
  }
  return happen({ kind: 'leftCarriedOver', batch: batch.id, weightKg });
}

const decideClose = (state: DayState): Decision =>
  happen({ kind: 'dayClosed', ...closingNow(state) });

/**
 * What is under way goes on into the next day; what never began is said to be left. What stands at
 * the pass is neither, nor what is sold, thrown out or kept.
 */
export function closingNow(state: DayState): Pick<DayClosed, 'goesOn' | 'left'> {
  const passages = passagesOf(state);
  const { batches = [], tasks = [], problem } = state.plan?.built ?? {};
  const { emptied, carried } = state.happened;
  const served = new Map(problem?.goals.map(({ id, activity }) => [`${id}`, activity]));
  const under = batches.map(({ id }) => {
    const own = tasks.filter(({ batch }) => batch === id).map((task) => passages.get(task.id));
    const serve = served.get(id);
    const isServed = serve !== undefined && passages.get(serve)?.startedAt != null;
    const isGone = isServed || emptied.has(id) || carried.has(id);
    return {
      id,
      hasBegun: own.some((passage) => passage?.startedAt != null),
      isOver: isGone || own.every((passage) => passage?.finishedAt != null),
    };
  });
  const goesOn = under.filter(({ hasBegun, isOver }) => hasBegun && !isOver).map(({ id }) => id);
  const left = under.filter(({ hasBegun }) => !hasBegun).map(({ id }) => id);
  return { goesOn, left };
}

/** Why this hand cannot begin anything now; null while it is here. */
export function whyAbsent(state: DayState, index: PlanIndex, hand: PersonId | null) {
  const person = personName(index.plan.kitchen, hand);
  if (!person || !state.happened.out.has(person.id)) return null;
  return refuse({ rule: 'hand-is-out', person });
}
