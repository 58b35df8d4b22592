/** What is set for a screen: one of them, or each in its time. */
export type ChosenGround = Ground | 'clock';

/** The two grounds: butcher paper, and char for a dark pit. Everything else is the same drawing. */
export type Ground = 'paper' | 'night';

export type Inks = {
  readonly ground: string;
  readonly ink: string;
  /** Ink thinned with water, for what is further off in time. Still text. */
  readonly soft: string;
  /** Pencil lines between rows, and hatching; never text. */
  readonly pencil: string;
  /** Needs a hand now, and the now mark on a rule. Never text, never anything else. */
  readonly brick: string;
};

export const grounds: Readonly<Record<Ground, Inks>> = {
  paper: {
    ground: '#f2e8d5',
    ink: '#1b1713',
    soft: '#453d34',
    pencil: '#8a7d68',
    brick: '#9a2706',
  },
  night: {
    ground: '#161210',
    ink: '#efe5d3',
    soft: '#cbbfab',
    pencil: '#83786a',
    brick: '#e2572b',
  },
};

/** A pit is dark from supper to the first light; the hours are ours, not a season's. */
const NIGHT_FROM = 20;
const NIGHT_TO = 6;

export const groundAtHour = (hour: number): Ground =>
  hour >= NIGHT_FROM || hour < NIGHT_TO ? 'night' : 'paper';
