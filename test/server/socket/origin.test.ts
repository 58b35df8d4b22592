import { describe, expect, it } from 'vitest';
import { isOurPage } from '../../../server/socket/origin.ts';

const names = ['pit', 'pit.local'];

describe('a socket', () => {
  it.each([
    ['our own page', 'http://192.168.1.5:4600', '192.168.1.5:4600'],
    ['our own page under our own name', 'http://pit.local:4600', 'pit.local:4600'],
    ['our own page over IPv6', 'http://[fe80::1]:4600', '[fe80::1]:4600'],
    [
      'a page on another port of this machine, seen from it',
      'http://localhost:5173',
      '127.0.0.1:4600',
    ],
    ['a program that is no browser', undefined, 'pit:4600'],
  ])('is opened for %s', (_who, origin, host) => {
    expect(isOurPage({ origin, host }, names)).toBe(true);
  });

  it.each([
    ['a page from elsewhere', 'http://evil.example', '192.168.1.5:4600'],
    ['a page from elsewhere that reaches us locally', 'http://evil.example', 'localhost:4600'],
    [
      'a page of another port of ours, over the network',
      'http://192.168.1.5:80',
      '192.168.1.5:4600',
    ],
    [
      'a foreign name that was made to point at us',
      'http://evil.example:4600',
      'evil.example:4600',
    ],
    ['a page without an origin of its own', 'null', 'localhost:4600'],
    ['a page that asks for no host', 'http://localhost', undefined],
    ['a page with an origin that is none', 'x', 'pit:4600'],
  ])('is not opened for %s', (_who, origin, host) => {
    expect(isOurPage({ origin, host }, names)).toBe(false);
  });
});

describe('a socket over TLS', () => {
  it.each([
    ['our own page', 'https://192.168.1.5:4600', '192.168.1.5:4600', true],
    ['our own page under the usual port', 'https://pit.local', 'pit.local', true],
    [
      'a page of the same place that came in the open, which anybody on the network can write',
      'http://192.168.1.5:4600',
      '192.168.1.5:4600',
      false,
    ],
    ['a page from elsewhere', 'https://evil.example', '192.168.1.5:4600', false],
  ])('asks whose it is: %s', (_who, origin, host, isOurs) => {
    expect(isOurPage({ origin, host, isSecure: true }, names)).toBe(isOurs);
  });

  it('of a proxy is our own, which passes on what it heard over TLS', () => {
    const knock = { origin: 'https://pit.local', host: 'pit.local', isSecure: false };
    expect(isOurPage(knock, names)).toBe(true);
  });
});
