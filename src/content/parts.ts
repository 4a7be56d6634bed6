/** The places to tap on the quick look, in the order shown. `more` hangs behind `child`. */
export const PART_IDS = [
  'danger',
  'toes',
  'feeling',
  'thigh',
  'bandage',
  'skin',
  'straight',
  'cord',
  'child',
  'more',
  'worry',
] as const;

export type PartId = (typeof PART_IDS)[number];

/** Parts with a panel of their own on the first screen, beside the danger and worry buttons. */
export const PANEL_PARTS = [
  'toes',
  'feeling',
  'bandage',
  'skin',
  'straight',
  'cord',
  'thigh',
  'child',
] as const satisfies readonly PartId[];

/** Places of the whole picture, and the part each opens. */
export const SPOT_PARTS: Readonly<Record<string, PartId>> = {
  toes: 'toes',
  bandage: 'bandage',
  skin: 'skin',
  thigh: 'thigh',
  straight: 'straight',
  cord: 'cord',
  weight: 'cord',
  child: 'child',
};
