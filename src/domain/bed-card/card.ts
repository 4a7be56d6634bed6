/** The bed card: what a nurse hands over to the family's phone. No name, no birth date, no case, no number of a bed. */
import type { Instant, Minutes } from '../units.ts';
import { WARD_MINUTES } from '../ward-minutes.ts';

/** Choices in the order of the code; they only ever grow at the end. */
export const CARD_CHOICES = {
  side: ['left', 'right'],
  bell: ['cord', 'button', 'desk', 'other'],
  secondStep: ['call-out', 'go-to-desk', 'second-button', 'emergency-pull'],
  head: ['flat', 'a-little', 'propped'],
  canTell: ['yes', 'partly', 'no'],
  set: ['bandage', 'taped'],
  atNight: ['grown-up', 'nobody'],
  hands: ['both', 'left', 'right', 'none'],
  drip: ['none', 'left', 'right'],
} as const;
type Choice<K extends keyof typeof CARD_CHOICES> = (typeof CARD_CHOICES)[K][number];

/** Ages as the card holds them: whole years, below three also months. */
export interface CardAge {
  /** 1–17. */
  years: number;
  /** 0–11, below three years only. */
  months?: number;
}

/**
 * An age in completed months, as far as the card tells it: of whole years the birthday.
 * @example monthsOf({ years: 2, months: 3 }) // 27
 */
export const monthsOf = ({ years, months = 0 }: CardAge): number => years * 12 + months;

export interface BedCard {
  side: Choice<'side'>;
  bell: Choice<'bell'>;
  secondStep: Choice<'secondStep'>;
  /** 2–10. */
  secondStepMinutes: number;
  age?: CardAge;
  head?: Choice<'head'>;
  /** "A little" holds until then. */
  headUntil?: Instant;
  canTell: Choice<'canTell'>;
  /** A numbing block runs until about then. It never lowers a class and explains no sign away. */
  numbingUntil?: Instant;
  set: Choice<'set'>;
  atNight?: Choice<'atNight'>;
  /** Whether the other foot can be used for comparing. */
  compare: boolean;
  /** 6–12. */
  noWeeHours: number;
  /** 30–90. */
  medicineWaitMinutes: number;
  nothingByMouthUntil?: Instant;
  /** Things are not shared with other beds. The reason is not on the card. */
  ownThingsOnly: boolean;
  hands: Choice<'hands'>;
  drip: Choice<'drip'>;
  /** A language tag of two or three letters, with at most one script or region: `pl`, `pt-BR`, `zh-Hant`. */
  wardLanguage: string;
  madeAt: Instant;
  /** Local time minus universal time where it was made. */
  off: Minutes;
}

/** The ways of calling a nurse that need no button and no cord. */
export type OtherWay = Exclude<BedCard['bell'], 'button' | 'cord'>;
/** How a nurse is called at a bed that has no call button; nothing where it has one. */
export const otherWay = (card: Pick<BedCard, 'bell'> | undefined): OtherWay | undefined =>
  card?.bell === 'desk' || card?.bell === 'other' ? card.bell : undefined;

/** What the nurse may type to be checked. None of it goes into the code. */
export interface SetUpNumbers {
  age?: CardAge;
  weightKg?: number;
  loadKg?: number;
  bedEnd?: 'ordinary' | 'strong';
}

export const LIMITS = {
  ageYears: [1, 17],
  weightKg: [3, 150],
  loadKg: [0.2, 10],
  secondStepMinutes: WARD_MINUTES.secondStepMinutes,
  noWeeHours: [6, 12],
  medicineWaitMinutes: WARD_MINUTES.medicineWaitMinutes,
  /** Whole quarter hours from 1970, as many as the code has room for: into the year 2089. */
  madeAt: [0, (2 ** 22 - 1) * 15],
  /** From where the day begins last to where it begins first. */
  off: [-12 * 60, 14 * 60],
  /** How long after `madeAt` a time on the card may lie: longer than a card holds. */
  untilMinutes: [0, 255 * 15],
} as const;

export const START_CARD = {
  secondStepMinutes: 5,
  canTell: 'yes',
  set: 'bandage',
  compare: true,
  noWeeHours: 8,
  medicineWaitMinutes: 45,
  ownThingsOnly: false,
  hands: 'both',
  drip: 'none',
} as const satisfies Partial<BedCard>;

/** A card to begin with, as the ward set it; what is still missing the nurse chooses. */
export const startCard = ({
  secondStep,
  secondStepMinutes,
  medicineWaitMinutes,
  wardLanguage,
}: Pick<BedCard, 'secondStep' | 'secondStepMinutes' | 'medicineWaitMinutes' | 'wardLanguage'>) => ({
  ...START_CARD,
  ...{ secondStep, secondStepMinutes, medicineWaitMinutes, wardLanguage },
});
