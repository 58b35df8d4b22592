import { describe, expect, it } from 'vitest';
import { fireDoubts } from '../../../shared/day/fire-doubts.ts';
import {
  type AdoptedForecast,
  type Live,
  openLive,
  type ServiceSpread,
  spreading,
} from '../../../shared/day/index.ts';
import { promisesOn } from '../../../shared/day/outlook.ts';
import {
  after,
  celsius,
  hours,
  minutes,
  must,
  type Seconds,
  seconds,
} from '../../../shared/kernel/index.ts';
import { inHandIf } from '../../../shared/schedule/index.ts';
import { noon, plan, task } from './demo.ts';
import { atNoon } from './demo-noon.ts';

function spreadOf(live: Live, service: string): ServiceSpread {
  const work = spreading(live);
  for (let step = work.next(); ; step = work.next()) {
    if (!step.done) continue;
    return must(
      step.value.find((each) => each.service === service),
      service,
    );
  }
}

const stay = task('dinner-pulled-shoulder-2', 'stay');
const smoke = task('dinner-pulled-shoulder-2', 'smoke');
const finish = task('dinner-pulled-shoulder-2', 'finish-pull-wrapped');

const inMinutes = (from: number, to: number) => ({ from, to });

/**
 * Noon, with the shoulders foreseen to be wrapped in half an hour, for sure, and to be done so long
 * from now, P10 and P90 so far from P50.
 */
function foreseen(doneIn: Seconds, { from, to }: { from: number; to: number }, never = 0) {
  const telling = atNoon();
  const at = (s: number) => after(noon, seconds(s));
  const sure = minutes(30);
  const known = { raw: null, ofSmoker: 0.4 };
  const forecast: AdoptedForecast = {
    ...{ stay, modelVersion: 2, seed: 1, madeAt: noon, startedAt: after(noon, seconds(-16_620)) },
    ...{ lastReadingAt: noon, wrap: 'paper', isCalibrated: false, fan: [] },
    stages: [
      {
        ...{ ...known, stage: smoke, tempC: celsius(71), never: 0 },
        ...{ p10At: at(sure), p50At: at(sure), p90At: at(sure) },
      },
      {
        ...{ ...known, stage: finish, tempC: celsius(96), never },
        p10At: at(doneIn - minutes(from)),
        p50At: at(doneIn),
        p90At: never > 0.1 ? null : at(doneIn + minutes(to)),
      },
    ],
  };
  telling.keep({ kind: 'forecastAdopted', forecast }, noon, null);
  return openLive(telling.state, noon);
}

const unread = openLive(atNoon().state, noon);
const inFour = foreseen(hours(4), inMinutes(40, 60));

describe('the spread of a service', () => {
  it('is what it has in hand where no cook leaves a doubt', () => {
    const live = unread;
    const { lowS, highS } = spreadOf(live, 'lunch');
    const { inHandS } = must(live.outlookOf('lunch' as never), 'lunch');
    expect([lowS, highS]).toEqual([inHandS, inHandS]);
  });

  it('is taken from the plan’s own minutes in hand, which have every cook as long as usual', () => {
    const goals = [...promisesOn(unread.timeline, unread.index)];
    const usual = fireDoubts(unread.state, unread.index, noon).map(
      ({ stage, lengthS }) => [stage, lengthS(() => 0)] as const,
    );
    const inHand = inHandIf(
      unread.timeline.fork(),
      usual,
      goals.map(([, each]) => each),
    );
    for (const [place, [service]] of goals.entries()) {
      expect(inHand[place]?.inHandS).toBe(unread.outlookOf(service)?.inHandS);
    }
    // Of many cooks one is longer than usual nearly always, and that is what a service waits for.
    const { likelyS } = spreadOf(unread, 'dinner');
    const ofPlan = must(unread.outlookOf('dinner' as never), 'dinner').inHandS;
    expect(must(likelyS, 'a middle')).toBeLessThan(ofPlan);
  });

  it('lies in order, and the same day has the same', () => {
    const live = inFour;
    const { lowS, likelyS, highS } = spreadOf(live, 'dinner');
    expect(must(lowS, 'a low')).toBeLessThanOrEqual(must(likelyS, 'a middle'));
    expect(must(likelyS, 'a middle')).toBeLessThanOrEqual(must(highS, 'a high'));
    expect(spreadOf(live, 'dinner')).toEqual({ service: 'dinner', lowS, likelyS, highS });
  });

  it('falls with a cook that is foreseen for later, minute for minute once all hangs on it', () => {
    const late = spreadOf(foreseen(hours(12), inMinutes(10, 10)), 'dinner');
    const later = spreadOf(foreseen(hours(13), inMinutes(10, 10)), 'dinner');
    for (const end of ['lowS', 'likelyS', 'highS'] as const) {
      expect(must(late[end], end) - must(later[end], end)).toBe(hours(1));
    }
  });

  it('has no low end where one cook in five may never be done', () => {
    const { lowS, highS } = spreadOf(foreseen(hours(4), inMinutes(20, 45), 0.2), 'dinner');
    expect(lowS).toBeNull();
    expect(highS).not.toBeNull();
  });

  it('leaves the day itself as it is', () => {
    const live = inFour;
    const before = plan.built.tasks.map(({ id }) => live.timesOf(id));
    spreadOf(live, 'dinner');
    expect(plan.built.tasks.map(({ id }) => live.timesOf(id))).toEqual(before);
  });
});

describe('the doubt of a stage in the fire', () => {
  const doubts = (live: Live) =>
    new Map(fireDoubts(live.state, live.index, live.now).map((doubt) => [doubt.stage, doubt]));

  it('is its forecast’s where there is one, and the catalogue’s range else', () => {
    const live = inFour;
    const of = must(doubts(live).get(finish), 'a doubt');
    // From P50 of the stage before to P50 of its own.
    expect(of.lengthS(() => 0)).toBe(hours(4) - minutes(30));
    const ribs = must(doubts(live).get(task('dinner-ribs-2', 'smoke')), 'a doubt');
    expect([-1.2816, 0, 1.2816].map((z) => Math.round(ribs.lengthS(() => z) / 60))).toEqual([
      120, 150, 180,
    ]);
  });

  it('is of nothing that is over, and of every stage that is not', () => {
    const live = unread;
    const open = plan.built.tasks.filter(
      ({ id, work }) => work === 'fire' && live.timeline.times(id).stage !== 'done',
    );
    expect([...doubts(live).keys()].sort()).toEqual(open.map(({ id }) => id).sort());
  });
});
