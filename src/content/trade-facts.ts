/**
 * What the trade does everywhere and no source we could read writes down. The drawing keeps to it, the words
 * for families do not state it: loads, bed ends and checks are the staff's.
 */
import type { Basis } from './sources.ts';

interface TradeFact {
  basis: Extract<Basis, 'common-practice'>;
  /** Where the drawing keeps to it; none for what no picture shows. */
  drawnIn?: readonly string[];
}

export const TRADE_FACTS = {
  /** The hanging weight is about this share of the body weight; staff prescribe it. */
  loadShareOfBodyWeight: { basis: 'common-practice', value: 0.1, drawnIn: ['scene/whole/slope.ts'] },
  /** Above this body weight the bed gets a strong foot end. */
  strongBedEndAboveKg: { basis: 'common-practice', value: 40 },
  /** Staff check the foot about this long after the hanging weight is on … */
  firstChecksAfterMinutes: { basis: 'common-practice', value: [5, 30] },
  /** … and then at least this often. */
  laterChecksEveryMinutes: { basis: 'common-practice', value: 60 },
  /** Each turn of the leg bandage covers this share of the turn before it. */
  bandageOverlapShare: { basis: 'common-practice', value: 0.5, drawnIn: ['scene/close/wrap.ts'] },
  /** The leg bandage leaves the hollow behind the knee free. */
  gapBehindKnee: {
    basis: 'common-practice',
    value: true,
    drawnIn: ['scene/close/bandage.ts', 'scene/close/thigh.ts', 'scene/close/knee.ts'],
  },
} as const satisfies Record<string, TradeFact & { value: number | readonly number[] | true }>;
