import { describe, expect, it } from 'vitest';
import { type MightAnswer, MightFlow } from '../../../client/smoker/what-if.ts';
import {
  celsius,
  instant,
  minutes,
  must,
  type ServiceId,
  type TaskId,
} from '../../../shared/kernel/index.ts';
import type { Say } from '../../../shared/words/index.ts';

const say: Say = {
  language: 'en',
  zone: 'UTC',
  clock: '24 h',
  temperature: '°F',
  weight: 'lb',
};
const at = (minute: number) => instant(minute * 60_000);
const load = { stay: 'ribs-1/stay' as TaskId };
const answer: MightAnswer = {
  ok: true,
  offer: {
    basedOnSeq: 1,
    goesIn: null,
    stages: [
      {
        stage: 'ribs-1/smoke' as TaskId,
        tempC: celsius(71.1),
        before: { p10At: at(600), p50At: at(660), p90At: at(720), never: 0 },
        after: { p10At: at(570), p50At: at(620), p90At: at(680), never: 0 },
      },
    ],
    services: [
      {
        id: 'noon' as ServiceId,
        name: { en: 'Lunch' },
        opensAt: at(720),
        beforeS: minutes(-10),
        afterS: minutes(25),
      },
    ],
  },
};

describe('what might be done about a load', () => {
  it('is asked, and said for its cook and for the services', async () => {
    const asked: object[] = [];
    let changes = 0;
    const flow = new MightFlow(
      async (what) => {
        asked.push(what);
        return answer;
      },
      () => changes++,
    );
    const waiting = flow.ask(load, { fireByF: 15 }, say);
    expect(flow.said).toHaveLength(1);
    await waiting;
    expect(asked).toEqual([{ stay: 'ribs-1/stay', fireByF: 15 }]);
    expect(flow.said[0]).toBe('160 °F: 09:30–11:20, now 10:00–12:00');
    expect(flow.said[1]).toContain('Lunch 12:00');
    expect(flow.said[1]).toContain('25 min');
    expect(changes).toBe(2);
  });

  it('is said of what waits with when it goes in, and what hands begin first', async () => {
    const title = { en: 'Rub spare ribs' };
    const first = { task: { id: 'ribs-1/rub' as TaskId, title }, at: at(100) };
    const goesIn = { at: at(150), first };
    const flow = new MightFlow(
      async () => ({ ...answer, offer: { ...answer.offer, goesIn } }),
      () => {},
    );
    await flow.ask(load, { earlierByMin: 15 }, say);
    expect(flow.said[0]).toBe(
      'Loaded from 02:30; “Rub spare ribs” from 01:40 for that; ' +
        '160 °F: 09:30–11:20, now 10:00–12:00',
    );
  });

  it('says why not, and that no hub answered, and nothing once it is let go', async () => {
    let next: () => Promise<MightAnswer> = async () => ({
      ok: false,
      refusal: { rule: 'nothing-foreseen' },
    });
    const flow = new MightFlow(
      () => next(),
      () => {},
    );
    await flow.ask(load, { wrapNow: 'foil' }, say);
    expect(flow.said).toEqual(['Nothing is foreseen of that load: read its core first.']);
    next = () => Promise.reject(new Error('away'));
    await flow.ask(load, { wrapNow: 'foil' }, say);
    expect(must(flow.said[0], 'a sentence')).not.toContain('foreseen');
    next = async () => answer;
    const late = flow.ask(load, { wrapNow: 'foil' }, say);
    flow.forget();
    await late;
    expect(flow.said).toEqual([]);
  });
});
