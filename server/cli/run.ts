import { readArguments, unknownWord } from './arguments.ts';
import { type Command, type Ended, misused, type Shell } from './command.ts';
import { commands } from './commands.ts';
import { helpOf, helpOfAll } from './help.ts';

/** Does what a command line asks; what a person must know of it comes back, for stderr. */
export async function runCommandLine(words: readonly string[], shell: Shell): Promise<Ended> {
  const [name = 'help', ...rest] = words;
  if (name === 'help' || name === '--help' || name === '-h') return help(rest, shell);
  const command = commandNamed(name);
  if (command === null) return unknownCommand(name);
  const read = readArguments(command, rest);
  if (read.ok) return command.run(read.asked, shell);
  if (read.help) return help([name], shell);
  return misused([...read.wrong, `All of it: npm run -s coalface -- help ${name}`]);
}

const commandNamed = (name: string): Command | null =>
  commands.find((command) => command.name === name) ?? null;

function unknownCommand(name: string): Ended {
  return misused([unknownWord(name, [...commands.map((command) => command.name), 'help'])]);
}

function help([name]: readonly string[], { say }: Shell): Ended {
  const command = name === undefined ? undefined : commandNamed(name);
  if (name !== undefined && command === null) return unknownCommand(name);
  say(command ? helpOf(command) : helpOfAll(commands));
  return { exit: 0, complaints: [] };
}
