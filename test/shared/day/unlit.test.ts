import { describe, expect, it } from 'vitest';
import { ifMoved, openLive } from '../../../shared/day/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { findSlot } from '../../../shared/kitchen/index.ts';
import { sayOffer } from '../../../shared/words/index.ts';
import { plan, Telling } from './demo.ts';

const { kitchen, built, schedule } = plan;
const isStay = new Set(built.tasks.filter(({ work }) => work === 'place').map(({ id }) => id));
const stays = schedule.placements.filter(({ activity }) => isStay.has(activity));
const slots = kitchen.smokers.flatMap(({ racks }) => racks.map(({ slot }) => slot));
const smokerOf = (slot: (typeof slots)[number]) => must(findSlot(kitchen, slot), slot).smoker;
const liesIn = ({ uses }: (typeof stays)[number]) =>
  slots.filter((slot) => uses.some(({ resource }) => resource === `slot:${slot}`)).map(smokerOf);

const live = openLive(new Telling().state, built.origin);
const offers = stays.flatMap((stay) =>
  slots.flatMap((to) => {
    const asked = ifMoved(live, { stay: stay.activity, need: 0, to });
    return asked.ok ? [{ stay, smoker: smokerOf(to), offer: asked.offer }] : [];
  }),
);

describe('an offer to move a load', () => {
  it('says of a smoker that nothing was in before that it is to be lit', () => {
    const cold = offers.filter(({ stay, smoker }) =>
      stays.every((other) => !liesIn(other).includes(smoker) || other.startS > stay.startS),
    );
    expect(cold.length).toBeGreaterThan(0);
    for (const { smoker, offer } of cold) {
      expect(offer.unlit).toEqual({ name: smoker.name, preheatS: smoker.preheatS });
    }
    const units = { temperature: '°F', weight: 'lb', clock: '12 h' } as const;
    const say = { language: 'en', zone: kitchen.zone, ...units } as const;
    expect(sayOffer(must(cold[0], 'an offer').offer, say)[0]).toMatch(/is not lit by the plan/);
  });

  it('says nothing of a smoker in which something lies then', () => {
    const hot = offers.filter(({ stay, smoker }) =>
      stays.some(
        (other) =>
          liesIn(other).includes(smoker) && other.startS <= stay.startS && stay.startS < other.endS,
      ),
    );
    expect(hot.length).toBeGreaterThan(0);
    for (const { offer } of hot) expect(offer.unlit).toBeNull();
  });
});
