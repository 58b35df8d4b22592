import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { type ExportFault, fingerprintOf, verifyExport, verifyFolder } from '../record/index.ts';
import {
  type Asked,
  allWell,
  type Command,
  type Ended,
  misused,
  refused,
  type Shell,
} from './command.ts';
import { notThere } from './kitchen-files.ts';
import { hasLog } from './read-log.ts';
import { soMany } from './so-many.ts';

export const verify: Command = {
  name: 'verify',
  takes: 'FILE|DIR',
  about: 'Whether a record is as it was made: an exported file, or all of a kitchen’s log.',
  more: [
    'FILE is what record wrote as json; it is looked through by itself, with no hub and no folder.',
    'DIR is the folder of a kitchen: its whole chain is gone through, and every seal of a day.',
    'A key and a head stand at the foot of every printed sheet: hold them against what is found.',
  ],
  options: [
    { name: 'key', value: 'KEY', about: 'The key that it must be signed with.' },
    { name: 'head', value: 'HEAD', about: 'A head of the chain, which must be in it.' },
  ],
  run: async (asked, shell) => {
    const wrong = marksOf.flatMap(({ name, isOne, allowed }) => {
      const said = asked.options.get(name);
      return said === undefined || isOne.test(said.replace(/\s/g, ''))
        ? []
        : [`--${name}: found ${said}; allowed: ${allowed}, as at the foot of a sheet.`];
    });
    if (wrong.length > 0) return misused(wrong);
    const place = resolve(shell.folder, asked.path);
    const kind = statSync(place, { throwIfNoEntry: false });
    if (!kind) return refused(notThere(asked.path, 'file or folder').refusals.map(sentenceOf));
    return kind.isDirectory() ? ofFolder(place, asked, shell) : ofFile(place, asked, shell);
  },
};

/** How what stands at the foot of a sheet is written. */
const marksOf = [
  { name: 'key', isOne: /^[0-9a-f]{24}$/i, allowed: 'six groups of four, 0 to 9 and a to f' },
  { name: 'head', isOne: /^[0-9a-f]{64}$/i, allowed: '64 of 0 to 9 and a to f' },
];

const bare = (said: string | undefined) => said?.replace(/\s/g, '').toLowerCase();

const sentenceOf = ({ sentence }: { readonly sentence: string }) => sentence;

function ofFile(file: string, { path, options }: Asked, { say }: Shell): Ended {
  const text = readText(file);
  if (text === null) return refused([`${path}: it is not text in UTF-8, and so no record.`]);
  const { faults, exported } = verifyExport(text, options.get('key') ?? null);
  const head = bare(options.get('head'));
  const sentences = faults.map(sayFault);
  const hasHead = exported?.entries.some(({ hash }) => hash === head) ?? false;
  if (head !== undefined && !hasHead) sentences.push(`The head ${head} is not in it.`);
  if (sentences.length > 0 || !exported) return refused(sentences);
  const { from, to, kitchen, madeAt, key } = exported.head;
  const days =
    from === to ? from : `${soMany(exported.days.length, 'day', 'days')}, ${from} to ${to}`;
  say(`${path} is as it was made at ${madeAt}: ${kitchen}, ${days}.\n`);
  for (const { day, why, hash, sealedAt, closedBy } of exported.seals) {
    const who = closedBy === null ? '' : `, closed by ${closedBy}`;
    say(`  ${day} ${why} ${sealedAt}${who}, head ${hash}\n`);
  }
  const kept = soMany(exported.entries.length, 'entry', 'entries');
  say(`  ${kept}; signed with the key ${fingerprintOf(key)}\n`);
  return allWell;
}

function readText(file: string): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(readFileSync(file));
  } catch {
    return null;
  }
}

async function ofFolder(place: string, { path, options }: Asked, { say }: Shell): Promise<Ended> {
  if (!hasLog(place)) return refused([`${path}: there is no log yet.`]);
  const { broken, entries, seals, keys, hasHead } = await verifyFolder(
    place,
    bare(options.get('head')),
  );
  const asked = bare(options.get('key'));
  const others = keys.filter((key) => asked !== undefined && key.replace(/\s/g, '') !== asked);
  const sentences = [
    ...(broken
      ? [`The log is broken at entry ${broken.seq}: it is not what was ${broken.was}.`]
      : []),
    ...(hasHead === false ? [`The head ${options.get('head')} is not in the log.`] : []),
    ...(asked !== undefined && keys.length === 0
      ? ['Nothing is signed yet, so no key is in it: a day is signed when it is closed.']
      : []),
    ...others.map((key) => `Days are signed with another key: ${key}.`),
  ];
  if (sentences.length > 0) return refused(sentences);
  const each = entries === 1 ? 'the first of all' : 'each follows from the one before';
  const held = seals === 1 ? '1 seal holds' : `${seals} seals hold`;
  say(`${path}: ${soMany(entries, 'entry', 'entries')}, ${each}; ${held}.\n`);
  for (const key of keys) say(`  signed with the key ${key}\n`);
  return allWell;
}

function noRecord(other: string | null): string {
  const why =
    other === null
      ? 'it is not JSON, or was cut short'
      : `${other === '' ? 'the whole' : `“${other}”`} is missing in it or is something else`;
  return `It is no record: ${why}. Take the file anew at the desk, or with record --as json.`;
}

function sayFault(fault: ExportFault): string {
  switch (fault.kind) {
    case 'not-a-record':
      return noRecord(fault.other);
    case 'line':
      return `Line ${fault.line} is not as it was written.`;
    case 'entry':
      return `Entry ${fault.seq} (line ${fault.line}) is not what was written.`;
    case 'missing-entry':
      return `Entry ${fault.seq} is missing (line ${fault.line}).`;
    case 'day':
      return `What is said of ${fault.day} is not what was drawn from its entries.`;
    case 'seal':
      return `Seal ${fault.n}, of ${fault.day}, is not as it was made, or one before it is gone.`;
    case 'rewritten':
      return `${fault.day} is not what was signed at ${fault.sealedAt}: it was written anew since.`;
    case 'unsealed':
      return `${fault.day} was never signed, though another day came after it.`;
    case 'digest':
      return 'The head of the file is not as it was made.';
    case 'signature':
      return 'The signature of the whole is not of this key and this text.';
    case 'other-key':
      return `It is signed with another key: ${fault.found}.`;
  }
}
