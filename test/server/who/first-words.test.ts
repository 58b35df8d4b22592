import { request } from 'node:http';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { digest } from '../../../server/who/secrets.ts';
import { must, type StationId } from '../../../shared/kernel/index.ts';
import { desk, first, type KitchenAtHand, openKitchen } from './doors.ts';

let kitchen: KitchenAtHand;
beforeEach(async () => {
  kitchen = await openKitchen();
});
afterEach(() => kitchen.close());

const WORDS = '<body><div class="likeness"';

/** The page of a station's wall as a browser gets it. */
async function pageOf(station: string, headers: Record<string, string> = {}, more = '') {
  const { hostname, port } = new URL(kitchen.address());
  // fetch() does not let a test say under which name it asks.
  return new Promise<{ body: string; cache: string; cookie: string }>((resolve, reject) => {
    const path = `/station.html?station=${station}${more}`;
    const asked = request({ hostname, port, path, headers }, (answer) => {
      let body = '';
      answer.setEncoding('utf8');
      answer.on('data', (part) => {
        body += part;
      });
      answer.on('end', () => {
        const { 'cache-control': cache = '', 'set-cookie': cookies = [] } = answer.headers;
        resolve({ body, cache, cookie: cookies.join('\n') });
      });
    });
    asked.on('error', reject).end();
  });
}

/** A desk, and the cookie that a screen put up as a wall of the first station is given. */
async function aWall() {
  const token = await kitchen.claim();
  const { stations } = await kitchen.list(token);
  const [one, two] = stations.map(({ id }) => id);
  const place = { name: 'Wall', place: { role: 'wall', stations: [one] } };
  const letIn = await kitchen.letIn(token, place);
  const cookie = `coalface-page=${digest(letIn.token)}`;
  return { token, cookie, one: must(one, 'a station'), two: must(two, 'another') };
}

describe('the page of a wall, where every screen must be let in,', () => {
  it('begins with what stands there for a screen that was, asked for anew each time', async () => {
    const { cookie, one } = await aWall();
    const { body, cache } = await pageOf(one, { cookie });
    expect(body).toContain(WORDS);
    expect(body).toContain('<h1>');
    expect(cache).toBe('private, no-cache');
  });

  it('says nothing to one that was not, nor of a station that it was not put up for', async () => {
    const { cookie, one, two } = await aWall();
    for (const page of [
      await pageOf(one),
      await pageOf(one, { cookie: 'coalface-page=made-up' }),
      await pageOf(one, { cookie: 'coalface-page="><script>' }),
      await pageOf(two, { cookie }),
    ]) {
      expect(page.body).not.toContain(WORDS);
      expect(page.body).toContain('Opening');
    }
  });

  it('says nothing any more to one that was revoked', async () => {
    const { token, cookie, one } = await aWall();
    const { screens } = await kitchen.list(token);
    const wall = must(
      screens.find(({ name }) => name === 'Wall'),
      'the wall',
    );
    await kitchen.post('revoke', { screen: wall.id }, { token });
    expect((await pageOf(one, { cookie })).body).not.toContain(WORDS);
  });

  it('knows it by a cookie that no script can read and no other page makes it send', async () => {
    const { token, cookie, one } = await aWall();
    const { cookie: again } = await pageOf(one, { cookie });
    expect(again).toMatch(/^coalface-page=[0-9a-f]{64}; .*HttpOnly; SameSite=Strict/);
    // No door is opened by it: what changes something asks for the token itself.
    const asked = await kitchen.post('who', {}, { headers: { cookie } });
    expect(asked.body).toMatchObject({ ok: false, refusal: { rule: 'screen-unknown' } });
    const [, key = ''] = cookie.split('=');
    expect(await first(kitchen.screen(desk, key))).not.toBe('view');
    expect(await first(kitchen.screen(desk, token))).toBe('view');
  });
});

it('gives a screen that cookie as it is let in', async () => {
  const body = JSON.stringify({ code: kitchen.ownersCode(), name: 'Office' });
  const headers = { 'Content-Type': 'application/json' };
  const claimed = await fetch(`${kitchen.address()}/api/claim`, { method: 'POST', body, headers });
  const { token } = (await claimed.json()) as { token: string };
  // Which is not the token, and leads back to none.
  expect(claimed.headers.get('set-cookie')).toContain(`coalface-page=${digest(token)}; `);
});

describe('the page of a wall, on an open hub,', () => {
  const station = async () => {
    const { token } = await aWall();
    const [one] = (await kitchen.list(token)).stations;
    await kitchen.startAgain({ isOpen: true });
    return must(one, 'a station').id as StationId;
  };

  it('begins with what stands there for whoever comes, in the language it asks for', async () => {
    const one = await station();
    expect((await pageOf(one)).body).toContain('lang="en"><header>');
    expect((await pageOf(one, {}, '&language=es')).body).toMatch(/lang="es"><header>.*Como estaba/);
  });

  it('says nothing under a name that is not ours, where a foreign page could read it', async () => {
    const one = await station();
    const { port } = new URL(kitchen.address());
    expect((await pageOf(one, { host: `127.0.0.1:${port}` })).body).toContain(WORDS);
    const foreign = await pageOf(one, { host: `made-to-point-here.example:${port}` });
    expect(foreign.body).not.toContain(WORDS);
  });

  it('is as it always was for a station that there is not', async () => {
    await station();
    expect((await pageOf('nowhere')).body).not.toContain(WORDS);
  });
});
