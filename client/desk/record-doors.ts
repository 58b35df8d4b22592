import type {
  DayAnswered,
  LotTraced,
  RecordAnswer,
  RecordShown,
  SheetAsk,
  SheetMade,
} from '../../shared/protocol/index.ts';
import { readSettings } from '../shell/settings.ts';
import { HubAway } from '../shell/who-doors.ts';

/** The hub's doors for its record; each rejects with HubAway where the hub could not be asked. */
export type RecordDoors = {
  show(): Promise<RecordAnswer<RecordShown>>;
  trace(lot: string): Promise<RecordAnswer<LotTraced>>;
  day(day: string): Promise<RecordAnswer<DayAnswered>>;
  sheet(asked: SheetAsk): Promise<RecordAnswer<SheetMade>>;
};

/** The doors of the hub that this page came from, with this device's own token. */
export function recordDoors(ask: typeof fetch = fetch.bind(window)): RecordDoors {
  const { token } = readSettings(new URLSearchParams());
  async function at<Found>(door: string, asked: object): Promise<RecordAnswer<Found>> {
    try {
      const response = await ask(`/api/record/${door}`, {
        method: 'POST',
        headers: {
          'Content-Type': 'application/json',
          ...(token && { Authorization: `Bearer ${token}` }),
        },
        body: JSON.stringify(asked),
      });
      return (await response.json()) as RecordAnswer<Found>;
    } catch (fault) {
      throw new HubAway(door, { cause: fault });
    }
  }
  return {
    show: () => at('show', {}),
    trace: (lot) => at('trace', { lot }),
    day: (day) => at('day', { day }),
    sheet: (asked) => at('sheet', asked),
  };
}
