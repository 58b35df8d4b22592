import { describe, expect, it } from 'vitest';
import { currentHand, openLive } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import { after, celsius, type Instant, minutes, must } from '../../../shared/kernel/index.ts';
import { LagsAmong, taskView } from '../../../shared/view/index.ts';
import { peopleOf } from '../../../shared/view/people.ts';
import { handsInOrder, plan, Telling } from '../day/demo.ts';

const first = must(handsInOrder[0], 'a task');
const { startS } = must(
  plan.schedule.placements.find(({ activity }) => activity === first),
  first,
);
const at = after(plan.built.origin, startS);
const hour = after(at, minutes(60));

function line(telling: Telling, now: Instant) {
  const live = openLive(telling.state, now);
  return taskView(live, first, new LagsAmong(live, new Set()));
}

describe('the line of a task whose hand is out', () => {
  it('offers no start that would be refused, also once the hand is overdue', () => {
    const telling = new Telling();
    const lineAt = (now: typeof at) => line(telling, now);
    expect(lineAt(at).state).toBe('ready');
    const hand = must(currentHand(telling.state, indexOf(plan), first), 'a hand');
    telling.ask({ kind: 'handOut', hand, backAt: after(at, minutes(30)) }, at);
    expect(telling.ask({ kind: 'start', task: first }, hour).ok).toBe(false);
    expect(lineAt(hour)).toMatchObject({ state: 'waiting', because: { kind: 'out' } });
    telling.ask({ kind: 'handIn', hand }, hour);
    expect(lineAt(hour).state).toBe('ready');
  });
});

describe('a line after the day was closed', () => {
  it('offers no start until the closing is taken back', () => {
    const telling = new Telling();
    const state = () => line(telling, at).state;
    expect(state()).toBe('ready');
    expect(telling.ask({ kind: 'closeDay' }, at, must(plan.kitchen.crew[0], 'a hand').id).ok).toBe(
      true,
    );
    expect(state()).toBe('waiting');
    expect(telling.ask({ kind: 'start', task: first }, at).ok).toBe(false);
  });
});

describe('the line of a round', () => {
  it('says which smoker or table it is for, as no batch of meat does', () => {
    const live = openLive(new Telling().state, at);
    const view = (id: (typeof plan.built.tasks)[number]['id']) =>
      taskView(live, id, new LagsAmong(live, new Set()));
    const hands = plan.built.tasks.filter(({ work }) => work === 'hands');
    const things = new Map(plan.built.upkeep.map(({ id, name }) => [id, name]));
    for (const { id, batch } of hands) expect(view(id).thing).toEqual(things.get(batch));
    expect(hands.some(({ batch }) => things.has(batch))).toBe(true);
  });
});

describe('the rounds of a smoker that is down', () => {
  const rounds = (step: string) =>
    plan.built.tasks.filter((task) => task.batch.startsWith('keep-') && task.step === step);
  const views = (telling: Telling, step: string, now: Instant) => {
    const live = openLive(telling.state, now);
    return rounds(step).map(({ id }) => taskView(live, id, new LagsAmong(live, new Set())));
  };

  it('ask for no wood till it is up again, and say why', () => {
    const telling = new Telling();
    const wood = must(rounds('wood')[0], 'a round of wood');
    const smoker = must(
      plan.kitchen.smokers.find(({ id }) => wood.batch === `keep-${id}`),
      'its smoker',
    ).id;
    const lateAt = after(plan.built.origin, minutes(48 * 60));
    const ofIt = (step: string) =>
      views(telling, step, lateAt).filter(({ batch }) => batch === wood.batch);
    const before = ofIt('wood').map(({ state }) => state);
    expect(before).toContain('ready');
    const backAt = after(lateAt, minutes(60));
    telling.ask({ kind: 'smokerDown', smoker, tempC: celsius(40), backAt }, lateAt);
    const because = { kind: 'down', smoker: { id: smoker }, backAt };
    for (const view of ofIt('wood')) expect(view).toMatchObject({ state: 'waiting', because });
    const other = views(telling, 'wood', lateAt).filter(({ batch }) => batch !== wood.batch);
    expect(other.map(({ state }) => state)).toContain('ready');
    expect(ofIt('light').some(({ because: why }) => why?.kind === 'down')).toBe(false);
    telling.ask({ kind: 'smokerUp', smoker, tempC: celsius(110) }, after(lateAt, minutes(5)));
    expect(ofIt('wood').map(({ state }) => state)).toEqual(before);
  });
});

describe('the people of a view', () => {
  it('have the language that the kitchen says of them, and no other', () => {
    const live = openLive(new Telling().state, at);
    const spoken = new Map(plan.kitchen.crew.map(({ id, language }) => [id, language]));
    const people = peopleOf(live);
    expect(people.map(({ id, language }) => [id, language])).toEqual([...spoken]);
    expect(people.some(({ language }) => language === 'es')).toBe(true);
  });

  it('have what a desk says of them instead, and none where it says so', () => {
    const telling = new Telling();
    const said = (language: 'en' | 'es' | null) => {
      const { id: person } = must(
        plan.kitchen.crew.find((each) => each.language === 'es'),
        'somebody',
      );
      telling.keep({ kind: 'languageSet', person, language }, at, null);
      return peopleOf(openLive(telling.state, at)).find(({ id }) => id === person);
    };
    expect(said('en')).toMatchObject({ language: 'en' });
    expect(said(null)).not.toHaveProperty('language');
  });
});
