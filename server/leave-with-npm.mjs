import { existsSync, readFileSync } from 'node:fs';

// npm runs a script through a shell, and that shell passes no signal on: stopping npm would leave
// a hub behind that nobody sees and that holds the kitchen's log. So the hub leaves when npm does.

const LOOK_EVERY_MS = 500;

/** @param {number} pid @returns {string} what Linux knows of a process; elsewhere nothing */
const statusOf = (pid) => {
  const path = `/proc/${pid}/status`;
  return existsSync(path) ? readFileSync(path, 'utf8') : '';
};

/** @param {number} pid @returns {boolean} dead but not yet buried (state Z) counts as gone */
const isLivingNpm = (pid) => /^Name:\s+npm[\s\S]*^State:\s+[^ZX\s]/m.test(statusOf(pid));

/** The npm above us: our parent or, past the shell, our grandparent. */
function findNpm() {
  const parent = process.ppid;
  const grandparent = Number(/^PPid:\s*(\d+)/m.exec(statusOf(parent))?.[1]);
  return [parent, grandparent].find(isLivingNpm);
}

/** Ends this process, as by a polite kill, once the npm that started it is gone. */
export function leaveWithNpm() {
  const npm = findNpm();
  if (npm === undefined) return;
  const timer = setInterval(() => {
    if (isLivingNpm(npm)) return;
    clearInterval(timer);
    process.kill(process.pid, 'SIGTERM');
  }, LOOK_EVERY_MS);
  timer.unref();
}
