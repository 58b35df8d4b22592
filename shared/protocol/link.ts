import type {
  Answer,
  Beat,
  BeatAnswer,
  Blank,
  CommandMessage,
  Hello,
  Question,
  QuestionAnswer,
  ReadOnly,
  ViewMessage,
  Wanted,
} from './messages.ts';

/**
 * The link between a screen and the hub as the screen holds it. It may be down for hours, may lose
 * what was under way, may deliver late, twice or in another order; what stands above it must be
 * right all the same. Behind it stands a socket, or a pair in memory.
 */
export type HubLink = {
  /**
   * Rejects with LinkLost when no answer came; the hub may have kept the command all the same: send
   * it again.
   */
  command(message: CommandMessage): Promise<Answer>;
  question(message: Question): Promise<QuestionAnswer>;
  beat(message: Beat): Promise<BeatAnswer>;
  /** Asks for the whole view again. */
  whole(): void;
  close(): void;
};

/** What the link tells the screen. */
export type HubLinkListener = {
  up(): void;
  down(): void;
  view(message: ViewMessage): void;
  blank(message: Blank): void;
  reload(): void;
  readOnly(message: ReadOnly): void;
  /** Left out by a screen of a kind that is told of no call. */
  wanted?(message: Wanted): void;
};

/** Opens a link. `hello` is asked anew at each connection, since what was last seen moves on. */
export type OpenLink = (hello: () => Hello, listener: HubLinkListener) => HubLink;

/** The answer to a question put on a link that went down. */
export class LinkLost extends Error {
  override readonly name = 'LinkLost';
}

/** One screen as the hub holds it. */
export type ScreenLink = {
  readonly hello: Hello;
  view(message: ViewMessage): void;
  blank(message: Blank): void;
  reload(message: { readonly protocol: number }): void;
  readOnly(message: ReadOnly): void;
  wanted(message: Wanted): void;
  close(): void;
};

/** What a screen sends, as the hub receives it: already parsed. */
export type ScreenLinkListener = {
  command(message: CommandMessage): Promise<Answer>;
  question(message: Question): QuestionAnswer;
  beat(message: Beat): BeatAnswer;
  whole(): void;
  gone(): void;
};
