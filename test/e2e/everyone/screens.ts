import type { Page } from '@playwright/test';

/** A screen as somebody comes upon it, and what they may open on it. */
export type Screen = {
  /** In the hub; a part behind `#` is opened in place. */
  readonly path: string;
  /** Stands there once the screen is drawn. */
  readonly drawn: string;
  /** Read from the floor, where the hub's own pages are read at arm's length. */
  readonly isWall?: true;
  /** Answers to the page's own doors that this hub would not give. */
  readonly answers?: Readonly<Record<string, unknown>>;
  readonly opens?: readonly Opening[];
};

/** What a tap opens on a screen, and what then stands there. */
export type Opening = {
  readonly name: string;
  readonly tap: readonly string[];
  readonly stands: string;
};

const head: Opening = {
  name: 'its head',
  tap: ['wall-head h1 button'],
  stands: 'wall-head choice-strip',
};

const desk = (section: string, drawn: string, opens: readonly Opening[] = []): Screen => ({
  path: `desk.html#${section}`,
  drawn,
  opens,
});

/** How a hub answers a screen that nobody has let in. */
const STRANGER = {
  me: { ok: true, isOpen: false, isUnclaimed: false, place: null },
  pair: { ok: true, secret: 'secret', code: 'KMTRWX', leftS: 300 },
  'pair/wait': { ok: true, outcome: { is: 'waiting' } },
};

export const SCREENS: readonly Screen[] = [
  {
    path: 'station.html?station=trim',
    drawn: 'now-line',
    isWall: true,
    opens: [
      head,
      { name: 'the names', tap: ['now-line button.side'], stands: 'people-row' },
      {
        name: 'a note',
        tap: ['now-line button.side', 'people-row button >> nth=-2'],
        stands: 'note-pad',
      },
      {
        name: 'how late',
        tap: ['now-line .acts button >> nth=0'],
        stands: 'line-strip choice-strip',
      },
      { name: 'the standard', tap: ['now-line button.title'], stands: 'standard-sheet h2' },
    ],
  },
  { path: 'station.html?station=trim,mix', drawn: 'now-line', isWall: true },
  { path: 'station.html?station=trim,mix,stove,pit,pass', drawn: 'now-line', isWall: true },
  { path: 'station.html?station=trim,mix,stove,pass&person=joon', drawn: 'now-line', isWall: true },
  {
    path: 'smoker.html',
    drawn: 'rack-lane',
    isWall: true,
    opens: [
      { name: 'a reading', tap: ['smoker-cutaway .title'], stands: 'key-pad' },
      { name: 'a move', tap: ['rack-lane button'], stands: 'move-foot' },
    ],
  },
  {
    path: 'pass.html',
    drawn: 'pass-line',
    isWall: true,
    opens: [{ name: 'what is rarer', tap: ['pass-taps .less'], stands: 'pass-taps choice-strip' }],
  },
  {
    path: '',
    drawn: 'screen-list a',
    opens: [
      {
        name: 'several stations',
        tap: ['screen-list button', 'wall-chooser choice-strip button'],
        stands: 'wall-chooser a',
      },
    ],
  },
  { path: 'pair.html', drawn: 'pair-page output', answers: STRANGER },
  { path: 'install.html', drawn: 'install-page h1' },
  {
    path: 'standards.html',
    drawn: 'cut-standard',
    opens: [
      {
        name: 'what is learnt',
        tap: ['cut-training .foot button', 'cut-training li button'],
        stands: 'cut-training li.done',
      },
    ],
  },
  desk('day', 'time-chart .foot'),
  desk('smokers', 'desk-smokers rack-lane'),
  desk('safety', 'desk-safety li', [
    { name: 'a check', tap: ['desk-safety li button'], stands: 'check-pad' },
  ]),
  desk('plan', 'plan-dish'),
  desk('mend', 'mend-day'),
  desk('pull', 'pull-list'),
  desk('record', 'record-lots li', [
    {
      name: 'another lot',
      tap: ['record-lots button[aria-expanded]'],
      stands: 'record-lots choice-strip',
    },
    {
      name: 'the checks of a day',
      tap: ['record-days button[aria-expanded]'],
      stands: 'record-days table',
    },
  ]),
  desk('record/2026-11-28-1', 'record-trace table'),
  desk('close', 'day-close'),
  desk('log', 'day-log'),
  desk('who', 'desk-who'),
];

/** Resolves once what a screen measured has been drawn anew, too. */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await document.fonts.ready;
    for (let frames = 0; frames < 6; frames++) await new Promise(requestAnimationFrame);
  });
}

/** Goes to a screen, or to another part of the one that stands there already. */
export async function open(page: Page, origin: string, { path, drawn, answers = {} }: Screen) {
  // Who is heard again at the door goes in by itself, wherever the page is sent meanwhile.
  if (new URL(page.url(), origin).pathname === '/pair.html')
    await page.goto(`${origin}/standards.html`);
  await page.unrouteAll({ behavior: 'ignoreErrors' });
  for (const [door, json] of Object.entries(answers)) {
    await page.route(`${origin}/api/${door}`, (route) => route.fulfill({ json }));
  }
  await page.goto(`${origin}/${path}`);
  await page.locator(drawn).first().waitFor();
  await settled(page);
}
