import { must } from '../../shared/kernel/index.ts';
import type {
  ClaimAsk,
  LetIn,
  LetInAsk,
  PairAsked,
  PairingShown,
  PairWaited,
  WhoAnswer,
} from '../../shared/protocol/index.ts';
import type { WhoParts } from './front.ts';
import { type Caller, type Done, type Front, refused, TERMINAL, tooMany } from './front.ts';
import { createPairing } from './pairing.ts';
import { createTries } from './tries.ts';

/** How a screen comes in: by the owner's code, or by a code that the desk lets in. */
export type Entrance = {
  readonly asking: readonly PairingShown[];
  claim(caller: Caller, asked: ClaimAsk): Promise<WhoAnswer<LetIn>>;
  askIn(caller: Caller): WhoAnswer<PairAsked>;
  waited(secret: string): WhoAnswer<{ readonly outcome: PairWaited }>;
  letIn(caller: Caller, asked: LetInAsk): Promise<Done>;
};

/** One hand's typing; and all hands together, so that many addresses help nobody. */
const BY_ONE = { burst: 5, everyS: 20 };
const BY_ALL = { burst: 30, everyS: 3 };

export function createEntrance(front: Front, { ownersCode, nowMs }: WhoParts): Entrance {
  const pairing = createPairing(nowMs);
  const one = createTries(BY_ONE, nowMs);
  const all = createTries(BY_ALL, nowMs);
  const limit = (who: string) => tooMany(one.take(who) ?? all.take('all'));
  return {
    get asking() {
      return pairing.shown();
    },
    async claim({ address }, { code, name }) {
      const limited = limit(`claim ${address}`);
      if (limited) return limited;
      const checked = ownersCode?.check(code) ?? 'over';
      if (checked === 'over') return refused({ rule: 'code-over' });
      if (checked === 'wrong') return refused({ rule: 'wrong-code' });
      ownersCode?.use();
      const { screen, token } = front.cutKey();
      const done = await front.act({ kind: 'claim', screen, name }, TERMINAL);
      if (!done.ok) return done;
      return { ok: true, ...must(front.letInAs(screen, token), 'the screen that was let in') };
    },
    askIn({ address }) {
      const limited = limit(`ask ${address}`);
      if (limited) return limited;
      const asked = pairing.ask(address);
      return asked ? { ok: true, ...asked } : refused({ rule: 'too-many-tries', waitS: 60 });
    },
    waited(secret) {
      const outcome = pairing.outcome(secret);
      if (outcome.is !== 'let-in') return { ok: true, outcome };
      const letIn = front.letInAs(outcome.screen, outcome.token);
      return { ok: true, outcome: letIn ? { is: 'let-in', ...letIn } : { is: 'over' } };
    },
    letIn(caller, { code, name, place }) {
      return front.atScreen(caller, async (actor): Promise<Done> => {
        const limited = limit(`let in ${actor.screenId}`);
        if (limited) return limited;
        if (!pairing.has(code)) return refused({ rule: 'wrong-code' });
        const { screen, token } = front.cutKey();
        const done = await front.act({ kind: 'pair', screen, name, place }, actor);
        if (done.ok) pairing.letIn(code, screen, token);
        return done;
      });
    },
  };
}
