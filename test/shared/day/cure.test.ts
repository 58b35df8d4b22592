import { describe, expect, it } from 'vitest';
import { makePlan } from '../../../server/adopt.ts';
import { demoFiles } from '../../../server/demo/index.ts';
import { whyNotPlanned } from '../../../server/why-not-planned.ts';
import { cureOf, type Intent, indexOf, openLive } from '../../../shared/day/index.ts';
import type { CommandId, PersonId, TaskId } from '../../../shared/kernel/index.ts';
import { kilograms, must } from '../../../shared/kernel/index.ts';
import { dayRecordPage } from '../../../shared/paper/index.ts';
import { readPlanFiles } from '../../../shared/plan/index.ts';
import { evidenceOf, recordOf } from '../../../shared/record/index.ts';
import { viewOf } from '../../../shared/view/index.ts';
import { type Say, sayLogged, sayRefusal } from '../../../shared/words/index.ts';
import { noon, Telling } from './demo.ts';

type Json = Record<string, unknown>;
const zone = 'America/Chicago';
const say: Say = { language: 'en', zone, clock: '24 h', temperature: '°C', weight: 'kg' };

/** The demo, whose beef rub has so many parts of curing salt in a hundred. */
function curing(parts: number, isGranted = true) {
  const { kitchen, catalogue, cookPlan } = structuredClone(demoFiles(noon, zone)) as unknown as {
    kitchen: Json;
    catalogue: Json & { mixes: (Json & { id: string; parts: Json[] })[] };
    cookPlan: Json;
  };
  const rub = must(
    catalogue.mixes.find(({ id }) => id === 'beef-rub'),
    'the rub',
  );
  const salt = { ingredient: { en: 'Curing salt' }, nitrite: '6.25 %', parts };
  rub.parts = [salt, { ingredient: { en: 'Salt and pepper' }, parts: 100 - parts }];
  rub['cures'] = 'dry';
  const granted = { for: 'curing', granted: 'the county, 12 May' };
  const read = readPlanFiles({
    ...{ catalogue, cookPlan, kitchen: isGranted ? { ...kitchen, variances: [granted] } : kitchen },
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

const refused = (files: ReturnType<typeof curing>) => {
  const made = makePlan(files, 1, { isTrial: true });
  return made.ok ? [] : whyNotPlanned(made, files.kitchen, 'en');
};

describe('a mix that cures', () => {
  /**
   * 625 ppm is the most of what is cured dry, 120 the least of what is kept chilled: FSIS
   * Processing Inspectors' Calculations Handbook, chapter 3 and p. 12 (1995, read in a copy typed
   * anew). The rub is 2.2 % of the green weight: 46 parts of 6.25 % are 632.5 ppm, 8 are 110.
   */
  it('stops at the published figures, with both amounts', () => {
    expect(refused(curing(46))[0]).toContain('asked 625 ppm, planned 632.5 ppm');
    expect(refused(curing(8))[0]).toContain('asked 120 ppm, planned 110 ppm');
  });

  it('is for a kitchen with a variance: Food Code 3-502.11, as Maine and others adopted it', () => {
    expect(refused(curing(15, false))[0]).toContain('Curing needs a variance (3-502.11');
    expect(refused(curing(15))).toEqual([]);
  });

  it('says how it cures, or has no curing salt in it', () => {
    const { catalogue } = structuredClone(demoFiles(noon, zone)) as unknown as {
      catalogue: Json & { mixes: (Json & { parts: Json[] })[] };
    };
    const [first, second] = catalogue.mixes;
    must(first, 'a mix').parts[0] = { ingredient: { en: 'Cure' }, nitrite: '6.25 %', parts: 1 };
    must(second, 'a mix')['cures'] = 'dry';
    const { kitchen, cookPlan } = demoFiles(noon, zone);
    const read = readPlanFiles({ catalogue, kitchen, cookPlan });
    expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual([
      'mixes[0].cures',
      'mixes[1].cures',
    ]);
  });
});

const made = makePlan(curing(15), 1);
if (!made.ok) throw new Error(JSON.stringify(made));
const { plan } = made;
const index = indexOf(plan);
const [first, second] = plan.kitchen.crew.map(({ id }) => id);
const [one, two] = [must(first, 'one') as PersonId, must(second, 'two') as PersonId];
const rubbing = must(
  plan.built.tasks.find(({ id }) => cureOf(index, id) !== null),
  'a task that cures',
);
const asked = must(cureOf(index, rubbing.id), 'a cure');

/** The day up to where the cure can go on. */
function untilCure(): Telling {
  const telling = new Telling(plan);
  const start = (task: TaskId) =>
    must(
      plan.schedule.placements.find(({ activity }) => activity === task),
      task,
    ).startS;
  const before = plan.built.tasks
    .filter(({ batch, work }) => batch === rubbing.batch && work === 'hands')
    .filter(({ id }) => start(id) < start(rubbing.id))
    .sort((a, b) => start(a.id) - start(b.id));
  for (const { id } of before) {
    telling.keep({ kind: 'taskStarted', task: id, hand: one }, noon, one);
    telling.keep({ kind: 'taskFinished', task: id }, noon, one);
  }
  return telling;
}

const weigh = (change: Partial<Extract<Intent, { kind: 'weighCure' }>> = {}): Intent => ({
  ...{ kind: 'weighCure', task: rubbing.id, weightKg: asked.weightKg, first: one, second: two },
  ...change,
});
const start: Intent = { kind: 'start', task: rubbing.id };
const refusalOf = (decision: ReturnType<Telling['ask']>) =>
  decision.ok ? null : sayRefusal(decision.refusal, say);

describe('a cure on the day', () => {
  it('is not begun before two people have weighed for it', () => {
    const telling = untilCure();
    expect(refusalOf(telling.ask(start, noon, one))).toMatch(
      /^Beef rub cures: two people weigh it first, [\d.]+ k?g, and say so on this line\.$/,
    );
    expect(telling.ask(weigh(), noon).ok).toBe(true);
    expect(telling.ask(start, noon, one).ok).toBe(true);
  });

  it('wants two people, both of the crew', () => {
    const telling = untilCure();
    expect(refusalOf(telling.ask(weigh({ second: one }), noon))).toMatch(/^Two people weigh/);
    const stranger = 'nobody-here' as PersonId;
    expect(telling.ask(weigh({ second: stranger }), noon)).toMatchObject({
      refusal: { rule: 'unknown-person' },
    });
    expect(telling.ask(weigh({ first: stranger }), noon)).toMatchObject({
      refusal: { rule: 'unknown-person' },
    });
  });

  it('is refused where more was weighed than its limit bears, or too little to keep', () => {
    const telling = untilCure();
    const tooMuch = telling.ask(weigh({ weightKg: kilograms(asked.weightKg * 3.2) }), noon);
    expect(refusalOf(tooMuch)).toMatch(/found 660 ppm, asked 625 ppm .*Weigh anew\.$/);
    const tooLittle = telling.ask(weigh({ weightKg: kilograms(asked.weightKg / 2) }), noon);
    expect(refusalOf(tooLittle)).toContain('found 103.1 ppm, asked 120 ppm');
    expect(telling.ask(weigh({ weightKg: kilograms(0) }), noon).ok).toBe(false);
  });

  it('is nothing that other work has', () => {
    const other = must(
      plan.built.tasks.find(({ id }) => cureOf(index, id) === null),
      'other work',
    );
    expect(untilCure().ask(weigh({ task: other.id }), noon)).toMatchObject({
      refusal: { rule: 'not-a-cure' },
    });
  });

  it('is asked for again where its weighing was undone, which work begun stands on', () => {
    const telling = untilCure();
    telling.ask(weigh(), noon);
    const { commandId } = must(telling.events.at(-1), 'the weighing');
    telling.ask({ kind: 'undo', command: commandId as CommandId }, noon);
    expect(telling.ask(start, noon).ok).toBe(false);
    telling.ask(weigh(), noon);
    const again = must(telling.events.at(-1), 'the weighing').commandId;
    expect(telling.ask(start, noon).ok).toBe(true);
    expect(telling.ask({ kind: 'undo', command: again }, noon)).toMatchObject({
      refusal: { rule: 'stood-on' },
    });
  });

  it('stands in the log and on the day’s sheet with both names and what it comes to', () => {
    const telling = untilCure();
    telling.ask(weigh(), noon);
    const view = viewOf(openLive(telling.state, noon), { kind: 'desk' });
    const [line] = 'log' in view ? view.log : [];
    const names = plan.kitchen.crew.slice(0, 2).map(({ name }) => name);
    const said = line && sayLogged(line.said, say);
    expect(said).toContain(`weighed by ${names[0]}, and again by ${names[1]}`);
    const evidence = must(evidenceOf(telling.state), 'evidence');
    // Fifteen parts of 6.25 % in a rub of 2.2 % of the green weight.
    expect(evidence.cures).toMatchObject([{ ingoingPpm: 206, by: names[0], second: names[1] }]);
    const record = must(recordOf(telling.state), 'a record');
    const sheet = dayRecordPage([{ record, evidence, seal: null }], say);
    expect(sheet).toContain('Curing salt, weighed by two');
    expect(sheet).toMatch(/206 ppm/);
  });

  it('shows at its wall what is to be weighed, and who did', () => {
    const telling = untilCure();
    const station = { kind: 'station', station: rubbing.station } as const;
    const cureShown = () => {
      const view = viewOf(openLive(telling.state, noon), station);
      return 'tasks' in view ? view.tasks.find(({ id }) => id === rubbing.id)?.cure : undefined;
    };
    expect(cureShown()).toMatchObject({ weightKg: asked.weightKg, weighed: null });
    telling.ask(weigh(), noon);
    expect(cureShown()?.weighed).toMatchObject({ weightKg: asked.weightKg });
  });
});
