/** What the hub says of itself to whoever runs it: one thing, with what belongs to it. */
export type Report = (line: ReportLine) => void;

export type ReportLine = {
  readonly level: 'note' | 'warning' | 'fault';
  readonly what: string;
  readonly [detail: string]: unknown;
};

/** Writes each line to stderr as JSON, with its time in UTC. Errors keep their stack. */
export const reportToStderr: Report = (line) => {
  const at = new Date().toISOString();
  process.stderr.write(`${JSON.stringify({ at, ...line }, spellErrors)}\n`);
};

function spellErrors(_key: string, value: unknown): unknown {
  return value instanceof Error ? (value.stack ?? value.message) : value;
}

/**
 * Runs something that must not take its caller down: a fault of ours is said loudly and goes no
 * further.
 */
export function guarded(report: Report, what: string, run: () => void): void {
  try {
    run();
  } catch (fault) {
    report({ level: 'fault', what, fault });
  }
}
