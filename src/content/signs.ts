/**
 * The forty signs and the three about the adult: where they are found, how urgent each is alone, and where
 * that comes from. Words are in locales/<lang>/signs.json and say.json, pictures in sign-pictures.ts.
 */
import type { SignId } from '#domain/signs/ids.ts';
import type { SignFacts } from '#domain/signs/types.ts';
import type { Basis } from './sources.ts';
import type { PartId } from './parts.ts';

/** The six looks, in their order. */
export const LOOKS = ['toes', 'feeling', 'bandage', 'straight', 'cord', 'child'] as const;
export type LookId = (typeof LOOKS)[number];

export interface SignRow extends SignFacts {
  part: PartId;
  /** The look of the full look that asks about it; none for what is only in the drawers. */
  look?: LookId;
  basis: readonly [Basis, ...Basis[]];
  /** Sentences that differ by the pulled leg: left and right. */
  sided?: true;
  /** Has a line on how it looks on darker skin. */
  darker?: true;
  /** Has a line that goes with every answer. */
  note?: true;
  /** Has no words for the child: for adults only. */
  adultOnly?: true;
  /** A sleeping child cannot answer it. */
  awakeOnly?: true;
}

const RING = 'ring-now';
const TELL = 'tell-nurse';
const VISIT = 'next-visit';
/** Limb observation against the other limb, as published for children in traction. */
const LIMB = ['schn-2014', 'rch-neurovascular'] as const;
const EARLY = ['boast-10', 'bae-2001', 'noonan-2010'] as const;

export const SIGNS = {
  'toes-cool': {
    part: 'toes',
    look: 'toes',
    urgency: RING,
    group: 'A',
    basis: ['common-practice', ...LIMB],
    sided: true,
  },
  'both-feet-cool': { part: 'toes', urgency: TELL, basis: ['rch-neurovascular', 'our-proposal'] },
  'toes-colour': {
    part: 'toes',
    look: 'toes',
    urgency: RING,
    group: 'A',
    basis: ['common-practice', ...LIMB, 'color-awareness', 'md0531'],
    sided: true,
    darker: true,
  },
  'toes-swollen': {
    part: 'toes',
    look: 'toes',
    urgency: TELL,
    group: 'A',
    basis: LIMB,
    sided: true,
    darker: true,
    details: { 'cannot-move': { atLeast: RING, alsoSign: 'toes-still' } },
  },
  'toes-numb': {
    part: 'feeling',
    look: 'feeling',
    urgency: RING,
    group: 'A',
    basis: ['common-practice', ...LIMB],
    sided: true,
    awakeOnly: true,
  },
  'toes-still': {
    part: 'feeling',
    look: 'feeling',
    urgency: RING,
    group: 'A',
    basis: ['common-practice', ...LIMB],
    sided: true,
    awakeOnly: true,
  },
  'foot-droops': {
    part: 'feeling',
    note: true,
    look: 'feeling',
    urgency: RING,
    group: 'A',
    basis: ['common-practice', ...LIMB, 'birch-2024'],
    sided: true,
    awakeOnly: true,
  },
  'thigh-changed': {
    part: 'thigh',
    look: 'straight',
    urgency: RING,
    group: 'A',
    basis: ['our-proposal'],
    sided: true,
    darker: true,
  },
  'sore-after-medicine': { part: 'child', look: 'child', urgency: RING, group: 'A', basis: EARLY },
  'sore-rising': { part: 'child', look: 'child', urgency: TELL, basis: ['bae-2001', 'noonan-2010'] },
  'band-tight': {
    part: 'bandage',
    look: 'bandage',
    urgency: TELL,
    group: 'B',
    basis: ['schn-2014', 'who-2003', 'birch-2024'],
    darker: true,
  },
  'band-moved': {
    part: 'bandage',
    look: 'bandage',
    urgency: TELL,
    group: 'B',
    basis: ['common-practice', 'who-2003'],
    details: { 'right-off': { atLeast: RING } },
  },
  'band-wet': {
    part: 'bandage',
    look: 'bandage',
    urgency: TELL,
    group: 'B',
    basis: ['common-practice'],
    oftenReturns: true,
  },
  'band-stained': {
    part: 'bandage',
    look: 'bandage',
    urgency: TELL,
    group: 'B',
    basis: ['schn-2014', 'our-proposal'],
    note: true,
    details: { growing: { atLeast: RING } },
  },
  'heel-sore': {
    part: 'skin',
    look: 'bandage',
    urgency: TELL,
    group: 'B',
    basis: ['common-practice', 'birch-2024', 'color-awareness'],
    sided: true,
    darker: true,
  },
  'skin-mark': {
    part: 'skin',
    look: 'bandage',
    urgency: TELL,
    group: 'B',
    basis: ['common-practice', 'birch-2024', 'color-awareness'],
    darker: true,
  },
  'burning-spot': { part: 'bandage', look: 'bandage', urgency: TELL, group: 'B', basis: ['birch-2024'] },
  'load-not-free': {
    part: 'cord',
    look: 'cord',
    urgency: RING,
    group: 'C',
    basis: ['common-practice', 'wong-traction'],
    details: { fallen: { atLeast: RING } },
  },
  'cord-trouble': {
    part: 'cord',
    look: 'cord',
    urgency: RING,
    group: 'C',
    basis: ['common-practice', 'wong-traction'],
  },
  'cord-touched': {
    part: 'cord',
    look: 'cord',
    urgency: TELL,
    group: 'C',
    basis: ['common-practice', 'wong-traction'],
    oftenReturns: true,
  },
  'slid-down': {
    part: 'straight',
    look: 'straight',
    urgency: TELL,
    group: 'C',
    basis: ['common-practice'],
    oftenReturns: true,
    details: { 'plate-at-wheel': { atLeast: RING } },
  },
  'plate-crooked': {
    part: 'straight',
    look: 'straight',
    urgency: TELL,
    group: 'C',
    basis: ['common-practice'],
  },
  'leg-rolled': {
    part: 'straight',
    look: 'straight',
    urgency: TELL,
    group: 'C',
    basis: ['common-practice', 'birch-2024'],
    sided: true,
  },
  'bed-changed': { part: 'straight', urgency: TELL, group: 'C', basis: ['common-practice', 'wong-traction'] },
  'leg-jumps': {
    part: 'thigh',
    urgency: VISIT,
    basis: ['our-proposal'],
    details: { 'wakes-child': { atLeast: TELL } },
  },
  'itchy-under': { part: 'bandage', urgency: VISIT, basis: ['our-proposal'] },
  'hot-or-shivery': { part: 'child', look: 'child', urgency: TELL, basis: ['our-proposal'], darker: true },
  'breath-hard': {
    part: 'danger',
    look: 'child',
    urgency: RING,
    basis: ['common-practice'],
    darker: true,
    callOut: true,
  },
  'hard-to-wake': {
    part: 'danger',
    urgency: RING,
    basis: ['common-practice'],
    adultOnly: true,
    callOut: true,
  },
  'very-upset': { part: 'child', look: 'child', urgency: TELL, basis: ['noonan-2010', 'bae-2001'] },
  'no-wee': { part: 'more', urgency: TELL, basis: ['our-proposal'] },
  'no-poo': { part: 'more', urgency: VISIT, basis: ['our-proposal'] },
  'not-drinking': { part: 'more', urgency: VISIT, basis: ['our-proposal'], note: true },
  'being-sick': {
    part: 'more',
    note: true,
    urgency: TELL,
    basis: ['our-proposal'],
    details: { choking: { atLeast: RING, alsoSign: 'breath-hard' } },
  },
  'other-leg': { part: 'more', urgency: TELL, basis: ['our-proposal'], darker: true },
  'pale-sweaty': { part: 'danger', urgency: RING, basis: ['our-proposal'], darker: true, adultOnly: true },
  'shaking-fit': {
    part: 'danger',
    urgency: RING,
    basis: ['common-practice'],
    adultOnly: true,
    callOut: true,
  },
  'fell-or-climbing': { part: 'danger', urgency: RING, basis: ['our-proposal'] },
  'belly-hurts': { part: 'more', urgency: TELL, basis: ['our-proposal'] },
  'head-hurts': { part: 'more', urgency: TELL, basis: ['our-proposal'] },
  'cannot-name-it': {
    part: 'worry',
    urgency: TELL,
    basis: ['parent-worry', 'our-proposal'],
    adultOnly: true,
  },
  worried: { part: 'worry', urgency: TELL, basis: ['parent-worry', 'our-proposal'], adultOnly: true },
  'very-worried': { part: 'worry', urgency: RING, basis: ['parent-worry', 'our-proposal'], adultOnly: true },
} as const satisfies Record<SignId, SignRow>;

/** The same rows with the general type, for code that looks a sign up by an id from outside. */
export const SIGN_ROWS: Readonly<Record<string, SignRow>> = SIGNS;

/** Whether it is one of our signs; what a later version or a stranger wrote is not. */
export const isSignId = (id: string): id is SignId => Object.hasOwn(SIGNS, id);
/** Signs found at a part, in the order of the table. */
export const signsOfPart = (part: PartId): SignId[] =>
  (Object.keys(SIGNS) as SignId[]).filter((id) => SIGNS[id].part === part);
/** Signs that a look of the full look asks about, in the order of the table. */
export const signsOfLook = (look: LookId): SignId[] =>
  (Object.keys(SIGNS) as SignId[]).filter((id) => SIGN_ROWS[id]!.look === look);
/** "Not sure" is an answer only where the sign's own class is at least tell-nurse. */
export const offersNotSure = (id: SignId): boolean =>
  SIGNS[id].urgency !== VISIT && SIGNS[id].part !== 'worry';
/** What makes a sign worse, by id; empty for most. */
export const detailsOf = (id: SignId): string[] => Object.keys(SIGN_ROWS[id]!.details ?? {});
