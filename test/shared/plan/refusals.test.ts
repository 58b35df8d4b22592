import { describe, expect, it } from 'vitest';
import { build } from '../../../shared/plan/index.ts';
import { filesWith, limits, onePlan, plain, refusalsWith, spoilt } from './three-elms.ts';

const plan = onePlan({});
const kitchenWith = (changes: Record<string, unknown>) => spoilt(plain.kitchen, changes);
const catalogueWith = (changes: Record<string, unknown>) => spoilt(plain.catalogue, changes);
const crewWithout = (skill: string) =>
  plain.kitchen.crew.map((person) => ({
    ...person,
    trained: person.trained.filter((id) => id !== skill),
    learning: [],
  }));

describe('a plan that cannot be', () => {
  it('names a dish, an option or a hand that there is not, and what was likely meant', () => {
    const { kitchen, catalogue, cookPlan } = filesWith();
    const [service] = cookPlan.services;
    const [line] = service?.dishes ?? [];
    if (!service || !line) throw new Error('the demo serves nothing');
    const withLine = (changed: object) =>
      build(
        { ...cookPlan, services: [{ ...service, dishes: [{ ...line, ...changed }] }] },
        { kitchen, catalogue, limits },
      );
    const wrong = [
      withLine({ dish: 'rib' }),
      withLine({ choices: { wrap: 'fiol' } }),
      withLine({ hands: { rub: 'martin' } }),
      withLine({ slots: ['c/1'] }),
    ];
    const told = wrong.map((built) => (built.ok ? [] : built.refusals));
    expect(told.flat()).toEqual([
      expect.objectContaining({ rule: 'unknown-word', found: '"rib"', meant: 'ribs' }),
      expect.objectContaining({ rule: 'unknown-word', found: '"fiol"', meant: 'foil' }),
      expect.objectContaining({ rule: 'unknown-word', found: '"martin"' }),
      expect.objectContaining({ rule: 'unknown-word', found: '"c/1"', meant: 'a/1' }),
    ]);
  });

  it('closes before it opens', () => {
    expect(refusalsWith({ cookPlan: onePlan({}, { closes: '11:00' }) })).toEqual([
      { rule: 'closes-before-opening', service: { en: 'Noon' }, opens: '12:00', closes: '11:00' },
    ]);
  });

  it('counts sales after the close', () => {
    const sales = { by: 'quarter', portions: [1, 1, 1, 1, 1, 1, 1] };
    expect(refusalsWith({ cookPlan: onePlan({ sales }) })).toEqual([
      expect.objectContaining({ rule: 'sales-after-closing', counted: 7, open: 6 }),
    ]);
  });

  it('asks for a portion that no piece gives, with both weights', () => {
    const catalogue = catalogueWith({ 'dishes[ribs].portion': '3 lb' });
    const [refusal] = refusalsWith({ cookPlan: plan, catalogue });
    expect(refusal).toMatchObject({ rule: 'portion-over-piece' });
    expect(refusal).toHaveProperty('portionKg', expect.closeTo(1.361, 3));
    expect(refusal).toHaveProperty('pieceGivesKg', expect.closeTo(0.889, 3));
  });

  it('has a cut that no smoker can hold, and says why not of each', () => {
    const catalogue = catalogueWith({ 'cuts[spare-ribs].footprint.length': '50 in' });
    const [refusal] = refusalsWith({ cookPlan: plan, catalogue });
    expect(refusal).toMatchObject({
      rule: 'no-smoker',
      smokers: [
        { why: 'size', needs: expect.closeTo(1.27, 3), most: expect.closeTo(1.219, 3) },
        { why: 'size', most: expect.closeTo(1.067, 3) },
      ],
    });
  });

  it('has a piece too heavy for any rack, or a fire no smoker makes', () => {
    const weak = kitchenWith({
      'smokers[a].racks': [{ length: '48 in', depth: '26 in', holds: '2 lb' }],
      'smokers[b].hottest': '240 °F',
    });
    const [refusal] = refusalsWith({ cookPlan: plan, kitchen: weak });
    expect(refusal).toMatchObject({
      rule: 'no-smoker',
      smokers: [{ why: 'weight' }, { why: 'heat' }],
    });
  });

  it('has no hand with the skill', () => {
    const kitchen = kitchenWith({ crew: crewWithout('mix') });
    expect(refusalsWith({ cookPlan: plan, kitchen })).toEqual([
      expect.objectContaining({
        rule: 'no-skill',
        step: { en: 'Weigh out the rib rub', es: 'Pese el adobo de costillas' },
        skill: { en: 'Mixing', es: 'Mezclas' },
        needs: 1,
        has: 0,
      }),
    ]);
  });

  it('wishes for a hand that has not the skill', () => {
    const cookPlan = onePlan({ hands: { square: 'bea' } });
    expect(refusalsWith({ cookPlan })).toEqual([
      expect.objectContaining({ rule: 'hand-lacks-skill', hand: 'Bea' }),
    ]);
  });

  it('has nobody there long enough for even one piece', () => {
    const slow = { low: '9 h', typical: '10 h', high: '11 h' };
    const catalogue = catalogueWith({ 'routes[0].steps[square].time.takes': slow });
    const refusals = refusalsWith({ cookPlan: plan, catalogue });
    expect(refusals).toContainEqual(
      expect.objectContaining({ rule: 'no-shift', needS: 36_000, longestS: 5.5 * 3600 }),
    );
  });

  it('has no station for a kind of work', () => {
    const kitchen = kitchenWith({ 'stations[mix].benches': ['trim'] });
    expect(refusalsWith({ cookPlan: plan, kitchen })).toEqual([
      expect.objectContaining({
        rule: 'no-station',
        bench: { en: 'Mix bench', es: 'Mesa de mezclas' },
      }),
    ]);
  });

  it('has no room to keep warm or cold', () => {
    const bare = kitchenWith({ 'cabinets[warm].whole': 0, coolers: [] });
    const cookPlan = onePlan({ choices: { set: 'overnight' } });
    expect(refusalsWith({ cookPlan, kitchen: bare })).toEqual([
      expect.objectContaining({ rule: 'no-room-to-keep', where: 'cooler', has: 0 }),
      expect.objectContaining({ rule: 'no-room-to-keep', where: 'whole', needs: 1, has: 0 }),
    ]);
  });

  it('cannot be done within what the route allows, with both times', () => {
    const catalogue = catalogueWith({ 'routes[0].limits[0].atMost': '15 min' });
    const [refusal] = refusalsWith({ cookPlan: plan, catalogue });
    expect(refusal).toMatchObject({ rule: 'limit-too-short', allowedS: 900 });
    // One slab: ½ + 2 + 1 min, 8 sorting, ¼ + ½, 10 setting.
    expect(refusal).toHaveProperty('needS', 1335);
  });

  it('serves before its cook could end, with the time it needs and the time it has', () => {
    const cookPlan = onePlan(
      { dish: 'pulled-shoulder', choices: { set: 'overnight', moisture: 'brine', wrap: 'none' } },
      { opens: '01:00', closes: '02:00' },
    );
    const [refusal] = refusalsWith({ cookPlan });
    expect(refusal).toMatchObject({ rule: 'service-too-early', opens: '01:00', hasS: 25 * 3600 });
    expect(refusal).toHaveProperty(
      'needS',
      expect.toSatisfy((needS) => needS > 25 * 3600),
    );
  });

  it('is told all at once', () => {
    const kitchen = kitchenWith({ crew: crewWithout('pit'), 'stations[mix].benches': ['trim'] });
    const rules = refusalsWith({ kitchen }).map(({ rule }) => rule);
    expect(new Set(rules)).toEqual(new Set(['no-skill', 'no-station']));
    expect(rules.length).toBeGreaterThan(8);
  });
});
