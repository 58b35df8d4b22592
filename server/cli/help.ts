import type { Command } from './command.ts';

const CALL = 'npm run -s coalface --';

/** What there is, a line a command. */
export function helpOfAll(commands: readonly Command[]): string {
  const lines = commands.map((command) => [usage(command), command.about] as const);
  return [
    'Coalface on the command line: the same code as the hub, on files and logs alone.',
    '',
    ...inColumns([...lines, ['help COMMAND', 'All that one of them can do.']]),
    '',
    'It ends with 0 when all is well, with 1 when what it read cannot be or is damaged, and with 2',
    'when the command line itself makes no sense. The hub is started with npm start.',
    '',
  ].join('\n');
}

/** All that one command can do. */
export function helpOf(command: Command): string {
  const options = command.options.map(({ name, value, about, oneOf }) => {
    const what = oneOf ? `${about} One of: ${oneOf.join(', ')}.` : about;
    return [value === null ? `--${name}` : `--${name} ${value}`, what] as const;
  });
  return [
    `${CALL} ${usage(command)}`,
    '',
    command.about,
    ...command.more,
    '',
    ...inColumns([...options, ['--help', 'This.']]),
    '',
  ].join('\n');
}

const usage = ({ name, takes }: Command) => (takes === null ? name : `${name} ${takes}`);

function inColumns(rows: readonly (readonly [string, string])[]): string[] {
  const wide = Math.max(...rows.map(([first]) => first.length));
  return rows.map(([first, second]) => `  ${first.padEnd(wide)}  ${second}`);
}
