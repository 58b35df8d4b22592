import { HELP, readOptions } from './options.ts';
import { reportToStderr } from './report.ts';
import { startHub } from './start.ts';

/** `npm start`: reads the command line, serves a kitchen, and stops on Ctrl-C when all is kept. */

const say = (line: string) => void process.stdout.write(`${line}\n`);
const complain = (line: string) => void process.stderr.write(`${line}\n`);

const read = readOptions(process.argv.slice(2));
if (read.ok) {
  const started = await startHub(read.options, { say, report: reportToStderr });
  if (started.ok) serveUntilStopped(started.stop);
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

function serveUntilStopped(stop: () => Promise<void>) {
  let isStopping = false;
  async function leave() {
    if (isStopping) return;
    isStopping = true;
    try {
      await stop();
      process.exit(0);
    } catch (fault) {
      reportToStderr({ level: 'fault', what: 'the hub did not close cleanly', fault });
      process.exit(1);
    }
  }
  process.on('SIGINT', () => void leave());
  process.on('SIGTERM', () => void leave());
  // A fault that nobody caught is ours. The log is whole at any moment, so the walls go on.
  for (const event of ['uncaughtException', 'unhandledRejection'] as const) {
    process.on(event, (fault: unknown) => reportToStderr({ level: 'fault', what: event, fault }));
  }
}
