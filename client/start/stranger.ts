import type { WhoDoors } from '../shell/who-doors.ts';

/** A device that was not let in has nothing to choose here: it goes where it can ask to be. */
export async function toPairIfStranger(
  doors: Pick<WhoDoors, 'me'>,
  go: (path: string) => void,
): Promise<void> {
  try {
    const me = await doors.me();
    if (me.ok && !me.isOpen && me.place === null) go('/pair.html');
  } catch {
    // With the hub away there is nobody to ask; the list looks for it again by itself.
  }
}
