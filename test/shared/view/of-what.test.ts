import { expect, it } from 'vitest';
import { openLive } from '../../../shared/day/index.ts';
import { type SmokerView, viewOf } from '../../../shared/view/index.ts';
import { noon, plan, Telling } from '../day/demo.ts';

it('says of pans on a rack, which has no title beside them, what is in them', () => {
  const { smokers } = viewOf(openLive(new Telling().state, noon), { kind: 'smoker' }) as SmokerView;
  const loads = smokers.flatMap(({ racks }) => racks.flatMap((rack) => rack.loads));
  const named = new Set(loads.map(({ piece }) => piece.many.en));
  expect(named).toContain('pans of beans');
  expect(named).toContain('pans of burnt ends');
  expect(named).not.toContain('pans');
});

it('says no more than pans where the title of the work names what is in them', () => {
  const mixing = plan.built.tasks.find(({ title }) => title.en === 'Mix the pit beans');
  expect(mixing?.piece.many.en).toBe('pans');
});
