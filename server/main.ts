import { resolve } from 'node:path';
import { HELP } from './command-line.mjs';
import { readOptions } from './options.ts';
import { reportToStderr } from './report.ts';
import { startHub } from './start.ts';

/** `npm start`: reads the command line, serves a kitchen, and stops on Ctrl-C when all is kept. */

/** Ended by Ctrl-C before all was closed: 128 and the number of its signal, as shells have it. */
const PRESSED_AGAIN = 130;
const ONE_PRESS_MS = 300;

const say = (line: string) => void process.stdout.write(`${line}\n`);
const complain = (line: string) => void process.stderr.write(`${line}\n`);

const read = readOptions(process.argv.slice(2));
if (read.ok) {
  const started = await startHub(read.options, { say, report: reportToStderr });
  if (started.ok) serveUntilStopped(started.stop, keptLine(read.options.folder.path));
  else {
    started.lines.forEach(complain);
    process.exitCode = 1;
  }
} else if (read.help) {
  process.stdout.write(HELP);
} else {
  read.wrong.forEach(complain);
  complain('All options: npm start -- --help');
  process.exitCode = 2;
}

function keptLine(path: string | null) {
  return path === null
    ? 'Stopped. The demo was thrown away.'
    : `Stopped. The day is kept in ${resolve(path)}.`;
}

function serveUntilStopped(stop: () => Promise<void>, last: string) {
  let askedMs: number | null = null;
  async function leave(isPressed: boolean) {
    const nowMs = performance.now();
    if (askedMs !== null) {
      // npm passes on what the terminal sends as well: one Ctrl-C may come twice.
      if (isPressed && nowMs - askedMs > ONE_PRESS_MS) process.exit(PRESSED_AGAIN);
      return;
    }
    askedMs = nowMs;
    try {
      await stop();
      say(last);
      process.exit(0);
    } catch (fault) {
      reportToStderr({ level: 'fault', what: 'the hub did not close cleanly', fault });
      process.exit(1);
    }
  }
  process.on('SIGINT', () => void leave(true));
  process.on('SIGTERM', () => void leave(false));
  // A fault that nobody caught is ours. The log is whole at any moment, so the walls go on.
  for (const event of ['uncaughtException', 'unhandledRejection'] as const) {
    process.on(event, (fault: unknown) => reportToStderr({ level: 'fault', what: event, fault }));
  }
}
