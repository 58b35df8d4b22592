import { describe, expect, it } from 'vitest';
import { instant, must, type ScreenId } from '../../shared/kernel/index.ts';
import { PROTOCOL, type ScreenLink, type ScreenLinkListener } from '../../shared/protocol/index.ts';
import { commandMessage, linkContract } from '../contracts/link.ts';
import { Agenda, settled } from './agenda.ts';
import { Chance } from './chance.ts';
import { Journal } from './journal.ts';
import { Life } from './life.ts';
import type { Host } from './line.ts';
import { memoryLink } from './memory-link.ts';
import { CALM, Way } from './way.ts';

/** A hub and a screen at either end of a way, and the time that a test lets go by. */
function pair(seed = 1) {
  const agenda = new Agenda();
  const chance = Chance.ofSeed(seed);
  const journal = new Journal(() => agenda.nowMs);
  const way = new Way({ name: 'wall-1', agenda, chance: chance.fork(), journal });
  let host: Host | null = null;
  const door = { host: () => host };
  const serve = (accept: (link: ScreenLink) => ScreenLinkListener) => {
    host = { accept, life: new Life(), hangsUp: () => true };
  };
  const kill = () => {
    const dead = host;
    host = null;
    dead?.life.end();
  };
  const openLink = memoryLink({
    way,
    door,
    agenda,
    chance,
    journal,
    timers: agenda,
    receive: (run) => run(),
    page: new Life(),
    onWake: () => () => {},
  });
  return { agenda, way, journal, serve, kill, openLink };
}

linkContract('a way in memory', async () => {
  const { agenda, serve, kill, openLink } = pair();
  return {
    serve: async (accept) => serve(accept),
    kill: async () => kill(),
    openLink,
    until: async (happened) => {
      await settled();
      while (!happened()) if (!(await agenda.step(600_000))) throw new Error('it never happens');
    },
    dispose: async () => {},
  };
});

describe('a way in bad weather', () => {
  const hello = () => ({
    protocol: PROTOCOL,
    screenId: 'wall-1' as ScreenId,
    face: { kind: 'smoker' } as const,
  });
  const message = (seq: number) => ({ epoch: 'e1', seq, refusal: { rule: 'no-plan' } }) as const;

  /** A pair that is connected, and what either end has heard. */
  async function connected(seed?: number) {
    const world = pair(seed);
    const heard: string[] = [];
    let hub: ScreenLink | null = null;
    world.serve((link) => {
      hub = link;
      return {
        command: async ({ id }) => {
          heard.push(`hub: ${id}`);
          return { ok: true, seq: 1 };
        },
        question: () => ({ ok: false, refusal: { rule: 'unknown-place' } }),
        beat: () => ({ t1: instant(1), t2: instant(1) }),
        whole: () => heard.push('hub: whole'),
        gone: () => heard.push('hub: gone'),
      };
    });
    const link = world.openLink(hello, {
      up: () => heard.push('up'),
      down: () => heard.push('down'),
      view: () => {},
      blank: ({ seq }) => heard.push(`screen: ${seq}`),
      reload: () => {},
      readOnly: () => {},
    });
    await world.agenda.passTo(100);
    expect(heard.splice(0)).toEqual(['up']);
    return { ...world, heard, link, hub: must<ScreenLink>(hub, 'a hub that was met') };
  }

  it('lets nothing through a dead line, and tells nobody', async () => {
    const { agenda, way, hub, heard } = await connected();
    way.weather = { ...CALM, dead: 'everywhere' };
    hub.blank(message(1));
    await agenda.passTo(4900);
    expect(heard).toEqual([]);
  });

  it('has each end of a dead line find that out for itself', async () => {
    const { agenda, way, heard } = await connected();
    way.weather = { ...CALM, dead: 'everywhere' };
    await agenda.passTo(5200);
    expect(heard.splice(0)).toEqual(['down']);
    await agenda.passTo(9200);
    expect(heard).toEqual(['hub: gone']);
  });

  it('has a hub hold a line for open that the screen has left unheard', async () => {
    const { agenda, way, hub, heard, link } = await connected();
    way.weather = { ...CALM, dead: 'toHub' };
    link.close();
    await agenda.passTo(5000);
    hub.blank(message(1));
    await agenda.passTo(8000);
    expect(heard.splice(0)).toEqual([]);
    await agenda.passTo(9200);
    expect(heard).toEqual(['hub: gone']);
  });

  it('brings a command twice, and one answer', async () => {
    const { agenda, way, heard, link } = await connected();
    way.weather = { ...CALM, doubled: 1 };
    const asked = link.command(commandMessage('c1')).then(() => heard.push('answered'));
    await agenda.passTo(200);
    await asked;
    expect(heard.filter((what) => what === 'hub: c1')).toHaveLength(2);
    expect(heard.filter((what) => what === 'answered')).toHaveLength(1);
  });

  it('lets messages overtake each other', async () => {
    const { agenda, way, hub, heard } = await connected();
    way.weather = { ...CALM, delayMs: [0, 1000], unordered: 1 };
    const sent = [1, 2, 3, 4, 5, 6, 7, 8];
    for (const seq of sent) hub.blank(message(seq));
    await agenda.passTo(2000);
    expect(heard.toSorted()).toEqual(sent.map((seq) => `screen: ${seq}`));
    expect(heard).not.toEqual(heard.toSorted());
  });

  it('may bring what was sent on a line that the screen has left since', async () => {
    const { agenda, way, hub, heard } = await connected();
    way.weather = { ...CALM, delayMs: [6000, 6000] };
    hub.blank(message(1));
    way.weather = { ...CALM, dead: 'toHub' };
    await agenda.passTo(5500);
    way.weather = CALM;
    await agenda.passTo(12_000);
    expect(heard).toEqual(['down', 'screen: 1', 'hub: gone', 'up']);
  });
});
