import type { Page, WebSocketRoute } from 'playwright';
import type { Instant } from '../../shared/kernel/index.ts';
import type {
  Answer,
  CommandMessage,
  Question,
  QuestionAnswer,
} from '../../shared/protocol/index.ts';
import type { View } from '../../shared/view/index.ts';

export type StubAnswers = {
  view: View | null;
  now: () => Instant;
  command?: (message: CommandMessage) => Answer | null;
  question?: (question: Question) => QuestionAnswer;
};

/**
 * A hub in the browser's network, for looking at screens without one: it speaks just enough of
 * Engine.IO 4 and Socket.IO 5 (packet types as in their published protocol pages) to say what a
 * test has it say.
 */
export class StubHub {
  readonly received: CommandMessage[] = [];
  answers: StubAnswers;
  isDown = false;
  #route: WebSocketRoute | null = null;

  constructor(answers: StubAnswers) {
    this.answers = answers;
  }

  async serve(page: Page): Promise<void> {
    await page.routeWebSocket(/\/socket\.io\//, (route) => {
      if (this.isDown) {
        void route.close();
        return;
      }
      this.#route = route;
      route.onMessage((packet) => this.#hear(String(packet)));
      const open = { sid: 's', upgrades: [], pingInterval: 60_000, pingTimeout: 60_000 };
      route.send(`0${JSON.stringify({ ...open, maxPayload: 1_000_000 })}`);
    });
  }

  show(view: View): void {
    this.answers.view = view;
    this.#emit('view', { epoch: 'stub', seq: view.seq, view });
  }

  async goDown(): Promise<void> {
    this.isDown = true;
    await this.#route?.close();
  }

  #hear(packet: string): void {
    if (packet.startsWith('40')) {
      this.#route?.send('40{"sid":"s"}');
      if (this.answers.view) this.show(this.answers.view);
      return;
    }
    const asked = /^42(\d+)(\[.*)$/s.exec(packet);
    if (!asked) return;
    const [name, message] = JSON.parse(asked[2] ?? '[]') as [string, never];
    const answer = this.#answer(name, message);
    if (answer !== null) this.#route?.send(`43${asked[1]}${JSON.stringify([answer])}`);
  }

  #answer(name: string, message: CommandMessage & Question): unknown {
    const { now, command, question, view } = this.answers;
    switch (name) {
      case 'beat':
        return { t1: now(), t2: now() };
      case 'question':
        return question?.(message) ?? null;
      case 'command':
        this.received.push(message);
        return command ? command(message) : { ok: true, seq: (view?.seq ?? 0) + 1 };
      default:
        return null;
    }
  }

  #emit(name: string, message: unknown): void {
    this.#route?.send(`42${JSON.stringify([name, message])}`);
  }
}
