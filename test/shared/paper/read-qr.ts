/**
 * Reads a QR symbol back, module by module, from what ISO/IEC 18004 says of it (tables and masks
 * from memory): level M, versions 1 to 9, as a printer would have it, without any damage. It knows
 * nothing of what made it.
 */
type Modules = readonly (readonly boolean[])[];

/** Blocks of level M, as so many of so many data codewords, and check codewords of each. */
const LEVEL_M = [
  { blocks: [16], checks: 10 },
  { blocks: [28], checks: 16 },
  { blocks: [44], checks: 26 },
  { blocks: [32, 32], checks: 18 },
  { blocks: [43, 43], checks: 24 },
  { blocks: [27, 27, 27, 27], checks: 16 },
  { blocks: [31, 31, 31, 31], checks: 18 },
  { blocks: [38, 38, 39, 39], checks: 22 },
  { blocks: [36, 36, 36, 37, 37], checks: 22 },
] as const;

/** Centres of alignment patterns, by version. */
const ALIGNED = [
  ...[[], [6, 18], [6, 22], [6, 26], [6, 30], [6, 34]],
  ...[
    [6, 22, 38],
    [6, 24, 42],
    [6, 26, 46],
  ],
];

const MASKS: readonly ((y: number, x: number) => boolean)[] = [
  (y, x) => (y + x) % 2 === 0,
  (y) => y % 2 === 0,
  (_, x) => x % 3 === 0,
  (y, x) => (y + x) % 3 === 0,
  (y, x) => (Math.floor(y / 2) + Math.floor(x / 3)) % 2 === 0,
  (y, x) => ((y * x) % 2) + ((y * x) % 3) === 0,
  (y, x) => (((y * x) % 2) + ((y * x) % 3)) % 2 === 0,
  (y, x) => (((y + x) % 2) + ((y * x) % 3)) % 2 === 0,
];

export type Read = {
  readonly text: string;
  readonly version: number;
  readonly codewords: readonly number[];
};

/** What a symbol without its quiet zone says; throws where it is none. */
export function readQr(modules: Modules): Read {
  const size = modules.length;
  const version = (size - 17) / 4;
  const level = LEVEL_M[version - 1];
  if (!level) throw new Error(`no version of ${size} modules`);
  const mask = maskOf(modules);
  const codewords = bytesOf(
    pathOf(size, version).map(([y, x]) => at(modules, y, x) !== mask(y, x)),
  );
  const { data, all } = unwoven(codewords, level);
  for (const block of all)
    if (!isSound(block, level.checks)) throw new Error('a block is not sound');
  return { text: textOf(data, version), version, codewords };
}

const at = (modules: Modules, y: number, x: number) => modules[y]?.[x] ?? false;

/** The format around the first finder: fifteen bits, of which ten check the other five. */
function maskOf(modules: Modules) {
  const places = [
    ...[0, 1, 2, 3, 4, 5, 7, 8].map((x) => [8, x] as const),
    ...[7, 5, 4, 3, 2, 1, 0].map((y) => [y, 8] as const),
  ];
  const format = places.reduce((sum, [y, x]) => sum * 2 + Number(at(modules, y, x)), 0) ^ 0x5412;
  let rest = format;
  for (let bit = 14; bit >= 10; bit--) if (rest & (1 << bit)) rest ^= 0x537 << (bit - 10);
  if (rest !== 0) throw new Error('the format is damaged');
  if (format >> 13 !== 0) throw new Error('not of level M');
  const mask = MASKS[(format >> 10) & 7];
  if (!mask) throw new Error('no such mask');
  return mask;
}

/** Two columns at a time from the right, up and down by turns, past all that is no data. */
function pathOf(size: number, version: number): [number, number][] {
  const path: [number, number][] = [];
  let isUp = true;
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right = 5;
    for (let step = 0; step < size; step++) {
      const y = isUp ? size - 1 - step : step;
      for (const x of [right, right - 1]) if (!isFixed(y, x, size, version)) path.push([y, x]);
    }
    isUp = !isUp;
  }
  return path;
}

function isFixed(y: number, x: number, size: number, version: number): boolean {
  const far = size - 8;
  if ((y < 9 && x < 9) || (y < 9 && x >= far) || (y >= far && x < 9)) return true;
  if (y === 6 || x === 6) return true;
  if (version >= 7 && ((y < 6 && x >= size - 11) || (x < 6 && y >= size - 11))) return true;
  const centres = ALIGNED[version - 1] ?? [];
  return centres.some((cy) =>
    centres.some((cx) => {
      const last = centres.at(-1);
      const isFinder =
        (cy === 6 && cx === 6) || (cy === 6 && cx === last) || (cy === last && cx === 6);
      return !isFinder && Math.abs(y - cy) <= 2 && Math.abs(x - cx) <= 2;
    }),
  );
}

function bytesOf(bits: readonly boolean[]): number[] {
  return Array.from({ length: Math.floor(bits.length / 8) }, (_, i) =>
    bits.slice(8 * i, 8 * i + 8).reduce((sum, bit) => sum * 2 + Number(bit), 0),
  );
}

/** Codewords stand by turns, one of each block. */
function unwoven(codewords: readonly number[], level: (typeof LEVEL_M)[number]) {
  const blocks = level.blocks.map((length) => ({ length: length as number, data: [] as number[] }));
  let next = 0;
  const most = Math.max(...level.blocks);
  for (let i = 0; i < most; i++) {
    for (const block of blocks) if (i < block.length) block.data.push(codewords[next++] ?? 0);
  }
  const checks = blocks.map((): number[] => []);
  for (let i = 0; i < level.checks; i++) {
    for (const own of checks) own.push(codewords[next++] ?? 0);
  }
  return {
    data: blocks.flatMap(({ data }) => data),
    all: blocks.map(({ data }, i) => [...data, ...(checks[i] ?? [])]),
  };
}

/** Nothing remains where the powers of two are put into it, in the field of 256 by 0x11d. */
function isSound(block: readonly number[], checks: number): boolean {
  const times = (a: number, b: number): number => {
    let [sum, left] = [0, a];
    for (let bit = 0; bit < 8; bit++) {
      if (b & (1 << bit)) sum ^= left;
      left = left & 0x80 ? (left << 1) ^ 0x11d : left << 1;
    }
    return sum;
  };
  let power = 1;
  for (let i = 0; i < checks; i++) {
    if (block.reduce((sum, codeword) => times(sum, power) ^ codeword, 0) !== 0) return false;
    power = times(power, 2);
  }
  return true;
}

const LETTERS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

/** Stretches of figures, capitals or bytes, each with its kind and its length. */
function textOf(data: readonly number[], version: number): string {
  const bits = data.map((byte) => byte.toString(2).padStart(8, '0')).join('');
  if (version > 9) throw new Error('lengths are written otherwise');
  let place = 0;
  const take = (count: number) => {
    const value = Number.parseInt(bits.slice(place, place + count) || '0', 2);
    place += count;
    return value;
  };
  let text = '';
  while (bits.length - place >= 4) {
    const kind = take(4);
    if (kind === 0) break;
    if (kind === 1) {
      for (let left = take(10); left > 0; left -= 3) {
        const count = Math.min(3, left);
        text += String(take([0, 4, 7, 10][count] ?? 0)).padStart(count, '0');
      }
    } else if (kind === 2) {
      for (let left = take(9); left > 0; left -= 2) {
        const value = take(left > 1 ? 11 : 6);
        if (left > 1) text += LETTERS[Math.floor(value / 45)] ?? '?';
        text += LETTERS[value % 45] ?? '?';
      }
    } else if (kind === 4) {
      const bytes = Array.from({ length: take(8) }, () => take(8));
      text += new TextDecoder().decode(new Uint8Array(bytes));
    } else throw new Error(`a stretch of kind ${kind}`);
  }
  return text;
}
