/** What this family chose on this phone: the drawing, the page's light, the ward's language. */
import type { ChildFacts } from '#domain/signs/types.ts';
import { browserPreferences } from '#device/preferences.ts';
import { DRAWN_AGES, HAIRS, NEUTRAL, SKIN_TONES, type ChildLook } from '#scene/spec.ts';

export type Light = 'clock' | 'day' | 'night';
export type Role = 'grown-up' | 'child' | 'staff';

export interface Family extends Omit<ChildLook, 'side'>, ChildFacts {
  /** Unknown until the family or the nurse says which leg it is. */
  side: 'left' | 'right' | undefined;
  light: Light;
  wardLanguage: string | undefined;
  role: Role | undefined;
  locale: string | undefined;
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
};

const oneOf = <T>(value: unknown, allowed: readonly T[], otherwise: T): T =>
  allowed.includes(value as T) ? (value as T) : otherwise;
const text = (value: unknown) =>
  typeof value === 'string' && /^[a-zA-Z-]{2,8}$/.test(value) ? value : undefined;

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
  };
}

let family = $state.raw<Family>(START);
let kept = $state(true);

/** This phone's choices; the defaults until `loadFamily` has run in the browser. */
export const currentFamily = (): Family => family;
/** False where the browser refused to keep the last choice. */
export const familyKept = (): boolean => kept;

export function loadFamily(): void {
  family = readFamily(browserPreferences().read());
}

export function chooseFamily(change: Partial<Family>): void {
  family = { ...family, ...change };
  kept = browserPreferences().write({ ...family });
}
