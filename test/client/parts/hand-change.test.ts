// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { NowLine } from '../../../client/parts/now-line.ts';
import type { Side, TaskView } from '../../../shared/view/index.ts';
import { drawn, saidOn } from '../fingers.ts';
import { injectShoulders, NOW, rubRibs, stationView } from '../fixtures.ts';

// Hands are washed before gloves go on anew, and gloves changed, between raw animal food and food
// that is ready to eat: FDA Food Code 2022, 2-301.14 and 3-304.15 (from memory).

const { people, zone, clock, temperature, weight } = stationView;

async function line(task: Partial<TaskView>, panel: Side | null, more: Partial<NowLine> = {}) {
  const say = { language: 'en', zone, clock, temperature, weight } as const;
  const given = { task: { ...injectShoulders, ...task }, people, now: NOW, say, side: panel };
  const element = Object.assign(new NowLine(), given, more);
  document.body.append(element);
  await drawn();
  return saidOn(element);
}

afterEach(() => document.body.replaceChildren());

describe('where raw and clean would meet, a line', () => {
  it('asks hands off raw meat to be washed, and gloves changed, before they begin', async () => {
    const said = await line({ offRaw: true }, null);
    expect(said).toContain('Off raw meat: wash hands, new gloves');
    expect(await line({ offRaw: false }, null)).not.toContain('gloves');
  });

  it('says to what standard it is to be done all the same', async () => {
    const mind = { en: 'along the grain' };
    const said = await line({ offRaw: true, mind }, null);
    expect(said).toMatch(/new gloves.*along the grain/);
    document.body.replaceChildren();
    expect(await line({ mind, helpAskedAt: NOW }, null)).toMatch(/help.*along the grain/);
    document.body.replaceChildren();
    const { because } = rubRibs;
    expect(await line({ mind, state: 'waiting', because }, null)).toMatch(
      /after “Square.*along the grain/,
    );
  });

  it('says it in a row of its own, before all that leaves where there is no room', async () => {
    const mind = { en: 'along the grain' };
    await line({ offRaw: true, mind }, null);
    const page = document.querySelector('now-line')?.shadowRoot?.querySelector('.page');
    const hands = page?.querySelector(':scope > .hands');
    expect(hands?.textContent).toBe('Off raw meat: wash hands, new gloves');
  });

  it('asks for it after the tap where raw hands tap for clean work', async () => {
    const said = await line({ side: 'clean' }, 'raw');
    expect(said).toContain('wash hands and change gloves after the tap');
  });

  it('asks for gloves off before the tap where the panel is kept for clean hands', async () => {
    expect(await line({ side: 'raw' }, 'clean')).toContain('gloves off before the tap');
  });

  it('says it still while the start can be undone, and no longer than that', async () => {
    const running = { state: 'running', side: 'clean' } as const;
    expect(await line(running, 'raw', { undo: 'start' })).toContain('gloves after the tap');
    document.body.replaceChildren();
    expect(await line(running, 'raw')).not.toContain('gloves after');
  });

  it.each([
    ['raw', 'raw'],
    ['clean', 'clean'],
    ['clean', null],
    ['raw', null],
  ] as const)('says nothing of it for %s work on a panel for %s', async (side, panel) => {
    expect(await line({ side }, panel)).not.toContain('gloves');
  });
});
