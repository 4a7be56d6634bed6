/** Rules that need a clock, each at its bound and a minute beside it. Source: the design's 2-signs.md, 3.4, R13–R20. */
import { describe, expect, test } from 'vitest';
import { assess } from '#domain/signs/assess.ts';
import {
  medicineWaitMinutes,
  secondStepFrom,
  secondStepMinutes,
  signsFromSoreness,
  tellAgainMinutes,
  visitAgainMinutes,
} from '#domain/signs/over-time.ts';
import type { Context, Report, Sighting, SorenessNote } from '#domain/signs/types.ts';
import { instant, minutes } from '#domain/units.ts';
import { SIGN_ROWS } from '#content/signs.ts';
import { at, context } from '../../helpers/reports.ts';

const MARK = at('13:00');
const after = (count: number) => instant(MARK + count);
const seen = (sign: string, count: number, more: Partial<Sighting> = {}): Sighting => ({
  ...{ sign, answer: 'different', at: after(count) },
  ...more,
});
const judged = (sightings: Sighting[], count: number, change: Partial<Context> = {}) =>
  assess({ sightings }, context({ now: after(count), ...change }));
const rulesOf = (report: Report, now = after(60), change: Partial<Context> = {}) =>
  assess(report, context({ now, ...change }))
    .because.map(({ rule, signs, atLeast }) => `${rule} ${signs.join(' ')} ${atLeast}`)
    .filter((reason) => !/^R(1|2|4|11) /.test(reason));

test.each([
  ['the second step', secondStepMinutes, 'secondStepMinutes', 2, 10],
  ['telling again', tellAgainMinutes, 'tellAgainMinutes', 5, 15],
  ['the next visit', visitAgainMinutes, 'visitAgainMinutes', 60, 240],
  ['what the medicine needs', medicineWaitMinutes, 'medicineWaitMinutes', 30, 90],
] as const)(
  'minutes for %s stay within the bounds of the ward; without a number, the fewest count',
  (_, read, field, low, high) => {
    const set = (value: number) => read({ ...context().ward, [field]: minutes(value) });
    expect([low - 1, low, low + 1, high - 1, high, high + 1].map(set)).toEqual([
      ...[low, low, low + 1],
      ...[high - 1, high, high],
    ]);
    expect([NaN, Infinity, -Infinity].map(set)).toEqual([low, low, low]);
  },
);

describe('R17: soreness that medicine did not lower', () => {
  type Line = [count: number, value: number, scale?: 'steps', when?: 'moving'][];
  const soreness = (line: Line): SorenessNote[] =>
    line.map(([count, value, scale, when]) => ({
      ...{ at: after(count), value, scale: scale ?? 'numbers', when: when ?? 'rest' },
    }));
  const found = (line: Line, marks = [0], now = 50) =>
    signsFromSoreness(
      { soreness: soreness(line), medicineAt: marks.map(after) },
      context({ now: after(now) }),
    )
      .filter(({ rule }) => rule === 'R17')
      .flatMap(({ signs }) => signs);
  const STILL = ['sore-after-medicine'];

  test.each<[string, Line, string[], number[]?, number?]>([
    [
      'the same as before',
      [
        [-20, 4],
        [45, 4],
      ],
      STILL,
    ],
    [
      'more than before',
      [
        [-20, 4],
        [45, 5],
      ],
      STILL,
    ],
    [
      'less than before',
      [
        [-20, 4],
        [45, 3],
      ],
      [],
    ],
    [
      'nothing any more',
      [
        [-20, 0],
        [45, 0],
      ],
      [],
    ],
    [
      'a value noted an hour before the medicine',
      [
        [-60, 4],
        [45, 4],
      ],
      STILL,
    ],
    [
      'a value noted longer before than an hour',
      [
        [-61, 4],
        [45, 4],
      ],
      [],
    ],
    [
      'a value noted as it was given',
      [
        [0, 4],
        [45, 4],
      ],
      STILL,
    ],
    [
      'no value noted before',
      [
        [1, 4],
        [45, 4],
      ],
      [],
    ],
    ['no value noted since', [[-20, 4]], []],
    [
      'no value noted since, but as it was given',
      [
        [-20, 4],
        [0, 4],
      ],
      [],
    ],
    [
      '45 minutes after the medicine',
      [
        [-20, 4],
        [40, 4],
      ],
      STILL,
      [0],
      45,
    ],
    [
      '44 minutes after the medicine',
      [
        [-20, 4],
        [40, 4],
      ],
      [],
      [0],
      44,
    ],
    [
      'the last value before it counts, not an earlier one',
      [
        [-50, 2],
        [-20, 4],
        [45, 3],
      ],
      [],
    ],
    [
      'the last value after it counts',
      [
        [-20, 4],
        [20, 3],
        [45, 4],
      ],
      STILL,
    ],
    [
      'notes that came in the wrong order',
      [
        [45, 4],
        [-20, 4],
        [20, 1],
      ],
      STILL,
    ],
    [
      'another scale before',
      [
        [-20, 2, 'steps'],
        [45, 2],
      ],
      [],
    ],
    [
      'the last value on this scale before',
      [
        [-30, 2],
        [-20, 3, 'steps'],
        [45, 2],
      ],
      STILL,
    ],
    [
      'steps against steps',
      [
        [-20, 2, 'steps'],
        [45, 2, 'steps'],
      ],
      STILL,
    ],
    [
      'moving says nothing about rest',
      [
        [-20, 4],
        [45, 4, undefined, 'moving'],
      ],
      [],
    ],
    [
      'moving before it says nothing either',
      [
        [-20, 4, undefined, 'moving'],
        [45, 4],
      ],
      [],
    ],
    [
      'a value from later than now',
      [
        [-20, 4],
        [51, 4],
      ],
      [],
    ],
    [
      'a value of this very minute',
      [
        [-20, 4],
        [50, 4],
      ],
      STILL,
    ],
    [
      'a mark from later than now',
      [
        [45, 4],
        [100, 4],
      ],
      [],
      [60],
    ],
    [
      'the lowest step that stays',
      [
        [-20, 1],
        [45, 1],
      ],
      ['sore-rising'],
    ],
    [
      'the lowest step that rises',
      [
        [-20, 1],
        [45, 2],
      ],
      STILL,
    ],
    [
      'the lowest step where there was nothing',
      [
        [-20, 0],
        [45, 1],
      ],
      STILL,
    ],
    [
      'medicine twice',
      [
        [-20, 4],
        [45, 4],
      ],
      [...STILL, ...STILL],
      [0, 5],
    ],
  ])('%s', (_, line, signs, marks, now) => {
    expect(found(line, marks, now)).toEqual(signs);
  });

  test('the class comes from the table of signs; of a table without them, a nurse is told', () => {
    const report: Report = {
      soreness: soreness([
        [-20, 4],
        [45, 4],
      ]),
      medicineAt: [MARK],
    };
    const classes = (change: Partial<Context>) =>
      signsFromSoreness(report, context({ now: after(50), ...change })).map(({ atLeast }) => atLeast);
    expect(classes({})).toEqual(['ring-now']);
    expect(classes({ signs: {} })).toEqual(['tell-nurse']);
  });

  test('the ward’s own minutes count', () => {
    const report: Report = {
      soreness: soreness([
        [-20, 4],
        [20, 4],
      ]),
      medicineAt: [MARK],
    };
    const ward = { ...context().ward, medicineWaitMinutes: minutes(30) };
    const of = (now: number) => signsFromSoreness(report, context({ now: after(now), ward })).length;
    expect([29, 30].map(of)).toEqual([0, 1]);
  });

  test('what is found so counts as a sign that is there: with thick toes it is two at the foot', () => {
    const report: Report = {
      soreness: soreness([
        [-20, 1],
        [45, 1],
      ]),
      medicineAt: [MARK],
      answers: { 'toes-swollen': 'different' },
    };
    expect(rulesOf(report, after(50))).toEqual([
      'R5 toes-swollen sore-rising ring-now',
      'R17 sore-rising tell-nurse',
    ]);
    expect(assess(report, context({ now: after(50) })).notLooked).not.toContain('sore-rising');
  });
});

describe('R18: soreness that rises', () => {
  const rises = (...line: [count: number, value: number, scale: 'numbers' | 'steps', when?: 'moving'][]) => {
    const soreness = line.map(([count, value, scale, when = 'rest' as const]) => ({
      ...{ at: after(count), value, scale, when },
    }));
    return rulesOf({ soreness }, after(240));
  };
  const ROSE = ['R18 sore-rising tell-nurse'];

  test('by two numbers or by one step, within four hours', () => {
    expect(rises([0, 2, 'numbers'], [240, 4, 'numbers'])).toEqual(ROSE);
    expect(rises([0, 2, 'numbers'], [240, 3, 'numbers'])).toEqual([]);
    expect(rises([0, 1, 'steps'], [240, 2, 'steps'])).toEqual(ROSE);
    expect(rises([0, 2, 'steps'], [240, 2, 'steps'])).toEqual([]);
    expect(rises([-1, 2, 'numbers'], [240, 9, 'numbers'])).toEqual([]);
  });

  test('moving with moving, too, but never one scale with the other or rest with moving', () => {
    expect(rises([0, 1, 'steps', 'moving'], [200, 2, 'steps', 'moving'])).toEqual(ROSE);
    expect(rises([0, 2, 'numbers', 'moving'], [200, 4, 'numbers', 'moving'])).toEqual(ROSE);
    expect(rises([0, 1, 'steps'], [200, 9, 'numbers'])).toEqual([]);
    expect(rises([0, 1, 'numbers'], [200, 9, 'numbers', 'moving'])).toEqual([]);
  });

  test('the last value counts: what rose and fell again did not rise', () => {
    expect(rises([0, 2, 'numbers'], [100, 6, 'numbers'], [200, 3, 'numbers'])).toEqual([]);
    expect(rises([200, 3, 'numbers'], [0, 2, 'numbers'], [100, 6, 'numbers'])).toEqual([]);
    // any earlier one may be the lower
    expect(rises([0, 5, 'numbers'], [100, 2, 'numbers'], [200, 4, 'numbers'])).toEqual(ROSE);
  });

  test('a value from later than now does not count', () => {
    expect(rises([0, 2, 'numbers'], [241, 9, 'numbers'])).toEqual([]);
  });
});

describe('R19: medicine asked for before it is due', () => {
  const asked = (times: number[], marks: number[] = []) =>
    rulesOf({ askedEarlyAt: times.map(after), medicineAt: marks.map(after) });
  const MORE = ['R19 sore-rising tell-nurse'];

  test('twice since the last mark, counts as more soreness', () => {
    expect(asked([10])).toEqual([]);
    expect(asked([10, 20])).toEqual(MORE);
    expect(asked([10, 20], [0])).toEqual(MORE);
    expect(asked([10, 20, 30], [5, 15])).toEqual(MORE);
    expect(asked([10, 20], [15])).toEqual([]);
    // in whatever order the marks are kept
    expect(asked([10, 20], [15, 0])).toEqual([]);
    // asked in the minute it was given, it was given
    expect(asked([10, 20], [10])).toEqual([]);
    // a mark of this very minute is a mark
    expect(asked([10, 20], [60])).toEqual([]);
  });

  test('what is from later than now does not count, what is of this minute does', () => {
    expect(asked([20, 61])).toEqual([]);
    expect(asked([20, 60])).toEqual(MORE);
    expect(asked([10, 20], [61])).toEqual(MORE);
  });
});

test('what rises, and what is asked for twice, has the class of more soreness in the table', () => {
  const signs = {
    ...SIGN_ROWS,
    'sore-rising': { ...SIGN_ROWS['sore-rising'], urgency: 'ring-now' as const },
  };
  const soreness: SorenessNote[] = [2, 4].map((value, n) => ({
    ...{ at: after(n), value, scale: 'numbers', when: 'rest' },
  }));
  const found = (change: Partial<Context>) =>
    signsFromSoreness({ soreness, askedEarlyAt: [MARK, after(9)] }, context({ now: after(9), ...change }));
  expect(found({}).map(({ rule, atLeast }) => [rule, atLeast])).toEqual([
    ['R18', 'tell-nurse'],
    ['R19', 'tell-nurse'],
  ]);
  expect(found({ signs }).map(({ atLeast }) => atLeast)).toEqual(['ring-now', 'ring-now']);
});

describe('R13: the same sign again', () => {
  const DAY = 1440;
  const closed = (count: number, looked = count + 5) => seen('heel-sore', count, { lookedAt: after(looked) });
  const AGAIN = ['R13 heel-sore ring-now'];
  const again = (...sightings: Sighting[]) => rulesOf({ sightings }, after(DAY));

  test('for the third time in a day goes one class up, the whole day counted', () => {
    const now = seen('heel-sore', DAY);
    expect(again(closed(0), closed(700), now)).toEqual(AGAIN);
    expect(again(closed(-1), closed(700), now)).toEqual([]);
    expect(again(closed(700), now)).toEqual([]);
    // one look ends one episode, however often it was seen before it
    expect(again(closed(600, 700), closed(650, 700), now)).toEqual([]);
  });

  test('only while it is there now, and only for the same sign', () => {
    expect(again(closed(0), closed(700))).toEqual([]);
    expect(again(closed(0), closed(700), seen('skin-mark', DAY))).toEqual([]);
    expect(
      again(closed(0), seen('skin-mark', 700, { lookedAt: after(705) }), seen('heel-sore', DAY)),
    ).toEqual([]);
  });

  test('a moment from later than now, or one at which all was like usual, is no time it was there', () => {
    const now = seen('heel-sore', DAY);
    expect(again(closed(700), closed(DAY + 1), now)).toEqual([]);
    expect(again(closed(700), { ...closed(800), answer: 'like-usual' }, now)).toEqual([]);
    expect(again(closed(700), { ...closed(800), answer: 'not-looked' }, now)).toEqual([]);
  });

  test('a next-visit sign is then told the nurse, and one that rings goes on ringing', () => {
    const third = (sign: string) =>
      [0, 700].map((count) => seen(sign, count, { lookedAt: after(count + 5) })).concat(seen(sign, DAY));
    expect(again(...third('itchy-under'))).toEqual(['R13 itchy-under tell-nurse']);
    expect(again(...third('toes-cool'))).toEqual(['R13 toes-cool ring-now']);
    for (const often of ['band-wet', 'slid-down', 'cord-touched', 'toes-glow'])
      expect(again(...third(often)).filter((reason) => reason.startsWith('R13'))).toEqual([]);
    expect(again(...third('skin-mark'), ...third('heel-sore'))).toEqual([
      ...['R13 heel-sore ring-now', 'R13 skin-mark ring-now'],
    ]);
  });
});

describe('R20: the leg jumps again', () => {
  const jumps = (...counts: number[]) =>
    rulesOf(
      { sightings: counts.map((count) => seen('leg-jumps', count, { toldAt: after(count) })) },
      after(120),
    );

  test('twice within two hours: tell the nurse', () => {
    expect(jumps(0, 120)).toEqual(['R20 leg-jumps tell-nurse']);
    expect(jumps(-1, 120)).toEqual([]);
    expect(jumps(0)).toEqual([]);
    expect(jumps(120, 121)).toEqual([]);
  });

  test('a second itch is no jump', () => {
    const twice = [0, 60].map((count) => seen('itchy-under', count, { toldAt: after(count) }));
    expect(rulesOf({ sightings: twice }, after(120))).toEqual([]);
  });
});

describe('R14–R16: what waiting does', () => {
  test('an itch at 13:00, not told: since 13:00 it waits, at 17:00 a nurse is told, at 17:15 it rings, at 17:20 comes the second step', () => {
    const itch = [seen('itchy-under', 0)];
    const why = (count: number) => {
      const { urgency, because, since, secondStep } = judged(itch, count);
      return [
        urgency,
        because.map(({ rule }) => rule).join(' '),
        since && since - MARK,
        secondStep?.state,
        secondStep && secondStep.dueAt - MARK,
      ];
    };
    expect(why(239)).toEqual(['next-visit', 'R1', 0, undefined, undefined]);
    expect(why(240)).toEqual(['tell-nurse', 'R1 R15', 240, undefined, undefined]);
    expect(why(254)).toEqual(['tell-nurse', 'R1 R15', 240, undefined, undefined]);
    expect(why(255)).toEqual(['ring-now', 'R1 R15 R14', 255, 'waiting', 260]);
    expect(why(259)).toEqual(['ring-now', 'R1 R15 R14', 255, 'waiting', 260]);
    expect(why(260)).toEqual(['ring-now', 'R1 R15 R14 R16', 255, 'due', 260]);
  });

  test('these reasons name every sign that is there, in their order', () => {
    const two = [seen('skin-mark', 0), seen('itchy-under', 0)];
    expect(judged(two, 300).because.slice(-3)).toEqual([
      { rule: 'R15', signs: ['itchy-under', 'skin-mark'], atLeast: 'tell-nurse' },
      { rule: 'R14', signs: ['itchy-under', 'skin-mark'], atLeast: 'ring-now' },
      { rule: 'R16', signs: ['itchy-under', 'skin-mark'], atLeast: 'ring-now' },
    ]);
  });

  test('what was told waits for no visit, and has no moment from which it waits', () => {
    const told = judged([seen('itchy-under', 0, { toldAt: after(1) })], 500);
    expect(told.because.map(({ rule }) => rule)).toEqual(['R1']);
    expect(told).not.toHaveProperty('since');
    expect(told).not.toHaveProperty('secondStep');
    // the one not told counts, from its own moment
    const both = [seen('itchy-under', 0, { toldAt: after(1) }), seen('no-poo', 100)];
    expect([339, 340].map((count) => judged(both, count).urgency)).toEqual(['next-visit', 'tell-nurse']);
    expect(judged(both, 339).since).toBe(after(100));
  });

  test('the earliest of what is not told begins the wait', () => {
    for (const pair of [
      [50, 0],
      [0, 50],
    ] as const) {
      const itch = [seen('itchy-under', pair[0]), seen('no-poo', pair[1])];
      expect([239, 240].map((count) => judged(itch, count).urgency)).toEqual(['next-visit', 'tell-nurse']);
      expect(judged(itch, 100).since).toBe(MARK);
    }
  });

  test('of telling and of ringing, the earliest moment at which all seen until then was that urgent counts', () => {
    const growing = [
      seen('itchy-under', 0, { toldAt: MARK }),
      seen('toes-swollen', 10),
      seen('sore-rising', 12),
    ];
    expect(judged(growing.slice(0, 2), 11)).toMatchObject({ urgency: 'tell-nurse', since: after(10) });
    expect(judged(growing, 13)).toMatchObject({
      urgency: 'ring-now',
      since: after(12),
      secondStep: { state: 'waiting', dueAt: after(17) },
    });
    expect(judged([...growing].reverse(), 17)).toMatchObject({
      secondStep: { state: 'due', dueAt: after(17) },
    });
    // what alone would ring at 15 minutes rings then, although something rings only later
    expect(judged([seen('band-wet', 0), seen('toes-cool', 16)], 16)).toMatchObject({ since: after(15) });
    expect(judged([seen('band-wet', 0), seen('toes-cool', 14)], 16)).toMatchObject({ since: after(14) });
  });

  test('what is seen and told in this very minute waits from this minute', () => {
    const told = judged([seen('toes-swollen', 0, { toldAt: MARK })], 0);
    expect(told).toMatchObject({ urgency: 'tell-nurse', since: MARK });
  });

  test('a sub-answer of a sighting counts as one that is given now, and waits from then on', () => {
    const jump = judged([seen('leg-jumps', 0, { details: ['leg-jumps/wakes-child'], toldAt: MARK })], 7);
    expect(jump).toMatchObject({ urgency: 'tell-nurse', since: MARK });
    expect(jump.because.map(({ rule }) => rule)).toEqual(['R20', 'R1']);
  });

  test('a sub-answer makes its sign sure, and a doubt noted later takes nothing from it', () => {
    const stained = (count: number, ...details: string[]) =>
      seen('band-stained', count, { answer: 'not-sure', details });
    const sure = judged([stained(0, 'band-stained/growing'), stained(2)], 3);
    expect(sure.because.slice(0, 2).map(({ rule }) => rule)).toEqual(['detail', 'R1']);
    expect(judged([stained(0), stained(2)], 3).because.map(({ rule }) => rule)).toEqual(['R2']);
  });

  test('a moment from later than now begins no wait, yet what was seen then counts', () => {
    const later = judged([seen('toes-cool', 10)], 0);
    expect(later).toMatchObject({ urgency: 'ring-now', since: MARK, secondStep: { dueAt: after(5) } });
    // ten minutes are two clocks that differ; more, and this one went back since
    const state = (ahead: number) => judged([seen('toes-cool', ahead)], 0).secondStep?.state;
    expect([9, 10, 11].map(state)).toEqual(['waiting', 'waiting', 'due']);
    const now = judged([seen('toes-cool', 0)], 0);
    expect(now).toMatchObject({ since: MARK, secondStep: { state: 'waiting', dueAt: after(5) } });
    const rules = (ahead: number) => judged([seen('itchy-under', ahead)], 0).because.map(({ rule }) => rule);
    expect([10, 11].map(rules)).toEqual([['R1'], ['R1', 'R15', 'R14', 'R16']]);
  });

  test('what rings without a moment of its own begins to wait now', () => {
    const report: Report = { answers: { 'toes-cool': 'different' } };
    expect(assess(report, context({ now: after(7) }))).toMatchObject({
      since: after(7),
      secondStep: { state: 'waiting', dueAt: after(12) },
    });
  });

  test('for breathing, waking and a fit the second step comes at once, from the first moment on', () => {
    expect(judged([seen('breath-hard', 0)], 3)).toMatchObject({
      since: MARK,
      secondStep: { state: 'at-once', dueAt: MARK },
      because: [{ rule: 'R1' }, { rule: 'R16', signs: ['breath-hard'], atLeast: 'ring-now' }],
    });
  });

  test('the ward’s own minutes count for each of the three', () => {
    const ward = {
      ...context().ward,
      secondStepMinutes: minutes(2),
      tellAgainMinutes: minutes(5),
      visitAgainMinutes: minutes(60),
    };
    const rules = (count: number) =>
      judged([seen('itchy-under', 0)], count, { ward })
        .because.map(({ rule }) => rule)
        .join(' ');
    expect([59, 60, 64, 65, 66, 67].map(rules)).toEqual([
      ...['R1', 'R1 R15', 'R1 R15', 'R1 R15 R14', 'R1 R15 R14', 'R1 R15 R14 R16'],
    ]);
  });

  test('the night of the place is not counted for the next visit', () => {
    // 13:00 universal time is 21:00 there: one hour of day, then the night until 06:00
    const there = { offsetMinutes: minutes(8 * 60) };
    const urgency = (count: number) => judged([seen('itchy-under', 0)], count, there).urgency;
    expect([240, 11 * 60 + 59, 12 * 60].map(urgency)).toEqual(['next-visit', 'next-visit', 'tell-nurse']);
  });
});

describe('a press of the button that nobody answered', () => {
  const { ward } = context();
  const step = (pressed: number, now: number, minutesOfWard = 5) =>
    secondStepFrom(after(pressed), after(now), { ...ward, secondStepMinutes: minutes(minutesOfWard) });

  test('waits the minutes of the ward, and then the second step is due', () => {
    expect(step(0, 0)).toEqual({ state: 'waiting', dueAt: after(5) });
    expect([4, 5, 60].map((now) => step(0, now).state)).toEqual(['waiting', 'due', 'due']);
    expect([1, 2].map((now) => step(0, now, 2).state)).toEqual(['waiting', 'due']);
  });

  test('a clock that was put back lets nobody wait for it to catch up', () => {
    // two phones' clocks may differ by ten minutes; more, and this one went back since
    expect([10, 11, 60].map((ahead) => step(ahead, 0).state)).toEqual(['waiting', 'due', 'due']);
  });
});
