// What no child may be given, over every age, mouth, isolation, hand, position and hour, with the whole library.
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { checkPlan } from '#domain/play/check.ts';
import { brokenIn, latestEnd, screenLimit } from '#domain/play/feasible.ts';
import { planDay, planWith } from '#domain/play/plan.ts';
import {
  BARRED,
  type DayProblem,
  type HardMoment,
  type Idea,
  type OrdinaryWindow,
  type PlayWindow,
} from '#domain/play/types.ts';
import { madeUpDay } from '../../helpers/play-days.ts';

interface Bed {
  /** Completed months. */
  months: number;
  mouths: boolean;
  isolation: 'none' | 'contact' | 'breath';
  hands: 0 | 1 | 2;
  propped: boolean;
  night: boolean;
  grownUp: boolean;
}
/** Whole years, and below three the months on both sides of each rule. */
const AGES = [12, 13, 18, 23, 24, 29, 30, 35, ...Array.from({ length: 15 }, (_, n) => 12 * (n + 3)), 215];
const WINDOWS = ['open', 'needle', 'bandage'] as const;
const BOTH = [false, true];

function* beds(): Generator<Bed> {
  for (const months of AGES)
    for (const mouths of BOTH)
      for (const isolation of ['none', 'contact', 'breath'] as const)
        for (const hands of [0, 1, 2] as const)
          for (const propped of BOTH)
            for (const night of BOTH)
              for (const grownUp of BOTH) yield { months, mouths, isolation, hands, propped, night, grownUp };
}

/** Everything at hand and everything allowed, so that only safety can say no. */
function dayAt({ months, mouths, isolation, hands }: Bed): DayProblem {
  const plain = madeUpDay(1, { ideas: IDEAS });
  return {
    ...plain,
    child: { ageMonths: months, mouths, likes: [], dislikes: [], never: [], lacks: [] },
    freeHands: hands,
    room: {
      shared: true,
      isolation,
      things: [...new Set(IDEAS.flatMap(({ things }) => things))],
      usedElsewhere: [],
    },
    eating: true,
    permissions: ['plants', 'free-ankle', 'hand-massage'],
    limits: { screenMinutes: 600, grownUpMinutes: 600 },
  };
}
const windowAt = ({ propped, night, grownUp }: Bed): OrdinaryWindow => ({
  kind: 'ordinary',
  id: 'w',
  from: night ? 19 * 60 : 10 * 60,
  minutes: 60,
  energy: 2,
  propped,
  quiet: night,
  grownUp,
});
/** The same hour, or a hard moment in it with as many hands free. */
const windowOf = (bed: Bed, what: (typeof WINDOWS)[number]): PlayWindow =>
  what === 'open'
    ? windowAt(bed)
    : { ...windowAt(bed), kind: 'hard', procedure: what, weight: 2, freeHands: bed.hands };
const LIGHTS_OUT = 20 * 60;

/** Each law in words of its own: what may never be among what is possible. */
const NEVER: Record<string, (bed: Bed, idea: Idea) => boolean> = {
  'no small parts under three': ({ months }, { cautions }) => months < 36 && cautions.includes('small-parts'),
  'no small parts for a child who mouths things': ({ mouths }, { cautions }) =>
    mouths && cautions.includes('small-parts'),
  'no small parts from three to five without a grown-up': ({ months, grownUp }, { cautions }) =>
    months < 72 && !grownUp && cautions.includes('small-parts'),
  'no cord from three to five without a grown-up': ({ months, grownUp }, { cautions }) =>
    months < 72 && !grownUp && cautions.includes('cord'),
  'no cord under three': ({ months }, { cautions }) => months < 36 && cautions.includes('cord'),
  'nothing under three without a grown-up': ({ months, grownUp }) => months < 36 && !grownUp,
  'no screen under two (WHO 2019, ISBN 978-92-4-155053-6: no sedentary screen time at one)': (
    { months },
    { screen },
  ) => months < 24 && screen === 'yes',
  'nothing that needs more hands than are free': ({ hands }, idea) => idea.hands > hands,
  'nothing that needs the head up where it may not go up': ({ propped }, { position }) =>
    !propped && position === 'propped',
  'nothing shared that cannot be wiped, in isolation': ({ isolation }, { wipe }) =>
    isolation !== 'none' && wipe === 'no',
  'no shared breath where breath is the trouble': ({ isolation }, { cautions }) =>
    isolation === 'breath' && cautions.includes('breath'),
  'no sound, and no light but what suits the dark, where others sleep': ({ night }, idea) =>
    night && (idea.noise > 0 || ((idea.screen !== 'no' || idea.things.includes('torch')) && !idea.dark)),
  'nothing for another age': ({ months }, { ages, fromMonths }) =>
    months < 12 * ages[0] || months >= 12 * (ages[1] + 1) || months < (fromMonths ?? 0),
};

const LAWS = Object.entries(NEVER);

describe('what no bed is given', () => {
  it('holds at every bed, in open time and at a needle or bandage care, for the whole library; each law has something to forbid', () => {
    const forbidden = new Map(Object.keys(NEVER).map((law) => [law, 0]));
    const broken = new Map<string, string[]>();
    for (const bed of beds()) {
      const problem = dayAt(bed);
      const windows = WINDOWS.map((what) => windowOf(bed, what));
      for (const idea of IDEAS) {
        const never = LAWS.filter(([, law]) => law(bed, idea));
        for (const [law] of never) forbidden.set(law, forbidden.get(law)! + 1);
        for (const window of windows) {
          if (brokenIn(problem, idea, window).length > 0) continue;
          if (window.kind === 'hard' && (idea.tray || !idea.moments.some((one) => one === window.procedure)))
            never.push([`nothing at a ${window.procedure} that is not for it`, () => true]);
          // a few say enough, and thousands are long in the saying
          for (const [law] of never) {
            const said = broken.get(law) ?? [];
            if (said.length < 3) broken.set(law, [...said, `${idea.id} ${JSON.stringify(bed)}`]);
          }
        }
      }
    }
    expect([...broken]).toEqual([]);
    for (const [law, count] of forbidden) expect([law, count > 0]).toEqual([law, true]);
  });

  it('is refused by the checker as well, at every bed, and in the last hour every cord and screen', () => {
    const wrong: string[] = [];
    let [allowed, late] = [0, 0];
    for (const bed of beds()) {
      const window = windowAt(bed);
      const problem = { ...dayAt(bed), windows: [window], events: [], lightsOut: LIGHTS_OUT };
      for (const idea of IDEAS) {
        const minutes = Math.max(5, 5 * Math.ceil(idea.minutes[0] / 5));
        // longer than the hour is another matter
        if (minutes > 60) continue;
        const placement = { idea: idea.id, window: 'w', from: window.from, minutes };
        const passes = !checkPlan(problem, { placements: [placement] }).some(({ rule }) => rule !== 'H16');
        const put = idea.screen === 'yes' || idea.cautions.includes('cord');
        const never = LAWS.some(([, law]) => law(bed, idea)) || (bed.night && put);
        if (bed.night && put) late++;
        if (passes) allowed++;
        if ((passes && never) || (passes && brokenIn(problem, idea, window).length > 0))
          wrong.push(`${idea.id} ${JSON.stringify(bed)}`);
      }
    }
    expect(wrong.slice(0, 3)).toEqual([]);
    expect([allowed > 10_000, late > 1000]).toEqual([true, true]);
  });

  it('stands in no plan: whole days of beds of every age', () => {
    const all = [...beds()];
    let placed = 0;
    for (let n = 0; n < 48; n++) {
      // every age comes, with other things true each time
      const bed = all[(n * (all.length / 48) + ((n * 37) % (all.length / 48))) | 0]!;
      const day = { ...dayAt(bed), lightsOut: LIGHTS_OUT };
      const windows = [windowAt({ ...bed, night: false }), windowAt({ ...bed, night: true })];
      const needle = { ...windowOf({ ...bed, night: false }, 'needle'), id: 'n', from: 12 * 60, minutes: 10 };
      const problem = {
        ...day,
        events: [],
        windows: [{ ...windows[0]!, id: 'a' }, needle, { ...windows[1]!, id: 'b' }],
      };
      const result = planDay(problem, { steps: 40, tries: 10, nodes: 2000 });
      const { placements } = result.kind === 'plan' ? result : result.rest;
      expect(checkPlan(problem, { placements })).toEqual([]);
      for (const { idea: id, window } of placements) {
        placed++;
        const idea = IDEAS.find((one) => one.id === id)!;
        const there = { ...bed, night: window === 'b' };
        const laws = LAWS.filter(([, law]) => law(there, idea));
        expect([id, laws.map(([law]) => law)]).toEqual([id, []]);
        if (window === 'b')
          expect([id, idea.screen === 'yes' || idea.cautions.includes('cord')]).toEqual([id, false]);
      }
    }
    expect(placed).toBeGreaterThan(48);
  });

  it('lets a child of six and older listen or watch alone, lead or not, and the checker reads it alike', () => {
    const alone = IDEAS.filter(({ who, cautions }) => who === 'alone' && cautions.includes('cord'));
    expect(alone.map(({ id }) => id)).toEqual(expect.arrayContaining(['listen-book', 'short-film']));
    for (let years = 1; years <= 17; years++)
      for (const idea of alone) {
        const bed: Bed = {
          months: 12 * years,
          mouths: false,
          isolation: 'none',
          hands: 2,
          propped: true,
          night: false,
          grownUp: false,
        };
        const [problem, window] = [{ ...dayAt(bed), windows: [windowAt(bed)] }, windowAt(bed)];
        const ofAge = years >= idea.ages[0] && years <= idea.ages[1];
        const placement = { idea: idea.id, window: 'w', from: 600, minutes: Math.max(5, idea.minutes[0]) };
        expect([years, idea.id, brokenIn(problem, idea, window).length === 0]).toEqual([
          years,
          idea.id,
          ofAge && years >= 6,
        ]);
        const rules = checkPlan(problem, { placements: [placement] }).map(({ rule }) => rule);
        expect([years, rules.includes('H5')]).toEqual([years, years < 6]);
        expect(rules.includes('H6')).toBe(years < 3);
        // the last hour is without cords at every age
        const late = checkPlan({ ...problem, lightsOut: 640 }, { placements: [placement] }).some(
          ({ rule }) => rule === 'H6',
        );
        expect(late).toBe(true);
      }
  });

  it('bars whatever an own idea says yes to: throws, ties, shakes and the rest', () => {
    const bed: Bed = {
      months: 96,
      mouths: false,
      isolation: 'none',
      hands: 2,
      propped: true,
      night: false,
      grownUp: true,
    };
    const idea = IDEAS.find((one) => brokenIn(dayAt(bed), one, windowAt(bed)).length === 0)!;
    for (const barred of BARRED)
      expect(brokenIn(dayAt(bed), { ...idea, barred: [barred] }, windowAt(bed))).toEqual(['barred']);
    expect(IDEAS.filter((one) => one.barred?.length)).toEqual([]);
  });

  it('puts cords and screens away an hour before lights-out, and keeps WHO’s hour from two to four', () => {
    const lightsOut = 20 * 60;
    const late = IDEAS.filter((idea) => latestEnd({ lightsOut }, idea) > lightsOut - 60);
    expect(late.filter(({ screen, cautions }) => screen === 'yes' || cautions.includes('cord'))).toEqual([]);
    // WHO 2019, guidelines on physical activity, sedentary behaviour and sleep under five, ISBN 978-92-4-155053-6: none at one,
    // no more than one hour from two to four
    const limit = (ageMonths: number) =>
      screenLimit({
        child: { ...dayAt([...beds()][0]!).child, ageMonths },
        limits: { screenMinutes: 600, grownUpMinutes: 0 },
      });
    expect([limit(12), limit(23), limit(24), limit(59), limit(60)]).toEqual([0, 0, 60, 60, 600]);
  });
});

describe('a moment for which nothing fits', () => {
  const moment: HardMoment = {
    kind: 'hard',
    id: 'needle',
    from: 600,
    minutes: 5,
    energy: 1,
    propped: false,
    quiet: false,
    grownUp: false,
    procedure: 'needle',
    weight: 3,
    freeHands: 0,
  };
  const bed = dayAt({
    months: 24,
    mouths: true,
    isolation: 'contact',
    hands: 0,
    propped: false,
    night: false,
    grownUp: false,
  });
  const problem = { ...bed, windows: [moment], events: [] };

  it('is never silently empty: the one change that opens most comes first, here a grown-up', () => {
    const result = planDay(problem);
    if (result.kind !== 'impossible') throw new Error('something fitted');
    const [first] = result.moments;
    expect(first!.window).toBe('needle');
    expect(first!.relaxations[0]!.change).toBe('grown-up');
    const sizes = first!.relaxations.map(({ opens }) => opens.length);
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    // what is promised is so: with a grown-up, one of those ideas is planned
    const helped = planWith({ ...problem, windows: [{ ...moment, grownUp: true }] }, []);
    expect(helped.kind).toBe('plan');
    if (helped.kind === 'plan') expect(first!.relaxations[0]!.opens).toContain(helped.placements[0]!.idea);
  });
});

describe('what was typed wrong', () => {
  it('is named with its place, left out, and the rest is planned', () => {
    const problem = madeUpDay(5, { windows: 4, hard: 0 });
    const [a, b, c, d] = problem.windows as [OrdinaryWindow, OrdinaryWindow, OrdinaryWindow, OrdinaryWindow];
    const overlapping = { ...b, id: 'overlaps', from: a.from + 5 };
    const outside = { ...d, id: 'outside', from: problem.lightsOut + 60 };
    const odd = { ...c, id: 'odd', from: c.from + 1 };
    const torn = { ...problem.ideas[0]!, id: 'torn', minutes: [9, 3] as const };
    const result = planDay({
      ...problem,
      windows: [a, overlapping, odd, d, outside],
      ideas: [...problem.ideas, torn],
      pins: [{ idea: 'nobody-knows', window: a.id, from: a.from, minutes: 5 }],
    });
    const plan = result.kind === 'plan' ? result : result.rest;
    expect(plan.faults.map(({ where }) => where)).toEqual([
      'windows › overlaps',
      'windows › odd',
      'windows › outside',
      'ideas › torn',
    ]);
    expect(plan.refused.map(({ rules }) => rules)).toEqual([['unknown']]);
    expect(new Set(plan.placements.map(({ window }) => window))).toEqual(new Set([a.id, d.id]));
  });
});
