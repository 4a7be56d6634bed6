import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '#domain/signs/assess.ts';
import { ALL_SIGN_IDS, type SignId } from '#domain/signs/ids.ts';
import type { Answer, Context, Report, Sighting } from '#domain/signs/types.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { instant, minutes } from '#domain/units.ts';
import { SIGN_ROWS, SIGNS } from '#content/signs.ts';
import {
  anyContext,
  anyReport,
  anySighting,
  anySign,
  at,
  context,
  different,
  offered,
} from '../../helpers/reports.ts';
import { cases } from '../../helpers/same-cases.ts';

const rank = (report: Report, given: Context) => rankOf(assess(report, given).urgency);
/** Random reports that got worse in all: each report gets so in every way. */
const RUNS = 1_000_000;
const NOW = at('14:00');

const anyDetail = fc.constantFrom(
  ...ALL_SIGN_IDS.flatMap((id) => Object.keys(SIGN_ROWS[id]!.details ?? {}).map((d) => `${id}/${d}`)),
);

/** One way to make a report worse; the answer must not get lower. */
const worse: Record<string, (report: Report, given: Context, pick: fc.GeneratorValue) => [Report, Context]> =
  {
    'a surer answer': (report, given, pick) => {
      const sign = pick(() => anySign);
      const steps = offered(sign);
      const now = report.answers?.[sign];
      const next = steps[Math.min(steps.length - 1, (now ? steps.indexOf(now) : 0) + 1)]!;
      return [{ ...report, answers: { ...report.answers, [sign]: next } }, given];
    },
    'one more sighting': (report, given, pick) => {
      const more = pick(() => anySighting(NOW));
      return [{ ...report, sightings: [...(report.sightings ?? []), more] }, given];
    },
    'one more sub-answer': (report, given, pick) => {
      return [{ ...report, details: [...(report.details ?? []), pick(() => anyDetail)] }, given];
    },
    'a raise of the ward': (report, given, pick) => {
      const raise = { ...given.ward.raise, [pick(() => anySign)]: 'ring-now' as const };
      return [report, { ...given, ward: { ...given.ward, raise } }];
    },
    'a child who cannot tell': (report, given) => [
      report,
      { ...given, child: { under3: true, canTell: 'no' } },
    ],
    'waiting longer': (report, given, pick) => [
      { ...report, sightings: (report.sightings ?? []).filter((s) => s.lookedAt === undefined) },
      { ...given, now: instant(NOW + pick(() => fc.integer({ min: 1, max: 700 }))) },
    ],
    'a shorter patience of the ward': (report, given) => [
      report,
      {
        ...given,
        ward: {
          ...given.ward,
          secondStepMinutes: minutes(2),
          tellAgainMinutes: minutes(5),
          visitAgainMinutes: minutes(60),
          medicineWaitMinutes: minutes(30),
        },
      },
    ],
    'medicine asked for early again': (report, given) => [
      { ...report, askedEarlyAt: [...(report.askedEarlyAt ?? []), NOW] },
      given,
    ],
    'more soreness than the last time': (report, given) => {
      const last = Math.max(
        0,
        ...(report.soreness ?? []).filter((s) => s.when === 'rest').map((s) => s.at as number),
      );
      const soreness = (report.soreness ?? []).map((s) =>
        s.when === 'rest' && s.at === last ? { ...s, value: s.value + 1 } : s,
      );
      const same = (report.soreness ?? []).filter((s) => s.when === 'rest' && s.at === last).length <= 1;
      return [same ? { ...report, soreness } : report, given];
    },
  };

/** Waiting can let a day-old repeat or a jump fall out of its window; what is still open is not lowered by that. */
const withoutWindows = (report: Report): Report => ({
  ...report,
  soreness: [],
  sightings: (report.sightings ?? []).filter((s) => s.lookedAt === undefined && s.sign !== 'leg-jumps'),
});

describe('laws of urgency', () => {
  const ways = Object.entries(worse);

  it(`whichever way a report gets worse, the answer is never lower: ${Object.keys(worse).join(', ')}`, () => {
    fc.assert(
      fc.property(anyReport(NOW), anyContext(NOW), fc.gen(), (report, given, pick) => {
        const before = rank(report, given);
        for (const [name, change] of ways) {
          const waits = name === 'waiting longer';
          const start = waits ? withoutWindows(report) : report;
          const after = rank(...change(start, given, pick));
          const least = waits ? rank(start, given) : before;
          if (after < least) throw new Error(`${name}: ${least} fell to ${after}`);
        }
      }),
      // the smallest case of all would be looked for for minutes
      { numRuns: cases(Math.ceil(RUNS / ways.length)), endOnFailure: true },
    );
  }, 600_000);

  it('one more sign never lowers the answer: all pairs and triples', () => {
    const given = context();
    const ids = ALL_SIGN_IDS;
    const single = new Map(ids.map((id) => [id, rank(different(id), given)]));
    let triples = 0;
    for (let a = 0; a < ids.length; a++)
      for (let b = a + 1; b < ids.length; b++) {
        const pair = rank(different(ids[a]!, ids[b]!), given);
        if (pair < Math.max(single.get(ids[a]!)!, single.get(ids[b]!)!))
          throw new Error(`${ids[a]} ${ids[b]}`);
        for (let c = b + 1; c < ids.length; c++) {
          triples++;
          if (rank(different(ids[a]!, ids[b]!, ids[c]!), given) < pair)
            throw new Error(`${ids[a]} ${ids[b]} ${ids[c]}`);
        }
      }
    expect(triples).toBe((43 * 42 * 41) / 6);
  });

  it.each(ALL_SIGN_IDS)(
    'the page of %s alone never says more than any report that holds it',
    (sign: SignId) => {
      const alone = SIGNS[sign].urgency;
      fc.assert(
        fc.property(anyReport(NOW), anyContext(NOW), (report, given) => {
          const held: Report = { ...report, answers: { ...report.answers, [sign]: 'different' } };
          expect(rank(held, given)).toBeGreaterThanOrEqual(rankOf(alone));
        }),
        { numRuns: cases(300) },
      );
    },
  );

  it('the order of answers and of notes is irrelevant', () => {
    fc.assert(
      fc.property(anyReport(NOW), anyContext(NOW), fc.infiniteStream(fc.nat()), (report, given, dice) => {
        const shuffle = <T>(list: readonly T[]): T[] =>
          [...list]
            .map((v) => [dice.next().value, v] as const)
            .sort((x, y) => x[0] - y[0])
            .map(([, v]) => v);
        const mixed: Report = {
          ...report,
          answers: Object.fromEntries(shuffle(Object.entries(report.answers ?? {}))),
          sightings: shuffle(report.sightings ?? []),
        };
        const [a, b] = [assess(report, given), assess(mixed, given)];
        expect(b.urgency).toBe(a.urgency);
        expect(b.secondStep).toEqual(a.secondStep);
        const reasons = (x: typeof a) => x.because.map((r) => JSON.stringify(r)).sort();
        expect(reasons(b)).toEqual(reasons(a));
      }),
      { numRuns: cases(2000) },
    );
  });

  it('no answer at all is none, and says that nothing was looked at', () => {
    const nothing = assess({}, context());
    expect(nothing).toMatchObject({ urgency: 'none', because: [], nothingLooked: true, unknown: [] });
    expect(nothing.notLooked).toHaveLength(40);
    const asleep = Object.fromEntries(ALL_SIGN_IDS.map((id) => [id, 'not-looked' as const]));
    expect(assess({ answers: asleep }, context()).nothingLooked).toBe(true);
  });

  it('not looked weighs as little as like usual and is never listed as looked at', () => {
    const result = assess({ answers: { 'toes-cool': 'not-looked', 'toes-colour': 'like-usual' } }, context());
    expect(result.urgency).toBe('none');
    expect(result.notLooked).toContain('toes-cool');
    expect(result.notLooked).not.toContain('toes-colour');
  });

  it('a sign from a later version counts as tell-nurse and is shown, never dropped', () => {
    const sighting: Sighting = { sign: 'toes-glow', answer: 'different', at: at('13:59') };
    expect(assess({ sightings: [sighting] }, context())).toMatchObject({
      urgency: 'tell-nurse',
      unknown: ['toes-glow'],
    });
    expect(assess({ answers: { constructor: 'different' as const } }, context())).toMatchObject({
      unknown: ['constructor'],
    });
    expect(assess({ details: ['band-wet/very'] }, context())).toMatchObject({
      urgency: 'tell-nurse',
      unknown: ['band-wet/very'],
    });
  });

  it('an answer word from a later version counts as not sure', () => {
    expect(assess({ answers: { 'toes-cool': 'perhaps' as Answer } }, context()).urgency).toBe('not-sure');
  });

  it('a report stays open however long nobody looks', () => {
    const report: Report = { sightings: [{ sign: 'itchy-under', answer: 'different', at: at('14:00', 1) }] };
    expect(assess(report, context({ now: at('14:00', 25) })).urgency).not.toBe('none');
  });

  it('settings of a ward cannot stretch the waiting times beyond ours', () => {
    const lazy = context().ward;
    const ward = {
      ...lazy,
      secondStepMinutes: minutes(600),
      tellAgainMinutes: minutes(600),
      raise: { 'toes-cool': 'next-visit' as const },
    };
    const report: Report = { sightings: [{ sign: 'band-wet', answer: 'different', at: at('13:00') }] };
    const result = assess(report, context({ ward }));
    expect(result.urgency).toBe('ring-now');
    expect(result.secondStep?.state).toBe('due');
    expect(rank(different('toes-cool'), context({ ward }))).toBe(3);
  });

  it('every reason names its rule and the signs that gave it', () => {
    fc.assert(
      fc.property(anyReport(NOW), anyContext(NOW), (report, given) => {
        const result = assess(report, given);
        for (const reason of result.because) expect(reason.signs.length).toBeGreaterThan(0);
        const top = Math.max(0, ...result.because.map((r) => rankOf(r.atLeast)));
        expect(rankOf(result.urgency)).toBe(top);
      }),
      { numRuns: cases(2000) },
    );
  });
});
