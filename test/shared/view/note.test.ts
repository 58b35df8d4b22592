import { describe, expect, it } from 'vitest';
import { messageSchemas } from '../../../shared/protocol/index.ts';
import { NOTE_MAX, noteFault } from '../../../shared/view/index.ts';

const { command } = messageSchemas();
const sent = (text: string) =>
  command.safeParse({
    ...{ id: 'a-tap', personId: null, screenId: null, tappedAt: 0 },
    ...{ kind: 'note', text, task: null },
  });

describe('what is written in the margin of a task', () => {
  it.each([
    ['nothing', '', 'empty'],
    ['only spaces', ' \t\u00a0 ', 'empty'],
    ['one letter too many', 'a'.repeat(NOTE_MAX + 1), 'long'],
    ['what rings a bell', 'ring\u0007', 'sign'],
    ['what steers a terminal', '\u001b[2J', 'sign'],
    ['two lines', 'one\ntwo', 'sign'],
    ['what turns the way of reading', 'oak \u202e kao', 'sign'],
    ['half a letter', 'oak \ud83d', 'sign'],
  ])('is taken neither by the pad nor by the hub where it is %s', (_, text, fault) => {
    expect(noteFault(text)).toBe(fault);
    expect(sent(text).success).toBe(false);
  });

  it.each([
    ['as long as it may be', 'a'.repeat(NOTE_MAX)],
    ['so long between its spaces', ` ${'a'.repeat(NOTE_MAX)} `],
    ['Spanish', '¿Quién cortó la leña? ½ kg más'],
    ['with a picture of hands', 'wash 🧼 first 👩‍🍳'],
  ])('is taken by both where it is %s, without the spaces around it', (_, text) => {
    expect(noteFault(text)).toBeNull();
    expect(sent(text).data).toMatchObject({ text: text.trim() });
  });
});
