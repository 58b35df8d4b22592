import fc from 'fast-check';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { WebSocket } from 'ws';
import { noteCommand } from '../hub/setting.ts';
import { type Door, hello, openDoor } from './open.ts';

let door: Door;
beforeEach(async () => {
  door = await openDoor();
});
afterEach(() => door.close());

/** Whatever was said before, a tap of another screen goes through and nothing of ours broke. */
async function expectInGoodHealth(text: string) {
  const socket = door.screen();
  const answer = await socket.timeout(5_000).emitWithAck('command', noteCommand(text));
  socket.disconnect();
  expect(answer).toMatchObject({ ok: true });
  expect(door.reports.filter(({ level }) => level === 'fault')).toEqual([]);
}

let tries = 0;
const anotherNote = () => `after ${++tries}`;

const event = fc.oneof(
  fc.constantFrom('command', 'question', 'beat', 'whole', 'view', '__proto__', 'constructor'),
  fc.string(),
);
/** Near misses of a real command are worth more than noise. */
const nearCommand = fc.record(
  {
    id: fc.oneof(fc.string(), fc.anything()),
    kind: fc.oneof(fc.constantFrom('start', 'count', 'reading', 'moveSlots', 'note'), fc.string()),
    personId: fc.oneof(fc.constant(null), fc.anything()),
    screenId: fc.constant(null),
    tappedAt: fc.oneof(fc.integer(), fc.double(), fc.anything()),
    task: fc.oneof(fc.string(), fc.anything()),
    text: fc.oneof(fc.string(), fc.anything()),
    done: fc.oneof(fc.integer(), fc.double()),
    tempC: fc.double(),
    where: fc.oneof(fc.record({ kind: fc.constant('air'), smoker: fc.string() }), fc.anything()),
    moves: fc.array(fc.anything()),
    basedOnSeq: fc.integer(),
  },
  { requiredKeys: [] },
);
const payload = fc.oneof(nearCommand, fc.jsonValue(), fc.anything());

it('stands whatever a screen says under whatever name', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(event, payload, fc.boolean()), { maxLength: 8 }),
      async (said) => {
        const socket = door.screen();
        await new Promise((resolve) => socket.once('connect', () => resolve(null)));
        for (const [name, what, wantsAnswer] of said) {
          try {
            if (wantsAnswer) socket.emit(name, what, () => {});
            else socket.emit(name, what);
          } catch {
            // The client's own encoder refuses some of it: reserved names, values without JSON.
          }
        }
        await new Promise((resolve) => setTimeout(resolve, 2));
        socket.disconnect();
      },
    ),
    { numRuns: 60 },
  );
  await expectInGoodHealth(anotherNote());
});

const packet = fc.oneof(
  fc.string(),
  fc.uint8Array({ maxLength: 64 }),
  // Engine packet 4, then each kind of socket packet, then something like its body.
  fc
    .tuple(fc.constantFrom('40', '41', '42', '43', '44', '45', '46', '451-', '42/x,'), fc.json())
    .map(([head, body]) => head + body),
);

it('stands whatever comes over the bare wire', async () => {
  const url = `ws://127.0.0.1:${door.port}/socket.io/?EIO=4&transport=websocket`;
  await fc.assert(
    fc.asyncProperty(fc.array(packet, { maxLength: 6 }), fc.boolean(), async (packets, greets) => {
      const wire = new WebSocket(url);
      wire.on('error', () => {});
      await new Promise((resolve) => wire.once('open', resolve));
      if (greets) wire.send(`40${JSON.stringify(hello)}`);
      for (const bytes of packets) wire.send(bytes);
      await new Promise((resolve) => setTimeout(resolve, 2));
      wire.terminate();
    }),
    { numRuns: 60 },
  );
  await expectInGoodHealth(anotherNote());
});
