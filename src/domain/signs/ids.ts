/** The forty signs a family can report, and the three about the adult. Ids never change once shipped. */
export const SIGN_IDS = [
  'toes-cool',
  'both-feet-cool',
  'toes-colour',
  'toes-swollen',
  'toes-numb',
  'toes-still',
  'foot-droops',
  'thigh-changed',
  'sore-after-medicine',
  'sore-rising',
  'band-tight',
  'band-moved',
  'band-wet',
  'band-stained',
  'heel-sore',
  'skin-mark',
  'burning-spot',
  'load-not-free',
  'cord-trouble',
  'cord-touched',
  'slid-down',
  'plate-crooked',
  'leg-rolled',
  'bed-changed',
  'leg-jumps',
  'itchy-under',
  'hot-or-shivery',
  'breath-hard',
  'hard-to-wake',
  'very-upset',
  'no-wee',
  'no-poo',
  'not-drinking',
  'being-sick',
  'other-leg',
  'pale-sweaty',
  'shaking-fit',
  'fell-or-climbing',
  'belly-hurts',
  'head-hurts',
] as const;

/** What the grown-up feels, always on the first screen. */
export const WORRY_IDS = ['cannot-name-it', 'worried', 'very-worried'] as const;

export type BodySignId = (typeof SIGN_IDS)[number];
export type WorryId = (typeof WORRY_IDS)[number];
export type SignId = BodySignId | WorryId;

export const ALL_SIGN_IDS: readonly SignId[] = [...SIGN_IDS, ...WORRY_IDS];
