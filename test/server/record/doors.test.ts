import express from 'express';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { recordDoors } from '../../../server/http/index.ts';
import { verifyExport } from '../../../server/record/index.ts';
import type { Who } from '../../../server/who/index.ts';
import {
  dayAfter,
  firstDay,
  type Kitchen,
  kitchenFolder,
  openKitchen,
  writeDays,
} from './kitchen-days.ts';

const folder = kitchenFolder();
let kitchen: Kitchen;
let address: string;
let close: () => void;
const asked: string[] = [];
let isDesk = true;

beforeAll(async () => {
  await writeDays(folder.path, 2);
  kitchen = await openKitchen(folder.path);
  await kitchen.record.rest();
  const desk = kitchen.record.desk(kitchen.hub, kitchen.chain);
  const entitled = (async (_caller, deed) => {
    asked.push(deed);
    return isDesk
      ? { ok: true, personId: null, screenId: null, caller: 'a-desk', whyNot: () => null }
      : { ok: false, refusal: { rule: 'not-the-desk' } };
  }) as Who['entitled'];
  const app = express().use('/api/record', recordDoors({ desk, entitled }));
  const server = app.listen(0, '127.0.0.1');
  await new Promise((resolve) => server.once('listening', resolve));
  const at = server.address();
  address = `http://127.0.0.1:${at !== null && typeof at === 'object' ? at.port : 0}`;
  close = () => server.close();
}, 60_000);
afterAll(async () => {
  close();
  await kitchen.close();
  folder.remove();
});

async function door(path: string, body: unknown) {
  const response = await fetch(`${address}/api/record/${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
  return { status: response.status, body: await response.json() };
}

describe('the doors of the record', () => {
  it('show the days with their signed heads, and what is cut from which lot', async () => {
    const { body } = await door('show', {});
    expect(body.days.map(({ day }: { day: string }) => day)).toEqual([firstDay, dayAfter(1)]);
    expect(body.days[0].head).toMatch(/^[0-9a-f]{64}$/);
    expect(body.days[1].head).toBeNull();
    expect(body.lots.length).toBeGreaterThan(2);
    expect(body.pulls.some((each: { isBegun: boolean }) => each.isBegun)).toBe(true);
  });

  it('trace a lot forward, and back from all that it went to', async () => {
    const { body } = await door('trace', { lot: `${dayAfter(1)}-1` });
    for (const { lots } of body.back) {
      expect(lots.map(({ lot }: { lot: string }) => lot)).toContain(`${dayAfter(1)}-1`);
    }
    expect(body.back.length).toBe(body.trace.batches.length);
  });

  it('give a record that proves itself', async () => {
    const { body } = await door('sheet', {
      ...{ as: 'json', from: firstDay, to: firstDay, language: 'en' },
    });
    expect(verifyExport(body.text).faults).toEqual([]);
  });

  it('say in words what is not there, and refuse what makes no sense', async () => {
    const none = await door('trace', { lot: '2020-01-01-1' });
    expect(none.body).toEqual({ ok: false, refusal: { rule: 'not-on-record' } });
    expect((await door('sheet', { as: 'html' })).status).toBe(400);
    expect((await door('day', { day: 'yesterday' })).status).toBe(400);
  });

  it('open for a desk alone', async () => {
    isDesk = false;
    const { body } = await door('show', {});
    isDesk = true;
    expect(body).toEqual({ ok: false, refusal: { rule: 'not-the-desk' } });
    expect(new Set(asked)).toEqual(new Set(['readRecord']));
  });
});
