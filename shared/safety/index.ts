export { keepsLimit, type Limit, type LimitId, limitOf, limits } from './limits.ts';
