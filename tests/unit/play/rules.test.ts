// Every hard rule, one sentence of the ward each: just broken and just kept. The checker and what looks at pins read each
// alike, and nothing but the rule that is named is ever broken.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '#domain/play/check.ts';
import {
  BARRED,
  CAUTIONS,
  KINDS,
  type DayProblem,
  type HardMoment,
  type Idea,
  type OrdinaryWindow,
  type Placement,
  type PlayWindow,
  type RuleId,
} from '#domain/play/types.ts';
import { pinBroken } from '#domain/play/pins.ts';
import { cases } from '../../helpers/same-cases.ts';

const IDEA: Idea = {
  ...{ id: 'idea', kind: 'draw', minutes: [10, 20], ages: [1, 17], position: 'both', hands: 0, energy: 1 },
  ...{ mess: 0, noise: 0, who: 'either', things: [], wipe: 'yes', moments: [], suits: [], tray: false },
  ...{ screen: 'no', dark: false, needs: [], cautions: [], absorbs: 2 },
};
const OPEN: OrdinaryWindow = {
  ...{ kind: 'ordinary', id: 'w', from: 600, minutes: 60, energy: 2 },
  ...{ propped: true, quiet: false, grownUp: true },
};
const MOMENT: HardMoment = {
  ...{ kind: 'hard', id: 'w', from: 600, minutes: 10, energy: 2, propped: true, quiet: false, grownUp: true },
  ...{ procedure: 'needle', weight: 2, freeHands: 1 },
};
/** Long and far from everything: what it leaves free is never what a rule is about. */
const REST: OrdinaryWindow = { ...OPEN, id: 'rest', from: 900, minutes: 150, energy: 1 };
const DAY: DayProblem = {
  ...{ ideas: [], windows: [], pins: [], events: [], permissions: [], eating: true, bored: false },
  child: { ageMonths: 96, mouths: false, likes: [], dislikes: [], never: [], lacks: [] },
  room: { shared: true, isolation: 'none', things: ['book', 'torch'], usedElsewhere: [] },
  ...{ freeHands: 1, lightsOut: 1200 },
  limits: { screenMinutes: 240, grownUpMinutes: 240 },
  history: { yesterday: [], lastThreeDays: [] },
};

interface Case {
  idea?: Partial<Idea>;
  child?: Partial<DayProblem['child']>;
  room?: Partial<DayProblem['room']>;
  window?: Partial<OrdinaryWindow>;
  moment?: Partial<HardMoment>;
  day?: Partial<DayProblem>;
  at?: Partial<Placement>;
}
function dayOf({ idea, child, room, window, moment, day, at }: Case): [DayProblem, Placement] {
  const here: PlayWindow = moment ? { ...MOMENT, ...moment } : { ...OPEN, ...window };
  const problem = {
    ...DAY,
    ideas: [{ ...IDEA, ...idea }],
    child: { ...DAY.child, ...child },
    room: { ...DAY.room, ...room },
    windows: [here, REST],
    ...day,
  };
  return [problem, { idea: 'idea', window: 'w', from: here.from, minutes: 10, ...at }];
}
const YES = { screen: 'yes' as const };
const alone = { grownUp: false };

/** What breaks a rule, and beside it what just keeps it; under no rule, what a rule could be thought to bar and does not. */
const RULES: [RuleId | 'kept', string, Case][] = [
  ['kept', 'an idea that asks for nothing', {}],
  ...BARRED.map((one): [RuleId, string, Case] => ['barred', one, { idea: { barred: [one] } }]),
  ['kept', 'an own idea that answers no to all', { idea: { barred: [] } }],

  ['H1', 'from nine on, at eight', { idea: { ages: [9, 17] } }],
  ['kept', 'from eight on, on the eighth birthday', { idea: { ages: [8, 17] } }],
  ['H1', 'up to seven, on the eighth birthday', { idea: { ages: [1, 7] } }],
  [
    'kept',
    'up to eight, a month before the ninth birthday',
    { idea: { ages: [1, 8] }, child: { ageMonths: 107 } },
  ],
  ['H1', 'up to eight, on the ninth birthday', { idea: { ages: [1, 8] }, child: { ageMonths: 108 } }],
  ['H1', 'from eighteen months on, at seventeen', { idea: { fromMonths: 18 }, child: { ageMonths: 17 } }],
  ['kept', 'from eighteen months on, at eighteen', { idea: { fromMonths: 18 }, child: { ageMonths: 18 } }],

  ['H2', 'shorter than it is worth starting for', { idea: { minutes: [7, 14] }, at: { minutes: 5 } }],
  ['kept', 'the shortest, up to the next five', { idea: { minutes: [7, 14] }, at: { minutes: 10 } }],
  ['H2', 'longer than it is worth', { idea: { minutes: [7, 14] }, at: { minutes: 15 } }],
  ['kept', 'the longest', { at: { minutes: 20 } }],
  ['kept', 'five minutes for what takes two to four', { idea: { minutes: [2, 4] }, at: { minutes: 5 } }],
  ['H2', 'ten minutes for what takes two to four', { idea: { minutes: [2, 4] } }],
  ['H2', 'no minutes at all', { idea: { minutes: [0, 10] }, at: { minutes: 0 } }],
  ['H2', 'a length between the fives', { at: { minutes: 12 } }],
  ['H2', 'a beginning between the fives', { at: { from: 602 } }],
  ['H2', 'before the window begins', { at: { from: 595 } }],
  ['H2', 'after the window is over', { at: { from: 655 } }],
  ['kept', 'as long as a short window', { window: { minutes: 10 } }],
  ['H2', 'longer than a short window', { window: { minutes: 10 }, at: { minutes: 15 } }],

  ['H3', 'the head up where it may not go up', { idea: { position: 'propped' }, window: { propped: false } }],
  ['kept', 'the head up where it may', { idea: { position: 'propped' } }],
  ['kept', 'flat where the head may not go up', { idea: { position: 'flat' }, window: { propped: false } }],
  ['kept', 'either way where the head may not go up', { window: { propped: false } }],

  ['H4', 'two hands where one is free', { idea: { hands: 2 } }],
  ['kept', 'one hand where one is free', { idea: { hands: 1 } }],
  ['H4', 'one hand where none is free', { idea: { hands: 1 }, day: { freeHands: 0 } }],

  ['H5', 'not without a grown-up, and none there', { idea: { who: 'adult' }, window: alone }],
  ['kept', 'not without a grown-up, and one there', { idea: { who: 'adult' } }],
  ['kept', 'either way, and none there', { window: alone }],
  ['kept', 'alone, and none there', { idea: { who: 'alone' }, window: alone }],
  ['H5', 'anything by itself a month before the third birthday', { child: { ageMonths: 35 }, window: alone }],
  ['kept', 'something by itself on the third birthday', { child: { ageMonths: 36 }, window: alone }],
  ...(['small-parts', 'cord'] as const).flatMap((code): [RuleId | 'kept', string, Case][] => [
    [
      'H5',
      `${code}, alone before the sixth birthday`,
      { ...has(code), child: { ageMonths: 71 }, window: alone },
    ],
    [
      'kept',
      `${code}, alone on the sixth birthday`,
      { ...has(code), child: { ageMonths: 72 }, window: alone },
    ],
    ['H6', `${code}, before the third birthday`, { ...has(code), child: { ageMonths: 35 } }],
    ['kept', `${code}, on the third birthday, with a grown-up`, { ...has(code), child: { ageMonths: 36 } }],
  ]),
  ...(['not-in-mouth', 'scissors'] as const).flatMap((code): [RuleId | 'kept', string, Case][] => [
    ['H5', `${code}, alone at any age`, { ...has(code), child: { ageMonths: 210 }, window: alone }],
    ['kept', `${code}, with a grown-up`, has(code)],
  ]),
  ...CAUTIONS.filter((code) => !/small|cord|mouth|scissors/.test(code)).map(
    (code): [RuleId | 'kept', string, Case] => [
      ...([
        'kept',
        `${code}, alone at three`,
        { ...has(code), child: { ageMonths: 36 }, window: alone },
      ] as const),
    ],
  ),

  [
    'H6',
    'small parts, by a child of eight who mouths things',
    { ...has('small-parts'), child: { mouths: true } },
  ],
  ['kept', 'a cord, by a child of eight who mouths things', { ...has('cord'), child: { mouths: true } }],
  ['H6', 'a cord in the last hour before lights-out', { ...has('cord'), day: { lightsOut: 669 } }],
  ['kept', 'a cord put away an hour before lights-out', { ...has('cord'), day: { lightsOut: 670 } }],
  ['kept', 'small parts in the last hour', { ...has('small-parts'), day: { lightsOut: 669 } }],

  [
    'H7',
    'shared and not to be wiped, in isolation',
    { idea: { wipe: 'no' }, room: { isolation: 'contact' } },
  ],
  [
    'H7',
    'shared and not to be wiped, where breath is the trouble',
    { idea: { wipe: 'no' }, room: { isolation: 'breath' } },
  ],
  [
    'kept',
    'staying with this child, in isolation',
    { idea: { wipe: 'leave' }, room: { isolation: 'contact' } },
  ],
  ['kept', 'wiped, in isolation', { room: { isolation: 'contact' } }],
  ['kept', 'not to be wiped, where nobody is isolated', { idea: { wipe: 'no' } }],
  ['H7', 'breath, where breath is the trouble', { ...has('breath'), room: { isolation: 'breath' } }],
  ['kept', 'breath, where touch is the trouble', { ...has('breath'), room: { isolation: 'contact' } }],
  [
    'H7',
    'a thing another bed had and nobody wiped',
    { idea: { things: ['book'] }, room: { usedElsewhere: ['torch', 'book'] } },
  ],
  [
    'kept',
    'another thing than the one another bed had',
    { idea: { things: ['book'] }, room: { usedElsewhere: ['torch'] } },
  ],

  [
    'H8',
    'a sound where it must be quiet',
    { idea: { noise: 1, dark: true }, window: { quiet: true }, room: { shared: false } },
  ],
  ['kept', 'a sound where it need not be quiet', { idea: { noise: 2 } }],
  ['kept', 'no sound where it must be quiet', { window: { quiet: true } }],
  ...([{ screen: 'yes' }, { screen: 'call' }, { things: ['book', 'torch'] }] as Partial<Idea>[]).flatMap(
    (lit): [RuleId | 'kept', string, Case][] => {
      const what = `light (${Object.values(lit).join()})`;
      return [
        ['H8', `${what} where others sleep`, { idea: lit, window: { quiet: true } }],
        [
          'kept',
          `${what} for the dark where others sleep`,
          { idea: { ...lit, dark: true }, window: { quiet: true } },
        ],
        [
          'kept',
          `${what} in a room of one’s own`,
          { idea: lit, window: { quiet: true }, room: { shared: false } },
        ],
        ['kept', `${what} by day`, { idea: lit }],
      ];
    },
  ),

  ['H9', 'a thing that is not there', { idea: { things: ['book', 'cups'] } }],
  ['kept', 'things that are there', { idea: { things: ['book', 'torch'] } }],

  ...(['needle', 'bandage', 'other'] as const).flatMap((procedure) =>
    [[], ['needle'], ['bandage'], ['needle', 'bandage']].map((moments): [RuleId | 'kept', string, Case] => [
      // for any other moment an idea has to be marked for both
      (procedure === 'other' ? moments.length === 2 : moments.includes(procedure)) ? 'kept' : 'H10',
      `at the moment "${procedure}", marked for: ${moments.join()}`,
      { idea: { moments: moments as Idea['moments'] }, moment: { procedure } },
    ]),
  ),
  [
    'H10',
    'a hand that the needle needs',
    { idea: { moments: ['needle'], hands: 1 }, moment: { freeHands: 0 } },
  ],
  ['kept', 'the hand that is free at the moment', { idea: { moments: ['needle'], hands: 1 }, moment: {} }],
  ['H10', 'the tray, at a moment', { idea: { moments: ['needle'], tray: true }, moment: {} }],
  ['kept', 'the tray, in an open stretch', { idea: { tray: true } }],

  ['H11', 'a screen a month before the second birthday', { idea: YES, child: { ageMonths: 23 } }],
  ['kept', 'a screen on the second birthday', { idea: YES, child: { ageMonths: 24 } }],
  ['kept', 'a call with home at one', { idea: { screen: 'call' }, child: { ageMonths: 23 } }],
  ['H11', 'a screen in the last hour before lights-out', { idea: YES, day: { lightsOut: 669 } }],
  ['kept', 'a screen put away an hour before lights-out', { idea: YES, day: { lightsOut: 670 } }],
  ['kept', 'a call with home in the last hour', { idea: { screen: 'call' }, day: { lightsOut: 669 } }],

  ['H12', 'food where nothing may be eaten', { ...has('food'), day: { eating: false } }],
  ['H12', 'food lying flat', { ...has('food'), window: { propped: false } }],
  ['kept', 'food with the head up, where eating is allowed', has('food')],
  [
    'kept',
    'no food where nothing may be eaten, lying flat',
    { day: { eating: false }, window: { propped: false } },
  ],

  ['H13', 'an idea the family wants never', { child: { never: ['other', 'idea'] } }],
  ['H13', 'a kind the family wants never', { child: { never: ['talk', 'draw'] } }],
  ['kept', 'another kind than the one wanted never', { child: { never: ['talk', 'other'] } }],
  [
    'H13',
    'what the child cannot be asked for',
    { idea: { needs: ['sight', 'speech'] }, child: { lacks: ['speech'] } },
  ],
  ['kept', 'what the child can be asked for', { idea: { needs: ['sight'] }, child: { lacks: ['speech'] } }],
  [
    'H13',
    'what a ward allows by its own word, without it',
    { idea: { allowedBy: 'plants' }, day: { permissions: ['free-ankle'] } },
  ],
  [
    'kept',
    'what a ward allows by its own word, with it',
    { idea: { allowedBy: 'plants' }, day: { permissions: ['free-ankle', 'plants'] } },
  ],
];
function has(...cautions: Idea['cautions'][number][]): { idea: Partial<Idea> } {
  return { idea: { cautions } };
}

describe('one placement by itself', () => {
  it.each(RULES)('%s: %s', (rule, _, one) => {
    const [problem, placement] = dayOf(one);
    const expected = rule === 'kept' ? [] : [rule];
    const found = checkPlan(problem, { placements: [placement] });
    expect([...new Set(found.map((violation) => violation.rule))]).toEqual(expected);
    for (const { idea, window } of found) expect([idea, window]).toEqual(['idea', 'w']);
    expect(pinBroken(problem, placement)).toEqual(expected);
  });

  it('has a sentence for every rule about one placement', () => {
    const named = new Set(RULES.map(([rule]) => rule));
    for (let n = 1; n <= 13; n++) expect(named).toContain(`H${n}`);
  });

  const some = <T>(...list: T[]) => fc.constantFrom(...list);
  const few = <T>(...list: T[]) => fc.subarray(list, { maxLength: 2 });
  const ages = some(12, 17, 18, 23, 24, 35, 36, 59, 60, 71, 72, 96, 107, 108, 215);
  const anyCase: fc.Arbitrary<Case> = fc.record({
    idea: fc.record({
      kind: some(...KINDS),
      minutes: some<Idea['minutes']>([10, 20], [2, 4], [7, 14], [10, 10]),
      ages: some<Idea['ages']>([1, 17], [1, 2], [3, 8], [6, 17]),
      fromMonths: some(0, 18),
      position: some('both', 'flat', 'propped'),
      hands: some(0, 1, 2),
      noise: some(0, 0, 1),
      who: some('alone', 'adult', 'either'),
      things: few('book', 'torch', 'cups'),
      wipe: some('yes', 'leave', 'no'),
      moments: few('needle', 'bandage'),
      tray: some(false, false, true),
      screen: some('no', 'no', 'yes', 'call'),
      dark: fc.boolean(),
      needs: few('sight', 'speech'),
      cautions: few(...CAUTIONS),
      barred: some([], [], [BARRED[0]]),
    }),
    child: fc.record({
      ageMonths: ages,
      mouths: fc.boolean(),
      never: some([], [], ['draw'], ['idea']),
      lacks: some([], ['sight'] as const),
    }),
    room: fc.record({
      shared: fc.boolean(),
      isolation: some('none', 'contact', 'breath'),
      usedElsewhere: few('book', 'cups'),
    }),
    day: fc.record({ eating: fc.boolean(), freeHands: some(0, 1, 2), lightsOut: some(665, 670, 675, 1200) }),
    at: fc.record({ minutes: some(5, 10, 15, 20) }),
  });
  const anyStretch = fc.record({ propped: fc.boolean(), quiet: fc.boolean(), grownUp: fc.boolean() });
  const anyMoment: fc.Arbitrary<Partial<HardMoment>> = fc.record({
    ...{ propped: fc.boolean(), quiet: fc.boolean(), grownUp: fc.boolean(), minutes: some(10, 15) },
    ...{ procedure: some('needle', 'bandage', 'other'), freeHands: some(0, 1, 2) },
  });

  it('is read alike by the checker and by what looks at pins, at any bed', () => {
    let several = 0;
    fc.assert(
      fc.property(anyCase, anyStretch, fc.option(anyMoment), (one, window, moment) => {
        // a film on a lead goes by the rule about films
        const cautions = one.idea!.cautions!.filter((code) => one.idea!.screen !== 'yes' || code !== 'cord');
        const idea = { ...one.idea, cautions };
        const at = moment ? { minutes: moment.minutes! } : one.at!;
        const [problem, placement] = dayOf({ ...one, idea, window, at, ...(moment ? { moment } : {}) });
        const rules = checkPlan(problem, { placements: [placement] }).map(({ rule }) => rule);
        if (new Set(rules).size > 1) several++;
        expect([...new Set(rules)].sort()).toEqual(pinBroken(problem, placement).sort());
      }),
      { numRuns: cases(3000) },
    );
    expect(several).toBeGreaterThan(cases(3000) / 4);
  });
});

/** A day of several stretches and moments: what stands in them, and what the checker says of it. */
interface Together {
  windows?: PlayWindow[];
  placements: Placement[];
  ideas?: Partial<Idea>[];
  months?: number;
  pins?: Placement[];
  done?: Placement[];
  refused?: Placement[];
  day?: Partial<DayProblem>;
}
const open = (id: string, from: number, minutes: number, more: Partial<OrdinaryWindow> = {}): PlayWindow => ({
  ...{ ...OPEN, id, from, minutes, energy: 1 },
  ...more,
});
const hard = (id: string, from: number, minutes: number): PlayWindow => ({ ...MOMENT, id, from, minutes });
const put = (idea: string, window: string, from: number, minutes: number): Placement => ({
  ...{ idea, window, from, minutes },
});
const NAMES = ['a', 'b', 'c', 'd', 'e'];
function saidOf({ windows = [OPEN], placements, ideas, months, pins, done, refused, day }: Together) {
  const problem: DayProblem = {
    ...DAY,
    child: { ...DAY.child, ageMonths: months ?? 96 },
    ideas: NAMES.map((id, n) => ({
      ...{ ...IDEA, id, minutes: [5, 120], moments: ['needle', 'bandage'] },
      ...ideas?.[n],
    })),
    windows: [...windows, ...(windows.some(({ id }) => id === 'rest') ? [] : [REST])],
    pins: pins ?? [],
    ...(done ? { done } : {}),
    ...day,
  };
  const found = checkPlan(problem, {
    placements,
    ...(refused ? { refused: refused.map((pin) => ({ pin })) } : {}),
  });
  return found.map(({ rule, window, idea }) => `${rule} ${window} ${idea}`).sort();
}
const LIVELY: Partial<Idea>[] = [{ energy: 2 }];
const FILM: Partial<Idea>[] = [{ screen: 'yes' }, { screen: 'yes' }];
/** A moment from ten to ten past, and an open stretch that begins so many minutes after it. */
const after = (minutes: number) => [hard('m', 600, 10), open('w', 610 + minutes, 60)];
const first = put('a', 'w', 600, 10);

const TOGETHER: [string, Together, string[]][] = [
  ['nothing planned breaks nothing', { placements: [] }, []],
  ['an idea nobody knows', { placements: [put('nobody', 'w', 600, 10)] }, ['unknown w nobody']],
  [
    'a window nobody knows, and the rest is read on',
    { placements: [put('a', 'nowhere', 600, 10), put('b', 'w', 605, 10)] },
    ['H2 w b', 'unknown nowhere a'],
  ],

  ['two with a gap of five minutes', { placements: [first, put('b', 'w', 615, 10)] }, []],
  ['two without a gap', { placements: [first, put('b', 'w', 610, 10)] }, ['H2 w b']],
  ['two with a longer gap than needed', { placements: [first, put('b', 'w', 620, 10)] }, ['H2 w b']],
  ['two told in another order', { placements: [put('b', 'w', 615, 10), first] }, []],
  ['two at one time', { placements: [first, put('b', 'w', 605, 10)] }, ['H2 w a', 'H2 w b', 'H2 w b']],
  ['later than the window begins', { placements: [put('a', 'w', 605, 10)] }, ['H2 w a']],
  [
    'three in a window, and a fourth',
    {
      windows: [open('w', 600, 120)],
      placements: NAMES.slice(0, 4).map((id, n) => put(id, 'w', 600 + 10 * n, 5)),
    },
    ['H2 w d'],
  ],
  [
    'one in a window where one is the most, and a second',
    { placements: [first, put('b', 'w', 615, 10)], day: { perWindow: 1 } },
    ['H2 w b'],
  ],
  [
    'four that were pinned stay',
    {
      windows: [open('w', 600, 120)],
      ...pinned(NAMES.slice(0, 4).map((id, n) => put(id, 'w', 600 + 10 * n, 5))),
    },
    [],
  ],
  [
    'a pin stands anywhere in its window, and what follows it five minutes later',
    {
      windows: [open('w', 600, 90)],
      pins: [put('a', 'w', 620, 10)],
      placements: [put('a', 'w', 620, 10), put('b', 'w', 635, 10)],
    },
    [],
  ],
  ['two pins need their five minutes', pinned([first, put('b', 'w', 610, 10)]), ['H2 w b']],
  ['two pins with their five minutes', pinned([first, put('b', 'w', 615, 10)]), []],
  [
    'what was done needs none',
    { done: [first, put('b', 'w', 610, 10)], placements: [first, put('b', 'w', 610, 10)] },
    [],
  ],
  [
    'but was not done at one time',
    { done: [first, put('b', 'w', 605, 10)], placements: [first, put('b', 'w', 605, 10)] },
    ['H2 w a', 'H2 w b', 'H2 w b'],
  ],
  ['a pin before its window begins', pinned([put('a', 'w', 595, 10)]), ['H2 w a']],
  ['a pin between the fives', pinned([put('a', 'w', 602, 10)]), ['H2 w a']],
  ['nothing new starts before now', { placements: [first], day: { notBefore: 602 } }, ['H2 w a']],
  ['from the next five minutes on', { placements: [put('a', 'w', 605, 10)], day: { notBefore: 602 } }, []],
  ['now, where now is on the grid', { placements: [put('a', 'w', 605, 10)], day: { notBefore: 605 } }, []],

  [
    'nothing new starts in a moment that began before now',
    { windows: [hard('m', 600, 15)], placements: [put('a', 'm', 600, 15)], day: { notBefore: 602 } },
    ['H2 m a'],
  ],
  [
    'but a moment that began is filled up from now on',
    {
      windows: [hard('m', 600, 15)],
      done: [put('a', 'm', 600, 10)],
      placements: [put('a', 'm', 600, 10), put('b', 'm', 610, 5)],
      day: { notBefore: 602 },
    },
    [],
  ],
  ['a moment filled by one', { windows: [hard('m', 600, 15)], placements: [put('a', 'm', 600, 15)] }, []],
  ['a moment left empty', { windows: [hard('m', 600, 15)], placements: [] }, []],
  [
    'a moment filled by two without a gap',
    { windows: [hard('m', 600, 15)], placements: [put('a', 'm', 600, 10), put('b', 'm', 610, 5)] },
    [],
  ],
  [
    'a moment filled in part',
    { windows: [hard('m', 600, 15)], placements: [put('a', 'm', 600, 10)] },
    ['H2 m a'],
  ],
  [
    'a moment that began and was cut short',
    { windows: [hard('m', 600, 15)], done: [put('a', 'm', 600, 10)], placements: [put('a', 'm', 600, 10)] },
    [],
  ],
  [
    'a moment that began and is filled in part by something new',
    {
      windows: [hard('m', 600, 20)],
      done: [put('a', 'm', 600, 10)],
      placements: [put('a', 'm', 600, 10), put('b', 'm', 610, 5)],
    },
    ['H2 m a'],
  ],
  [
    'a moment filled by three',
    {
      windows: [hard('m', 600, 15)],
      placements: ['a', 'b', 'c'].map((id, n) => put(id, 'm', 600 + 5 * n, 5)),
    },
    ['H2 m a'],
  ],
  [
    'a moment with two at one time',
    { windows: [hard('m', 600, 10)], placements: [put('a', 'm', 600, 5), put('b', 'm', 600, 5)] },
    ['H2 m a', 'H2 m b'],
  ],

  ['an idea twice', { placements: [first, put('a', 'rest', 900, 10)] }, ['H14 rest a', 'H14 w a']],
  [
    'an idea twice, in two stretches within three hours',
    { windows: [OPEN, open('v', 720, 60)], placements: [first, put('a', 'v', 720, 10)] },
    ['H14 v a', 'H14 w a'],
  ],
  [
    'an idea twice, once as it was pinned',
    { pins: [first], placements: [first, put('a', 'rest', 900, 10)] },
    ['H14 rest a'],
  ],
  ...(
    [
      [420, 'H15 w a'],
      [415, undefined],
    ] as const
  ).map(([from, rule]): [string, Together, string[]] => [
    `what a moment needs at ten, spent ${600 - from} minutes before`,
    {
      windows: [open('w', from, 60), hard('m', 600, 10)],
      placements: [put('a', 'w', from, 10), put('a', 'm', 600, 10)],
    },
    ['H14 m a', 'H14 w a', ...(rule ? [rule] : [])],
  ]),
  [
    'what a moment needs, pinned before it',
    {
      windows: [open('w', 500, 60), hard('m', 600, 10)],
      pins: [put('a', 'w', 500, 10)],
      placements: [put('a', 'w', 500, 10), put('a', 'm', 600, 10)],
    },
    ['H14 m a'],
  ],
  [
    'what a moment needed, after it',
    { windows: after(20), placements: [put('a', 'm', 600, 10), put('a', 'w', 630, 10)] },
    ['H14 m a', 'H14 w a'],
  ],
  [
    'one idea at two moments',
    {
      windows: [hard('m', 600, 10), hard('n', 660, 10)],
      placements: [put('a', 'm', 600, 10), put('a', 'n', 660, 10)],
    },
    ['H14 m a', 'H14 n a'],
  ],

  ...(
    [
      [0, true],
      [5, true],
      [10, true],
      [15, false],
    ] as const
  ).map(([minutes, shaken]): [string, Together, string[]] => [
    `something lively ${minutes} minutes after a moment`,
    { windows: after(minutes), placements: [put('a', 'w', 610 + minutes, 10)], ideas: LIVELY },
    shaken ? ['H17 w a'] : [],
  ]),
  ['something calm after a moment', { windows: after(0), placements: [put('a', 'w', 610, 10)] }, []],
  [
    'something lively that was pinned after a moment',
    { windows: after(0), ...pinned([put('a', 'w', 610, 10)]), ideas: LIVELY },
    [],
  ],
  [
    'something lively at the next moment',
    {
      windows: [hard('m', 600, 10), hard('n', 610, 10)],
      placements: [put('a', 'n', 610, 10)],
      ideas: LIVELY,
    },
    [],
  ],
  [
    'something lively before a moment',
    {
      windows: [open('w', 560, 40), hard('m', 600, 10)],
      placements: [put('a', 'w', 560, 10)],
      ideas: LIVELY,
    },
    [],
  ],

  ...(
    [
      [71, 75, 80],
      [72, 90, 95],
    ] as const
  ).flatMap(([months, most, over]): [string, Together, string[]][] => [
    [`of 150 minutes ${most}, at ${months} months`, share(months, most), []],
    [`of 150 minutes ${over}, at ${months} months`, share(months, over), ['H16 rest a']],
  ]),
  ['a share is rounded down to five', { ...share(72, 35), windows: [open('rest', 900, 65)] }, []],
  ['and not up', { ...share(72, 35), windows: [open('rest', 900, 55)] }, ['H16 rest a', 'H16 rest a']],
  ['what was pinned stays above the share', { ...share(72, 95), ...pinned([put('a', 'rest', 900, 95)]) }, []],
  [
    'above the share nothing is added to what was pinned',
    {
      windows: [REST],
      pins: [put('a', 'rest', 900, 95)],
      placements: [put('a', 'rest', 900, 95), put('b', 'rest', 1000, 5)],
    },
    ['H16 rest b'],
  ],
  [
    'what a moment takes is no play',
    {
      windows: [hard('m', 600, 60)],
      placements: [put('a', 'm', 600, 60), ...share(72, 90).placements.map((one) => ({ ...one, idea: 'b' }))],
    },
    [],
  ],

  ['half an hour of the morning stays free', { placements: [put('a', 'w', 600, 30)] }, []],
  ['less than half an hour of the morning stays free', { placements: [put('a', 'w', 600, 35)] }, ['H16 w a']],
  [
    'less than half an hour stays free, told in another order',
    { windows: [open('w', 600, 55)], placements: [put('b', 'w', 615, 25), put('a', 'w', 600, 10)] },
    ['H16 w b'],
  ],
  [
    'a morning too short for a free half-hour',
    { windows: [open('w', 600, 25)], placements: [put('a', 'w', 600, 20)] },
    [],
  ],
  [
    'a morning whose half-hour a pin took',
    {
      windows: [open('w', 600, 50)],
      pins: [put('a', 'w', 620, 10)],
      placements: [put('a', 'w', 620, 10), put('b', 'w', 600, 10)],
    },
    [],
  ],
  [
    'a half-hour that begins at noon is none of the morning',
    { windows: [open('w', 690, 60)], placements: [put('a', 'w', 690, 30)] },
    ['H16 w a'],
  ],
  [
    'a half-hour that begins before noon is one',
    { windows: [open('w', 690, 60)], placements: [put('a', 'w', 690, 25)] },
    [],
  ],
  [
    'half an hour of the afternoon stays free',
    { windows: [open('v', 420, 90), open('rest', 720, 60)], placements: [put('a', 'rest', 720, 30)] },
    [],
  ],
  [
    'less than half an hour of the afternoon stays free',
    { windows: [open('v', 420, 90), open('rest', 720, 60)], placements: [put('a', 'rest', 720, 35)] },
    ['H16 rest a'],
  ],
  [
    'the half of the day that has no free half-hour is the one that is named',
    {
      windows: [OPEN, open('rest', 720, 60)],
      placements: [first, put('b', 'rest', 720, 35)],
    },
    ['H16 rest b'],
  ],
  [
    'between two ideas a free half-hour counts',
    {
      windows: [open('v', 420, 25), open('w', 600, 55)],
      pins: [put('a', 'w', 600, 10), put('b', 'w', 640, 15)],
      placements: [put('c', 'v', 420, 5), put('a', 'w', 600, 10), put('b', 'w', 640, 15)],
    },
    [],
  ],

  ['screens up to the family’s minutes', { ...films(10, 20), day: screens(30) }, []],
  ['screens above the family’s minutes', { ...films(10, 25), day: screens(30) }, ['H11 rest b']],
  [
    'screens above an hour, before the fifth birthday',
    { ...films(20, 45), months: 59, day: screens(240) },
    ['H11 rest b'],
  ],
  ['an hour of screens, before the fifth birthday', { ...films(20, 40), months: 59, day: screens(240) }, []],
  [
    'half an hour where the family says so, before the fifth birthday',
    { ...films(10, 25), months: 59, day: screens(30) },
    ['H11 rest b'],
  ],
  ['screens above an hour, on the fifth birthday', { ...films(20, 45), months: 60, day: screens(240) }, []],
  [
    'a film at a moment is not counted',
    {
      windows: [hard('w', 600, 40)],
      placements: [put('a', 'w', 600, 40), put('b', 'rest', 900, 20)],
      ideas: FILM,
      day: screens(30),
    },
    [],
  ],
  ['what is no film is not counted', { placements: [put('a', 'w', 600, 10)], day: screens(0) }, []],
  ['minutes typed wrong, and no film', { placements: [put('a', 'w', 600, 10)], day: screens(-5) }, []],

  [
    'what was done stays, whatever the rules say now',
    { done: [first], placements: [first], ideas: [{ ages: [9, 17] }] },
    [],
  ],
  ['what is pinned has to keep the rules', { ...pinned([first]), ideas: [{ ages: [9, 17] }] }, ['H1 w a']],

  ['a pin that is gone', { pins: [first], placements: [] }, ['H18 w a']],
  ['a pin that was refused', { pins: [first], placements: [], refused: [first] }, []],
  [
    'another pin that was refused',
    { pins: [first], placements: [], refused: [put('b', 'w', 600, 10)] },
    ['H18 w a'],
  ],
  ['a pin that moved to another idea', { pins: [first], placements: [put('b', 'w', 600, 10)] }, ['H18 w a']],
  [
    'a pin that moved to another window',
    { pins: [first], placements: [put('a', 'rest', 900, 10)] },
    ['H18 w a'],
  ],
  [
    'a pin that went to a window nobody knows',
    { pins: [first], placements: [put('a', 'nowhere', 600, 10)] },
    ['H18 w a', 'unknown nowhere a'],
  ],
  ['a pin that begins later', { pins: [first], placements: [put('a', 'w', 605, 10)] }, ['H18 w a', 'H2 w a']],
  ['a pin that lasts longer', { pins: [first], placements: [put('a', 'w', 600, 15)] }, ['H18 w a']],
];
function pinned(pins: Placement[]): Pick<Together, 'pins' | 'placements'> {
  return { pins, placements: pins };
}
function share(months: number, minutes: number): Pick<Together, 'windows' | 'months' | 'placements'> {
  return { windows: [REST], months, placements: [put('a', 'rest', 900, minutes)] };
}
function films(one: number, two: number): Pick<Together, 'ideas' | 'placements'> {
  return { ideas: FILM, placements: [put('a', 'w', 600, one), put('b', 'rest', 900, two)] };
}
function screens(screenMinutes: number): Partial<DayProblem> {
  return { limits: { screenMinutes, grownUpMinutes: 240 } };
}

describe('several placements, by the checker', () => {
  it.each(TOGETHER)('%s', (_, plan, expected) => {
    expect(saidOf(plan)).toEqual([...expected].sort());
  });

  it('has a sentence for every rule about several placements', () => {
    const named = TOGETHER.flatMap(([, , expected]) => expected).join();
    for (const rule of ['H2', 'H11', 'H14', 'H15', 'H16', 'H17', 'H18', 'unknown'])
      expect(named).toContain(rule);
  });
});
