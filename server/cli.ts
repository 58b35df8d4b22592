import { instant } from '../shared/kernel/index.ts';
import { runCommandLine } from './cli/run.ts';

/** `npm run -s coalface -- …`: reads files and logs, and changes neither. */

// npm runs a script in the project's folder; a path is meant from where it was typed.
const typedIn = process.env['npm_lifecycle_event'] === 'coalface' && process.env['INIT_CWD'];

// Whoever reads the answer may stop early, as `head` does.
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code !== 'EPIPE') throw fault;
});

const { exit, complaints } = await runCommandLine(process.argv.slice(2), {
  say: (text) => void process.stdout.write(text),
  now: () => instant(Date.now()),
  folder: typedIn || process.cwd(),
});
for (const complaint of complaints) process.stderr.write(`${complaint}\n`);
process.exitCode = exit;
