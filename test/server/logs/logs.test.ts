import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dayRules } from '../../../server/day-rules.ts';
import { walk } from '../../../server/store/index.ts';
import type { Event } from '../../../shared/day/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { sampleLog } from './sample-log.ts';

const versions = readdirSync(import.meta.dirname).flatMap((name) => {
  const version = /^version-(\d+)\.jsonl$/.exec(name)?.[1];
  return version === undefined ? [] : [Number(version)];
});

async function read(version: number) {
  const events: Event[] = [];
  const walked = await walk(sampleLog(version), (event) => events.push(event));
  return { events, walked };
}

describe.each(versions)('the log that version %i left', (version) => {
  it('is whole, every entry following from the one before', async () => {
    const { events, walked } = await read(version);
    expect(walked.broken).toBeNull();
    expect(events.length).toBeGreaterThan(10);
  });

  it('folds into a day that every face of its kitchen can show', async () => {
    const { events, walked } = await read(version);
    const state = events.reduce(dayRules.fold, dayRules.empty());
    const now = must(walked.keptAt, 'a last event');
    const day = dayRules.run(state, now);
    const { stations } = must(state.plan, 'a plan').kitchen;
    for (const { id } of stations) {
      expect(day.show({ kind: 'station', station: id }, now).ok).toBe(true);
    }
    expect(day.show({ kind: 'smoker' }, now).ok).toBe(true);
  });
});

it('has events of every kind among them', async () => {
  const all = await Promise.all(versions.map(read));
  const kinds = new Set(all.flatMap(({ events }) => events.map(({ kind }) => kind)));
  expect([...kinds].sort()).toEqual([
    'finishTakenBack',
    'helpAsked',
    'helpCame',
    'noteWritten',
    'piecesCounted',
    'planAdopted',
    'slotsMoved',
    'startTakenBack',
    'taskFinished',
    'taskGiven',
    'taskRunsLate',
    'taskStarted',
    'temperatureRead',
  ]);
});
