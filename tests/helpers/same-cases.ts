/** `npm test` judges every change on the same cases; run by hand, properties look at new ones each time. */
import fc from 'fast-check';

const seed = Number(process.env.BARE_TOES_SEED);
if (seed) fc.configureGlobal({ seed });
