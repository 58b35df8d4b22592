// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { openLive } from '../../../shared/day/index.ts';
import { after, minutes, must } from '../../../shared/kernel/index.ts';
import { type Paper, type PaperLine, paperOf, paperPage } from '../../../shared/paper/index.ts';
import { plan, Telling, task } from '../day/demo.ts';

const atNight = plan.built.origin;
const paper = paperOf(openLive(new Telling().state, atNight), 'en');

const stationOf = (from: Paper, id: string) =>
  must(
    from.stations.find((station) => station.id === id),
    id,
  );
const linesOf = (from: Paper, id: string) => stationOf(from, id).days.flatMap(({ lines }) => lines);
const lineOf = (from: Paper, id: string): PaperLine =>
  must(
    from.stations.flatMap((station) => linesOf(from, station.id)).find((line) => line.task === id),
    id,
  );

describe('a day on paper', () => {
  it('has every task of the plan once, on the sheet of its station', () => {
    for (const { id } of paper.stations) {
      const planned = plan.built.tasks.filter(
        ({ station, work }) => station === id && work !== 'place',
      );
      const printed = linesOf(paper, id).map((line) => line.task);
      expect(new Set(printed)).toEqual(new Set(planned.map((each) => each.id)));
      expect(printed).toHaveLength(planned.length);
    }
  });

  it('has each sheet in the order of its times, day by day', () => {
    for (const { id } of paper.stations) {
      const starts = linesOf(paper, id).map(({ startAt }) => startAt);
      expect(starts).toEqual([...starts].sort((a, b) => a - b));
    }
    expect(stationOf(paper, 'trim').days.map(({ day }) => day)).toEqual([
      'Tuesday, March 3',
      'Wednesday, March 4',
    ]);
  });

  it('says who, how many and what to mind, and counts pieces that are done one by one', () => {
    const square = lineOf(paper, task('dinner-ribs-1', 'square'));
    expect(square).toMatchObject({
      title: 'Square spare ribs',
      mind: expect.stringContaining('cartilage line'),
      caution: expect.stringContaining('Cut away from the hand'),
      tally: { done: 0 },
    });
    expect(square.amount).toMatch(/^\d+ slabs, \d+ lb$/);
    expect(plan.kitchen.crew.map(({ name }) => name)).toContain(square.who);
    expect(lineOf(paper, task('dinner-ribs-1', 'sort')).tally).toBeNull();
  });

  it('tells a round in full once on a sheet, and after that in a thin line', () => {
    const wood = linesOf(paper, 'pit').filter(({ title }) => title === 'Feed wood');
    expect(wood.length).toBeGreaterThan(3);
    expect(wood.map(({ again }) => again)).toEqual(wood.map((_, i) => i > 0));
    expect(wood.map(({ mind }) => mind !== null)).toEqual(wood.map((_, i) => i === 0));
    const probes = linesOf(paper, 'pass').filter(
      ({ title }) => title === 'Probe what is held warm',
    );
    expect(probes.some(({ again }) => again)).toBe(false);
    expect(linesOf(paper, 'trim').some(({ again, tally }) => again && tally !== null)).toBe(false);
  });

  it('says what a task waits for at another table, with the set in between', () => {
    const { details } = lineOf(paper, task('dinner-ribs-1', 'load'));
    expect(details[0]).toBe('10 min after “Rub spare ribs”');
    expect(details).toContain('set 275 °F');
    expect(details.some((detail) => /^Smoker [AB], rack \d: \d+ slabs/.test(detail))).toBe(true);
  });

  it('says which side of a fat cap goes to the heat of the smoker that it is loaded in', () => {
    const loads = plan.built.batches.filter(({ cut }) => cut === 'shoulder');
    for (const { id } of loads) {
      const { details } = lineOf(paper, task(id, 'load'));
      const inA = details.some((detail) => detail.startsWith('Smoker A'));
      expect(details.at(-1)).toContain(inA ? 'fat side down' : 'fat side up');
    }
  });

  it('says at the pit what lies on each rack, from when to when and how hot', () => {
    const { smokers } = stationOf(paper, 'pit');
    expect(smokers.map(({ name }) => name)).toEqual(['Smoker A', 'Smoker B', 'Long pit']);
    const loads = smokers.flatMap(({ racks }) => racks.flatMap((rack) => rack.loads));
    const loadsOf = (id: string) =>
      plan.built.tasks.flatMap((each) => (each.batch === id ? (each.loads ?? []) : []));
    const smoked = plan.built.batches.filter(({ id }) => loadsOf(id).length > 0);
    expect(smoked.length).toBeGreaterThan(10);
    for (const { id, name } of smoked) {
      const mine = loads.filter((load) => load.includes(`, ${name.en}, `));
      const lying = mine.map((load) => Number(load.split(' ')[0]));
      expect(lying.reduce((sum, count) => sum + count, 0)).toBe(
        loadsOf(id).reduce((sum, count) => sum + count, 0),
      );
      expect(mine[0]).toMatch(/, \d+:\d\d [ap]m to \d+:\d\d [ap]m, set \d{3} °F$/);
    }
  });

  it('leaves room for the temperature where one is asked for', () => {
    const probe = lineOf(paper, task('lunch-pulled-shoulder-1', 'probe-pull'));
    expect(probe.doneWhen).toMatch(/core \d+ °F or above$/);
    expect(probe.readings).toMatchObject([{ of: 'core', unit: '°F' }]);
    expect(lineOf(paper, task('lunch-ribs-1', 'hold')).readings[0]?.times).toBeGreaterThan(1);
  });

  it('lists what to pull, with a day where that is not the day of the services', () => {
    const pull = must(paper.list, 'the list').pull;
    expect(pull.map(({ name }) => name)).toEqual(plan.built.pull.map(({ name }) => name.en));
    expect(pull.find(({ name }) => name === 'Boneless shoulder')?.by).toContain('March 3');
  });

  it('weighs the parts of a mix so that they make the whole', () => {
    const ounces = (weight: string) =>
      [...weight.matchAll(/([\d.]+) (lb|oz)/g)].reduce(
        (sum, [, amount, unit]) => sum + Number(amount) * (unit === 'lb' ? 16 : 1),
        0,
      );
    for (const { weight, parts } of must(paper.list, 'the list').mixes) {
      const sum = parts.reduce((total, part) => total + ounces(part.weight), 0);
      expect(Math.abs(sum - ounces(weight))).toBeLessThan(0.1 * (parts.length + 1));
    }
  });

  it('is all in Spanish for whoever reads Spanish', () => {
    const spanish = paperOf(openLive(new Telling().state, atNight), 'es');
    expect(spanish.day).toBe('Miércoles, 4 de marzo de 2026');
    const said = JSON.stringify(spanish);
    for (const english of ['Square', 'Pull list', 'after “', 'slabs', 'or above', 'Contains']) {
      expect(said).not.toContain(english);
    }
  });
});

describe('what is written once', () => {
  it('is a load of one batch that goes on a rack and comes off it together', () => {
    const smokers = paper.stations.flatMap((station) => station.smokers);
    for (const { loads } of smokers.flatMap(({ racks }) => racks)) {
      const without = loads.map((load) => load.replace(/^\d+ /, ''));
      expect(new Set(without).size).toBe(without.length);
    }
  });

  it('is a heading for trim, and only where there is trim to weigh', () => {
    const { tubs } = must(paper.list, 'the list');
    expect(tubs.filter((row) => row.tubs.length === 0)).toEqual([]);
    const weighed = new Set(plan.built.tubs.map(({ batch }) => batch));
    expect(tubs).toHaveLength(weighed.size);
  });

  it('is the weight of a mix, as a scale at the bench shows it', () => {
    const weighing = lineOf(paper, task('dinner-ribs-1', 'weigh-rub'));
    expect(weighing.details.join(' ')).toMatch(/Rib rub: (\d+ lb )?\d+(\.\d)? oz/);
  });
});

describe('a day that runs, on paper', () => {
  const telling = new Telling();
  const [done, running] = [task('dinner-pulled-shoulder-1', 'pull'), task('lunch-ribs-1', 'pull')];
  const at = after(atNight, minutes(700));
  telling.ask({ kind: 'start', task: done }, at);
  telling.ask({ kind: 'finish', task: done }, after(at, minutes(4)));
  telling.ask({ kind: 'start', task: running }, after(at, minutes(5)));
  telling.ask({ kind: 'count', task: running, done: 3 }, after(at, minutes(7)));
  const now = paperOf(openLive(telling.state, after(at, minutes(8))), 'en');

  it('leaves out what is done and says how much that was', () => {
    expect(linesOf(now, 'trim').map((line) => line.task)).not.toContain(done);
    expect(stationOf(now, 'trim').doneCount).toBe(1);
  });

  it('has what runs as running, with the pieces that are counted', () => {
    expect(lineOf(now, running)).toMatchObject({ running: true, tally: { done: 3 } });
  });

  it('says when it stood so, which a plan that nobody has begun does not', () => {
    expect(now.edition).toMatch(/^plan 1, as it stood at /);
    expect(paper.edition).toBe('plan 1');
  });
});

describe('the page', () => {
  const page = new DOMParser().parseFromString(paperPage(paper), 'text/html');
  const sheets = [...page.querySelectorAll('section.sheet')];
  /** As it is read: a space at which no line ends is a space. */
  const textOf = (element: Element | null | undefined) =>
    (element?.textContent ?? '').replaceAll('\u00a0', ' ');

  it('has room on each thin line for when it was done, and by whom', () => {
    const again = sheets.flatMap((sheet) => [...sheet.querySelectorAll('.again')]);
    expect(again.length).toBeGreaterThan(10);
    for (const line of again)
      expect(textOf(line.querySelector('.passage'))).toMatch(/^\p{L}+.*done/u);
  });

  it('ends no line between a figure and its unit', () => {
    const racks = [...sheets.flatMap((sheet) => [...sheet.querySelectorAll('.load')])];
    expect(racks.some((load) => /set \d+\u00a0°F/.test(load.textContent ?? ''))).toBe(true);
    expect(racks.some((load) => /\d °F/.test(load.textContent ?? ''))).toBe(false);
  });

  it('is a sheet for each station and one for the day, each with the services', () => {
    const headings = sheets.map((sheet) => textOf(sheet.querySelector('h1')));
    const stations = plan.kitchen.stations.map(({ name }) => name.en);
    expect(headings).toEqual([...stations, 'Pull list and mixes']);
    for (const sheet of sheets) {
      expect(textOf(sheet.querySelector('header'))).toContain('Wednesday, March 4, 2026');
      expect(textOf(sheet.querySelector('.services'))).toContain('Dinner 5:00 pm: ');
    }
  });

  it('needs no script and nothing from elsewhere', () => {
    expect(page.querySelectorAll('script, link, img, iframe, a')).toHaveLength(0);
    expect(paperPage(paper)).not.toMatch(/url\(|@import|https?:/);
    expect(paperPage(paper, 'data:font/woff2;base64,AAAA')).toContain('url(data:font/woff2');
  });

  it('gives each line a stroke to draw over, a tally, and blanks for its times', () => {
    const square = lineOf(paper, task('dinner-ribs-1', 'square'));
    const row = [...page.querySelectorAll('tr.hand')].find(
      (each) =>
        textOf(each).includes('Square spare ribs') &&
        textOf(each).includes('Spare ribs · Dinner 1'),
    );
    expect(row?.querySelectorAll('svg.tick')).toHaveLength(1);
    expect(row?.querySelectorAll('.tally path')).toHaveLength(square.tally?.pieces ?? 0);
    expect(row?.querySelectorAll('.blank i')).toHaveLength(2);
    expect(textOf(row?.querySelector('.mind'))).toBe(square.mind);
    expect(textOf(row?.querySelector('.caution'))).toBe(square.caution);
  });

  it('breaks before a sheet, never within a line, and numbers its pages', () => {
    const style = textOf(page.querySelector('style'));
    expect(style).toMatch(/\.sheet \{ break-before: page; \}/);
    expect(style).toMatch(/\.tasks tr \{ break-inside: avoid; \}/);
    expect(style).toContain('counter(page) " / " counter(pages)');
    expect(style).toContain(`"Trim · Wednesday, March 4, 2026 · plan 1 · ${plan.kitchen.name}"`);
  });

  it('prints a name as it is written, whatever signs are in it', () => {
    const kitchen = 'Smoke & "Salt" </style><b>';
    const html = paperPage({ ...paper, kitchen });
    expect(html).not.toContain('</style><b>');
    expect(new DOMParser().parseFromString(html, 'text/html').title).toContain(kitchen);
  });

  it('has letters that can be read at an arm’s length', () => {
    // 16 minutes of arc at 0.6 m: capitals of 2.79 mm; on these letters 0.672 of their size.
    const smallest = /body \{\s*font: 500 ([\d.]+)pt/.exec(
      textOf(page.querySelector('style')),
    )?.[1];
    expect((Number(smallest) * 0.672 * 25.4) / 72).toBeCloseTo(2.79, 1);
  });
});
