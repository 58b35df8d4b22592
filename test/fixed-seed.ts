import fc from 'fast-check';

/**
 * Property tests draw the same cases at every run, so that a failure is one of the change that is
 * looked at. `FC_SEED=n npx vitest run` draws others.
 */
fc.configureGlobal({ seed: Number(process.env['FC_SEED'] ?? 1) });
