// @vitest-environment happy-dom
import { afterEach, expect, it } from 'vitest';
import type { CheckBand } from '../../../client/parts/check-band.ts';
import '../../../client/parts/check-band.ts';
import type { BatchId, CommandId, PersonId } from '../../../shared/kernel/index.ts';
import { after, minutes } from '../../../shared/kernel/index.ts';
import type { CheckView, Intent } from '../../../shared/view/index.ts';
import { buttonsOf, drawn, saidOn, tap } from '../fingers.ts';
import { NOW } from '../fixtures.ts';
import { ribs, rosa, row } from '../open-check.ts';

async function band(...checks: CheckView[]) {
  const part = document.createElement('check-band') as CheckBand;
  const taps: (readonly [Intent, PersonId | null])[] = [];
  part.say = { ...part.say, temperature: '°F' };
  part.checks = checks;
  part.people = [rosa];
  part.now = NOW;
  part.tap = (intent, person) => {
    taps.push([intent, person]);
    return { id: `tap-${taps.length}` as CommandId };
  };
  document.body.append(part);
  await drawn();
  return { part, taps };
}

afterEach(() => document.body.replaceChildren());

it('takes a check with two taps and a number, in the name of who is tapped', async () => {
  const { part, taps } = await band(ribs);
  for (const name of ['probe what is held hot', '1', '4', '9', 'Rosa']) await tap(part, name);
  expect(taps).toMatchObject([[{ kind: 'check', on: ribs.on, thermometer: null }, 'rosa']]);
  expect(taps[0]?.[0]).toHaveProperty('tempC', expect.closeTo(65, 1));
});

it('lies over the screen of a foot while it is open, and no longer', async () => {
  const { part } = await band(ribs);
  expect(part.hasAttribute('over')).toBe(false);
  await tap(part, 'probe what is held hot');
  expect(part.hasAttribute('over')).toBe(true);
  await tap(part, 'leave it');
  expect(part.hasAttribute('over')).toBe(false);
});

it('asks about a number that was likely read in °C, keeps it and sends nothing', async () => {
  const { part, taps } = await band(ribs);
  for (const name of ['probe what is held hot', '7', '4', 'Rosa']) await tap(part, name);
  expect(taps).toEqual([]);
  expect(saidOn(part)).toContain('74 °F? Read in the other unit it is 165 °F.');
  await tap(part, 'It is 165 °F');
  expect(taps[0]?.[0]).toMatchObject({ kind: 'check', tempC: 74 });
});

it('sends nothing that no probe in food shows, nor nothing at all', async () => {
  const { part, taps } = await band(ribs);
  for (const name of ['probe what is held hot', 'Rosa']) await tap(part, name);
  expect(saidOn(part)).toContain('Type what it showed first.');
  for (const name of ['4', '0', '0', 'Rosa']) await tap(part, name);
  expect(taps).toEqual([]);
});

it('asks of what was broken what was done, of what its row allows, and by whom', async () => {
  const failed = { at: NOW, by: 'Rosa' };
  const breach = { row, asked: '135 °F', found: '118 °F' };
  const { part, taps } = await band({ ...ribs, failed, breach });
  await tap(part, 'probe what is held hot');
  expect(saidOn(part)).toContain('found 118 °F, asked 135 °F (3-501.16(A)(1), FDA Food Code)');
  expect(buttonsOf(part).map(([name]) => name)).not.toContain('Rosa');
  for (const name of ['throw it out', 'Rosa']) await tap(part, name);
  expect(taps).toEqual([[{ kind: 'correct', on: ribs.on, action: 'discard' }, 'rosa']]);
});

it('goes on to the next of the same kind, and is hidden where nothing is due', async () => {
  const next = { ...ribs, key: 'hot-hold beans', thing: { en: 'Beans' } };
  const { part } = await band(ribs, next);
  for (const name of ['probe what is held hot · Ribs', '1', '5', '0', 'Rosa'])
    await tap(part, name);
  expect(saidOn(part)).toContain('held hot · Beans');
  const later = await band({
    ...ribs,
    dueAt: after(NOW, minutes(60)),
    lateAt: after(NOW, minutes(90)),
  });
  expect(later.part.hidden).toBe(true);
});

it('keeps the end of a cook with how it feels, and asks where that was left out', async () => {
  const { part, taps } = await band({
    ...ribs,
    on: { kind: 'end-temperature', batch: 'ribs' as BatchId },
    feel: { there: { en: 'It folds' }, notYet: { en: 'It stays stiff' } },
  });
  for (const name of ['probe at the end of the cook', '1', '9', '8', 'Rosa']) await tap(part, name);
  expect(taps).toEqual([]);
  expect(saidOn(part)).toContain('the number is a guide');
  for (const name of ['It stays stiff', 'It folds', 'Rosa']) await tap(part, name);
  expect(taps).toMatchObject([[{ kind: 'check', feel: 'there' }, 'rosa']]);
});

it('has words for what is not yet so where the catalogue has none', async () => {
  const { part, taps } = await band({
    ...ribs,
    on: { kind: 'end-temperature', batch: 'ribs' as BatchId },
    feel: { there: { en: 'It folds' }, notYet: null },
  });
  for (const name of ['probe at the end of the cook', '1', '9', '8', 'not yet so', 'Rosa']) {
    await tap(part, name);
  }
  expect(taps).toMatchObject([[{ kind: 'check', feel: 'not-yet' }, 'rosa']]);
});

it('has what is too old before all else, and says how much of it is behind “more”', async () => {
  const old = (name: string, portions: number): CheckView => ({
    ...ribs,
    on: { kind: 'discard-time', batch: name as BatchId },
    key: `discard-time ${name}`,
    thing: { en: name },
    lateAt: NOW,
    old: { portions, where: null },
  });
  const failed = { ...ribs, failed: { at: NOW, by: 'Rosa' } };
  const { part } = await band(failed, old('Beans', 35), old('Chicken', 4), old('Slaw', 1));
  part.most = 1;
  await drawn();
  const said = () => buttonsOf(part).map(([name]) => name);
  expect(said()[0]).toMatch(/^throw out 35 portions · Beans/);
  expect(said()[1]).toBe('3 more, 2 to throw out');
  expect(saidOn(part)).not.toMatch(/Look at|sell/);
  part.checks = [old('Beans', 35), old('Slaw', 1)];
  await drawn();
  expect(said()[1]).toBe('1 more to throw out');
  await tap(part, '1 more to throw out');
  expect(said()[1]).toMatch(/^throw out 1 portion · Slaw/);
});
