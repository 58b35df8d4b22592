import type { ScreenLink, ScreenLinkListener } from '../../shared/protocol/index.ts';
import { linkContract } from '../contracts/link.ts';
import { Agenda, settled } from './agenda.ts';
import { Chance } from './chance.ts';
import { Journal } from './journal.ts';
import { Life } from './life.ts';
import type { Host } from './line.ts';
import { memoryLink } from './memory-link.ts';
import { Way } from './way.ts';

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
