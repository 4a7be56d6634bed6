/** `npm test` judges every change on the same cases; run by hand, properties look at new ones each time. */
import fc from 'fast-check';

const seed = Number(process.env.BARE_TOES_SEED);
if (seed) fc.configureGlobal({ seed });

const most = Number(process.env.BARE_TOES_CASES) || Infinity;
// a fault that was put in only has to be noticed: nobody asks for its smallest case
if (most < Infinity) fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });
/** How many cases a long law looks at: all of them, or as many as `npm run mutate` allows, which asks it of every fault. */
export const cases = (all: number): number => Math.min(all, most);
