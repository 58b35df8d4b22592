import { expect, it } from 'vitest';
import { type ComingIn, comeIn } from '../../../client/pair/coming-in.ts';
import { HubAway, type WhoDoors } from '../../../client/shell/who-doors.ts';
import type { PairWaited, WhoAmI, WhoAnswer } from '../../../shared/protocol/index.ts';

const stranger: WhoAmI = { isOpen: false, isUnclaimed: false, place: null };
const waiting: PairWaited = { is: 'waiting' };
const letIn: PairWaited = { is: 'let-in', token: 't', path: '/smoker.html', name: 'Fire' };

/** What a screen shows and does at these answers, each list of which is used up in turn. */
async function coming(answers: {
  readonly me: readonly (WhoAmI | Error)[];
  readonly waited?: readonly PairWaited[];
  readonly refused?: WhoAnswer<never>;
  readonly keeps?: boolean;
}) {
  const me = [...answers.me];
  const waited = [...(answers.waited ?? [])];
  const stop = new AbortController();
  const shown: ComingIn[] = [];
  const rests: number[] = [];
  const went: string[] = [];
  const kept: string[] = [];
  let codes = 0;
  const doors = {
    async me() {
      const next = me.shift();
      if (me.length === 0 && answers.waited === undefined) stop.abort();
      if (next instanceof Error) throw next;
      return { ok: true, ...(next ?? stranger) };
    },
    async pair() {
      codes += 1;
      return answers.refused ?? { ok: true, secret: `s${codes}`, code: `CODE0${codes}`, leftS: 4 };
    },
    async waited() {
      const outcome = waited.shift();
      if (!outcome) stop.abort();
      return { ok: true, outcome: outcome ?? waiting };
    },
  } as unknown as WhoDoors;
  await comeIn({
    doors,
    keep: (token) => {
      kept.push(token);
      return answers.keeps ?? true;
    },
    go: (path) => went.push(path),
    show: (now) => shown.push(now),
    rest: async (ms) => void rests.push(ms),
    signal: stop.signal,
  });
  return { shown, rests, went, kept };
}

it('goes to its place at once where the hub knows it', async () => {
  const place = { name: 'Fire', path: '/smoker.html' };
  const { went, shown } = await coming({ me: [{ ...stranger, place }] });
  expect(went).toEqual(['/smoker.html']);
  expect(shown).toEqual([]);
});

it('goes to the list of screens where nobody is asked', async () => {
  expect((await coming({ me: [{ ...stranger, isOpen: true }] })).went).toEqual(['/']);
});

it('shows its code till the desk lets it in, keeps the token, and goes to its place', async () => {
  const { shown, went, kept } = await coming({ me: [stranger], waited: [waiting, letIn] });
  expect(shown).toEqual([
    { is: 'asking', code: 'CODE01', leftS: 4 },
    { is: 'asking', code: 'CODE01', leftS: 2 },
  ]);
  expect(kept).toEqual(['t']);
  expect(went).toEqual(['/smoker.html']);
});

it('asks for a new code when the old one has run out', async () => {
  const { shown } = await coming({
    me: [stranger, stranger],
    waited: [waiting, waiting, letIn],
  });
  expect(shown.map((each) => (each.is === 'asking' ? each.code : each.is))).toEqual([
    'CODE01',
    'CODE01',
    'CODE02',
  ]);
});

it('says that a kitchen has no desk yet', async () => {
  const { shown } = await coming({ me: [{ ...stranger, isUnclaimed: true }] });
  expect(shown).toEqual([{ is: 'unclaimed' }]);
});

it('says that the hub does not answer, and tries again', async () => {
  const { shown, rests } = await coming({ me: [new HubAway('me'), new HubAway('me')] });
  expect(shown).toEqual([{ is: 'away' }, { is: 'away' }]);
  expect(rests).toEqual([3000, 3000]);
});

it('waits as long as it is told to where it has asked too often', async () => {
  const refusal = { rule: 'too-many-tries', waitS: 15 } as const;
  const { shown, rests } = await coming({ me: [stranger], refused: { ok: false, refusal } });
  expect(shown).toEqual([{ is: 'refused', refusal }]);
  expect(rests).toEqual([15_000]);
});

it('says so in a browser that keeps nothing, and goes nowhere', async () => {
  const { shown, went } = await coming({ me: [stranger], waited: [letIn], keeps: false });
  expect(shown.at(-1)).toEqual({ is: 'forgetful' });
  expect(went).toEqual([]);
});
