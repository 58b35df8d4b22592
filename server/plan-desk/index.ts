export { createDrafts, type MakeAsk } from './drafts.ts';
export { createPlanDesk, type PlanDesk } from './plan-desk.ts';
