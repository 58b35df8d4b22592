import type { TaskId } from '../kernel/index.ts';
import { kitchenResource } from '../plan/index.ts';
import type { Because } from './because.ts';
import { spellOf } from './happened-to.ts';
import type { Live } from './live.ts';

/**
 * Why a round has to wait that is asked for while its smoker burns, such as to feed it: the smoker
 * is down. Null for all other work; to light it again, or to clean it when it is cold, may go on.
 */
export function idleRound({ state, index }: Live, id: TaskId): Because | null {
  if (!state.happened.spells.some(({ kind, until }) => kind === 'down' && until === null)) {
    return null;
  }
  const { built, kitchen } = index.plan;
  const task = index.tasks.get(id);
  const thing = built.upkeep.find((each) => each.id === task?.batch);
  const round = thing?.rounds.find((each) => each.task.step === task?.step);
  if (!thing || round?.when !== 'while') return null;
  const slots = thing.uses.map(kitchenResource).flatMap((use) => {
    return use.kind === 'slot' ? [use.slot] : [];
  });
  const smoker = kitchen.smokers.find(({ racks }) =>
    racks.some(({ slot }) => slots.includes(slot)),
  );
  const spell = smoker && spellOf(state, smoker.id);
  if (!smoker || spell?.kind !== 'down') return null;
  return { kind: 'down', smoker: { id: smoker.id, name: smoker.name }, backAt: spell.backAt };
}
