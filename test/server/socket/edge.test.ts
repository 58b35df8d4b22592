import type { Socket } from 'socket.io-client';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { WebSocket } from 'ws';
import { type Answer, PROTOCOL, type ViewMessage } from '../../../shared/protocol/index.ts';
import { asNotes } from '../hub/note-day.ts';
import { noteCommand, station } from '../hub/setting.ts';
import { type Door, hello, next, openDoor } from './open.ts';

let door: Door;
beforeEach(async () => {
  door = await openDoor();
});
afterEach(() => door.close());

const ask = (socket: Socket, message: unknown): Promise<Answer> =>
  socket.timeout(5_000).emitWithAck('command', message);

describe('a screen that knocks', () => {
  it('is shown its face', async () => {
    const view = await next<ViewMessage>(door.screen(), 'view');
    expect(view).toMatchObject({ epoch: 'e1', seq: 0 });
  });

  it('is told when there is nothing to show it', async () => {
    const blank = await next(door.screen({ ...hello, face: station('nowhere') }), 'blank');
    expect(blank).toMatchObject({ refusal: { rule: 'unknown-place' } });
  });

  it('of another version is told to load itself anew, and nothing else', async () => {
    const socket = door.screen({ protocol: 0, shape: 'of long ago' });
    expect(await next(socket, 'reload')).toEqual({ protocol: PROTOCOL });
    expect(door.hub.health.screens).toBe(0);
  });

  it.each([
    ['says nothing', {}],
    ['shows nothing that we know', { ...hello, face: { kind: 'sky' } }],
    ['says more than it should', { ...hello, role: 'owner' }],
    ['has a name without an end', { ...hello, screenId: 'x'.repeat(500) }],
  ])('and %s is turned away in words', async (_what, auth) => {
    const refused = await next<Error>(door.screen(auth), 'connect_error');
    expect(refused.message).toMatch(/^a screen says /);
  });

  it('from a page elsewhere is not let in', async () => {
    const socket = door.screen(hello, { Origin: 'http://evil.example' });
    await next(socket, 'connect_error');
    expect(door.reports).toMatchObject([
      { what: 'a page from elsewhere wanted a socket', origin: 'http://evil.example' },
    ]);
  });

  it('from our own page is', async () => {
    const socket = door.screen(hello, { Origin: `http://127.0.0.1:${door.port}` });
    await next(socket, 'view');
  });

  it('is the screen that its token says, whatever it calls itself', async () => {
    const one = door.screen({ ...hello, screenId: 'another', token: 'wall-7' });
    await next(one, 'view');
    expect([...door.hub.screens]).toEqual(['wall-7']);
  });

  it('that nobody has let in is told so, and nothing is taken from it', async () => {
    const socket = door.screen({ ...hello, token: 'lost' });
    expect(await next(socket, 'blank')).toEqual({
      epoch: '',
      seq: 0,
      refusal: { rule: 'screen-unknown' },
    });
    const asked = socket.timeout(300).emitWithAck('command', noteCommand('salt'));
    await expect(asked).rejects.toThrow('timed out');
    expect(door.hub.health).toMatchObject({ seq: 0, screens: 0 });
  });

  it('may not do so by any other way than a socket', async () => {
    const response = await fetch(
      `http://127.0.0.1:${door.port}/socket.io/?EIO=4&transport=polling`,
    );
    expect(response.status).toBe(400);
  });
});

describe('a tap', () => {
  it('is answered once it is kept, and shown to the other screens', async () => {
    const [one, two] = [door.screen(), door.screen({ ...hello, screenId: 'wall-2' })];
    await Promise.all([next(one, 'view'), next(two, 'view')]);
    const shown = next<ViewMessage>(two, 'view');
    expect(await ask(one, noteCommand('salt'))).toEqual({ ok: true, seq: 1 });
    expect(asNotes((await shown).view).notes).toEqual(['salt']);
  });

  it('that makes no sense is refused in words that say where', async () => {
    const answer = await ask(door.screen(), { ...noteCommand('salt'), text: 7 });
    expect(answer).toMatchObject({
      ok: false,
      refusal: { rule: 'bad-message', where: 'command.text', what: /string/ },
    });
  });

  it('with a key too many is refused', async () => {
    const answer = await ask(door.screen(), { ...noteCommand('salt'), role: 'owner' });
    expect(answer).toMatchObject({ ok: false, refusal: { rule: 'bad-message' } });
  });

  it('waits its turn beyond the pace of a hand, and none is lost nor out of order', async () => {
    const socket = door.screen();
    const texts = Array.from({ length: 23 }, (_, i) => `note ${i}`);
    const answers = await Promise.all(texts.map((text) => ask(socket, noteCommand(text))));
    expect(answers).toEqual(texts.map((_, i) => ({ ok: true, seq: i + 1 })));
    expect(door.hub.state.notes.map(({ text }) => text)).toEqual(texts);
  });
});

describe('a screen that misbehaves', () => {
  it('is let go after it said what nobody knows', async () => {
    const socket = door.screen();
    await next(socket, 'view');
    const gone = next(socket, 'disconnect');
    for (let i = 0; i < 5; i++) socket.emit('mystery', i);
    await gone;
    expect(door.hub.health.screens).toBe(0);
  });

  it('is not called back where it left no place for an answer', async () => {
    const socket = door.screen();
    await next(socket, 'view');
    socket.emit('command', noteCommand('salt'));
    socket.emit('command', noteCommand('salt'), 'not a function');
    expect(await ask(socket, noteCommand('pepper'))).toMatchObject({ seq: 1 });
  });

  it('is let go when its message is too long', async () => {
    const socket = door.screen();
    await next(socket, 'view');
    const gone = next(socket, 'disconnect');
    socket.emit('command', { ...noteCommand('x'.repeat(20_000)) });
    await gone;
  });

  it('cannot fill the hub from one address', async () => {
    const url = `ws://127.0.0.1:${door.port}/socket.io/?EIO=4&transport=websocket`;
    const outcomes: string[] = [];
    const sockets: WebSocket[] = [];
    for (let i = 0; i < 102; i++) {
      const socket = new WebSocket(url);
      sockets.push(socket);
      outcomes.push(
        await new Promise<string>((resolve) => {
          socket.once('message', () => resolve('open'));
          socket.once('error', () => resolve('refused'));
        }),
      );
    }
    for (const socket of sockets) socket.terminate();
    expect(outcomes.filter((outcome) => outcome === 'open')).toHaveLength(100);
  });
});

it('turns a view into bytes once, however many screens show it', async () => {
  const sockets = Array.from({ length: 12 }, (_, i) =>
    door.screen({ ...hello, screenId: `wall-${i}` }),
  );
  await Promise.all(sockets.map((socket) => next(socket, 'view')));
  const write = vi.spyOn(JSON, 'stringify');
  const shown = sockets.map((socket) => next(socket, 'view'));
  await door.hub.command(noteCommand('salt'));
  await Promise.all(shown);
  const written = write.mock.calls.filter(([data]) => Array.isArray(data) && data[0] === 'view');
  write.mockRestore();
  expect(written).toHaveLength(1);
});

it('packs a view as long as a desk’s, and a wall’s it sends as it is', async () => {
  const socket = new WebSocket(`ws://127.0.0.1:${door.port}/socket.io/?EIO=4&transport=websocket`);
  const upgraded = new Promise<() => number>((resolve) => {
    socket.once('upgrade', ({ socket: wire }) => resolve(() => wire.bytesRead));
  });
  socket.once('message', () => socket.send(`40${JSON.stringify(hello)}`));
  /** The next message that says this; all before it has come by then. */
  const heard = (words: string) =>
    new Promise<number>((resolve) => {
      socket.on('message', function hear(data) {
        if (!String(data).includes(words)) return;
        socket.off('message', hear);
        resolve(String(data).length);
      });
    });
  const seen = await upgraded;
  await heard('"view"');
  /** What the view with one more note weighs, and what of it went over the wire. */
  const weighed = async (note: string) => {
    const before = seen();
    const view = heard(note);
    await door.hub.command(noteCommand(note));
    return { view: await view, wire: seen() - before };
  };
  const small = await weighed('salt');
  expect(small.wire).toBeGreaterThanOrEqual(small.view);
  const last = heard('note 199:');
  for (let i = 0; i < 200; i++) {
    await door.hub.command(noteCommand(`note ${i}: ${'the same again '.repeat(40)}`));
  }
  await last;
  const large = await weighed('pepper');
  expect(large.view).toBeGreaterThan(100_000);
  expect(large.wire).toBeLessThan(large.view / 4);
  socket.terminate();
});
