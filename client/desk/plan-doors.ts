import type {
  CookPlan,
  MendShown,
  MendTaken,
  PlanAnswer,
  PlanConflict,
  PlanEdit,
  PlanNearest,
  PlanShown,
  PlanTried,
  SheetMade,
} from '../../shared/protocol/index.ts';
import type { Language } from '../../shared/words/index.ts';
import { HubAway } from '../shell/who-doors.ts';

/** The hub's doors for its plan; each rejects with HubAway where the hub could not be asked. */
export type PlanDoors = {
  show(day: string | null): Promise<PlanAnswer<PlanShown>>;
  edit(plan: CookPlan, edit: PlanEdit): Promise<PlanAnswer<{ readonly plan: CookPlan }>>;
  draft(plan: CookPlan): Promise<PlanAnswer<PlanTried>>;
  nearest(plan: CookPlan): Promise<PlanAnswer<PlanNearest>>;
  /** The same as a draft, with a better plan looked for in so many steps. */
  better(plan: CookPlan, steps: number): Promise<PlanAnswer<PlanTried>>;
  conflict(plan: CookPlan): Promise<PlanAnswer<PlanConflict>>;
  /** As it was bettered in so many steps. */
  take(plan: CookPlan, steps: number): Promise<PlanAnswer<PlanTried>>;
  undo(): Promise<PlanAnswer<PlanTried>>;
  mend(): Promise<PlanAnswer<MendShown>>;
  takeMend(id: string): Promise<PlanAnswer<MendTaken>>;
  /** The day that runs, on sheets to print. */
  paper(): Promise<PlanAnswer<SheetMade>>;
};

type Device = { readonly token: string | null; readonly language: () => Language };

/** The doors of the hub that this page came from. */
export function planDoors({ token, language }: Device, ask: typeof fetch = fetch.bind(window)) {
  async function at<Found>(door: string, asked: object): Promise<PlanAnswer<Found>> {
    try {
      const response = await ask(`/api/plan/${door}`, {
        method: 'POST',
        headers: {
          'Content-Type': 'application/json',
          ...(token && { Authorization: `Bearer ${token}` }),
        },
        body: JSON.stringify(asked),
      });
      return (await response.json()) as PlanAnswer<Found>;
    } catch (fault) {
      throw new HubAway(door, { cause: fault });
    }
  }
  const doors: PlanDoors = {
    show: (day) => at('show', { day }),
    edit: (plan, edit) => at('edit', { plan, edit, language: language() }),
    draft: (plan) => at('draft', { plan, language: language() }),
    nearest: (plan) => at('nearest', { plan, language: language() }),
    better: (plan, steps) => at('better', { plan, language: language(), steps }),
    conflict: (plan) => at('conflict', { plan, language: language() }),
    take: (plan, steps) => at('take', { plan, language: language(), steps }),
    undo: () => at('undo', { language: language() }),
    mend: () => at('mend', {}),
    takeMend: (id) => at('mend/take', { id }),
    paper: () => at('paper', { language: language() }),
  };
  return doors;
}
