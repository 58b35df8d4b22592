import type { Permitted } from './permitted.ts';

/** The extension of RFC 5280 §4.2.1.10 by its object identifier. */
export const NAME_CONSTRAINTS = '2.5.29.30';

const SEQUENCE = 0x30;
/** Tags of the choices used here, in that section and in the general names of §4.2.1.6. */
const PERMITTED = 0xa0;
const DNS_NAME = 0x82;
const IP_ADDRESS = 0x87;

/**
 * The value of the extension in DER (X.690): what may be vouched for, and so nothing else of these
 * two kinds. The certificate library knows no word for it.
 */
export function nameConstraints({ dns, ip }: Permitted): Buffer {
  const subtrees = [
    ...dns.map((name) => der(SEQUENCE, der(DNS_NAME, Buffer.from(name, 'ascii')))),
    ...ip.map((block) => der(SEQUENCE, der(IP_ADDRESS, block))),
  ];
  return der(SEQUENCE, der(PERMITTED, Buffer.concat(subtrees)));
}

/** Reads what `nameConstraints` wrote. */
export function readNameConstraints(value: Buffer): Permitted {
  const [permitted] = elements(value).flatMap(({ content }) => elements(content));
  const bases = elements(permitted?.content ?? Buffer.alloc(0)).flatMap(({ content }) =>
    elements(content),
  );
  return {
    dns: bases.flatMap(({ tag, content }) => (tag === DNS_NAME ? [content.toString('ascii')] : [])),
    ip: bases.flatMap(({ tag, content }) => (tag === IP_ADDRESS ? [content] : [])),
  };
}

type Element = { readonly tag: number; readonly content: Buffer };

/** What stands one after another in DER. */
function elements(bytes: Buffer): Element[] {
  const [tag, first = 0] = bytes;
  if (tag === undefined) return [];
  const more = first < 0x80 ? 0 : first & 0x7f;
  const length = more === 0 ? first : bytes.readUIntBE(2, more);
  const start = 2 + more;
  const content = bytes.subarray(start, start + length);
  return [{ tag, content }, ...elements(bytes.subarray(start + length))];
}

function der(tag: number, content: Buffer): Buffer {
  return Buffer.concat([Buffer.from([tag, ...lengthOf(content.length)]), content]);
}

/** One byte up to 127; above, how many bytes follow, and then they. */
function lengthOf(length: number): number[] {
  if (length < 0x80) return [length];
  return length < 0x100 ? [0x81, length] : [0x82, length >> 8, length & 0xff];
}
