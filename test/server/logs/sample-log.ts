import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  EMPTY_HEAD,
  type Entry,
  type EventLog,
  memoryDisk,
  openMemoryLog,
} from '../../../server/store/index.ts';
import type { CommandId } from '../../../shared/kernel/index.ts';

// A log as it was stored, one entry in a line of JSON: its number, its command, its hash, and its
// bytes as text.

type Line = {
  readonly seq: number;
  readonly command: string;
  readonly hash: string;
  readonly bytes: string;
};

const fileOf = (version: number) => join(import.meta.dirname, `version-${version}.jsonl`);

/** The log that a hub of this version left. */
export function sampleLog(version: number): EventLog {
  const disk = memoryDisk();
  const entries = readFileSync(fileOf(version), 'utf8')
    .trimEnd()
    .split('\n')
    .map((text): Entry => {
      const { seq, command, hash, bytes }: Line = JSON.parse(text);
      return { seq, commandId: command as CommandId, hash, bytes: new TextEncoder().encode(bytes) };
    });
  const { seq, hash } = entries.at(-1) ?? EMPTY_HEAD;
  disk.commit({ head: { seq, hash, epoch: 'then' }, entries, answers: [] });
  return openMemoryLog(disk);
}

/**
 * Leaves a log for later versions to read. Once released it stays: an existing file is not written
 * over.
 */
export function writeSampleLog(version: number, entries: readonly Entry[]): void {
  const lines = entries.map(({ seq, commandId, hash, bytes }) => {
    const line: Line = { seq, command: commandId, hash, bytes: new TextDecoder().decode(bytes) };
    return `${JSON.stringify(line)}\n`;
  });
  writeFileSync(fileOf(version), lines.join(''), { flag: 'wx' });
}
