import type { CommandId } from '../../shared/kernel/index.ts';
import type { Interface } from '../../shared/words/index.ts';
import type { Choice } from './choice-strip.ts';

type Tell = (name: 'seen' | 'all-seen', id: CommandId | null) => void;

/** The boxes beside a refusal: this one is read, or all of the `unread` are. */
export function seenChoices(
  { id, unread }: { readonly id: CommandId; readonly unread: number },
  { seen, allSeen }: Interface,
  tell: Tell,
): Choice[] {
  const one = { label: seen, choose: () => tell('seen', id) };
  const all = { label: allSeen(unread), choose: () => tell('all-seen', null) };
  return unread > 1 ? [one, all] : [one];
}
