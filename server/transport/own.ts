import { createHash, createPrivateKey, X509Certificate } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CannotStart } from '../cannot-start.ts';
import { makeAuthority, type Pair, permittedBy, signFor } from './certificates.ts';
import type { HostNames } from './names.ts';
import { isPermitted, permittedFor } from './permitted.ts';

const DAY_MS = 86_400_000;
/** A hub that stands still over a holiday shall find it good when it comes back. */
const RENEWED_BEFORE_MS = 30 * DAY_MS;

/** What a tablet installs once. */
export type Authority = {
  readonly pem: string;
  /** SHA-256 of the certificate, in pairs with colons between, as devices show it. */
  readonly fingerprint: string;
};

/** A certificate for TLS, and what its reader should know. */
export type Held = {
  readonly pair: Pair;
  /** Null where somebody else vouches for the hub. */
  readonly authority: Authority | null;
  readonly lines: readonly string[];
};

export type OwnParts = {
  /** The kitchen's folder. */
  readonly folder: string;
  /** What the kitchen is called. */
  readonly kitchen: string;
  readonly names: HostNames;
  readonly nowMs: number;
};

/**
 * The certificate of a kitchen that is its own authority. Both lie in its folder, readable by their
 * owner alone. The authority is made once; the hub's is signed anew before it ends and whenever the
 * machine is called otherwise than it says.
 */
export async function ownCertificate({ folder, kitchen, names, nowMs }: OwnParts): Promise<Held> {
  const at = join(folder, 'tls');
  mkdirSync(at, { recursive: true, mode: 0o700 });
  const before = authorityIn(at);
  const isOver = before !== null && endMs(before) - nowMs < RENEWED_BEFORE_MS;
  const authority = before && !isOver ? before : await newAuthority(at, { kitchen, names, nowMs });
  const asked = createHash('sha256').update(JSON.stringify(names)).update(authority.cert);
  const wanted = asked.digest('hex');
  const held = readPair(at, 'hub');
  const isGood = held !== null && endMs(held) - nowMs > RENEWED_BEFORE_MS && wordIn(at) === wanted;
  const { pair, lines } = isGood
    ? { pair: held, lines: [] }
    : await newHub(at, { authority, names, nowMs, wanted });
  const renewed = isOver ? [OVER] : [];
  return { pair, authority: shown(authority.cert), lines: [...renewed, ...lines] };
}

const OVER =
  'The authority of this kitchen had come to its end and was made anew: every tablet has to ' +
  'install it again.';

async function newAuthority(
  at: string,
  { kitchen, names, nowMs }: Pick<OwnParts, 'kitchen' | 'names' | 'nowMs'>,
): Promise<Pair> {
  const made = await makeAuthority(kitchen, permittedFor(names), nowMs);
  writePair(at, 'authority', made);
  return made;
}

type NewHub = Pick<OwnParts, 'names' | 'nowMs'> & {
  readonly authority: Pair;
  readonly wanted: string;
};

async function newHub(at: string, { authority, names, nowMs, wanted }: NewHub) {
  const permitted = await permittedBy(authority.cert);
  const [dns, addresses] = [names.dns, names.addresses].map((all) =>
    all.filter((each) => isPermitted(each, permitted)),
  );
  const signed = { dns: dns ?? [], addresses: addresses ?? [] };
  const pair = await signFor(signed, authority, nowMs);
  writePair(at, 'hub', pair);
  writeSafely(join(at, ASKED_FOR), wanted);
  const left = [...names.dns, ...names.addresses].filter((each) => !isPermitted(each, permitted));
  return {
    pair,
    lines: left.map(
      (each) =>
        `The authority in ${at} was made before this machine was ${each}, and cannot vouch for ` +
        'it. Delete that folder for a new one; every tablet then has to install it.',
    ),
  };
}

/** What the hub's certificate was signed for, and by whom, as a digest. */
const ASKED_FOR = 'hub-asked-for';

function wordIn(at: string): string | null {
  const file = join(at, ASKED_FOR);
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}

const endMs = ({ cert }: Pair) => Date.parse(new X509Certificate(cert).validTo);

const shown = (pem: string): Authority => ({
  pem,
  fingerprint: new X509Certificate(pem).fingerprint256,
});

/** Null where there is none yet; of one that is damaged somebody has to know before it is gone. */
function authorityIn(at: string): Pair | null {
  if (!existsSync(join(at, 'authority.pem'))) return null;
  const found = readPair(at, 'authority');
  if (found) return found;
  throw new CannotStart(
    `The authority in ${at} cannot be read, or its two files do not belong together.`,
    'Put them back as they were, or delete that folder: a new authority is made then, and every ' +
      'tablet has to install it.',
  );
}

/** Null where they are missing, cannot be read, or do not belong together. */
function readPair(at: string, name: string): Pair | null {
  try {
    const [cert, key] = [`${name}.pem`, `${name}-key.pem`].map((file) =>
      readFileSync(join(at, file), 'utf8'),
    );
    const pair = { cert: cert ?? '', key: key ?? '' };
    const isPair = new X509Certificate(pair.cert).checkPrivateKey(createPrivateKey(pair.key));
    return isPair ? pair : null;
  } catch {
    return null;
  }
}

function writePair(at: string, name: string, { cert, key }: Pair): void {
  writeSafely(join(at, `${name}-key.pem`), key);
  writeSafely(join(at, `${name}.pem`), cert);
}

/** By renaming, so that no half of it is ever read; to be read by its owner alone. */
function writeSafely(file: string, text: string): void {
  writeFileSync(`${file}.new`, text, { mode: 0o600 });
  renameSync(`${file}.new`, file);
}
