import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type KitchenAtHand, openKitchen } from './doors.ts';

let kitchen: KitchenAtHand;
let desk: string;
let wall: string;
let plan: unknown;
const language = 'en';
const ask = async (door: string, asked: object, token: string | null) =>
  (await kitchen.post(`plan/${door}`, asked, { token })).body;
const refused = (rule: string) => ({ ok: false, refusal: { rule } });

beforeAll(async () => {
  kitchen = await openKitchen();
  desk = await kitchen.claim();
  const place = { role: 'wall', stations: ['trim'] };
  wall = (await kitchen.letIn(desk, { name: 'Trim', place })).token;
  plan = (await ask('show', { day: null }, desk))['plan'];
});
afterAll(() => kitchen.close());

describe('the plan’s doors', () => {
  it('are shut to whoever was not let in, and to every screen but a desk', async () => {
    for (const [door, asked] of [
      ['show', { day: null }],
      ['draft', { plan, language }],
      ['take', { plan, language }],
      ['undo', { language }],
    ] as const) {
      expect(await ask(door, asked, null)).toEqual(refused('screen-unknown'));
      expect(await ask(door, asked, wall)).toEqual(refused('screen-elsewhere'));
    }
  });

  it('take a plan from any desk while nobody has a PIN', async () => {
    expect(await ask('take', { plan, language }, desk)).toMatchObject({ ok: true, taken: true });
  });

  it('let a plan be tried, and neither taken nor taken back, without the PIN', async () => {
    const [person] = (await kitchen.list(desk)).people;
    const pin = { person: person?.id, pin: '4093' };
    await kitchen.post('pin', { ...pin, isOwner: false }, { token: desk });
    expect(await ask('draft', { plan, language }, desk)).toMatchObject({ ok: true, fits: true });
    expect(await ask('take', { plan, language }, desk)).toEqual(refused('needs-pin'));
    expect(await ask('undo', { language }, desk)).toEqual(refused('needs-pin'));
    await kitchen.post('prove', pin, { token: desk });
    expect(await ask('take', { plan, language }, desk)).toMatchObject({ ok: true, taken: true });
    expect(await ask('undo', { language }, desk)).toEqual(refused('nothing-to-undo'));
  });
});
