import { resolve } from 'node:path';
import { type Closing, createClosing } from './closing.ts';
import { HELP } from './command-line.mjs';
import { type Options, readOptions } from './options.ts';
import { reportToStderr } from './report.ts';
import { startHub } from './start.ts';

/** `npm start`: reads the command line, serves a kitchen, and stops on Ctrl-C when all is kept. */

/** Ended by Ctrl-C before all was closed: 128 and the number of its signal, as shells have it. */
const PRESSED_AGAIN = 130;
const STOPPED_EARLY = 130;
const ONE_PRESS_MS = 300;

const say = (line: string) => void process.stdout.write(`${line}\n`);
const complain = (line: string) => void process.stderr.write(`${line}\n`);

const read = readOptions(process.argv.slice(2));
if (read.ok) {
  await serve(read.options);
} else if (read.help) {
  process.stdout.write(HELP);
} else {
  read.wrong.forEach(complain);
  complain('All options: npm start -- --help');
  process.exitCode = 2;
}

async function serve(options: Options) {
  const closing = createClosing();
  let isReady = false;
  const leaving = leaveWhenAsked(closing, () => {
    say(isReady ? keptLine(options.folder.path) : 'Stopped before it was ready.');
    return isReady ? 0 : STOPPED_EARLY;
  });
  try {
    const started = await startHub(options, { say, report: reportToStderr }, closing);
    // What is being opened while all is closed again may fail as it likes.
    if (leaving.isAsked) return;
    isReady = started.ok;
    if (started.ok) outliveFaults();
    else {
      started.lines.forEach(complain);
      process.exitCode = 1;
    }
  } catch (fault) {
    if (!leaving.isAsked) throw fault;
  }
}

function keptLine(path: string | null) {
  return path === null
    ? 'Stopped. The demo was thrown away.'
    : `Stopped. The day is kept in ${resolve(path)}.`;
}

/** Closes all that is open by then, and leaves with what `end` says. */
function leaveWhenAsked({ run }: Closing, end: () => number) {
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
      await run();
      process.exit(end());
    } catch (fault) {
      reportToStderr({ level: 'fault', what: 'the hub did not close cleanly', fault });
      process.exit(1);
    }
  }
  process.on('SIGINT', () => void leave(true));
  process.on('SIGTERM', () => void leave(false));
  // The terminal was closed: whatever is said from now on goes nowhere, and is no fault.
  process.on('SIGHUP', () => {
    for (const to of [process.stdout, process.stderr]) to.on('error', () => {});
    void leave(false);
  });
  return {
    get isAsked() {
      return askedMs !== null;
    },
  };
}

function outliveFaults() {
  // A fault that nobody caught is ours. The log is whole at any moment, so the walls go on.
  for (const event of ['uncaughtException', 'unhandledRejection'] as const) {
    process.on(event, (fault: unknown) => reportToStderr({ level: 'fault', what: event, fault }));
  }
}
