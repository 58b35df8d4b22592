/** Collects what comes in one turn and has it dealt with together, one batch at a time. */
export type Mailbox<Letter, Reply> = {
  /** Rejects with whatever `deal` threw. */
  post(letter: Letter): Promise<Reply>;
  /** Resolves when nothing is waiting and nothing under way. */
  idle(): Promise<void>;
};

/** So that one batch stays a short pause even if a hundred screens come back with full outboxes. */
const BATCH_MAX = 256;

/**
 * Group commit: one write, and one sync, for all that arrives while the one before is under way.
 * @param soon runs something once the messages of this turn are all in.
 */
export function createMailbox<Letter, Reply>(
  deal: (letters: readonly Letter[]) => Promise<readonly Reply[]>,
  soon: (run: () => void) => void,
): Mailbox<Letter, Reply> {
  type Waiting = {
    readonly letter: Letter;
    readonly resolve: (reply: Reply) => void;
    readonly reject: (fault: unknown) => void;
  };
  const waiting: Waiting[] = [];
  let busy: Promise<void> | null = null;

  async function dealWithAll() {
    await new Promise<void>(soon);
    while (waiting.length > 0) {
      const batch = waiting.splice(0, BATCH_MAX);
      try {
        const replies = await deal(batch.map(({ letter }) => letter));
        replies.forEach((reply, index) => {
          batch[index]?.resolve(reply);
        });
      } catch (fault) {
        for (const { reject } of batch) reject(fault);
      }
    }
    busy = null;
  }

  return {
    post: (letter) =>
      new Promise((resolve, reject) => {
        waiting.push({ letter, resolve, reject });
        busy ??= dealWithAll();
      }),
    idle: async () => {
      while (busy) await busy;
    },
  };
}
