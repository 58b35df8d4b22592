// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { NowLine } from '../../../client/parts/now-line.ts';
import { readSettings } from '../../../client/shell/settings.ts';
import { heedLanguage, SPEAKS, speakAsOwner } from '../../../client/shell/speak.ts';
import { StationWall } from '../../../client/station/station-wall.ts';
import type { CommandId } from '../../../shared/kernel/index.ts';
import type { StationView } from '../../../shared/view/index.ts';
import { drawn, saidOn, tap, tapsWrittenDown } from '../fingers.ts';
import { ines, NOW, squareRibs, stationView } from '../fixtures.ts';

const caution = { en: 'Knife away from the hand', es: 'Cuchillo lejos de la mano' };
const square = { ...squareRibs, title: { en: 'Square ribs', es: 'Cuadrar costillas' }, caution };
const people = stationView.people.map((person) =>
  person.id === ines ? { ...person, language: 'es' as const } : person,
);
const view: StationView = { ...stationView, tasks: [square], people };

/** Words are fetched, and parts inside parts draw one after another. */
async function settled() {
  await new Promise((done) => setTimeout(done, 20));
  await drawn();
}

async function wall(state: Parameters<typeof tapsWrittenDown>[0] = {}) {
  const { sync } = tapsWrittenDown({ view, ...state });
  const element = Object.assign(new StationWall(), { sync });
  document.body.append(element);
  await drawn();
  return { element, sync };
}

heedLanguage();
beforeEach(() => {
  localStorage.clear();
  history.replaceState(null, '', '/station.html?station=trim');
  document.documentElement.lang = 'en';
  Object.assign(globalThis, { innerWidth: 1920, innerHeight: 1080 });
});
afterEach(() => document.body.replaceChildren());

const settingsNow = () => readSettings(new URLSearchParams(location.search));

describe('a wall whose language is tapped', () => {
  it('says all in the other, and back', async () => {
    const { element } = await wall();
    expect(saidOn(element)).toContain('Square ribs');
    await tap(element, 'Trim table');
    await tap(element, 'Español');
    await settled();
    const spanish = saidOn(element);
    for (const said of ['Cuadrar costillas', 'acabar', 'cena']) expect(spanish).toContain(said);
    expect(spanish).not.toMatch(/Square ribs|finish|Español|English/);
    expect(document.documentElement.lang).toBe('es');
    await tap(element, 'Trim table');
    await tap(element, 'English');
    await settled();
    expect(saidOn(element)).toContain('finish');
  });

  it('says refusals and cautions in it too', async () => {
    const command = {
      ...{ kind: 'finish', task: square.id, id: 'c' as CommandId },
      ...{ personId: null, screenId: null, tappedAt: NOW },
    } as const;
    const { element } = await wall({
      refused: [{ command, refusal: { rule: 'not-started' } }],
    } as never);
    const before = saidOn(element);
    await tap(element, 'Trim table');
    await tap(element, 'Español');
    await settled();
    const after = saidOn(element);
    expect(after).toContain('visto');
    expect(after).not.toContain('seen');
    expect(after).not.toBe(before);
    const line = Object.assign(new NowLine(), { task: square, people, now: NOW });
    line.say = { ...line.say, language: 'es' };
    document.body.append(line);
    await drawn();
    expect(saidOn(line)).toContain(caution.es);
  });

  it('stays with it when it is opened anew, also where its address said another', async () => {
    history.replaceState(null, '', '/station.html?station=trim&language=en');
    const { element } = await wall();
    await tap(element, 'Trim table');
    await tap(element, 'Español');
    await settled();
    expect(settingsNow().language).toBe('es');
    history.replaceState(null, '', '/smoker.html');
    expect(settingsNow().language).toBe('es');
  });
});

describe('a screen of somebody’s own', () => {
  const heard: string[] = [];
  addEventListener(SPEAKS, (event) => heard.push((event as CustomEvent<string>).detail));

  it('speaks their language once the hub has said it', async () => {
    const { sync, element } = await wall();
    speakAsOwner(sync, { personId: ines, language: 'en' });
    await settled();
    expect(saidOn(element)).toContain('Cuadrar costillas');
  });

  it('speaks what its address says before that', async () => {
    history.replaceState(null, '', '/station.html?person=ines&language=en');
    heard.length = 0;
    speakAsOwner((await wall()).sync, { personId: ines, language: 'en' });
    await settled();
    expect(heard).toEqual([]);
  });

  it('goes over at once when the desk says another, whatever was chosen there before', async () => {
    history.replaceState(null, '', '/station.html?person=ines&language=en');
    const { sync, element } = await wall();
    const hub = { view: sync.state.view, tell: () => {} };
    const speaks = (language?: 'en' | 'es') => {
      const said = view.people.map(({ language: _, ...person }) =>
        person.id === ines && language ? { ...person, language } : person,
      );
      hub.view = { ...view, people: said };
      hub.tell();
    };
    speakAsOwner(
      {
        get state() {
          return { ...sync.state, view: hub.view };
        },
        subscribe: (listener) => {
          hub.tell = listener;
          return () => {};
        },
      },
      { personId: ines, language: 'en' },
    );
    speaks('en');
    await settled();
    expect(saidOn(element)).toContain('Square ribs');
    speaks('es');
    await settled();
    expect(saidOn(element)).toContain('Cuadrar costillas');
    expect(new URLSearchParams(location.search).has('language')).toBe(false);
    speaks();
    await settled();
    expect(saidOn(element)).toContain('Square ribs');
  });

  it('keeps a choice that was made there with its address, not with the device', async () => {
    history.replaceState(null, '', '/station.html?station=trim&person=ines');
    const { element } = await wall();
    await tap(element, 'Trim table');
    await tap(element, 'Español');
    await settled();
    expect(new URLSearchParams(location.search).get('language')).toBe('es');
    history.replaceState(null, '', '/station.html?station=trim');
    expect(settingsNow().language).toBe('en');
  });
});

it('opens a standard in the language of whose hands do the work', async () => {
  const asked: unknown[] = [];
  const line = Object.assign(new NowLine(), { task: square, people, now: NOW });
  line.addEventListener('standard', (event) => asked.push((event as CustomEvent).detail));
  document.body.append(line);
  await drawn();
  await tap(line, 'Square ribs');
  line.task = { ...square, hand: people[1]?.id ?? null };
  await drawn();
  await tap(line, 'Square ribs');
  expect(asked).toMatchObject([{ say: { language: 'es' } }, { say: { language: 'en' } }]);
});
