import type { Planner } from '../../shared/schedule/index.ts';
export function plannerContract(_name: string, _planner: Planner) {}
