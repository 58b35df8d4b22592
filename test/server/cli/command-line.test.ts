import { describe, expect, it } from 'vitest';
import { commands } from '../../../server/cli/commands.ts';
import { typed } from './kitchen-at-work.ts';

const here = process.cwd();
const complaintsOf = async (...words: string[]) => (await typed(here, ...words)).complaints;

describe('the command line', () => {
  it.each([[[]], [['help']], [['--help']], [['-h']]])('explains itself to %j', async (words) => {
    const { exit, complaints, said } = await typed(here, ...words);
    expect({ exit, complaints }).toEqual({ exit: 0, complaints: [] });
    for (const { name, about } of commands) {
      expect(said).toContain(`  ${name} `);
      expect(said).toContain(about);
    }
  });

  it.each(commands)(
    'explains every option of $name, before it looks at anything else',
    async (one) => {
      const { exit, said } = await typed(here, one.name, '--nonsense', '--help');
      expect(exit).toBe(0);
      for (const { name } of one.options) expect(said).toContain(`--${name}`);
      expect(await typed(here, 'help', one.name)).toMatchObject({ said });
    },
  );

  it('says in one sentence which commands there are, and which was likely meant', async () => {
    const { exit, complaints } = await typed(here, 'reply', 'my-kitchen');
    expect(exit).toBe(2);
    expect(complaints).toEqual([
      '“reply” is not known here; allowed: plan, replay, print, forecast, safety, ' +
        'record, trace, verify, help. Did you mean replay?',
    ]);
    expect(await complaintsOf('help', 'dance')).toHaveLength(1);
  });

  it('says all that is wrong at once', async () => {
    const wrong = await complaintsOf('plan', '--jsn', 'a', 'b', '--day', '--language=fr');
    expect(wrong).toEqual([
      '“--jsn” is not known here; allowed: --json, --seconds, --kitchen, --catalogue, --day, ' +
        '--language, --help. Did you mean --json?',
      '--day wants a value: --day YYYY-MM-DD.',
      '--language: “fr” is not known here; allowed: en, es.',
      '“b” is one too many: plan takes one FILE|DIR.',
      'All of it: npm run -s coalface -- help plan',
    ]);
  });

  it.each([
    [['plan'], 'plan wants to know what about: plan FILE|DIR.'],
    [['plan', 'x', '--json=yes'], '--json stands alone; it takes no value.'],
    [['plan', '.', '--kitchen', 'k.json'], 'go with a cook plan'],
    [['plan', 'package.json', '--day', '2026-03-04'], 'chooses among the plans of a folder'],
    [['plan', '.', '--day', 'tomorrow'], 'allowed: a day such as'],
    [['replay', '.', '--day', '2026-02-30'], 'allowed: a day such as'],
  ])('ends %j with 2', async (words, sentence) => {
    const { exit, complaints, said } = await typed(here, ...words);
    expect({ exit, said }).toEqual({ exit: 2, said: '' });
    expect(complaints[0]).toContain(sentence);
  });
});
