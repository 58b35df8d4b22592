import { describe, expect, it } from 'vitest';
import type { Intent } from '../../../shared/day/index.ts';
import { deliveryEffect, openLive } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import type { CommandId, ScreenId } from '../../../shared/kernel/index.ts';
import { kilograms, must } from '../../../shared/kernel/index.ts';
import type { DeskView } from '../../../shared/view/index.ts';
import { overlay, viewOf } from '../../../shared/view/index.ts';
import { noon, plan, Telling } from '../day/demo.ts';

const line = must(plan.built.pull[0], 'a line');
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

  it('shows what a finger has said before the hub has, and leaves its cost to the hub', () => {
    const view = deskOf(new Telling());
    const head = { personId: null, screenId: 'desk' as ScreenId, tappedAt: noon };
    const command = { ...short, id: 'tap-1' as CommandId, ...head };
    const laid = overlay(view, [{ command, mark: 'here' }]);
    expect(rowOf(laid.view).came).toMatchObject({ pieces: line.pieces - 1, effect: null });
    expect(laid.marks.get(line.cut)).toBe('here');
  });
});
