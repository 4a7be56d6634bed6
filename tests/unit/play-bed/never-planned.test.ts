// An own idea that stands nowhere in the day says why, and one that may stand somewhere says nothing.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import type { OwnIdea, PlayBed } from '#domain/play-bed/bed.ts';
import { barringOf } from '#domain/play-bed/never-planned.ts';
import { ideaOf } from '#domain/play-bed/own-idea.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { checkPlan } from '#domain/play/check.ts';
import type { Placement } from '#domain/play/types.ts';
import { anyBed, TYPICAL } from '../../helpers/play-beds.ts';
import { anyOwn, OWN } from '../../helpers/own-ideas.ts';

/** The typical bed with nothing planned and this idea alone in somebody's own words. */
const withOwn = (own: Partial<OwnIdea>, change: Partial<PlayBed> = {}): PlayBed => {
  const { plan: _plan, ...bed } = TYPICAL;
  return { ...bed, pins: [], done: [], own: [{ ...OWN, barred: [], ...own }], ...change };
};
const rulesOf = (own: Partial<OwnIdea>, change: Partial<PlayBed> = {}) =>
  barringOf(withOwn(own, change), 'own-7', IDEAS)?.rules;

describe('an own idea that the plan leaves out', () => {
  // the checker shares nothing with what is tested here
  it('breaks a rule in every place of the day that the checker looks at, at its shortest', () => {
    fc.assert(
      fc.property(anyOwn, anyBed, fc.nat(20), (own, bed, at) => {
        const { plan: _plan, ...rest } = bed;
        const here = { ...rest, own: [own], pins: [], done: [] };
        const barring = barringOf(here, own.id, IDEAS);
        const { problem } = problemOf(here, IDEAS);
        const window = problem.windows[at % (problem.windows.length || 1)];
        if (!barring || !window) return;
        const minutes = 5 * Math.max(1, Math.ceil(own.minutes[0] / 5));
        const placement = { idea: own.id, window: window.id, from: window.from, minutes };
        // an empty day breaks a rule, too, where a hard moment stays empty
        const times = (placements: Placement[]) => {
          const broken = new Map<string, number>();
          for (const { rule } of checkPlan(problem, { placements }))
            broken.set(rule, (broken.get(rule) ?? 0) + 1);
          return broken;
        };
        const before = times([]);
        const worse = [...times([placement])].filter(([rule, n]) => n > (before.get(rule) ?? 0));
        expect(worse).not.toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it('says nothing where the checker would let it stand in an open stretch', () => {
    let stood = 0;
    fc.assert(
      fc.property(anyOwn, (own) => {
        const here = withOwn(own);
        const { problem } = problemOf(here, IDEAS);
        const minutes = 5 * Math.max(1, Math.ceil(own.minutes[0] / 5));
        const stands = problem.windows.some((window) => {
          const placement = { idea: own.id, window: window.id, from: window.from, minutes };
          const faults = checkPlan(problem, { placements: [placement] });
          // hard moments left empty and the like are about the rest of the day
          return window.kind === 'ordinary' && faults.every(({ rule }) => rule === 'H10' || rule === 'H16');
        });
        if (!stands) return;
        stood += 1;
        expect(barringOf(here, own.id, IDEAS)).toBeUndefined();
      }),
      { numRuns: 300 },
    );
    expect(stood).toBeGreaterThan(10);
  });

  it('names the rule: age, length, hands, small parts, shared things, food and the family’s word', () => {
    expect(rulesOf({})).toBeUndefined();
    const small = { child: { ...TYPICAL.child, ageMonths: 20 } };
    expect(rulesOf({ cautions: ['cord'] }, small)).toEqual(expect.arrayContaining(['H1', 'H6']));
    expect(rulesOf({ kind: 'screen' }, small)).toContain('H1');
    expect(rulesOf({ hands: 2 })).toEqual(['H4']);
    expect(rulesOf({ wipe: 'no' })).toEqual(['H7']);
    expect(rulesOf({ cautions: ['food'] }, { eating: false })).toEqual(['H12']);
    expect(rulesOf({}, { notToday: ['own-7'] })).toEqual(['H13']);
    expect(rulesOf({}, { child: { ...TYPICAL.child, never: ['imagine'] } })).toEqual(['H13']);
    const alone = { sketch: { ...TYPICAL.sketch, grownUp: [], moments: [] } };
    expect(rulesOf({ who: 'adult' }, alone)).toEqual(['H5']);
    const flat = { sketch: { ...TYPICAL.sketch, propped: [] } };
    expect(rulesOf({ tray: true }, flat)).toEqual(['H3']);
    const noScreen = { limits: { screenMinutes: 0, grownUpMinutes: 60 } };
    expect(rulesOf({ kind: 'screen', moments: [] }, noScreen)).toContain('H11');
    // a film of a hard moment is not counted
    expect(rulesOf({ kind: 'screen' }, noScreen)).toBeUndefined();
  });

  it('that is longer than any stretch of the day does not fit the time', () => {
    const { wake } = TYPICAL.sketch;
    const events = Array.from({ length: 13 }, (_, n) => ({
      id: `other-${n + 1}`,
      from: wake + 60 * n + 30,
      minutes: 30,
    }));
    expect(
      rulesOf({ minutes: [60, 60] }, { sketch: { ...TYPICAL.sketch, events, moments: [], quiet: [] } }),
    ).toContain('H2');
  });

  it('says what was ticked by its own name, and the family’s word only where the family said it', () => {
    const loud = { loudest: 0 as const };
    expect(barringOf(withOwn({ noise: 1 }, loud), 'own-7', IDEAS)).toEqual({ rules: [], clashes: ['loud'] });
    expect(barringOf(withOwn({ noise: 1 }, { ...loud, notToday: ['own-7'] }), 'own-7', IDEAS)).toEqual({
      rules: ['H13'],
      clashes: ['loud'],
    });
    const wet = withOwn({ cautions: ['water'] }, { fears: ['dark', 'water'] });
    expect(barringOf(wet, 'own-7', IDEAS)?.clashes).toEqual(['water']);
    expect(barringOf(withOwn({ kind: 'talk' }, { wordless: true }), 'own-7', IDEAS)?.clashes).toEqual([
      'language',
    ]);
  });

  it('is silent about what was done today, about a day without room and about what is no own idea', () => {
    const done = [{ idea: 'own-7', window: 'by-hand', from: 600, minutes: 10 }];
    expect(rulesOf({ hands: 2 }, { done })).toBeUndefined();
    const { wake, lightsOut } = TYPICAL.sketch;
    const events = [{ id: 'other', from: wake, minutes: lightsOut - wake }];
    expect(rulesOf({ hands: 2 }, { sketch: { ...TYPICAL.sketch, events, moments: [] } })).toBeUndefined();
    expect(barringOf(withOwn({ hands: 2 }), 'own-8', IDEAS)).toBeUndefined();
    expect(ideaOf(withOwn({ hands: 2 }).own[0]!).hands).toBe(2);
  });
});
