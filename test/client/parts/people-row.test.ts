// @vitest-environment happy-dom
import { afterEach, expect, it } from 'vitest';
import { LineStrip } from '../../../client/parts/line-strip.ts';
import { buttonsOf, drawn } from '../fingers.ts';
import { ines, squareRibs, stationView, theo } from '../fixtures.ts';

afterEach(() => document.body.replaceChildren());

async function offered(shownTo: readonly (typeof ines)[]): Promise<string[]> {
  const { people } = stationView;
  const props = { task: { ...squareRibs, hand: ines, shownTo }, people, open: 'who' as const };
  const strip = Object.assign(new LineStrip(), props);
  document.body.append(strip);
  await drawn();
  const names = people.map(({ name }) => name as string);
  return buttonsOf(strip).flatMap(([name]) => (names.includes(name) ? [name] : []));
}

it('says before the names that it is given to them, and of nothing else', async () => {
  const strips = async (shownTo: readonly (typeof ines)[]) => {
    document.body.replaceChildren();
    await offered(shownTo);
    const row = document.querySelector('line-strip')?.shadowRoot?.querySelector('people-row');
    const all = [...(row?.shadowRoot?.querySelectorAll('choice-strip') ?? [])];
    return all.filter((each) => each.hasAttribute('said')).map((each) => each.ariaLabel);
  };
  expect(await strips([ines, theo])).toEqual(['give to']);
  expect(await strips([ines])).toEqual([]);
});

it('offers a task to whoever is here and has been shown it, but not to who has it', async () => {
  expect(await offered([ines, theo])).toEqual(['Theo']);
  expect(await offered([ines])).toEqual([]);
});
