export { namesHere, outsideAddresses } from './names.ts';
export type { Authority } from './own.ts';
export { openTransport, type TlsChoice, type Transport } from './transport.ts';
export { isOverTls, isUnheard } from './who-may-speak-plain.ts';
