import { describe, expect, it } from 'vitest';
import type { Intent } from '../../../shared/day/index.ts';
import { deliveryEffect, openLive } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import type { CommandId, ScreenId } from '../../../shared/kernel/index.ts';
import { kilograms, must } from '../../../shared/kernel/index.ts';
import type { DeskView } from '../../../shared/view/index.ts';
import { overlay, viewOf } from '../../../shared/view/index.ts';
import { noon, plan, Telling } from '../day/demo.ts';

/** A line of more than one batch. */
const line = must(
  plan.built.pull.find(
    ({ cut }) => plan.built.batches.filter(({ bought }) => bought === cut).length > 1,
  ),
  'a line',
);
const short: Intent = {
  kind: 'delivery',
  cut: line.cut,
  pieces: line.pieces - 1,
  weightKg: kilograms((line.weightKg * (line.pieces - 1)) / line.pieces),
};

function deskOf(telling: Telling): DeskView {
  const view = viewOf(openLive(telling.state, noon), { kind: 'desk' });
  if (view.face !== 'desk') throw new Error('a desk was asked for');
  return view;
}
const rowOf = ({ pull }: DeskView) =>
  must(
    pull.find(({ cut }) => cut === line.cut),
    line.cut,
  );

describe('the pull list', () => {
  it('has beside each line what came of it, and which portions that loses', () => {
    const telling = new Telling();
    expect(rowOf(deskOf(telling)).came).toBeNull();
    telling.ask(short, noon);
    const { came } = rowOf(deskOf(telling));
    expect(came).toMatchObject({ pieces: line.pieces - 1, at: noon });
    const effect = must(deliveryEffect(telling.state, indexOf(plan), line.cut), 'an effect');
    const lost = effect.lost.map(({ batch, portions }) => ({
      batch: indexOf(plan).batches.get(batch)?.name,
      portions,
    }));
    expect(lost).not.toEqual([]);
    expect(came?.effect).toEqual({ lost, longerS: effect.longerS });
  });

  it('counts as out what hands have begun, and asks for the next batch by its own time', () => {
    const telling = new Telling();
    const own = plan.built.batches
      .filter(({ bought }) => bought === line.cut)
      .sort((a, b) => a.beginByS - b.beginByS);
    const [first, next] = [must(own[0], 'a batch'), must(own[1], 'another')];
    expect(rowOf(deskOf(telling))).toMatchObject({ outPieces: 0, outAt: null });
    const begin = (batch: typeof first) =>
      must(
        plan.built.tasks.find((task) => task.work === 'hands' && task.batch === batch.id),
        batch.id,
      ).id;
    telling.keep({ kind: 'taskStarted', task: begin(first), hand: null }, noon, null);
    expect(rowOf(deskOf(telling))).toMatchObject({
      outPieces: first.pieces,
      outAt: noon,
      byAt: openLive(telling.state, noon).instantOf(next.beginByS),
    });
    for (const batch of own.slice(1)) {
      telling.keep({ kind: 'taskStarted', task: begin(batch), hand: null }, noon, null);
    }
    expect(deskOf(telling).pull.at(-1)).toMatchObject({ cut: line.cut, outPieces: line.pieces });
  });

  it('shows what a finger has said before the hub has, and leaves its cost to the hub', () => {
    const view = deskOf(new Telling());
    const head = { personId: null, screenId: 'desk' as ScreenId, tappedAt: noon };
    const command = { ...short, id: 'tap-1' as CommandId, ...head };
    const laid = overlay(view, [{ command, mark: 'here' }]);
    expect(rowOf(laid.view).came).toMatchObject({ pieces: line.pieces - 1, effect: null });
    expect(laid.marks.get(line.cut)).toBe('here');
  });
});
