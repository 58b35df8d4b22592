import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { ScreenId, StationId } from '../../../shared/kernel/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import type { ViewMessage } from '../../../shared/protocol/index.ts';
import type { Face } from '../../../shared/view/index.ts';
import {
  desk,
  first,
  gone,
  type KitchenAtHand,
  note,
  openKitchen,
  smoker,
  station,
} from './doors.ts';

let kitchen: KitchenAtHand;
beforeEach(async () => {
  kitchen = await openKitchen();
});
afterEach(() => kitchen.close());

const refusal = (rule: string, more: object = {}) => ({ ok: false, refusal: { rule, ...more } });
const wallAt = (...stations: StationId[]) => ({ name: 'Wall', place: { role: 'wall', stations } });

async function aDesk() {
  const token = await kitchen.claim();
  const { stations, people } = await kitchen.list(token);
  const [one, two] = stations.map(({ id }) => id);
  const [person] = people.map(({ id }) => id);
  return {
    token,
    one: must(one, 'a station'),
    two: must(two, 'another'),
    person: must(person, 'a person'),
  };
}

const screenNamed = async (token: string, name: string): Promise<ScreenId> =>
  must(
    (await kitchen.list(token)).screens.find((each) => each.name === name),
    name,
  ).id;

describe('a kitchen that nobody has claimed', () => {
  it('prints a code, and shows nothing to any screen until it is typed', async () => {
    expect(kitchen.ownersCode()).toMatch(/^\w{4}-\w{4}$/);
    const away = refusal('screen-unknown').refusal;
    expect(await first(kitchen.screen(desk))).toMatchObject({ seq: 0, refusal: away });
    expect((await kitchen.post('me')).body).toEqual({
      ok: true,
      isOpen: false,
      isUnclaimed: true,
      place: null,
    });
  });

  it('makes the screen where it is typed its desk, which may open every face', async () => {
    const token = await kitchen.claim();
    for (const face of [desk, smoker])
      expect(await first(kitchen.screen(face, token))).toBe('view');
    expect((await kitchen.post('me', {}, { token })).body).toMatchObject({
      isUnclaimed: false,
      place: { name: 'Office', path: '/desk.html' },
    });
  });

  it('takes the code once, and a wrong one never', async () => {
    const wrong = await kitchen.post('claim', { code: 'CCCC-CCCC', name: 'Office' });
    expect(wrong.body).toEqual(refusal('wrong-code'));
    const code = kitchen.ownersCode();
    await kitchen.claim();
    expect((await kitchen.post('claim', { code, name: 'Other' })).body).toEqual(
      refusal('code-over'),
    );
  });

  it('lets nobody try out codes', async () => {
    const tries = [];
    for (let n = 0; n < 6; n++) {
      tries.push(await kitchen.post('claim', { code: `wrong ${n}`, name: 'Office' }));
    }
    expect(tries.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200, 429]);
    expect(tries.at(-1)?.body).toMatchObject(refusal('too-many-tries', { waitS: 20 }));
  });

  it('prints no code again once it is claimed, unless it is told to', async () => {
    const token = await kitchen.claim();
    await kitchen.startAgain();
    expect(kitchen.ownersCode()).toBeNull();
    expect(await first(kitchen.screen(desk, token))).toBe('view');
    await kitchen.startAgain({ isClaiming: true });
    expect(kitchen.ownersCode()).not.toBeNull();
  });

  it('asks nobody anything where it was opened to all', async () => {
    await kitchen.startAgain({ isOpen: true });
    expect(kitchen.ownersCode()).toBeNull();
    expect(await first(kitchen.screen(desk))).toBe('view');
    expect((await kitchen.post('me')).body).toMatchObject({ isOpen: true });
  });
});

describe('a screen that the desk lets in', () => {
  it('is shown its own face, and no other', async () => {
    const { token, one, two } = await aDesk();
    const wall = await kitchen.letIn(token, wallAt(one));
    expect(wall.path).toBe(`/station.html?station=${one}`);
    expect(await first(kitchen.screen(station(one), wall.token))).toBe('view');
    const elsewhere = refusal('screen-elsewhere').refusal;
    for (const face of [station(two), desk]) {
      expect(await first(kitchen.screen(face, wall.token))).toMatchObject({ refusal: elsewhere });
    }
  });

  it('for several stations is shown all of them on one wall', async () => {
    const { token, one, two } = await aDesk();
    const wall = await kitchen.letIn(token, wallAt(one, two));
    expect(wall.path).toBe(`/station.html?station=${one},${two}`);
    const face: Face = { kind: 'station', station: one, beside: [two] };
    expect(await first(kitchen.screen(face, wall.token))).toBe('view');
  });

  it('is named in the log with all that is done on it, and its token is nowhere', async () => {
    const { token, one } = await aDesk();
    const wall = await kitchen.letIn(token, wallAt(one));
    const socket = kitchen.screen(station(one), wall.token);
    await first(socket);
    expect(await note(socket)).toMatchObject({ ok: true });
    const id = await screenNamed(token, 'Wall');
    const log = readFileSync(join(kitchen.folder, 'log.sqlite-wal'), 'latin1');
    const keys = readFileSync(join(kitchen.folder, 'keys.sqlite-wal'), 'latin1');
    expect(log).toContain(`"screenId":"${id}"`);
    expect(log).toContain('"name":"Wall"');
    for (const file of [log, keys, JSON.stringify(kitchen.reports)]) {
      expect(file).not.toContain(wall.token);
    }
  });

  it('that is revoked is let go at once, and what it asks later is refused in words', async () => {
    const { token, one } = await aDesk();
    const wall = await kitchen.letIn(token, wallAt(one));
    const socket = kitchen.screen(station(one), wall.token);
    await first(socket);
    const left = gone(socket);
    const screen = await screenNamed(token, 'Wall');
    expect((await kitchen.post('revoke', { screen }, { token })).body).toEqual({ ok: true });
    await left;
    const again = kitchen.screen(station(one), wall.token);
    expect(await first(again)).toMatchObject({ refusal: { rule: 'screen-revoked' } });
    expect(await note(again)).toEqual(refusal('screen-revoked'));
    await kitchen.startAgain();
    expect(await note(kitchen.screen(station(one), wall.token))).toEqual(refusal('screen-revoked'));
  });

  it('that is given a station more is told at once to look for its place', async () => {
    const { token, one, two } = await aDesk();
    const wall = await kitchen.letIn(token, wallAt(one));
    const socket = kitchen.screen(station(one), wall.token);
    expect(await first(socket)).toBe('view');
    const told = new Promise((resolve) => socket.once('blank', resolve));
    const screen = await screenNamed(token, 'Wall');
    const place = { role: 'wall', stations: [one, two] };
    await kitchen.post('move', { screen, place }, { token });
    expect(await told).toMatchObject({ refusal: { rule: 'screen-elsewhere' } });
    expect((await kitchen.post('me', {}, { token: wall.token })).body).toMatchObject({
      place: { path: `/station.html?station=${one},${two}` },
    });
  });

  it('that is moved is let go, and belongs to the other place from then on', async () => {
    const { token, one, two } = await aDesk();
    const wall = await kitchen.letIn(token, wallAt(one));
    const socket = kitchen.screen(station(one), wall.token);
    await first(socket);
    const left = gone(socket);
    const screen = await screenNamed(token, 'Wall');
    const place = { role: 'wall', stations: [two] };
    expect((await kitchen.post('move', { screen, place }, { token })).body).toEqual({ ok: true });
    await left;
    expect(await first(kitchen.screen(station(two), wall.token))).toBe('view');
    expect((await kitchen.post('me', {}, { token: wall.token })).body).toMatchObject({
      place: { path: `/station.html?station=${two}` },
    });
  });

  it('goes on undisturbed while it is renamed', async () => {
    const { token, one } = await aDesk();
    const wall = await kitchen.letIn(token, wallAt(one));
    const socket = kitchen.screen(station(one), wall.token);
    await first(socket);
    const screen = await screenNamed(token, 'Wall');
    await kitchen.post('rename', { screen, name: 'By the door' }, { token });
    expect(await note(socket)).toMatchObject({ ok: true });
    expect(await screenNamed(token, 'By the door')).toBe(screen);
  });

  it('may let nobody in itself, nor see who is', async () => {
    const { token, one } = await aDesk();
    const wall = await kitchen.letIn(token, wallAt(one));
    const asked = (await kitchen.post('pair')).body;
    const letIn = { code: asked['code'], name: 'Third', place: { role: 'desk', stations: [] } };
    const { body } = await kitchen.post('let-in', letIn, { token: wall.token });
    expect(body).toEqual(refusal('not-the-desk'));
    expect((await kitchen.post('who', {}, { token: wall.token })).body).toEqual(
      refusal('not-the-desk'),
    );
  });
});

describe('the desk', () => {
  it('must not take itself off, for nobody could let a screen in again', async () => {
    const { token, one } = await aDesk();
    const screen = await screenNamed(token, 'Office');
    const place = { role: 'wall', stations: [one] };
    for (const [door, asked] of [
      ['revoke', { screen }],
      ['move', { screen, place }],
    ] as const) {
      expect((await kitchen.post(door, asked, { token })).body).toEqual(refusal('last-desk'));
    }
  });

  it('says what somebody reads: every wall has it at once, and after a restart', async () => {
    const { token, one, person } = await aDesk();
    const wall = await kitchen.letIn(token, wallAt(one));
    const read = async () =>
      (await kitchen.list(token)).people.find(({ id }) => id === person)?.language;
    const socket = kitchen.screen(station(one), wall.token);
    await first(socket);
    const next = new Promise<ViewMessage>((resolve) => socket.once('view', resolve));
    const asked = { person, language: 'es' };
    expect((await kitchen.post('language', asked, { token })).body).toEqual({ ok: true });
    const { people } = (await next).view;
    expect(people.find(({ id }) => id === person)).toMatchObject({ language: 'es' });
    await kitchen.startAgain();
    expect(await read()).toBe('es');
    expect((await kitchen.post('language', { person, language: null }, { token })).body).toEqual({
      ok: true,
    });
    expect(await read()).toBeNull();
  });

  it('alone says what somebody reads, and of nobody who does not work there', async () => {
    const { token, one, person } = await aDesk();
    const wall = await kitchen.letIn(token, wallAt(one));
    const asked = { person, language: 'es' };
    const byWall = await kitchen.post('language', asked, { token: wall.token });
    expect(byWall.body).toEqual(refusal('screen-elsewhere'));
    expect((await kitchen.post('language', asked)).body).toEqual(refusal('screen-unknown'));
    const nobody = await kitchen.post('language', { ...asked, person: 'nobody' }, { token });
    expect(nobody.body).toEqual(refusal('unknown-person'));
    const odd = await kitchen.post('language', { person, language: 'xx' }, { token });
    expect(odd.body).toMatchObject({ ok: false, refusal: { rule: 'bad-message' } });
    await kitchen.startAgain({ isOpen: true });
    expect((await kitchen.post('language', asked)).body).toEqual({ ok: true });
    expect((await kitchen.list('')).people).toContainEqual(
      expect.objectContaining({ id: person, language: 'es' }),
    );
  });

  it('changes nothing without its owner, once somebody has an owner’s PIN', async () => {
    const { token, one, person } = await aDesk();
    const setPin = { person, pin: '4093', isOwner: true };
    expect((await kitchen.post('pin', setPin, { token })).body).toEqual({ ok: true });
    await expect(kitchen.letIn(token, wallAt(one))).rejects.toThrow('needs-owner');
    const wrong = await kitchen.post('prove', { person, pin: '4094' }, { token });
    expect(wrong.body).toEqual(refusal('wrong-pin'));
    const right = await kitchen.post('prove', { person, pin: '4093' }, { token });
    expect(right.body).toEqual({ ok: true, forS: 300 });
    expect((await kitchen.list(token)).present).toBe(person);
    await kitchen.letIn(token, wallAt(one));
    await kitchen.post('leave', {}, { token });
    expect((await kitchen.list(token)).present).toBeNull();
  });

  it('lets nobody try out a PIN, and takes none that is guessed first', async () => {
    const { token, person } = await aDesk();
    const poor = await kitchen.post('pin', { person, pin: '1234', isOwner: true }, { token });
    expect(poor.body).toEqual(refusal('poor-pin', { least: 4, most: 12 }));
    await kitchen.post('pin', { person, pin: '4093', isOwner: false }, { token });
    const rules = [];
    for (let n = 0; n < 6; n++) {
      const { body } = await kitchen.post('prove', { person, pin: `${5000 + n}` }, { token });
      rules.push((body['refusal'] as { rule: string }).rule);
    }
    expect(rules).toEqual([...Array(5).fill('wrong-pin'), 'too-many-tries']);
  });

  it('begins anew with PINs when the hub is claimed again by whoever can start it', async () => {
    const { token, person } = await aDesk();
    await kitchen.post('pin', { person, pin: '4093', isOwner: true }, { token });
    await kitchen.startAgain({ isClaiming: true });
    const again = await kitchen.claim();
    expect(await kitchen.list(again)).toMatchObject({ needsOwner: false });
    expect((await kitchen.list(again)).screens.map(({ name }) => name)).toEqual([
      'Office',
      'Office 2',
    ]);
  });
});
