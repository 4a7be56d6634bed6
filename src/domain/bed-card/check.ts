/**
 * Questions about the numbers of a set-up, for the nurse who typed them. They ask and never decide; no number of a
 * hanging weight is ever put forward.
 */
import { localDay } from '../clock/local.ts';
import { minutes, type Instant } from '../units.ts';
import { LIMITS, type BedCard, type CardAge, type SetUpNumbers } from './card.ts';
import { stillHolds } from './holds.ts';
import { ageFaults, faultsOf, UNTIL_FIELDS } from './limits.ts';

/** Weights in kilograms at the percentiles 0.4, 3, 50, 97 and 99.6. */
export type WeightBand = readonly [
  lowest: number,
  low: number,
  middle: number,
  high: number,
  highest: number,
];
export interface WeightBands {
  /** Whole years, from 1. */
  years: readonly WeightBand[];
  /** Completed months, from 12 to 35. */
  months: readonly WeightBand[];
}

/** What a ward brings along; without `bands` no weight can be compared with an age. */
export interface WardChecks {
  bands?: WeightBands;
  /** Above this, the load on skin is asked about. The ward decides. */
  mostLoadKg?: number;
  /** From this body weight on, the foot end is asked about. */
  strongEndFromKg?: number;
  now?: Instant;
}

export type NumberField = 'weightKg' | 'loadKg';
/**
 * `know` is shown, `ask` waits for an answer, `retype` waits for the same numbers once more, `correct` waits until the
 * number is another one.
 */
export type RemarkLevel = 'know' | 'ask' | 'retype' | 'correct';

export type Remark =
  /** Something typed or chosen lies outside what the card takes. No months at all is `low` above `high`. */
  | { id: 'out-of-limits'; level: 'correct'; field: string; low: number; high: number; seen: number }
  /** The load is an unusual share of the body weight. */
  | { id: 'load-against-weight'; level: 'ask' | 'retype'; weightKg: number; loadKg: number; ratio: number }
  | { id: 'more-than-5-kg'; level: 'ask'; loadKg: number; mostKg: number }
  /** A body weight for which the foot end must be strong, and no strong end was named. */
  | { id: 'strong-end'; level: 'ask'; weightKg: number; fromKg: number; near40: boolean }
  /** Few children of this age weigh this much, or this little. `low` and `high`: percentiles 3 and 97. */
  | {
      id: 'unusual-weight';
      level: 'ask' | 'retype';
      weightKg: number;
      is: 'low' | 'high';
      low: number;
      high: number;
    }
  /** An offer: the number would be a usual one if it was typed in pounds, or was turned into kilograms twice. */
  | { id: 'pounds'; level: 'know'; slip: 'in-pounds' | 'divided-twice'; typedKg: number; correctedKg: number }
  /** An offer: the number would be a usual one with its decimal point one place on. */
  | { id: 'decimal'; level: 'know'; typedKg: number; correctedKg: number }
  /** The numbers were typed for another age than the card holds. */
  | { id: 'age-differs'; level: 'ask'; typed: CardAge; onCard: CardAge }
  /** The card was filled in earlier and goes into a new code: is it still right? */
  | { id: 'another-day'; level: 'ask'; madeAt: Instant }
  /** A time on the card that is over. */
  | { id: 'past'; level: 'ask'; field: (typeof UNTIL_FIELDS)[number]; until: Instant }
  /** A check that could not be made: nothing was compared, which is not the same as nothing found. */
  | {
      id: 'not-checked';
      level: 'know' | 'ask';
      check: 'load-against-weight' | 'unusual-weight' | 'strong-end';
      needs: 'weightKg' | 'loadKg' | 'age' | 'bands';
    };

/** Usual shares of the body weight, and the wider ones beyond which both numbers are typed once more. */
const USUAL_SHARE = [0.08, 0.12] as const;
const POSSIBLE_SHARE = [0.05, 0.15] as const;
const MOST_LOAD_KG = 5;
const STRONG_END_FROM_KG = 40;
const NEAR_KG = 0.4;
const POUNDS_PER_KG = 2.20462262;

/** Numbers are typed in tenths; without this, 0.1 + 0.2 is more than 0.3. */
const clean = (value: number) => Math.round(value * 1e6) / 1e6;
const tenth = (value: number) => Math.round(value * 10) / 10;
const inside = (value: number, [low, high]: readonly [number, number]) => value >= low && value <= high;
/** Beyond any slip of a finger there is nothing to compare; limits speak of it. */
const COMPARABLE = [0.01, 10_000] as const;
const usable = (value = NaN) => (inside(value, COMPARABLE) ? value : undefined);

/** The row for an age as the card holds it; none for an age it cannot hold. */
export function bandFor(age: CardAge, bands: WeightBands): WeightBand | undefined {
  if (ageFaults(age).length) return undefined;
  return age.months === undefined
    ? bands.years[age.years - 1]
    : bands.months[(age.years - 1) * 12 + age.months];
}

function weightRemarks(weightKg: number, band: WeightBand): Remark[] {
  const [lowest, low, , high, highest] = band;
  const usual = [low, high] as const;
  if (inside(weightKg, usual)) return [];
  const level = inside(weightKg, [lowest, highest]) ? 'ask' : 'retype';
  const heavy = weightKg > high;
  const remarks: Remark[] = [
    { id: 'unusual-weight', level, weightKg, is: heavy ? 'high' : 'low', low, high },
  ];
  const factor = heavy ? 1 / POUNDS_PER_KG : POUNDS_PER_KG;
  if (inside(weightKg * factor, usual))
    remarks.push({
      id: 'pounds',
      level: 'know',
      slip: heavy ? 'in-pounds' : 'divided-twice',
      typedKg: weightKg,
      correctedKg: tenth(weightKg * factor),
    });
  const place = heavy ? 0.1 : 10;
  if (inside(clean(weightKg * place), usual))
    remarks.push({ id: 'decimal', level: 'know', typedKg: weightKg, correctedKg: tenth(weightKg * place) });
  return remarks;
}

/** What the card itself holds that is outside limits, over, or of another day. */
function cardRemarks(card: Partial<BedCard>, now: Instant | undefined): Remark[] {
  const remarks: Remark[] = faultsOf(card).flatMap((fault) =>
    'low' in fault
      ? [{ ...fault, id: 'out-of-limits' as const, level: 'correct' as const, seen: Number(fault.seen) }]
      : [],
  );
  if (now === undefined) return remarks;
  for (const field of UNTIL_FIELDS) {
    const until = card[field];
    if (until !== undefined && until <= now) remarks.push({ id: 'past', level: 'ask', field, until });
  }
  const { madeAt, off = minutes(0) } = card;
  if (madeAt !== undefined) {
    if (localDay(madeAt, off) !== localDay(now, off) || stillHolds({ madeAt }, now) === 'ask')
      remarks.push({ id: 'another-day', level: 'ask', madeAt });
  }
  return remarks;
}

const LEVELS: readonly RemarkLevel[] = ['correct', 'retype', 'ask', 'know'];

/**
 * What a second pair of eyes would ask about the numbers and choices of a set-up, gravest first.
 * Shape: facts, never sentences; `unanswered` tells which of them still hold the code back.
 * Units: kilograms.
 * Not: whether a load is right, which only the prescription says; two legs, which one card cannot hold.
 * Source: shares of the body weight and the strong foot end are common practice; bands, see content/growth.
 * @example checkBedCard({ age: { years: 8 }, weightKg: 57, loadKg: 2.6 }, {}, { bands })
 *   // load-against-weight (0.046, retype), unusual-weight (retype), strong-end, pounds (25.9)
 */
export function checkBedCard(
  numbers: SetUpNumbers,
  card: Partial<BedCard> = {},
  ward: WardChecks = {},
): Remark[] {
  const { bands, mostLoadKg = MOST_LOAD_KG, strongEndFromKg = STRONG_END_FROM_KG, now } = ward;
  const [weightKg, loadKg] = [numbers.weightKg, numbers.loadKg].map(usable);
  const age = numbers.age ?? card.age;
  const remarks = cardRemarks(card, now);
  const named = (field: string) => remarks.some((remark) => (remark as { field?: string }).field === field);

  for (const field of ['weightKg', 'loadKg'] as const) {
    const value = numbers[field];
    const [low, high] = LIMITS[field];
    if (value !== undefined && !inside(value, [low, high]))
      remarks.push({ id: 'out-of-limits', level: 'correct', field, low, high, seen: value });
  }
  for (const fault of numbers.age ? ageFaults(numbers.age) : [])
    if (!named(fault.field))
      remarks.push({ ...fault, id: 'out-of-limits', level: 'correct', seen: Number(fault.seen) });
  if (
    numbers.age &&
    card.age &&
    (numbers.age.years !== card.age.years || numbers.age.months !== card.age.months)
  )
    remarks.push({ id: 'age-differs', level: 'ask', typed: numbers.age, onCard: card.age });

  if (loadKg !== undefined && loadKg > mostLoadKg)
    remarks.push({ id: 'more-than-5-kg', level: 'ask', loadKg, mostKg: mostLoadKg });

  if (weightKg !== undefined && loadKg !== undefined) {
    const ratio = clean(loadKg / weightKg);
    if (!inside(ratio, USUAL_SHARE))
      remarks.push({
        id: 'load-against-weight',
        level: inside(ratio, POSSIBLE_SHARE) ? 'ask' : 'retype',
        weightKg,
        loadKg,
        ratio,
      });
  } else if (weightKg !== undefined || loadKg !== undefined)
    remarks.push({
      id: 'not-checked',
      level: 'know',
      check: 'load-against-weight',
      needs: weightKg === undefined ? 'weightKg' : 'loadKg',
    });

  if (weightKg !== undefined) {
    const above = clean(weightKg - strongEndFromKg);
    const near40 = Math.abs(above) <= NEAR_KG;
    if (numbers.bedEnd !== 'strong' && above >= -NEAR_KG)
      remarks.push({ id: 'strong-end', level: 'ask', weightKg, fromKg: strongEndFromKg, near40 });
    const band = age && bands && bandFor(age, bands);
    if (band) remarks.push(...weightRemarks(weightKg, band));
    else
      remarks.push({
        id: 'not-checked',
        // a page that forgot its table must not look like a weight that nothing is to be said about
        level: bands ? 'know' : 'ask',
        check: 'unusual-weight',
        needs: bands ? 'age' : 'bands',
      });
  } else if (numbers.bedEnd !== undefined)
    remarks.push({ id: 'not-checked', level: 'know', check: 'strong-end', needs: 'weightKg' });

  return remarks
    .map((remark, at) => ({ remark, rank: LEVELS.indexOf(remark.level) * 100 + at }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ remark }) => remark);
}

/** What the nurse answered to one remark. `again`: the numbers as they were typed the second time. */
export interface RemarkAnswer {
  say: 'checked' | 'strong-end-fitted' | 'staff-agree';
  again?: Partial<Record<NumberField, number>>;
}

/** The name of a remark with its facts: an answer given for one number does not hold for another. */
export const keyOf = (remark: Remark): string => JSON.stringify(Object.entries(remark).sort());

/** Numbers that a remark wants to see once more. */
export const retyped = (remark: Remark): NumberField[] =>
  remark.level !== 'retype'
    ? []
    : remark.id === 'load-against-weight'
      ? ['weightKg', 'loadKg']
      : ['weightKg'];

/**
 * Remarks that still hold the code back.
 * Shape: `answers` by `keyOf` of the remark each was given for. A strong end is answered by its own words only; a
 * number that is to be typed once more must be the same; what is outside limits can only be corrected.
 * @example unanswered(checkBedCard({}), {}) // []
 */
export function unanswered(
  remarks: readonly Remark[],
  answers: Readonly<Record<string, RemarkAnswer>>,
): Remark[] {
  return remarks.filter((remark) => {
    if (remark.level === 'know') return false;
    if (remark.level === 'correct') return true;
    const key = keyOf(remark);
    if (!Object.hasOwn(answers, key)) return true;
    const answer = answers[key]!;
    if (remark.id === 'strong-end') return answer.say === 'checked';
    if (answer.say !== 'checked') return true;
    return retyped(remark).some(
      (field) => answer.again?.[field] !== (remark as Partial<Record<NumberField, number>>)[field],
    );
  });
}
