// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { DeskSmokers } from '../../../client/desk/desk-smokers.ts';
import { SmokerWall } from '../../../client/smoker/smoker-wall.ts';
import { celsius, type PersonId } from '../../../shared/kernel/index.ts';
import type { DeskView, SmokerView } from '../../../shared/view/index.ts';
import { buttonsOf, drawn, saidOn, tap, tapsWrittenDown } from '../fingers.ts';
import { at, smokerView, theo } from '../fixtures.ts';

const [a, b] = smokerView.smokers;
if (!a || !b) throw new Error('the fixture has too few smokers');

const down: SmokerView = {
  ...smokerView,
  smokers: [{ ...a, spell: { kind: 'down', since: at(-20), backAt: at(10) } }, b],
};

async function shown<E extends HTMLElement>(element: E) {
  document.body.append(element);
  await drawn();
  return element;
}

async function wall(view: SmokerView = smokerView) {
  const { sync, taps } = tapsWrittenDown({ view });
  return { element: await shown(Object.assign(new SmokerWall(), { sync })), taps };
}

async function reads(element: Element, smoker: string, digits: string) {
  await tap(element, smoker);
  for (const digit of digits) await tap(element, digit);
}

afterEach(() => document.body.replaceChildren());

describe('a smoker that goes down, at the wall of the pit', () => {
  it('is read first, then asked when it is back, and kept with both', async () => {
    const { element, taps } = await wall();
    await reads(element, 'Smoker A', '140');
    await tap(element, 'it is down');
    expect(taps).toEqual([]);
    expect(saidOn(element)).toContain('Smoker A: back when?');
    await tap(element, '30 min');
    expect(taps).toMatchObject([{ kind: 'smokerDown', smoker: a.id, tempC: 60, backAt: at(30) }]);
  });

  it('shows since when and till when, and may be thought back at another time', async () => {
    const { element, taps } = await wall(down);
    expect(saidOn(element)).toContain('out since 10:22, back about 10:52');
    await reads(element, 'Smoker A', '122');
    await tap(element, 'it is still down');
    await tap(element, 'nobody knows');
    expect(taps).toMatchObject([{ kind: 'smokerDown', tempC: 50, backAt: null }]);
  });

  it('does not promise a time that has passed', async () => {
    const overdue = down.smokers.map((each) =>
      each.spell ? { ...each, spell: { ...each.spell, backAt: at(-2) } } : each,
    );
    const { element } = await wall({ ...down, smokers: overdue });
    expect(saidOn(element)).toContain('out since 10:22, was to be back 10:40');
    expect(saidOn(element)).not.toContain('back about');
  });

  it('says at its head who is to do what about it, and by when', async () => {
    const call = { who: theo, name: 'Theo', byAt: at(10) };
    const spells = [
      ['down', 'Theo: light it again or move the meat by 10:52'],
      ['cold', 'Theo: tend the fire by 10:52'],
    ] as const;
    for (const [kind, order] of spells) {
      const spell = { kind, since: at(-20), backAt: null, call };
      const { element } = await wall({ ...smokerView, smokers: [{ ...a, spell }, b] });
      expect(saidOn(element)).toContain(order);
      expect(saidOn(element)).toContain('set 225 °F');
      element.remove();
    }
    const nobody = { kind: 'cold', since: at(-20), backAt: null } as const;
    const { element } = await wall({ ...smokerView, smokers: [{ ...a, spell: nobody }, b] });
    expect(saidOn(element)).toContain('tend the fire');
  });

  it('has its call over the work of its hand, which is called to nothing else', async () => {
    const spell = { kind: 'cold', since: at(-20), backAt: null } as const;
    const [person] = smokerView.people;
    const [task] = smokerView.tasks;
    if (!person || !task) throw new Error('the fixture has nobody, or no work');
    const call = { who: person.id, name: person.name, byAt: at(10) };
    const failing = { ...a, spell: { ...spell, call } };
    const running = { ...task, hand: person.id, state: 'running', startAt: at(-5) } as const;
    const lines = async (smokers: SmokerView['smokers']) => {
      const { element } = await wall({ ...smokerView, smokers, tasks: [running] });
      const foot = element.shadowRoot?.querySelector('.work');
      return { said: foot?.textContent ?? '', line: foot?.querySelector('now-line') };
    };
    const cold = await lines([failing, b]);
    expect(cold.said).toContain(`Smoker A · ${person.name}: tend the fire by 10:52`);
    expect(cold.line?.hasAttribute('due')).toBe(false);
    expect(cold.line?.hasAttribute('brief')).toBe(true);
    // Somebody else of the same name has their own work.
    const namesake = {
      ...failing,
      spell: { ...spell, call: { ...call, who: 'other' as PersonId } },
    };
    expect((await lines([namesake, b])).line?.hasAttribute('due')).toBe(true);
    const warm = await lines([a, b]);
    expect(warm.said).not.toContain('tend the fire');
    expect(warm.line?.hasAttribute('due')).toBe(true);
  });

  it('is to be read by somebody, by when, where nobody has for long', async () => {
    const unread = { name: 'Theo', byAt: at(10) };
    const { element } = await wall({ ...smokerView, smokers: [{ ...a, unread }, b] });
    expect(saidOn(element).split('read the air')).toHaveLength(2);
    expect(saidOn(element)).toContain('Theo: read the air by 10:52');
    element.remove();
    const nobody = { ...a, unread: { byAt: at(10) } };
    const alone = await wall({ ...smokerView, smokers: [nobody, b] });
    expect(saidOn(alone.element)).toContain('read the air');
  });

  it('says how old a reading is that is old, and not whether it rises', async () => {
    const read = (min: number) => ({ tempC: celsius(107), at: at(min), trendCPerHour: 30 });
    const { element } = await wall({ ...smokerView, smokers: [{ ...a, lastAir: read(-77) }] });
    expect(saidOn(element)).toContain('225 °F 1 h 15 min ago');
    element.remove();
    const again = await wall({ ...smokerView, smokers: [{ ...a, lastAir: read(-7) }] });
    expect(saidOn(again.element)).toContain('225 °F rising');
    expect(saidOn(again.element)).not.toContain('ago');
  });

  it('is up again at once, with what it reads', async () => {
    const { element, taps } = await wall(down);
    await reads(element, 'Smoker A', '212');
    await tap(element, 'it is up again');
    expect(taps).toMatchObject([{ kind: 'smokerUp', smoker: a.id, tempC: 100 }]);
  });

  it('keeps nothing where the question is left', async () => {
    const { element, taps } = await wall();
    await reads(element, 'Smoker A', '140');
    await tap(element, 'it is down');
    await tap(element, 'leave it');
    expect(taps).toEqual([]);
  });
});

describe('the smokers at the desk', () => {
  it('take a reading as the wall of the pit does', async () => {
    const calibration = { cooks: 12, enough: 30 };
    const view = { ...smokerView, face: 'desk', calibration } as unknown as DeskView;
    const { sync, taps } = tapsWrittenDown({ view });
    const say = { language: 'en', ...smokerView } as const;
    const element = await shown(Object.assign(new DeskSmokers(), { sync, view, say }));
    // While nothing is asked it says how far forecasts may be believed.
    expect(saidOn(element)).toContain('rough until 30 have been finished here: 12 so far');
    await reads(element, 'Smoker A', '212');
    await tap(element, 'keep');
    expect(taps).toMatchObject([{ kind: 'reading', where: { smoker: a.id }, tempC: 100 }]);
    await reads(element, 'Smoker A', '140');
    await tap(element, 'it is down');
    expect(buttonsOf(element).map(([name]) => name)).toContain('1 h · 11:42');
  });
});

describe('a door that was open, at the wall of the pit', () => {
  it('is told by two taps without a reading, and shown with its time', async () => {
    const { element, taps } = await wall();
    await tap(element, 'Smoker A');
    await tap(element, 'door was open');
    expect(saidOn(element)).toContain('Smoker A: door open for how long?');
    await tap(element, '2 min');
    expect(taps).toMatchObject([{ kind: 'doorOpen', smoker: a.id, openS: 120 }]);
    const lately = { ...a, openedAt: at(-3) };
    const again = await wall({ ...smokerView, smokers: [lately, b] });
    expect(saidOn(again.element)).toContain('door 10:39');
    await tap(again.element, 'Smoker A');
    await tap(again.element, 'door was open');
    await tap(again.element, 'it was not open');
    expect(again.taps).toMatchObject([{ kind: 'doorOpen', openS: 0 }]);
  });
});
