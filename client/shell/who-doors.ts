import type {
  ClaimAsk,
  LanguageAsk,
  LetIn,
  LetInAsk,
  MoveAsk,
  PairAsked,
  PairWaited,
  PinAsk,
  ProveAsk,
  RenameAsk,
  RevokeAsk,
  WhoAmI,
  WhoAnswer,
  WhoList,
} from '../../shared/protocol/index.ts';

/**
 * The hub's doors for who may do what. Each answers with what was found or a refusal, and rejects
 * with HubAway where the hub could not be asked.
 */
export type WhoDoors = {
  me(): Promise<WhoAnswer<WhoAmI>>;
  claim(asked: ClaimAsk): Promise<WhoAnswer<LetIn>>;
  pair(): Promise<WhoAnswer<PairAsked>>;
  waited(secret: string): Promise<WhoAnswer<{ readonly outcome: PairWaited }>>;
  list(): Promise<WhoAnswer<{ readonly who: WhoList }>>;
  letIn(asked: LetInAsk): Promise<WhoAnswer<object>>;
  rename(asked: RenameAsk): Promise<WhoAnswer<object>>;
  move(asked: MoveAsk): Promise<WhoAnswer<object>>;
  revoke(asked: RevokeAsk): Promise<WhoAnswer<object>>;
  setPin(asked: PinAsk): Promise<WhoAnswer<object>>;
  setLanguage(asked: LanguageAsk): Promise<WhoAnswer<object>>;
  prove(asked: ProveAsk): Promise<WhoAnswer<{ readonly forS: number }>>;
  leave(): Promise<WhoAnswer<object>>;
};

/** No hub was there to answer, or something else answered in its place. */
export class HubAway extends Error {
  override readonly name = 'HubAway';
}

/** @param token what this screen was given when it was let in. */
export function whoDoors(token: string | null, ask: typeof fetch = fetch.bind(window)): WhoDoors {
  async function at<Found>(door: string, asked: object = {}): Promise<WhoAnswer<Found>> {
    try {
      const response = await ask(`/api/${door}`, {
        method: 'POST',
        headers: {
          'Content-Type': 'application/json',
          ...(token && { Authorization: `Bearer ${token}` }),
        },
        body: JSON.stringify(asked),
      });
      return (await response.json()) as WhoAnswer<Found>;
    } catch (fault) {
      throw new HubAway(door, { cause: fault });
    }
  }
  return {
    me: () => at('me'),
    claim: (asked) => at('claim', asked),
    pair: () => at('pair'),
    waited: (secret) => at('pair/wait', { secret }),
    list: () => at('who'),
    letIn: (asked) => at('let-in', asked),
    rename: (asked) => at('rename', asked),
    move: (asked) => at('move', asked),
    revoke: (asked) => at('revoke', asked),
    setPin: (asked) => at('pin', asked),
    setLanguage: (asked) => at('language', asked),
    prove: (asked) => at('prove', asked),
    leave: () => at('leave'),
  };
}
