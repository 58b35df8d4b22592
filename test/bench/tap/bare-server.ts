import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { type WebSocket, WebSocketServer } from 'ws';

// The least there can be between a tap and sixty screens: one durable insert, then the same bytes
// to each, framed by a bare web socket server. Run as: bare-server.ts FILE, where FILE holds the
// views as JSON, one for each face; a client says in its address which face it shows.

const [file = ''] = process.argv.slice(2);
const views: string[] = JSON.parse(readFileSync(file, 'utf8'));
const folder = mkdtempSync(join(tmpdir(), 'coalface-bare-'));
const db = new Database(join(folder, 'bare.sqlite'));
db.pragma('journal_mode = wal');
db.pragma('synchronous = full');
db.exec('create table tap (n integer primary key, bytes blob not null)');
const insert = db.prepare('insert into tap values (?, ?)');

const rooms = views.map(() => new Set<WebSocket>());
const server = new WebSocketServer({ host: '127.0.0.1', port: 0, perMessageDeflate: false });

server.on('connection', (socket, request) => {
  rooms[Number(request.url?.slice(1))]?.add(socket);
  socket.on('message', (bytes: Buffer) => {
    const n = Number(insert.run(null, bytes).lastInsertRowid);
    rooms.forEach((sockets, face) => {
      const message = Buffer.from(`["view",{"n":${n},"view":${views[face]}}]`);
      for (const other of sockets) other.send(message, { binary: false });
    });
  });
});
server.on('listening', () => {
  console.log(`ready on ${(server.address() as AddressInfo).port}`);
});
process.on('SIGTERM', () => {
  db.close();
  rmSync(folder, { recursive: true });
  process.exit(0);
});
