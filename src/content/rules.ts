/** Rules R1–R20 and where each comes from; the code is domain/signs. */
import type { RuleId } from '#domain/signs/types.ts';
import type { Basis } from './sources.ts';

export const RULES = {
  R1: { basis: ['our-proposal'] },
  R2: { basis: ['our-proposal'] },
  R3: { basis: ['parent-worry', 'our-proposal'] },
  R4: { basis: ['boast-10', 'our-proposal'] },
  R5: { basis: ['bae-2001', 'noonan-2010', 'our-proposal'] },
  R6: { basis: ['noonan-2010', 'our-proposal'] },
  R7: { basis: ['common-practice', 'our-proposal'] },
  R8: { basis: ['our-proposal'] },
  R9: { basis: ['our-proposal'] },
  R10: { basis: ['our-proposal'] },
  R11: { basis: ['our-proposal'] },
  R12: { basis: ['noonan-2010', 'our-proposal'] },
  R13: { basis: ['our-proposal'] },
  R14: { basis: ['our-proposal'] },
  R15: { basis: ['our-proposal'] },
  R16: { basis: ['our-proposal'] },
  R17: { basis: ['boast-10', 'bae-2001', 'our-proposal'] },
  R18: { basis: ['bae-2001', 'our-proposal'] },
  R19: { basis: ['bae-2001', 'noonan-2010'] },
  R20: { basis: ['our-proposal'] },
} as const satisfies Record<
  Exclude<RuleId, 'detail' | 'ward' | 'unknown'>,
  { basis: readonly [Basis, ...Basis[]] }
>;
