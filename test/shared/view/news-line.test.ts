import { describe, expect, it } from 'vitest';
import { deliveryEffect, type Event, type Intent, openLive } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import { after, celsius, kilograms, minutes, must, seconds } from '../../../shared/kernel/index.ts';
import { viewOf } from '../../../shared/view/index.ts';
import { type Say, sayNews, sayNewsInShort } from '../../../shared/words/index.ts';
import { plan, Telling } from '../day/demo.ts';

const english: Say = {
  language: 'en',
  zone: plan.built.zone,
  clock: '24 h',
  temperature: '°C',
  weight: 'kg',
};
const smoker = must(plan.kitchen.smokers[0], 'a smoker');
const person = must(plan.kitchen.crew[0], 'a hand');
const line = must(plan.built.pull[0], 'a line');
const start = after(plan.built.origin, must(plan.schedule.placements[0], 'a task').startS);
const down: Intent = { kind: 'smokerDown', smoker: smoker.id, tempC: celsius(60), backAt: null };

/** The day after one decision, ten hours on where the smoker is still down. */
function newsAfter(intent: Intent, waitedS = 0) {
  const telling = new Telling();
  expect(telling.ask(intent, start, person.id).ok).toBe(true);
  const live = openLive(telling.state, after(start, seconds(waitedS)));
  return { telling, live, news: viewOf(live, { kind: 'smoker' }).news };
}

describe('the news of a day', () => {
  it('says who decided what and which starts and services it moved', () => {
    const backAt = after(start, seconds(20 * 3600));
    const { news } = newsAfter({ ...down, backAt } as Intent);
    const said = must(news, 'news');
    expect(said).toMatchObject({ person: person.name, canBeUndone: true });
    expect(said.tasks[0]?.byS).toBeGreaterThanOrEqual(60);
    expect(said.services.some(({ byS }) => byS < 0)).toBe(true);
    const sentence = sayNews(said, english);
    expect(sentence).toContain(`${person.name}: `);
    expect(sentence).toMatch(/loses .* (min|h)/);
    expect(sayNews(said, { ...english, language: 'es' })).toMatch(/pierde .* (min|h)/);
  });

  it('in one line says what it cost most, and how much more there is to say', () => {
    const backAt = after(start, seconds(20 * 3600));
    const said = must(newsAfter({ ...down, backAt } as Intent).news, 'news');
    const { services, tasks, more } = said;
    const short = sayNewsInShort(said, english).join('');
    const worst = must([...services].sort((a, b) => a.byS - b.byS)[0], 'a service');
    expect(short).toContain(`→ ${worst.name.en} loses `);
    const others = services.length + tasks.length - 1 + more;
    expect(short).toMatch(new RegExp(`, ${others} more changes$`));
    expect(short.split(';')).toHaveLength(1);
    const one = { ...said, services: [worst], tasks: [], more: 0 };
    expect(sayNewsInShort(one, english).join('')).toBe(sayNews(one, english));
  });

  it('is gone ten minutes later', () => {
    expect(newsAfter(down, 599).news).not.toBeNull();
    expect(newsAfter(down, 600).news).toBeNull();
  });

  it('of an undoing says that the times went back, and cannot itself be undone', () => {
    const { telling } = newsAfter(down);
    const { commandId } = must<Event>(telling.events.at(-1), 'an event');
    const at = after(start, minutes(1));
    expect(telling.ask({ kind: 'undo', command: commandId }, at).ok).toBe(true);
    const { news } = viewOf(openLive(telling.state, at), { kind: 'smoker' });
    expect(news).toMatchObject({ canBeUndone: false, said: { kind: 'undone' } });
  });
});

describe('a delivery', () => {
  const effectOf = (pieces: number, weightKg: number) => {
    const telling = new Telling();
    const amount = { cut: line.cut, pieces, weightKg: kilograms(weightKg) };
    const came: Intent = { kind: 'delivery', ...amount, isSo: true };
    expect(telling.ask(came, start).ok).toBe(true);
    return must(deliveryEffect(telling.state, indexOf(plan), line.cut), 'an effect');
  };

  it('as it was ordered loses nothing and takes no longer', () => {
    const effect = effectOf(line.pieces, line.weightKg);
    expect(effect).toEqual({ shortPieces: 0, lost: [], longerS: 0 });
  });

  it('that is short loses portions, and all of them where nothing came', () => {
    const one = effectOf(line.pieces - 1, (line.weightKg * (line.pieces - 1)) / line.pieces);
    expect(one.shortPieces).toBe(1);
    expect(one.lost).toHaveLength(1);
    const portions = plan.built.batches
      .filter(({ bought }) => bought === line.cut)
      .reduce((sum, batch) => sum + batch.portions, 0);
    const none = effectOf(0, 0).lost.reduce((sum, each) => sum + each.portions, 0);
    expect(none).toBe(portions);
  });

  it('of heavier pieces has the trimming take longer', () => {
    expect(effectOf(line.pieces, line.weightKg * 1.2).longerS).toBeGreaterThan(0);
  });
});
