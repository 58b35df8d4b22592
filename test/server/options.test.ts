import { describe, expect, it } from 'vitest';
import { HELP } from '../../server/command-line.mjs';
import { readOptions } from '../../server/options.ts';

const optionsOf = (...args: string[]) => {
  const read = readOptions(args);
  return read.ok ? read.options : null;
};
const wrongOf = (...args: string[]) => {
  const read = readOptions(args);
  return read.ok || read.help ? null : read.wrong;
};

describe('the command line', () => {
  it('runs a demo that is thrown away, for this machine alone, if nothing is said', () => {
    expect(optionsOf()).toEqual({
      folder: { kind: 'demo', path: null },
      speed: 1,
      port: null,
      host: '127.0.0.1',
      isOpen: true,
      isClaiming: false,
    });
  });

  it('keeps a kitchen in the folder it is given', () => {
    expect(optionsOf('--data', 'mine')?.folder).toEqual({ kind: 'kitchen', path: 'mine' });
  });

  it.each([
    [['--bad-option'], 'There is no option --bad-option'],
    [['--data'], '--data needs a word after it that does not begin with -'],
    [['--data', '--lan'], '--data needs a word after it that does not begin with -'],
    [['--lan=yes'], '--lan takes no word after it'],
    [['--help=yes'], '--help takes no word after it'],
    [['--data', 'a', '--data', 'b'], '--data is said more than once'],
    [
      ['my-kitchen'],
      '“my-kitchen” belongs to no option; a kitchen’s folder is said as: ' +
        'npm start -- --data my-kitchen',
    ],
  ])('says of %j in plain words what is wrong with it', (args, sentence) => {
    expect(wrongOf(...args)).toEqual([sentence]);
  });

  it('gives a new kitchen every dish of the demo when it is told to, and no other', () => {
    expect(optionsOf('--data', 'mine', '--all-dishes')?.folder).toEqual({
      kind: 'kitchen',
      path: 'mine',
      from: 'all dishes',
    });
    expect(wrongOf('--all-dishes')).toHaveLength(1);
    expect(wrongOf('--demo', 'mine', '--all-dishes')).toHaveLength(1);
  });

  it('begins a kitchen that is tried out at a moment of its own wall', () => {
    const demoFrom = { day: '2026-11-29', time: '09:30' };
    expect(optionsOf('--data', 'try', '--demo-from', '2026-11-29T09:30')).toMatchObject({
      demoFrom,
    });
    expect(optionsOf('--data', 'try')).not.toHaveProperty('demoFrom');
    expect(wrongOf('--data', 'try', '--demo-from', '9:30')).toEqual([
      '--demo-from is a day and a time such as 2026-11-29T09:30',
    ]);
    expect(wrongOf('--data', 'try', '--demo-from', '2026-11-31T09:30')).toHaveLength(1);
    expect(wrongOf('--data', 'try', '--demo-from', '2026-11-29T24:30')).toHaveLength(1);
    expect(wrongOf('--demo-from', '2026-11-29T09:30')).toHaveLength(1);
  });

  it('lets the network in when it is told to', () => {
    expect(optionsOf('--lan')?.host).toBe('0.0.0.0');
    expect(optionsOf('--host', '192.168.1.5')?.host).toBe('192.168.1.5');
  });

  it('speaks TLS where others on the network could listen, and by itself', () => {
    expect(optionsOf()?.tls).toBeUndefined();
    expect(optionsOf('--host', '127.0.0.1')?.tls).toBeUndefined();
    expect(optionsOf('--lan')?.tls).toEqual({ kind: 'own' });
    expect(optionsOf('--host', '192.168.1.5')?.tls).toEqual({ kind: 'own' });
  });

  it('speaks plain HTTP on the network only when it is told to', () => {
    expect(optionsOf('--lan', '--plain')?.tls).toBeUndefined();
  });

  it('takes a certificate with its key, and neither alone', () => {
    expect(optionsOf('--cert', 'a.pem', '--key', 'b.pem')?.tls).toEqual({
      kind: 'given',
      cert: 'a.pem',
      key: 'b.pem',
    });
    expect(wrongOf('--cert', 'a.pem')).toEqual([expect.stringContaining('--key')]);
    expect(wrongOf('--key', 'a.pem')).toEqual([expect.stringContaining('--cert')]);
    expect(wrongOf('--cert', 'a', '--key', 'b', '--plain')).toHaveLength(1);
  });

  it('answers to further names, and to no address with a port in its place', () => {
    expect(optionsOf('--name', 'kitchen.example', '--name', '10.0.0.9')?.names).toEqual([
      'kitchen.example',
      '10.0.0.9',
    ]);
    expect(wrongOf('--name', 'https://kitchen.example')).toHaveLength(1);
  });

  it('explains itself, and leaves no option out', () => {
    expect(readOptions(['--help'])).toEqual({ ok: false, help: true });
    for (const name of [
      'data',
      'demo',
      'demo-speed',
      'port',
      'lan',
      'host',
      'open',
      'mqtt',
      'claim',
      'plain',
      'cert',
      'key',
      'name',
      'all-dishes',
      'help',
    ]) {
      expect(HELP).toContain(`--${name}`);
    }
  });

  it('hears no thermometers but those of a broker that is named', () => {
    const read = readOptions(['--mqtt', 'mqtt://10.0.0.9:1883']);
    expect(read).toMatchObject({ options: { mqtt: 'mqtt://10.0.0.9:1883' } });
    expect(readOptions([])).not.toHaveProperty('options.mqtt');
  });

  it('says all that is wrong at once', () => {
    expect(wrongOf('--data', 'a', '--demo', 'b', '--port', 'x', '--demo-speed', '0')).toHaveLength(
      3,
    );
  });

  it.each([
    [['--colour']],
    [['--port', '70000']],
    [['--port', '']],
    [['--port', '0x10']],
    [['--port', ' 80']],
    [['--host', 'pit']],
    [['--lan', '--host', '10.0.0.1']],
    [['--demo-speed', 'fast']],
    [['--mqtt', 'pit:1883']],
    [['--data', '']],
    [['stray']],
  ])('does not take %j', (args) => {
    expect(wrongOf(...args)).toHaveLength(1);
  });
});
