import { once } from 'node:events';
import type { Server } from 'node:http';
import { type AddressInfo, isIP } from 'node:net';
import { USUAL_PORT } from './command-line.mjs';
import { outsideAddresses } from './transport/index.ts';

const EVERY_ADDRESS = '0.0.0.0';

/** How many ports after the usual one are tried. */
const PORTS_TRIED = 20;

export type Listening =
  | { readonly ok: true; readonly port: number; readonly insteadOf: number | null }
  | { readonly ok: false; readonly why: string };

/**
 * Opens the door on the port that was asked for, or else on the usual one or the next that is free.
 */
export async function listen(
  server: Server,
  host: string,
  port: number | null,
): Promise<Listening> {
  const ports = port === null ? usualPorts() : [port];
  for (const candidate of ports) {
    const fault = await tryListen(server, host, candidate);
    if (fault === null) {
      const bound = (server.address() as AddressInfo).port;
      const isUsual = port !== null || bound === USUAL_PORT;
      return { ok: true, port: bound, insteadOf: isUsual ? null : USUAL_PORT };
    }
    if (fault.code !== 'EADDRINUSE') return { ok: false, why: whyNot(fault, host, candidate) };
  }
  return { ok: false, why: whyTaken(port) };
}

/** Screens come to the address that they know: one that was asked for is not changed by us. */
function whyTaken(port: number | null): string {
  if (port === null) {
    const [first, last] = [USUAL_PORT, USUAL_PORT + PORTS_TRIED - 1];
    return `Ports ${first} to ${last} are taken by other programs: say another with --port.`;
  }
  return (
    `Port ${port} is taken by another program, and screens that know this address would not find ` +
    'the hub at another: stop that program, or say another port with --port.'
  );
}

const usualPorts = () => Array.from({ length: PORTS_TRIED }, (_, i) => USUAL_PORT + i);

async function tryListen(server: Server, host: string, port: number) {
  try {
    const listening = once(server, 'listening');
    server.listen(port, host);
    await listening;
    return null;
  } catch (fault) {
    return fault as NodeJS.ErrnoException;
  }
}

function whyNot({ code, message }: NodeJS.ErrnoException, host: string, port: number): string {
  if (code === 'EADDRNOTAVAIL') return `${host} is no address of this machine: leave --host out.`;
  if (code === 'EACCES') return `Port ${port} is reserved: say one from 1024 up with --port.`;
  return `The door cannot be opened on ${host}:${port}: ${message}.`;
}

/** Where the screens are, as other devices or this one can ask for them; this one's is the last. */
export function addresses(host: string, port: number): string[] {
  const all = host === EVERY_ADDRESS ? [...outsideAddresses(), '127.0.0.1'] : [host];
  return all.map((address) => `http://${spelled(address)}:${port}`);
}

/**
 * Where other devices find the screens over TLS: under the name that was given, or else in figures,
 * since a wall panel may not find the machine by its name.
 */
export function secureAddresses(host: string, port: number, name: string | null): string[] {
  const figures = host === EVERY_ADDRESS ? outsideAddresses() : [host];
  const all = name === null ? figures : [name];
  return all.map((address) => `https://${spelled(address)}:${port}`);
}

const spelled = (address: string) => (isIP(address) === 6 ? `[${address}]` : address);
