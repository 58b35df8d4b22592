import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type {
  CommandId,
  Instant,
  PersonId,
  ScreenId,
  SlotId,
  StationId,
  TaskId,
} from '../../shared/kernel/index.ts';
import type {
  Answer,
  CommandMessage,
  Hello,
  HubLink,
  HubLinkListener,
  OpenLink,
  Question,
  QuestionAnswer,
  ScreenLink,
  ScreenLinkListener,
  ViewMessage,
} from '../../shared/protocol/index.ts';
import { LinkLost, PROTOCOL } from '../../shared/protocol/index.ts';

/** Something that carries links, and what can befall it. */
export type LinkMedium = {
  /** Takes screens in from now on. */
  serve(accept: (link: ScreenLink) => ScreenLinkListener): Promise<void>;
  /** The hub's process ends without a word; nobody is there until somebody serves again. */
  kill(): Promise<void>;
  readonly openLink: OpenLink;
  /** Lets time go by until something has come true; fails where it never does. */
  until(happened: () => boolean): Promise<void>;
  dispose(): Promise<void>;
};

const SCREEN = 'wall-1' as ScreenId;

export const commandMessage = (id: string, text = 'größer'): CommandMessage => ({
  kind: 'note',
  id: id as CommandId,
  personId: 'maria' as PersonId,
  screenId: SCREEN,
  tappedAt: 1_795_600_000_123 as Instant,
  text,
  task: null,
});

const QUESTION: Question = {
  kind: 'ifMoved',
  stay: 'ribs-1/stay' as TaskId,
  need: 0,
  to: 'b/2' as SlotId,
};

const viewMessage = (seq: number): ViewMessage => ({
  epoch: 'e1',
  seq,
  view: {
    face: 'station',
    seq,
    arrangedSeq: 1,
    at: 1_795_600_000_000 as Instant,
    zone: 'America/Chicago',
    clock: '24 h',
    temperature: '°C',
    weight: 'kg',
    services: [],
    news: null,
    checks: [],
    endsAt: 1_795_640_000_000 as Instant,
    closed: null,
    people: [],
    stations: [{ id: 'prep' as StationId, name: { en: 'Prep', es: 'Preparación' } }],
    tasks: [],
    later: 0,
  },
});

/** A hub's end that writes down what it hears and answers as it is told. */
class Hub {
  readonly links: ScreenLink[] = [];
  readonly commands: CommandMessage[] = [];
  wholes = 0;
  gone = 0;
  answer: (message: CommandMessage) => Promise<Answer> = async () => ({ ok: true, seq: 7 });
  questionAnswer: QuestionAnswer = { ok: false, refusal: { rule: 'unknown-place' } };
  welcome: (link: ScreenLink) => void = () => {};

  readonly accept = (link: ScreenLink): ScreenLinkListener => {
    this.links.push(link);
    this.welcome(link);
    return {
      command: (message) => {
        this.commands.push(message);
        return this.answer(message);
      },
      question: () => this.questionAnswer,
      beat: ({ t0 }) => ({ t1: (t0 + 1) as Instant, t2: (t0 + 2) as Instant, seq: 3 }),
      whole: () => {
        this.wholes += 1;
      },
      gone: () => {
        this.gone += 1;
      },
    };
  };

  get link(): ScreenLink {
    const link = this.links.at(-1);
    if (!link) throw new Error('no screen is there');
    return link;
  }
}

/** A screen's end that writes down what it is told, in order. */
class Screen implements HubLinkListener {
  readonly heard: (object | string)[] = [];
  readonly up = () => this.heard.push('up');
  readonly down = () => this.heard.push('down');
  readonly view = (message: object) => this.heard.push(message);
  readonly blank = (message: object) => this.heard.push(message);
  readonly reload = () => this.heard.push('reload');
  readonly readOnly = (message: object) => this.heard.push(message);
  readonly wanted = (message: object) => this.heard.push(message);

  times(word: string): number {
    return this.heard.filter((heard) => heard === word).length;
  }
}

/**
 * What a link between a screen and a hub promises on a day when nothing but the hub itself fails.
 */
export function linkContract(name: string, newMedium: () => Promise<LinkMedium>) {
  describe(`the link over ${name}`, () => {
    let medium: LinkMedium;
    let hub: Hub;
    let screen: Screen;
    let link: HubLink;
    let seen: number;
    const hello = (): Hello => ({
      protocol: PROTOCOL,
      screenId: SCREEN,
      face: { kind: 'station', station: 'prep' as StationId },
      epoch: 'e1',
      seq: seen,
      sounds: true,
    });
    beforeEach(async () => {
      medium = await newMedium();
      hub = new Hub();
      screen = new Screen();
      seen = 3;
      await medium.serve(hub.accept);
    });
    afterEach(async () => {
      link.close();
      await medium.dispose();
    });

    async function open() {
      link = medium.openLink(hello, screen);
      await medium.until(() => screen.times('up') === 1);
    }

    /** What a promise came to, with time going by meanwhile. */
    async function outcome<T>(promise: Promise<T>): Promise<T | 'lost'> {
      let came: { readonly value: T | 'lost' } | null = null;
      promise.then(
        (value) => {
          came = { value };
        },
        (fault: unknown) => {
          if (fault instanceof LinkLost) came = { value: 'lost' };
          else throw fault;
        },
      );
      await medium.until(() => came !== null);
      return (came as unknown as { readonly value: T | 'lost' }).value;
    }

    describe('when it opens', () => {
      it('tells the hub who is there and what it has seen', async () => {
        await open();
        expect(hub.links).toHaveLength(1);
        expect(hub.link.hello).toEqual(hello());
      });

      it('tells the screen that it is up before it shows what the hub says at once', async () => {
        hub.welcome = (there) => there.view(viewMessage(4));
        await open();
        await medium.until(() => screen.heard.length === 2);
        expect(screen.heard).toEqual(['up', viewMessage(4)]);
      });

      it('waits for a hub that is not there yet', async () => {
        await medium.kill();
        link = medium.openLink(hello, screen);
        await medium.serve(hub.accept);
        await medium.until(() => screen.times('up') === 1);
        expect(hub.links).toHaveLength(1);
      });
    });

    describe('while it is up', () => {
      it('shows the screen what the hub sends, unchanged, and views in their order', async () => {
        await open();
        const views = [viewMessage(2), viewMessage(3), viewMessage(4)];
        const blank = { epoch: 'e1', seq: 1, refusal: { rule: 'no-plan' } } as const;
        const readOnly = { atSeq: 2, why: 'altered' } as const;
        const wanted = { notices: [], rates: [], calledAt: null, isHeard: true };
        hub.link.blank(blank);
        for (const view of views) hub.link.view(view);
        hub.link.readOnly(readOnly);
        hub.link.wanted(wanted);
        hub.link.reload({ protocol: PROTOCOL + 1 });
        await medium.until(() => screen.heard.length === 8);
        expect(screen.heard).toEqual(
          expect.arrayContaining(['up', blank, readOnly, wanted, 'reload']),
        );
        const shown = screen.heard.filter((heard) => typeof heard === 'object' && 'view' in heard);
        expect(shown).toEqual(views);
      });

      it('brings a command to the hub unchanged, and its answer back', async () => {
        await open();
        expect(await outcome(link.command(commandMessage('c1')))).toEqual({ ok: true, seq: 7 });
        expect(hub.commands).toEqual([commandMessage('c1')]);
        const refused = { ok: false, refusal: { rule: 'unknown-task' } } as const;
        hub.answer = async () => refused;
        expect(await outcome(link.command(commandMessage('c2')))).toEqual(refused);
      });

      it('gives each command its own answer, whichever comes first', async () => {
        await open();
        const answers: ((answer: Answer) => void)[] = [];
        hub.answer = () => new Promise((resolve) => answers.push(resolve));
        const first = link.command(commandMessage('c1'));
        const second = link.command(commandMessage('c2'));
        await medium.until(() => answers.length === 2);
        answers[1]?.({ ok: true, seq: 2 });
        answers[0]?.({ ok: true, seq: 1 });
        expect(await outcome(second)).toEqual({ ok: true, seq: 2 });
        expect(await outcome(first)).toEqual({ ok: true, seq: 1 });
      });

      it('brings questions, beats and calls for the whole', async () => {
        await open();
        expect(await outcome(link.question(QUESTION))).toEqual(hub.questionAnswer);
        expect(await outcome(link.beat({ t0: 40 }))).toEqual({ t1: 41, t2: 42, seq: 3 });
        link.whole();
        await medium.until(() => hub.wholes === 1);
      });

      it('gives no answer where the hub found none, and asks again when told to', async () => {
        await open();
        hub.answer = async () => {
          throw new Error('the log keeps nothing');
        };
        expect(await outcome(link.command(commandMessage('c1')))).toBe('lost');
        hub.answer = async () => ({ ok: true, seq: 8 });
        // A line so long silent may have been given up meanwhile.
        await medium.until(() => screen.times('up') > screen.times('down'));
        expect(await outcome(link.command(commandMessage('c1')))).toEqual({ ok: true, seq: 8 });
      });
    });

    describe('when the hub dies', () => {
      it('says that it is down, and that what was under way got no answer', async () => {
        await open();
        hub.answer = () => new Promise(() => {});
        const asked = link.command(commandMessage('c1'));
        await medium.until(() => hub.commands.length === 1);
        const lost = outcome(asked);
        await medium.kill();
        expect(await lost).toBe('lost');
        await medium.until(() => screen.times('down') === 1);
        expect(await outcome(link.command(commandMessage('c2')))).toBe('lost');
        expect(await outcome(link.beat({ t0: 1 }))).toBe('lost');
      });

      it('comes up again by itself, and says anew what it has seen', async () => {
        await open();
        await medium.kill();
        await medium.until(() => screen.times('down') === 1);
        seen = 9;
        const next = new Hub();
        await medium.serve(next.accept);
        await medium.until(() => screen.times('up') === 2);
        expect(next.link.hello).toEqual({ ...hello(), seq: 9 });
        expect(await outcome(link.command(commandMessage('c1')))).toEqual({ ok: true, seq: 7 });
      });

      it('comes up again after the hub has hung up on it', async () => {
        await open();
        hub.link.close();
        await medium.until(() => screen.times('down') === 1);
        await medium.until(() => screen.times('up') === 2);
        expect(hub.links).toHaveLength(2);
        expect(hub.gone).toBe(1);
      });
    });

    describe('when the screen leaves', () => {
      it('tells the hub once, and the screen nothing more', async () => {
        await open();
        const heard = screen.heard.length;
        link.close();
        link.close();
        await medium.until(() => hub.gone === 1);
        hub.link.view(viewMessage(5));
        hub.link.close();
        expect(screen.heard.slice(heard).filter((word) => word !== 'down')).toEqual([]);
        expect(await outcome(link.command(commandMessage('c1')))).toBe('lost');
        expect(hub.gone).toBe(1);
      });
    });
  });
}
