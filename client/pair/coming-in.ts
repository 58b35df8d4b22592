import type { LetIn, PairAsked } from '../../shared/protocol/index.ts';
import type { Refusal } from '../../shared/view/index.ts';
import type { WhoDoors } from '../shell/who-doors.ts';

const LOOK_EVERY_MS = 2000;
const AWAY_REST_MS = 3000;

/** What a screen that is not in yet has to show. */
export type ComingIn =
  | { readonly is: 'looking' }
  | { readonly is: 'away' }
  /** The hub waits for its owner's code; no desk could let this screen in. */
  | { readonly is: 'unclaimed' }
  /** It was let in, but its browser keeps nothing: a private window, as a rule. */
  | { readonly is: 'forgetful' }
  | { readonly is: 'asking'; readonly code: string; readonly leftS: number }
  | { readonly is: 'refused'; readonly refusal: Refusal };

export type ComingInPorts = {
  readonly doors: WhoDoors;
  /** Remembers the token; false where the browser keeps nothing. */
  readonly keep: (token: string) => boolean;
  readonly go: (path: string) => void;
  readonly show: (now: ComingIn) => void;
  readonly rest: (ms: number) => Promise<void>;
  readonly signal: AbortSignal;
};

/**
 * The way of a screen from knocking to its place: asks what it is, else shows a code, and a new one
 * when that has run out, until the desk lets it in.
 */
export async function comeIn(ports: ComingInPorts): Promise<void> {
  const { show, rest, signal } = ports;
  while (!signal.aborted) {
    try {
      if (await tryOnce(ports)) return;
    } catch {
      show({ is: 'away' });
      await rest(AWAY_REST_MS);
    }
  }
}

async function tryOnce(ports: ComingInPorts): Promise<boolean> {
  const { doors, go, show, rest } = ports;
  const me = await doors.me();
  if (!me.ok) return refuse(ports, me.refusal);
  if (me.place || me.isOpen) {
    go(me.place?.path ?? '/');
    return true;
  }
  if (me.isUnclaimed) {
    show({ is: 'unclaimed' });
    await rest(LOOK_EVERY_MS);
    return false;
  }
  const asked = await doors.pair();
  return asked.ok ? waitFor(asked, ports) : refuse(ports, asked.refusal);
}

async function waitFor(asked: PairAsked, ports: ComingInPorts): Promise<boolean> {
  const { doors, show, rest, signal } = ports;
  for (let leftS = asked.leftS; leftS > 0 && !signal.aborted; leftS -= LOOK_EVERY_MS / 1000) {
    show({ is: 'asking', code: asked.code, leftS });
    await rest(LOOK_EVERY_MS);
    const answer = await doors.waited(asked.secret);
    if (!answer.ok || answer.outcome.is === 'over') return false;
    if (answer.outcome.is === 'let-in') return take(answer.outcome, ports);
  }
  return false;
}

/** The screen is in: it keeps its token and goes to its place. */
export function take(
  letIn: LetIn,
  { keep, go, show }: Pick<ComingInPorts, 'keep' | 'go' | 'show'>,
): true {
  if (keep(letIn.token)) go(letIn.path);
  else show({ is: 'forgetful' });
  return true;
}

async function refuse({ show, rest }: ComingInPorts, refusal: Refusal): Promise<false> {
  show({ is: 'refused', refusal });
  await rest(waitMsOf(refusal));
  return false;
}

const waitMsOf = (refusal: Refusal) =>
  refusal.rule === 'too-many-tries' ? refusal.waitS * 1000 : AWAY_REST_MS;
