// A hard moment with nothing kept for it: the same is said of it whenever the plan is looked at, as when it was made.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEA_ORDER, THING_ORDER } from '#content/idea-order.ts';
import { IDEAS } from '#content/ideas.ts';
import { readBed } from '#domain/play-bed/bed-store.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { openMoments } from '#domain/play-bed/open-moments.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { decodePlay, encodePlay } from '#domain/play-bed/travel.ts';
import { planDay } from '#domain/play/plan.ts';
import { anyBed, FULL, TYPICAL } from '../../helpers/play-beds.ts';

/** A child of twenty months with nobody there at the hard moments. */
const ALONE: PlayBed = {
  ...TYPICAL,
  child: { ...TYPICAL.child, ageMonths: 20, mouths: true },
  sketch: {
    ...TYPICAL.sketch,
    grownUp: [],
    moments: TYPICAL.sketch.moments.map(({ grownUp: _, ...moment }) => moment),
  },
  ...{ plan: [], pins: [], done: [] },
};

describe('a hard moment with nothing kept', () => {
  it('is told until it is over, each once, in order of time; where something is kept, or no plan was made, it is not', () => {
    fc.assert(
      fc.property(anyBed, fc.nat(1440), (bed, minute) => {
        const kept = new Set((bed.plan ?? []).map(({ window }) => window));
        const expected = bed.sketch.moments.filter(
          ({ id, from, minutes }) => from + minutes > minute && !kept.has(id),
        );
        const told = openMoments(bed, IDEAS, minute).map(({ moment }) => moment);
        const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id).sort();
        expect(ids(told)).toEqual(bed.plan ? ids(expected) : []);
        expect(told.map(({ from }) => from)).toEqual(told.map(({ from }) => from).sort((a, b) => a - b));
      }),
      { numRuns: 60 },
    );
  });

  it('is told as the planner told it: the same moments, and what would open each', () => {
    let impossible = 0;
    const beds = [20, 130].flatMap((ageMonths) =>
      [0, 1].flatMap((alone) =>
        [0, 1, 2].map((narrow): PlayBed => {
          const base = alone ? ALONE : { ...TYPICAL, plan: [], pins: [], done: [] };
          return {
            ...base,
            child: {
              ...base.child,
              ageMonths,
              never: narrow === 2 ? ['calm', 'talk', 'listen', 'music', 'slow-bubbles'] : base.child.never,
              lacks: narrow === 1 ? ['hearing', 'learning', 'sight', 'speech'] : [],
            },
            room: { ...base.room, isolation: 'breath', things: narrow ? [] : base.room.things },
            eating: false,
          };
        }),
      ),
    );
    for (const bed of beds) {
      const { problem } = problemOf(bed, IDEAS);
      const found = planDay(problem, { steps: 60, tries: 50, nodes: 500 });
      const { placements } = found.kind === 'plan' ? found : found.rest;
      const told = openMoments({ ...bed, plan: placements }, IDEAS);
      expect(told.filter(({ nothingFits }) => !nothingFits)).toEqual([]);
      const planner = found.kind === 'plan' ? [] : found.moments;
      expect(told.map(({ moment, relaxations }) => ({ window: moment.id, relaxations }))).toEqual(planner);
      impossible += planner.length;
    }
    expect(impossible).toBeGreaterThan(5);
  });

  it('says that nothing fits only where nothing is left; where the plan is older than the moment it is to be made anew', () => {
    const moment = { ...FULL.sketch.moments[1]!, id: 'bandage-9', from: 20 * 60, minutes: 10 };
    const late = { ...FULL, sketch: { ...FULL.sketch, moments: [...FULL.sketch.moments, moment] } };
    expect(openMoments(late, IDEAS).map(({ nothingFits }) => nothingFits)).toEqual([false]);
    // one idea that fits, and it is done, kept for another moment, or kept by hand somewhere else
    const { sketch } = TYPICAL;
    const [needle, other] = [sketch.moments[0]!, sketch.moments[2]!];
    const two = { ...TYPICAL, sketch: { ...sketch, moments: [needle, { ...other, minutes: 15 }] } };
    const only = IDEAS.filter(({ id }) => id === 'hand-in-hand');
    const at = (window: string) => ({ idea: 'hand-in-hand', window, from: 555, minutes: 15 });
    const bed = { ...two, plan: [], pins: [], done: [] };
    const open = (there: Partial<PlayBed>, minute?: number) =>
      openMoments({ ...bed, ...there }, only, minute).map(({ nothingFits }) => nothingFits);
    expect(open({})).toEqual([false, false]);
    expect(open({ plan: [at('needle-1')] })).toEqual([true]);
    expect(open({ done: [at('w-0930')] })).toEqual([true, true]);
    expect(open({ pins: [at('w-0930')] })).toEqual([true, true]);
    // what stood in the morning is over by then
    expect(open({ plan: [at('w-0915')] }, 500)).toEqual([false, false]);
    expect(open({ plan: [at('w-0915')] }, 600)).toEqual([true]);
  });

  it('names what would open it first: that somebody sits there, for a small child who is alone', () => {
    const told = openMoments(ALONE, IDEAS);
    expect(told).toHaveLength(3);
    for (const { nothingFits, relaxations } of told) {
      expect(nothingFits).toBe(true);
      expect(relaxations[0]?.change).toBe('grown-up');
    }
  });

  it('says the same on a phone that took the plan as a code', () => {
    const bed = readBed(ALONE).bed!;
    const read = decodePlay(encodePlay(bed, IDEA_ORDER, THING_ORDER), IDEA_ORDER, THING_ORDER);
    if (!read.ok) throw new Error(read.reason);
    expect(openMoments(read.bed, IDEAS)).toEqual(openMoments(bed, IDEAS));
    expect(openMoments(read.bed, IDEAS)).toHaveLength(3);
  });

  it('never proposes to lift a fear, and does propose what somebody ruled out by name', () => {
    const { child, sketch } = TYPICAL;
    const moments = [{ ...sketch.moments[0]!, minutes: 10 }];
    const cold = {
      ...TYPICAL,
      ...{ child: { ...child, never: ['hand-in-hand'] }, sketch: { ...sketch, moments }, plan: [] },
    };
    const ideas = IDEAS.filter(({ id }) => ['hand-in-hand', 'line-on-back'].includes(id));
    const words = (fears: PlayBed['fears']) =>
      openMoments(
        { ...cold, pins: [], done: [], notToday: ['line-on-back'], ...(fears ? { fears } : {}) },
        ideas,
      )
        .flatMap(({ relaxations }) => relaxations)
        .filter(({ change }) => change === 'never')
        .map(({ what }) => what);
    expect(new Set(words(undefined))).toEqual(new Set(['hand-in-hand', 'line-on-back']));
    // the dark, of which a letter in the palm with closed eyes is part, stays a fear
    const afraid = openMoments({ ...cold, pins: [], done: [], notToday: [], fears: ['dark'] }, ideas);
    expect(afraid.flatMap(({ relaxations }) => relaxations).map(({ what }) => what)).not.toContain(
      'line-on-back',
    );
  });
});
