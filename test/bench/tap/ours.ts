import { nanoid } from 'nanoid';
import { io, type Socket } from 'socket.io-client';
import { builtHub } from '../../../server/built.mjs';
import type { Intent } from '../../../shared/day/index.ts';
import {
  type CommandId,
  instant,
  must,
  type ScreenId,
  type StationId,
  seconds,
} from '../../../shared/kernel/index.ts';
import type {
  Answer,
  CommandMessage,
  Hello,
  HubToScreen,
  ScreenToHub,
  ViewMessage,
} from '../../../shared/protocol/index.ts';
import { PROTOCOL } from '../../../shared/protocol/index.ts';
import { type Face, isWork, type TaskView } from '../../../shared/view/index.ts';
import { Arrivals } from './arrivals.ts';
import { startChild } from './child.ts';
import type { Shown, Side } from './side.ts';

type Screen = { readonly face: Face; readonly id: ScreenId; readonly socket: Screened };
type Screened = Socket<HubToScreen, ScreenToHub>;

/** The real hub on its demo day, with so many desks and walls that show its faces by turns. */
export async function openOurs(screens: number, desks: number): Promise<Side & Shown> {
  const hub = await startChild(builtHub('main'), ['--port', '0'], /(http:\/\/\S+?)\/station\.html/);
  const arrivals = new Arrivals(screens);
  const walls = await wallsOf(hub.said);
  const faces: Face[] = desks > 0 ? [...walls, { kind: 'desk' }] : walls;
  const faceOf = Array.from({ length: screens }, (_, i) =>
    i < screens - desks ? i % walls.length : walls.length,
  );
  const firsts: Promise<ViewMessage>[] = [];
  const all = Array.from({ length: screens }, (_, i): Screen => {
    const face = must(faces[must(faceOf[i], 'a number')], 'a face');
    const screen = openScreen(hub.said, face, i);
    screen.socket.on('view', ({ seq }) => arrivals.arrived(i, seq));
    firsts.push(new Promise((resolve) => screen.socket.once('view', resolve)));
    return screen;
  });
  const views = await Promise.all(firsts);
  // Two faces may show one task, as the smokers' and the pit's do.
  const taken = new Set<string>();
  const firstOfEach = faces.map((_, face) => faceOf.indexOf(face));
  const hands = firstOfEach.flatMap((i) => {
    const screen = must(all[i], 'a screen');
    const { view } = must(views[i], 'a view');
    const tasks = isWork(view) ? view.tasks : [];
    const task = tasks.find(
      ({ id, state }) => !taken.has(id) && (state === 'running' || state === 'ready'),
    );
    if (task) taken.add(task.id);
    return task ? [{ screen, task }] : [];
  });
  for (const { screen, task } of hands) {
    if (task.state === 'ready') await command(screen, { kind: 'start', task: task.id });
  }
  let taps = 0;
  return {
    views: faces.map((_, face) => must(views[faceOf.indexOf(face)], 'a view')),
    faceOf,
    async tap() {
      const { screen: first, task } = must(hands[taps % hands.length], 'a task that is being done');
      // Another screen each time, so that none is held to the pace of one hand.
      const showing = all.filter(({ face }) => face === first.face);
      const screen = must(showing[taps % showing.length], 'a screen');
      const intent = intentNumber(Math.floor(taps / hands.length), task);
      taps += 1;
      const { seq } = await command(screen, intent);
      await arrivals.all(seq);
    },
    async close() {
      for (const { socket } of all) socket.disconnect();
      await hub.stop();
    },
  };
}

/** Taps that every running task takes again and again; most of them move times. */
function intentNumber(n: number, { id: task }: TaskView): Intent {
  switch (n % 4) {
    case 0:
      return { kind: 'count', task, done: 1 };
    case 1:
      return { kind: 'late', task, byS: seconds(20) };
    case 2:
      return { kind: 'needHelp', task };
    default:
      return { kind: 'count', task, done: 0 };
  }
}

async function command({ socket, id }: Screen, intent: Intent): Promise<{ seq: number }> {
  const head = { id: nanoid() as CommandId, personId: null, screenId: id };
  const message: CommandMessage = { ...head, ...intent, tappedAt: instant(Date.now()) };
  const answer: Answer = await socket.timeout(10_000).emitWithAck('command', message);
  if (!answer.ok) throw new Error(`${intent.kind} was refused: ${JSON.stringify(answer.refusal)}`);
  return answer;
}

function openScreen(url: string, face: Face, i: number): Screen {
  const id = `bench-${i}` as ScreenId;
  const auth: Hello = { protocol: PROTOCOL, screenId: id, face };
  const options = { auth, transports: ['websocket'], forceNew: true, reconnection: false };
  return { face, id, socket: io(url, options) };
}

/** Every face that hangs on a wall of the kitchen. */
async function wallsOf(url: string): Promise<Face[]> {
  const screens: { path: string }[] = await (await fetch(`${url}/screens.json`)).json();
  return screens.flatMap(({ path }): Face[] => {
    const { pathname, searchParams } = new URL(path, url);
    const station = searchParams.get('station');
    if (station !== null) return [{ kind: 'station', station: station as StationId }];
    const walls = ['smoker', 'pass'] as const;
    return walls.filter((kind) => pathname === `/${kind}.html`).map((kind) => ({ kind }));
  });
}
