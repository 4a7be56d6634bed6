/** Reports, contexts and arbitrary values for the tests about signs. */
import fc from 'fast-check';
import { ALL_SIGN_IDS, type SignId } from '#domain/signs/ids.ts';
import type { Answer, Context, Report, Sighting } from '#domain/signs/types.ts';
import { instant, minutes, type Instant } from '#domain/units.ts';
import { offersNotSure, SIGN_ROWS, SIGNS } from '#content/signs.ts';
import { WARD } from '#content/ward.ts';

/** A moment of 25 November 2026, universal time. */
export const at = (clock: string, day = 25): Instant => {
  const [hours = 0, mins = 0] = clock.split(':').map(Number);
  return instant(Date.UTC(2026, 10, day, hours, mins) / 60_000);
};

export function context(change: Partial<Context> = {}): Context {
  return {
    now: at('14:00'),
    offsetMinutes: minutes(0),
    child: { under3: false, canTell: 'yes' },
    signs: SIGN_ROWS,
    ward: WARD,
    ...change,
  };
}

/** A report in which each of these signs is different. */
export const different = (...signs: SignId[]): Report => ({
  answers: Object.fromEntries(signs.map((sign) => [sign, 'different' as Answer])),
});

/** The answers a page offers for a sign, from least to most urgent. */
export const offered = (sign: SignId): Answer[] =>
  offersNotSure(sign) ? ['like-usual', 'not-sure', 'different'] : ['like-usual', 'different'];

export const anySign = fc.constantFrom(...ALL_SIGN_IDS);

const anyTime = fc.integer({ min: -2000, max: 0 });

/** Made once for each sign: a million reports draw from them. */
const sightingOf = new Map(
  ALL_SIGN_IDS.map((sign) => [
    sign,
    fc.record({
      answer: fc.constantFrom(...offered(sign).slice(1)),
      before: anyTime,
      looked: fc.option(fc.integer({ min: 0, max: 500 }), { nil: undefined }),
      told: fc.boolean(),
      detail: fc.constantFrom(undefined, ...Object.keys(SIGN_ROWS[sign]!.details ?? {})),
    }),
  ]),
);
export const anySighting = (now: Instant): fc.Arbitrary<Sighting> =>
  anySign.chain((sign) =>
    sightingOf.get(sign)!.map(({ answer, before, looked, told, detail }) => {
      const sighting: Sighting = { sign, answer, at: instant(now + before) };
      if (detail) sighting.details = [`${sign}/${detail}`];
      if (told) sighting.toldAt = sighting.at;
      if (looked !== undefined) sighting.lookedAt = instant(Math.min(now, sighting.at + looked));
      return sighting;
    }),
  );

/** A sign and one of its answers. */
const anyAnswered = fc.constantFrom(
  ...ALL_SIGN_IDS.flatMap((sign) => offered(sign).map((answer) => [sign, answer] as const)),
);

export const anyReport = (now: Instant): fc.Arbitrary<Report> =>
  fc.record({
    answers: fc
      .uniqueArray(anyAnswered, { maxLength: 6, selector: ([sign]) => sign })
      .map((pairs) => Object.fromEntries(pairs)),
    sightings: fc.array(anySighting(now), { maxLength: 5 }),
    soreness: fc.array(
      fc.record({
        at: anyTime.map((t) => instant(now + t)),
        value: fc.integer({ min: 0, max: 3 }),
        scale: fc.constantFrom('numbers' as const, 'steps' as const),
        when: fc.constantFrom('rest' as const, 'moving' as const),
      }),
      { maxLength: 4 },
    ),
    medicineAt: fc.array(
      anyTime.map((t) => instant(now + t)),
      { maxLength: 2 },
    ),
    askedEarlyAt: fc.array(
      anyTime.map((t) => instant(now + t)),
      { maxLength: 3 },
    ),
  });

export const anyContext = (now: Instant): fc.Arbitrary<Context> =>
  fc.record({
    now: fc.constant(now),
    offsetMinutes: fc.integer({ min: -720, max: 840 }).map(minutes),
    child: fc.record({
      under3: fc.boolean(),
      canTell: fc.constantFrom('yes' as const, 'partly' as const, 'no' as const),
    }),
    signs: fc.constant(SIGNS),
    ward: fc.record({
      raise: fc.dictionary(anySign, fc.constantFrom('tell-nurse' as const, 'ring-now' as const), {
        maxKeys: 2,
      }),
      secondStepMinutes: fc.integer({ min: 2, max: 10 }).map(minutes),
      tellAgainMinutes: fc.integer({ min: 5, max: 15 }).map(minutes),
      visitAgainMinutes: fc.integer({ min: 60, max: 240 }).map(minutes),
      medicineWaitMinutes: fc.integer({ min: 30, max: 90 }).map(minutes),
    }),
  });
