import type {
  Hello,
  HubLinkListener,
  ScreenLink,
  ScreenLinkListener,
} from '../../shared/protocol/index.ts';
import type { Agenda, CallOff } from './agenda.ts';
import type { Life } from './life.ts';
import type { Lane, Way, What } from './way.ts';

/** Where screens connect. */
export type Door = {
  /** Null where nobody listens. */
  host(): Host | null;
};

/** A hub as a line sees it, for as long as its process lives. */
export type Host = {
  accept(link: ScreenLink): ScreenLinkListener;
  readonly life: Life;
  /** Whether the machine ends the lines of a process that died; after a power cut nobody does. */
  readonly hangsUp: () => boolean;
};

/** What of a line reaches the screen. */
export type LineListener = {
  welcome(): void;
  /** What it is to draw. */
  show(show: (listener: HubLinkListener) => void): void;
  /** What holds for this line alone. */
  tell(tell: (listener: HubLinkListener) => void): void;
  closed(): void;
};

/** A hub asks for a sign of life every 5 s and waits 4 s for it. */
const HUB_SILENCE_MS = 9000;

type Held = { readonly host: Host; readonly listener: ScreenLinkListener };

/** One connection, from the knock to the end, which each side finds for itself. */
export class Line {
  readonly #way: Way;
  readonly #agenda: Agenda;
  readonly #screen: LineListener;
  readonly #toHub: Lane = { lastDueMs: 0 };
  readonly #toScreen: Lane = { lastDueMs: 0 };
  /** What the hub holds of it. */
  #held: Held | null = null;
  #hasKnocked = false;
  #watch: CallOff = () => {};

  constructor(way: Way, agenda: Agenda, screen: LineListener) {
    this.#way = way;
    this.#agenda = agenda;
    this.#screen = screen;
  }

  knock(door: Door, hello: Hello): void {
    this.#way.send('toHub', this.#toHub, 'a knock', () => {
      // A knock that comes twice is one connection.
      if (this.#hasKnocked) return;
      this.#hasKnocked = true;
      const host = door.host();
      if (host) this.#meet(host, hello);
      else this.tellScreen('that nobody is there', () => this.#screen.closed());
    });
  }

  /** Reaches the hub while it holds this line. */
  tellHub(what: What, arrive: (listener: ScreenLinkListener, life: Life) => void): void {
    this.#way.send('toHub', this.#toHub, what, () => {
      if (!this.#held) return;
      this.#heard();
      arrive(this.#held.listener, this.#held.host.life);
    });
  }

  tellScreen(what: What, arrive: () => void): void {
    this.#way.send('toScreen', this.#toScreen, what, arrive);
  }

  /** The screen leaves it; the hub hears of that if the way lets it. */
  hangUp(): void {
    this.tellHub('that the screen leaves', () => this.#gone());
  }

  #meet(host: Host, hello: Hello): void {
    this.tellScreen('the welcome', () => this.#screen.welcome());
    const send = (what: string, arrive: () => void) => {
      if (!host.life.isOver) this.tellScreen(what, arrive);
    };
    const { show, tell } = this.#screen;
    let isClosed = false;
    const listener = host.accept({
      hello,
      view: (view) => send(`view ${view.seq}`, () => show((screen) => screen.view(view))),
      blank: (blank) => send(`blank ${blank.seq}`, () => show((screen) => screen.blank(blank))),
      reload: () => send('that it is to load anew', () => tell((screen) => screen.reload())),
      readOnly: (why) => send('that it reads only', () => tell((screen) => screen.readOnly(why))),
      wanted: (who) => send('who is wanted', () => tell((screen) => screen.wanted?.(who))),
      close: () => {
        isClosed = true;
        this.tellScreen('the end of the line', () => this.#screen.closed());
        this.#gone();
      },
    });
    if (isClosed) return;
    this.#held = { host, listener };
    this.#heard();
    host.life.onEnd(() => this.#bereaved(host));
  }

  #heard(): void {
    this.#watch();
    this.#watch = this.#agenda.after(HUB_SILENCE_MS, () => this.#gone());
  }

  #gone(): void {
    this.#watch();
    const held = this.#held;
    this.#held = null;
    held?.listener.gone();
  }

  #bereaved(host: Host): void {
    if (!this.#held) return;
    this.#watch();
    this.#held = null;
    if (host.hangsUp()) this.tellScreen('the end of the line', () => this.#screen.closed());
  }
}
