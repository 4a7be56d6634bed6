/** What a ward may set in whole minutes, lowest and highest: one table for its settings, its bed cards and the rules. */
export const WARD_MINUTES = {
  /** R16: how long nobody comes before the second step is due. */
  secondStepMinutes: [2, 10],
  /** R14: how long something to tell straight away may wait. */
  tellAgainMinutes: [5, 15],
  /** R15: how long something for the next visit may wait by day. */
  visitAgainMinutes: [60, 240],
  /** R17: how long after a dose soreness is held against it. */
  medicineWaitMinutes: [30, 90],
} as const;
