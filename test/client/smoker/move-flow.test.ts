import { beforeEach, describe, expect, it, vi } from 'vitest';
import { MoveFlow } from '../../../client/smoker/move-flow.ts';
import { instant, type SlotId } from '../../../shared/kernel/index.ts';
import type { QuestionAnswer } from '../../../shared/protocol/index.ts';
import { LinkLost } from '../../../shared/protocol/index.ts';
import type { Intent, MoveOffer } from '../../../shared/view/index.ts';
import { smokerView } from '../fixtures.ts';

const racks = smokerView.smokers.flatMap((smoker) => smoker.racks);
const [first, second] = racks.flatMap(({ loads }) => loads);
const [from, to] = [racks[0]?.slot, racks[4]?.slot];
if (!first || !second || !from || !to) throw new Error('the fixture has too little in it');

const offer: MoveOffer = {
  basedOnSeq: smokerView.arrangedSeq,
  moves: [{ ...first, from, to }],
  services: [],
  tasksChanged: 3,
  fatSide: 'up',
  unlit: null,
};

let taps: Intent[];
let answers: (() => Promise<QuestionAnswer>)[];
let flow: MoveFlow;
const asked = vi.fn();

beforeEach(() => {
  taps = [];
  answers = [];
  asked.mockClear();
  flow = new MoveFlow({
    ask: (question) => {
      asked(question);
      return answers.shift()?.() ?? Promise.resolve({ ok: true, offer });
    },
    tap: (intent) => taps.push(intent),
    changed: () => {},
  });
});

describe('moving a load', () => {
  it('asks what it would do and moves nothing before it is taken', async () => {
    flow.pick(first);
    await flow.goal(to.id);
    expect(asked).toHaveBeenCalledWith({
      kind: 'ifMoved',
      stay: first.stay,
      need: first.need,
      to: to.id,
    });
    expect([flow.move.kind, taps.length]).toEqual(['offered', 0]);
    flow.take();
    expect(taps).toEqual([
      {
        kind: 'moveSlots',
        moves: [{ stay: first.stay, need: first.need, to: to.id }],
        basedOnSeq: offer.basedOnSeq,
      },
    ]);
    expect(flow.move.kind).toBe('none');
  });

  it('is left without a trace', async () => {
    flow.pick(first);
    await flow.goal(to.id);
    flow.leave();
    flow.take();
    expect([flow.move.kind, taps.length]).toEqual(['none', 0]);
  });

  it('lets go of a load that is tapped once more, and takes another instead', () => {
    flow.pick(first);
    flow.pick(second);
    expect(flow.move).toMatchObject({ kind: 'picked', load: second });
    flow.pick(second);
    expect(flow.move.kind).toBe('none');
  });

  it('hears only the answer to its last question', async () => {
    const late: { give?: (answer: QuestionAnswer) => void } = {};
    answers = [
      () =>
        new Promise((resolve) => {
          late.give = resolve;
        }),
    ];
    flow.pick(first);
    const slow = flow.goal('b/4' as SlotId);
    await flow.goal(to.id);
    late.give?.({ ok: false, refusal: { rule: 'nothing-moves' } });
    await slow;
    expect(flow.move).toMatchObject({ kind: 'offered', to: to.id });
  });

  it('asks anew when the arrangement has changed under the offer', async () => {
    flow.pick(first);
    await flow.goal(to.id);
    flow.see(smokerView);
    expect(asked).toHaveBeenCalledTimes(1);
    answers = [() => Promise.resolve({ ok: true, offer: { ...offer, basedOnSeq: 99 } })];
    flow.see({ ...smokerView, arrangedSeq: offer.basedOnSeq + 1 });
    expect(flow.move.kind).toBe('asking');
    await vi.waitFor(() => expect(flow.move).toMatchObject({ offer: { basedOnSeq: 99 } }));
  });

  it('is of the load as it now is, while it is picked', () => {
    flow.pick(first);
    const outAt = instant(first.outAt + 60_000);
    const racksNow = (of: readonly (typeof racks)[number][]) =>
      of.map((rack) => ({
        ...rack,
        loads: rack.loads.map((load) => (load === first ? { ...load, outAt } : load)),
      }));
    const smokers = smokerView.smokers.map((each) => ({ ...each, racks: racksNow(each.racks) }));
    flow.see({ ...smokerView, smokers });
    expect(flow.move).toMatchObject({ kind: 'picked', load: { stay: first.stay, outAt } });
  });

  it('lets go of a load that has been taken off meanwhile', () => {
    flow.pick(first);
    flow.see({ ...smokerView, smokers: [] });
    expect(flow.move.kind).toBe('none');
  });

  it('says that it cannot be worked out when the hub is not heard', async () => {
    answers = [() => Promise.reject(new LinkLost())];
    flow.pick(first);
    await flow.goal(to.id);
    expect(flow.move.kind).toBe('unheard');
  });

  it('shows why a rack will not do, and can be tried with another', async () => {
    const refusal = { rule: 'slot-too-small', slot: to, needCm2: 900, freeCm2: 100 } as const;
    answers = [() => Promise.resolve({ ok: false, refusal })];
    flow.pick(first);
    await flow.goal(to.id);
    expect(flow.move).toMatchObject({ kind: 'refused', refusal });
    await flow.goal('b/4' as SlotId);
    expect(flow.move.kind).toBe('offered');
  });
});
