import type { CookOffer, LoadDrawing, Refusal } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { pitWords, sayCookOffer, sayRefusal } from '../../shared/words/index.ts';

/** One thing that might be done about a load, as the hub's door takes it. */
export type Might =
  | { readonly fireByF: number }
  | { readonly wrapNow: 'paper' | 'foil' }
  | { readonly earlierByMin: number };

export type MightAnswer =
  | { readonly ok: true; readonly offer: CookOffer }
  | { readonly ok: false; readonly refusal: Refusal };

export type AskMight = (asked: { readonly stay: string } & Might) => Promise<MightAnswer>;

/** The door of the hub that this page came from; null where no hub was there to answer. */
export function mightDoor(token: string | null, ask: typeof fetch = fetch.bind(window)): AskMight {
  return async (asked) => {
    const response = await ask('/api/what-if', {
      method: 'POST',
      headers: {
        'Content-Type': 'application/json',
        ...(token && { Authorization: `Bearer ${token}` }),
      },
      body: JSON.stringify(asked),
    });
    return (await response.json()) as MightAnswer;
  };
}

/** Asks what would come of something for the load that is picked, and has it said. */
export class MightFlow {
  readonly #ask: AskMight;
  readonly #changed: () => void;
  #asked = 0;
  #said: readonly string[] = [];

  constructor(ask: AskMight, changed: () => void) {
    this.#ask = ask;
    this.#changed = changed;
  }

  /** What the hub said of the last thing asked; nothing where nothing was. */
  get said(): readonly string[] {
    return this.#said;
  }

  async ask({ stay }: Pick<LoadDrawing, 'stay'>, might: Might, say: Say): Promise<void> {
    this.#asked += 1;
    const mine = this.#asked;
    this.#become([pitWords[say.language].asking]);
    const said = await this.#answer({ stay, ...might }, say);
    // Another question was put, or the load let go, while this one was under way.
    if (mine === this.#asked) this.#become(said);
  }

  forget(): void {
    this.#asked += 1;
    if (this.#said.length > 0) this.#become([]);
  }

  async #answer(asked: Parameters<AskMight>[0], say: Say): Promise<readonly string[]> {
    try {
      const answer = await this.#ask(asked);
      return answer.ok ? sayCookOffer(answer.offer, say) : [sayRefusal(answer.refusal, say)];
    } catch {
      return [pitWords[say.language].cannotAsk];
    }
  }

  #become(said: readonly string[]): void {
    this.#said = said;
    this.#changed();
  }
}
