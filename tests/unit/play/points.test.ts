// What a plan is worth, worked out by hand from the sentences of design 4-play, 5.4: one term at a time.
import { describe, expect, it } from 'vitest';
import { scoreOf } from '#domain/play/objective.ts';
import type { DayProblem, HardMoment, Idea, OrdinaryWindow, Placement } from '#domain/play/types.ts';
import { EXAMPLE } from '../../helpers/play-example.ts';

const IDEA: Idea = { ...EXAMPLE.ideas[0]!, kind: 'draw', energy: 2, suits: ['watch'] };
const idea = (id: string, more: Partial<Idea> = {}): Idea => ({ ...IDEA, id, ...more });
const open = (id: string, from: number, minutes: number, energy: 1 | 2 | 3 = 2): OrdinaryWindow => ({
  ...{ kind: 'ordinary', id, from, minutes, energy, propped: true, quiet: false, grownUp: true },
});
const hard = (id: string, from: number, more: Partial<HardMoment> = {}): HardMoment => ({
  ...{ ...open(id, from, 10), kind: 'hard', procedure: 'needle', weight: 1, freeHands: 1 },
  ...more,
});
const put = (name: string, window: string, from: number, minutes = 5): Placement => ({
  ...{ idea: name, window, from, minutes },
});

/** A day of one stretch in which one idea of the right energy, new, stands for five minutes: 4 + 1, and 2 for its family. */
const PLAIN: DayProblem = {
  ...EXAMPLE,
  ideas: [idea('a'), idea('b'), idea('c', { kind: 'talk' }), idea('d', { kind: 'talk' })],
  child: { ...EXAMPLE.child, likes: [], dislikes: [] },
  windows: [open('w', 600, 60), open('v', 900, 240)],
  terms: { novelty: true, wish: true, minutes: true, day: true },
};
const ONE = [put('a', 'w', 600)];
const child = (more: Partial<DayProblem['child']>) => ({ child: { ...PLAIN.child, ...more } });
const changed = (name: string, more: Partial<Idea>) => ({
  ideas: PLAIN.ideas.map((one) => (one.id === name ? { ...one, ...more } : one)),
});
const terms = (more: Partial<DayProblem['terms'] & object>) => ({ terms: { ...PLAIN.terms!, ...more } });
const history = (yesterday: string[], lastThreeDays: string[]) => ({ history: { yesterday, lastThreeDays } });
const moment = (more: Partial<HardMoment>) => ({ windows: [hard('m', 600, more), open('v', 900, 240)] });
const AT = [put('a', 'm', 600, 10)];
const TWO = [put('a', 'm', 600, 5), put('c', 'm', 605, 5)];
/** The grown-up is asked for 46 minutes, where there are so many. */
const budget = (grownUpMinutes: number) => ({
  limits: { screenMinutes: 20, grownUpMinutes },
  ...changed('a', { who: 'adult', minutes: [5, 60] }),
});

const WORTH: [number, string, Partial<DayProblem>, Placement[]][] = [
  [0, 'an empty day', {}, []],
  [7, 'one idea that is new, five minutes of the right energy', {}, ONE],
  [10, 'its kind is liked', child({ likes: ['draw'] }), ONE],
  [10, 'it is liked itself', child({ likes: ['a'] }), ONE],
  [7, 'another is liked', child({ likes: ['b', 'talk'] }), ONE],
  [4, 'its kind is disliked', child({ dislikes: ['draw'] }), ONE],
  [10, 'its kind is disliked, it itself is liked', child({ likes: ['a'], dislikes: ['draw'] }), ONE],
  [4, 'its kind is liked, it itself is disliked', child({ likes: ['draw'], dislikes: ['a'] }), ONE],
  [4, 'liked and disliked', child({ likes: ['a'], dislikes: ['a'] }), ONE],
  [5, 'a step too lively', changed('a', { energy: 3 }), ONE],
  [5, 'a step too calm', changed('a', { energy: 1 }), ONE],
  [3, 'two steps too lively', { ...changed('a', { energy: 3 }), windows: [open('w', 600, 60, 1)] }, ONE],
  [4, 'done yesterday', history(['a'], ['a']), ONE],
  [6, 'done the day before', history(['b'], ['a', 'b']), ONE],
  [7, 'another was done', history(['b'], ['b']), ONE],
  [
    6,
    'done yesterday, and novelty is left out',
    { ...history(['a'], ['a']), ...terms({ novelty: false }) },
    ONE,
  ],
  [7, 'nine minutes', {}, [put('a', 'w', 600, 9)]],
  [8, 'ten minutes', {}, [put('a', 'w', 600, 10)]],
  [9, 'twenty-five minutes', {}, [put('a', 'w', 600, 25)]],
  [7, 'ten minutes, and minutes are left out', terms({ minutes: false }), [put('a', 'w', 600, 10)]],
  [5, 'the day is left out', terms({ day: false }), ONE],

  [14, 'a second in another window', {}, [...ONE, put('c', 'v', 900)]],
  [12, 'a second in the same window', {}, [...ONE, put('c', 'w', 610)]],
  [
    12,
    'a second of the same kind and family in another window, long after',
    {},
    [...ONE, put('b', 'v', 900)],
  ],
  [8, 'a second of the same kind in the same window', {}, [...ONE, put('b', 'w', 610)]],
  [
    10,
    'a second of the same kind an hour later',
    { windows: [open('w', 600, 30), open('v', 665, 60)] },
    [...ONE, put('b', 'v', 665)],
  ],
  [
    12,
    'a second of the same kind more than an hour later',
    { windows: [open('w', 600, 30), open('v', 670, 60)] },
    [...ONE, put('b', 'v', 670)],
  ],
  [15, 'another kind between two of one', {}, [...ONE, put('c', 'w', 610), put('b', 'w', 620)]],
  [19, 'three families', changed('b', { kind: 'calm' }), [...ONE, put('b', 'w', 610), put('c', 'v', 900)]],

  [12, 'an idea at a moment: twice what it is', moment({}), AT],
  [12, 'a moment of middling weight', moment({ weight: 2 }), AT],
  [17, 'a moment that weighs most: thrice', moment({ weight: 3 }), AT],
  [16, 'one that leaves the eyes free, for a child that wants to watch', moment({ wish: 'watch' }), AT],
  [12, 'the same, for a child that wants to look away', moment({ wish: 'look-away' }), AT],
  [
    16,
    'one that keeps the eyes, for a child that wants to look away',
    { ...moment({ wish: 'look-away' }), ...changed('a', { suits: ['look-away'] }) },
    AT,
  ],
  [12, 'a child that will choose then', moment({ wish: 'choose-then' }), AT],
  [12, 'the wish is left out', { ...moment({ wish: 'watch' }), ...terms({ wish: false }) }, AT],
  [12, 'two at a moment: twice the middle of both, less two, and their families', moment({}), TWO],
  [
    20,
    'two at a moment, one liked: half a point is none',
    { ...moment({ weight: 3 }), ...child({ likes: ['a'] }) },
    TWO,
  ],
  [8, 'two of one kind at a moment', moment({}), [put('a', 'm', 600, 5), put('b', 'm', 605, 5)]],

  [11, 'a grown-up within the budget', budget(45), [put('a', 'w', 600, 45)]],
  [11, 'a grown-up fourteen minutes above the budget', budget(31), [put('a', 'w', 600, 45)]],
  [10, 'a grown-up a quarter of an hour above the budget', budget(30), [put('a', 'w', 600, 45)]],
  [9, 'a grown-up half an hour above the budget', budget(15), [put('a', 'w', 600, 45)]],
  [11, 'what needs no grown-up', { ...budget(0), ideas: PLAIN.ideas }, [put('a', 'w', 600, 45)]],

  ...(
    [
      [0, 6],
      [19, 6],
      [20, 7],
      [-5, 7],
    ] as const
  ).map(([minutes, worth]): [number, string, Partial<DayProblem>, Placement[]] => [
    worth,
    `something messy that is over ${minutes} minutes before a meal`,
    { ...changed('a', { mess: 1 }), events: [605 + minutes] },
    ONE,
  ]),
  [7, 'nothing messy before a meal', { events: [610] }, ONE],
  [
    6,
    'something very messy before one of several meals',
    { ...changed('a', { mess: 2 }), events: [610, 1100] },
    ONE,
  ],
  [
    6,
    'something messy before a moment',
    { ...changed('a', { mess: 1 }), windows: [open('w', 600, 10), hard('m', 610)] },
    ONE,
  ],
  [
    7,
    'something messy before an open stretch',
    { ...changed('a', { mess: 1 }), windows: [open('w', 600, 10), open('v', 610, 30)] },
    ONE,
  ],

  [4, 'a long stretch left empty on a day that is boring', { bored: true }, ONE],
  [1, 'two of them', { bored: true, windows: [...PLAIN.windows, open('u', 1140, 50)] }, ONE],
  [
    7,
    'a stretch of three quarters of an hour left empty',
    { bored: true, windows: [open('w', 600, 60), open('v', 900, 45)] },
    ONE,
  ],
  [
    7,
    'a moment left empty',
    { bored: true, windows: [open('w', 600, 60), hard('m', 900, { minutes: 60 })] },
    ONE,
  ],
  [5, 'a long stretch left empty, and the day is left out', { bored: true, ...terms({ day: false }) }, ONE],
];

describe('what a plan is worth', () => {
  it.each(WORTH)('%i: %s', (points, _, day, placements) => {
    expect(scoreOf({ ...PLAIN, ...day }, placements)).toBe(points);
  });

  it('counts every term where nothing is said of terms', () => {
    const { terms: _, ...unsaid } = PLAIN;
    const watched = { ...unsaid, windows: [hard('m', 600, { wish: 'watch' }), open('v', 900, 60)] };
    expect(scoreOf(watched, [...AT, put('c', 'v', 900, 20)])).toBe(14 + 7 + 4);
  });

  it('is not guessed for an idea that is not in the day', () => {
    expect(() => scoreOf(PLAIN, [put('nobody', 'w', 600)])).toThrow(
      'play › scoreOf: no such idea, saw "nobody"',
    );
  });
});
