import fc from 'fast-check';

/** Property tests import this file: `SEED=7 npm test` repeats or changes their random values. */
export const SEED = Number.parseInt(process.env.SEED ?? '', 10) || 20_260;

fc.configureGlobal({ seed: SEED });
process.stdout.write(`seed ${SEED}\n`);
