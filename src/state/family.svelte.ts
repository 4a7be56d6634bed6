/** What this family chose on this phone: the drawing, the page's light, the ward's language. */
import type { OtherWay } from '#domain/bed-card/card.ts';
import { stillHolds } from '#domain/bed-card/holds.ts';
import { SECOND_STEPS, type SecondStepId } from '#content/second-steps.ts';
import type { Writer } from '#domain/notes/kinds.ts';
import type { ChildFacts } from '#domain/signs/types.ts';
import { instant, type Instant, type Minutes } from '#domain/units.ts';
import { WARD_MINUTES } from '#domain/ward-minutes.ts';
import { browserPreferences } from '#device/preferences.ts';
import { DRAWN_AGES, HAIRS, NEUTRAL, SKIN_TONES, type ChildLook } from '#scene/spec.ts';

export type Light = 'clock' | 'day' | 'night';
export type Role = 'grown-up' | 'child' | 'staff';

/** What the nurse's card says that the looks need; the whole card is kept apart and read where it is shown. */
export interface Bedside {
  secondStep: SecondStepId;
  secondStepMinutes: Minutes;
  medicineWaitMinutes: Minutes;
  /** False where the other foot cannot be used for comparing. */
  compare: boolean;
  /** A numbing block runs until about then. */
  numbingUntil?: Instant;
  /** When the card was made, or a nurse last said that it is still right. */
  madeAt?: Instant;
  /** Where there is no call button at this bed. */
  way?: OtherWay;
}

export interface Family extends Omit<ChildLook, 'side'>, ChildFacts {
  /** Unknown until the family or the nurse says which leg it is. */
  side: 'left' | 'right' | undefined;
  light: Light;
  wardLanguage: string | undefined;
  role: Role | undefined;
  locale: string | undefined;
  bed: Bedside | undefined;
  /** A ward's tablet that goes from bed to bed. */
  shared: boolean;
  /** Who writes on this phone: a role, never a name. */
  writer: Writer | undefined;
  /** From this moment on the page asks whether to erase everything. */
  eraseFrom: Instant | undefined;
  /** What was kept about the child could not be read, and nobody has said it anew since. */
  unread?: true;
}

const START: Family = {
  side: undefined,
  age: NEUTRAL.age,
  skin: NEUTRAL.skin,
  hair: NEUTRAL.hair,
  under3: false,
  canTell: 'yes',
  light: 'clock',
  wardLanguage: undefined,
  role: undefined,
  locale: undefined,
  bed: undefined,
  shared: false,
  writer: undefined,
  eraseFrom: undefined,
};

const oneOf = <T>(value: unknown, allowed: readonly T[], otherwise: T): T =>
  allowed.includes(value as T) ? (value as T) : otherwise;
const text = (value: unknown) =>
  typeof value === 'string' && /^[a-zA-Z-]{2,8}$/.test(value) ? value : undefined;

const within = (value: unknown, [low, high]: readonly [number, number]): value is Minutes =>
  typeof value === 'number' && value >= low && value <= high;

/** A card that is not whole is none: the ward's own rules then hold. */
function readBedside(kept: unknown): Bedside | undefined {
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { secondStep, secondStepMinutes, medicineWaitMinutes, compare, numbingUntil, madeAt, way } =
    kept as Partial<Bedside>;
  const step = SECOND_STEPS.find((known) => known === secondStep);
  if (!step || !within(secondStepMinutes, WARD_MINUTES.secondStepMinutes)) return undefined;
  if (!within(medicineWaitMinutes, WARD_MINUTES.medicineWaitMinutes)) return undefined;
  return {
    secondStep: step,
    secondStepMinutes,
    medicineWaitMinutes,
    compare: compare !== false,
    ...(typeof numbingUntil === 'number' && { numbingUntil }),
    ...(typeof madeAt === 'number' && { madeAt }),
    ...((way === 'desk' || way === 'other') && { way }),
  };
}

/** Reads kept choices; each one that is not known falls back by itself. */
export function readFamily(kept: Record<string, unknown>): Family {
  return {
    side: oneOf(kept.side, ['left', 'right', undefined] as const, undefined),
    age: oneOf(kept.age, DRAWN_AGES, START.age),
    skin: oneOf(kept.skin, SKIN_TONES, START.skin),
    hair: oneOf(kept.hair, HAIRS, START.hair),
    under3: kept.under3 === true,
    canTell: oneOf(kept.canTell, ['yes', 'partly', 'no'] as const, 'yes'),
    light: oneOf(kept.light, ['clock', 'day', 'night'] as const, 'clock'),
    wardLanguage: text(kept.wardLanguage),
    role: oneOf(kept.role, ['grown-up', 'child', 'staff', undefined] as const, undefined),
    locale: text(kept.locale),
    bed: readBedside(kept.bed),
    shared: kept.shared === true,
    eraseFrom:
      typeof kept.eraseFrom === 'number' && kept.eraseFrom > 0 && kept.eraseFrom < 144e9
        ? instant(kept.eraseFrom)
        : undefined,
    // one that is not known is left out when a note is read
    writer: typeof kept.writer === 'string' ? (kept.writer as Writer) : undefined,
    ...(kept.unread === true && { unread: true as const }),
  };
}

let family = $state.raw<Family>(START);
let kept = $state(true);

/** This phone's choices; the defaults until `loadFamily` has run in the browser. */
export const currentFamily = (): Family => family;
/** False where the browser refused to keep the last choice. */
export const familyKept = (): boolean => kept;

/** Reads the choices that this phone keeps. */
export function loadFamily(): void {
  const place = browserPreferences();
  family = { ...readFamily(place.read()), ...(!place.readable() && { unread: true as const }) };
}

/** Whether the page's foot asks if the nurse's card is still right (`stillHolds`); without a card it asks nothing. */
export const bedsideAsks = (bed: Pick<Bedside, 'madeAt'> | undefined, now: Instant): boolean =>
  bed?.madeAt !== undefined && stillHolds({ madeAt: bed.madeAt }, now) === 'ask';

/** Takes these choices over and keeps all of them; see `familyKept`. */
export function chooseFamily(change: Partial<Family>): void {
  const { unread, ...before } = family;
  // a leg is chosen by whoever says it all anew, or by the nurse's card
  const saidAnew = change.side !== undefined;
  family = { ...before, ...change, ...(unread && !saidAnew && { unread }) };
  kept = browserPreferences().write({ ...family, unread: family.unread });
}

/** Takes every choice off this device; false where one is still there. */
export function forgetFamily(): boolean {
  family = START;
  return browserPreferences().clear();
}
