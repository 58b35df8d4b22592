import { describe, expect, it, onTestFinished } from 'vitest';
import { AlertDesk } from '../../../server/alerts/index.ts';
import { manualClock } from '../../../server/clock.ts';
import { dayRules } from '../../../server/day-rules.ts';
import type { Hub } from '../../../server/hub/index.ts';
import type { DayState, Intent } from '../../../shared/day/index.ts';
import { after, celsius, instant, must } from '../../../shared/kernel/index.ts';
import type { Face } from '../../../shared/view/index.ts';
import { plan, Telling } from '../../shared/day/demo.ts';
import { type SeenLink, seenLink, station } from '../hub/setting.ts';

const desk: Face = { kind: 'desk' };
const pit: Face = { kind: 'smoker' };
const startOf = new Map(plan.schedule.placements.map((each) => [each.activity, each.startS]));
const [first] = plan.built.tasks
  .filter(({ work }) => work === 'hands')
  .map(({ id }) => ({ id, startS: must(startOf.get(id), id) }))
  .sort((a, b) => a.startS - b.startS);
const { id: task, startS } = must(first, 'work of hands');
const EVENING = after(plan.built.origin, startS);
const [smoker] = plan.kitchen.smokers;
const isOut: Intent = {
  kind: 'smokerDown',
  smoker: must(smoker, 'a smoker').id,
  tempC: celsius(60),
  backAt: null,
};

const screen = (face: Face, name: string, sounds = false): SeenLink => {
  const link = seenLink(face, name);
  return { ...link, hello: { ...link.hello, sounds } };
};

/** The calls of a day that can be told things, and of screens that come and go. */
function openCalls() {
  const telling = new Telling();
  const clock = manualClock(EVENING);
  const running = dayRules.run(telling.state, EVENING);
  type Listeners = Parameters<Hub<DayState>['attend']>[0];
  let attending: Listeners | null = null;
  let listen = () => {};
  const hub: Pick<Hub<DayState>, 'running' | 'state' | 'heed' | 'attend'> = {
    running,
    get state() {
      return telling.state;
    },
    heed: (run) => {
      listen = run;
    },
    attend: (each) => {
      attending = each;
    },
  };
  const reports: string[] = [];
  const alerts = new AlertDesk({ hub, clock, report: ({ what }) => void reports.push(what) });
  onTestFinished(() => alerts.close());
  return {
    clock,
    reports,
    come(link: SeenLink) {
      must(attending, 'whoever attends').come(link);
      clock.advance(0);
      return link;
    },
    go: (link: SeenLink) => must(attending, 'whoever attends').gone(link),
    tell(intent: Intent) {
      const known = telling.events.length;
      expect(telling.ask(intent, clock.now()).ok).toBe(true);
      const { state } = telling;
      for (const event of telling.events.slice(known)) running.apply({ event, state });
      listen();
    },
  };
}

const asked = ({ wanteds }: SeenLink) =>
  wanteds.at(-1)?.notices.map(({ first }) => first.asks.kind);
const heardBy = (...links: SeenLink[]) => links.map(({ wanteds }) => wanteds.at(-1)?.isHeard);

describe('who is wanted', () => {
  it('is told to a desk and to what is put up to sound at the pit, and to no other', () => {
    const { come } = openCalls();
    const told = [screen(desk, 'desk'), screen(pit, 'pit', true)];
    const others = [screen(pit, 'silent pit'), screen(station('trim'), 'wall', true)];
    for (const link of [...told, ...others]) come(link);
    expect(told.map(({ wanteds }) => wanteds.length)).toEqual([1, 1]);
    expect(others.map(({ wanteds }) => wanteds.length)).toEqual([0, 0]);
  });

  it('is told as soon as somebody asks for help, and again once it came', () => {
    const { clock, come, tell } = openCalls();
    const link = come(screen(desk, 'desk'));
    tell({ kind: 'start', task });
    tell({ kind: 'needHelp', task });
    clock.advance(200);
    expect(asked(link)).toContain('help');
    expect(clock.now() - (link.wanteds.at(-1)?.calledAt ?? 0)).toBeLessThanOrEqual(200);
    tell({ kind: 'helpCame', task });
    clock.advance(200);
    expect(asked(link)).not.toContain('help');
  });

  it('is told as soon as a smoker is said to be out', () => {
    const { clock, come, tell } = openCalls();
    const link = come(screen(pit, 'pit', true));
    tell(isOut);
    clock.advance(200);
    expect(asked(link)).toContain('down');
    expect(clock.now() - (link.wanteds.at(-1)?.calledAt ?? 0)).toBeLessThanOrEqual(200);
  });

  it('is told once, however often it is looked at, as long as it stays the same', () => {
    const { clock, come, tell } = openCalls();
    const link = come(screen(desk, 'desk', true));
    tell(isOut);
    clock.advance(60_000);
    const told = link.wanteds.map((wanted) => JSON.stringify(wanted));
    expect(told).toEqual([...new Set(told)]);
    expect(told).toHaveLength(2);
  });

  it('reaches the others where one screen cannot be told', () => {
    const { clock, come, tell, reports } = openCalls();
    const broken = screen(desk, 'broken', true);
    come({
      ...broken,
      wanted: () => {
        throw new Error('of the link');
      },
    });
    const whole = come(screen(desk, 'whole'));
    tell(isOut);
    clock.advance(200);
    expect(asked(whole)).toContain('down');
    expect(reports).toContain('a screen was not told who is wanted');
  });
});

describe('of several screens that are put up to sound', () => {
  it('the first sounds, and none that is not put up to', () => {
    const { come } = openCalls();
    const links = [
      screen(desk, 'silent desk'),
      screen(pit, 'pit', true),
      screen(desk, 'desk', true),
    ];
    for (const link of links) come(link);
    expect(heardBy(...links)).toEqual([false, true, false]);
  });

  it('another takes over in the moment in which the first goes, and keeps it', () => {
    const { come, go } = openCalls();
    const [first, next] = [screen(pit, 'pit', true), screen(desk, 'desk', true)];
    for (const link of [first, next]) come(link);
    go(first);
    expect(heardBy(next)).toEqual([true]);
    const again = come(screen(pit, 'pit', true));
    expect(heardBy(next, again)).toEqual([true, false]);
  });

  it('of two pages of one device one sounds', () => {
    const { come } = openCalls();
    const pages = ['first', 'second'].map(() => come(screen(desk, 'one device', true)));
    expect(heardBy(...pages)).toEqual([true, false]);
  });

  it('the one that sounds goes on when somebody sets the clock of the machine', () => {
    const { clock, come } = openCalls();
    const [first, next] = [screen(pit, 'pit', true), screen(desk, 'desk', true)];
    for (const link of [first, next]) come(link);
    clock.jump(instant(EVENING + 3_600_000));
    clock.advance(10_000);
    expect(heardBy(first, next)).toEqual([true, false]);
  });
});
