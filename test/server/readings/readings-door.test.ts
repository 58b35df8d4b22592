import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readingsOfCsv } from '../../../shared/protocol/index.ts';
import { openKitchen } from '../who/doors.ts';

type Kitchen = Awaited<ReturnType<typeof openKitchen>>;
let kitchen: Kitchen;
beforeAll(async () => {
  kitchen = await openKitchen({ isOpen: true });
});
afterAll(() => kitchen.close());

const post = (asked: unknown) => kitchen.post('readings', asked);
const ago = (minutes: number) => new Date(Date.now() - minutes * 60_000).toISOString();

describe('readings from elsewhere', () => {
  it('come one at a time or many, as JSON or as a table', async () => {
    const one = await post({ smoker: 'a', tempC: 121, at: ago(9) });
    expect(one.body).toEqual({ ok: true, readings: ['sound'], said: ['1 reading kept.'] });
    const two = [
      { smoker: 'a', tempF: 250, at: ago(8) },
      { smoker: 'b', tempF: 260, at: ago(8) },
    ];
    expect((await post(two)).body).toMatchObject({ readings: ['sound', 'sound'] });
    expect(
      (await post({ readings: [{ smoker: 'b', tempC: 120, at: ago(7) }] })).body,
    ).toMatchObject({
      ok: true,
    });
    const table = `at,smoker,stay,tempF\n${ago(6)},a,,251\n${ago(6)},b,,259\n`;
    const sent = await fetch(`${kitchen.address()}/api/readings`, {
      method: 'POST',
      headers: { 'Content-Type': 'text/csv' },
      body: table,
    });
    expect(await sent.json()).toMatchObject({ ok: true, said: ['2 readings kept.'] });
  });

  it('are kept once, however often they are sent', async () => {
    const reading = { smoker: 'b', tempC: 125, at: ago(5) };
    expect((await post(reading)).body).toMatchObject({ readings: ['sound'] });
    expect((await post({ ...reading, tempC: 131 })).body).toEqual({
      ok: true,
      readings: ['duplicate'],
      said: ['0 readings kept.', '1 had been kept before.'],
    });
  });

  it('say it of each that comes late, is impossible, of tomorrow, or of nothing here', async () => {
    const { body } = await post([
      { smoker: 'a', tempC: 130, at: ago(2) },
      { smoker: 'a', tempC: 900, at: ago(1) },
      { smoker: 'a', tempC: 130, at: ago(-60) },
      { smoker: 'zz', tempC: 130 },
    ]);
    expect(body).toEqual({
      ok: true,
      readings: ['sound', 'impossible', 'from-the-future', 'unknown-place'],
      said: [
        '1 reading kept.',
        '1 no working thermometer shows.',
        '1 is of a time to come: set the clock of the sender.',
        '1 is of a smoker or a load that this day does not have.',
      ],
    });
    expect((await post({ smoker: 'a', tempC: 129, at: ago(3) })).body).toMatchObject({
      readings: ['out-of-order'],
    });
  });

  it.each([
    [{ smoker: 'a' }, 'tempC'],
    [{ tempC: 100 }, 'smoker'],
    [{ smoker: 'a', tempC: 'hot' }, 'expected number'],
    [{ smoker: 'a', tempC: 100, at: 'noon' }, 'such as 2026'],
    ['{"smoker"', 'JSON'],
  ])('are refused whole where they make no sense: %j', async (asked, part) => {
    const { status, body } = await post(asked);
    expect(status).toBe(400);
    expect(JSON.stringify(body)).toContain(part);
  });
});

describe('the door of readings', () => {
  it('opens to what may read at the pit, and to nothing else', async () => {
    const locked = await openKitchen();
    try {
      const reading = { smoker: 'a', tempC: 121 };
      const refused = async (token: string | null) =>
        (await locked.post('readings', reading, { token })).body['refusal'];
      expect(await refused(null)).toEqual({ rule: 'screen-unknown' });
      const desk = await locked.claim();
      const at = (role: string, stations: string[]) =>
        locked.letIn(desk, { name: role, place: { role, stations } });
      const wall = await at('wall', ['trim']);
      expect(await refused(wall.token)).toEqual({ rule: 'screen-elsewhere' });
      const pit = await at('pit', []);
      expect(await refused(pit.token)).toBeUndefined();
      expect(await refused(desk)).toBeUndefined();
    } finally {
      await locked.close();
    }
  });
});

describe('a table of readings', () => {
  it('names the column that it does not know', () => {
    expect(readingsOfCsv('at,smoker,temp\n')).toEqual({
      ok: false,
      what: 'its first line has "temp"; allowed: at, smoker, stay, tempC, tempF',
    });
  });

  it('leaves out what a cell does not say', () => {
    expect(readingsOfCsv('smoker,stay,tempC\r\na,,100\r\n,"r/stay",40\r\n')).toEqual({
      ok: true,
      rows: [
        { smoker: 'a', tempC: 100 },
        { stay: 'r/stay', tempC: 40 },
      ],
    });
  });
});
