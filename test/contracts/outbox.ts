import { describe, expect, it } from 'vitest';
import type { KeptTap, Outbox } from '../../client/sync/index.ts';
import type { CommandId, TaskId } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';

const tap = (id: string): KeptTap => ({
  command: {
    id: id as CommandId,
    kind: 'start',
    task: 'ribs-1/square' as TaskId,
    personId: null,
    screenId: null,
    tappedAt: instant(1),
  },
  refusal: null,
});

/**
 * What every outbox keeps to. `open` gives a fresh outbox, and the same again as after the page was
 * loaded anew.
 */
export function outboxContract(name: string, open: () => { outbox: Outbox; again: () => Outbox }) {
  describe(`the outbox in ${name}`, () => {
    it('gives the taps back in the order of the finger, not of their ids', async () => {
      const { outbox } = open();
      for (const id of ['c', 'a', 'b']) await outbox.put(tap(id));
      expect((await outbox.all()).map(({ command }) => command.id)).toEqual(['c', 'a', 'b']);
    });

    it('still has them when the page was loaded anew, and goes on after them', async () => {
      const { outbox, again } = open();
      await outbox.put(tap('b'));
      const loaded = again();
      await loaded.put(tap('a'));
      expect(await loaded.all()).toEqual([tap('b'), tap('a')]);
    });

    it('keeps a tap in its place when its refusal is written down', async () => {
      const { outbox } = open();
      await outbox.put(tap('a'));
      await outbox.put(tap('b'));
      const refused: KeptTap = { ...tap('a'), refusal: { rule: 'not-started' } };
      await outbox.put(refused);
      expect(await outbox.all()).toEqual([refused, tap('b')]);
    });

    it('forgets what was removed, and bears it twice', async () => {
      const { outbox } = open();
      await outbox.put(tap('a'));
      await outbox.put(tap('b'));
      await outbox.remove('a' as CommandId);
      await outbox.remove('a' as CommandId);
      expect(await outbox.all()).toEqual([tap('b')]);
    });
  });
}
