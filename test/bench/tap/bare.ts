import { once } from 'node:events';
import { rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { WebSocket } from 'ws';
import { Arrivals } from './arrivals.ts';
import { startChild } from './child.ts';
import type { Shown, Side } from './side.ts';

/**
 * A bare web socket server that sends each of its screens the view of its face.
 */
export async function openBare({ views, faceOf }: Shown): Promise<Side> {
  const screens = faceOf.length;
  const file = join(tmpdir(), `coalface-bare-${process.pid}.json`);
  writeFileSync(file, JSON.stringify(views.map((view) => JSON.stringify(view))));
  const program = join(import.meta.dirname, 'bare-server.ts');
  const server = await startChild(program, [file], /ready on (\d+)/);
  rmSync(file);
  const arrivals = new Arrivals(screens);
  const sockets = faceOf.map((face, screen) => {
    const socket = new WebSocket(`ws://127.0.0.1:${server.said}/${face}`);
    // Parsed as a screen would: what it cannot read it does not have.
    socket.on('message', (bytes: Buffer) =>
      arrivals.arrived(screen, JSON.parse(bytes.toString())[1].n),
    );
    return socket;
  });
  await Promise.all(sockets.map((socket) => once(socket, 'open')));
  let taps = 0;
  return {
    async tap() {
      taps += 1;
      const all = arrivals.all(taps);
      // As long as a tap and the event that it becomes.
      sockets[taps % screens]?.send(JSON.stringify({ n: taps, filler: 'x'.repeat(300) }));
      await all;
    },
    async close() {
      for (const socket of sockets) socket.terminate();
      await server.stop();
    },
  };
}
