export { createDrafts } from './drafts.ts';
export { createPlanDesk, type PlanDesk } from './plan-desk.ts';
