/** A child who may not eat: nothing with food is offered or planned, and nothing else changes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import type { OwnIdea, PlayBed } from '#domain/play-bed/bed.ts';
import { notEating } from '#domain/play-bed/not-eating.ts';
import { ideaOf } from '#domain/play-bed/own-idea.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { brokenIn } from '#domain/play/feasible.ts';
import { anyOwn } from '../../helpers/own-ideas.ts';
import { FULL } from '../../helpers/play-beds.ts';
import { cases } from '../../helpers/same-cases.ts';

/** The bed with an own idea, and with these in the places of what is planned. */
const withIdeas = (mine: OwnIdea, ideas: readonly string[]): PlayBed => ({
  ...FULL,
  own: [{ ...mine, id: 'own-1' }],
  plan: FULL.plan!.map((one, at) => ({ ...one, idea: ideas[at] ?? one.idea })),
});
const anyIdeas = fc.array(fc.constantFrom('own-1', 'soup-breath', 'recipe-dream', 'hum-guess', 'day-tell'), {
  maxLength: 12,
});

describe('a child who may not eat', () => {
  it('finds nothing with food in the plan, and all else where it stood', () => {
    const all = cases(200);
    let gone = 0;
    fc.assert(
      fc.property(anyOwn, anyIdeas, (mine, ideas) => {
        const bed = withIdeas(mine, ideas);
        const now = notEating(bed, IDEAS);
        const { problem } = problemOf(now, IDEAS);
        expect(problem.eating).toBe(false);
        // as the rules read it: food is what they bar for that reason alone
        const barredNow = (id: string) => {
          const idea = [...IDEAS, ...bed.own.map(ideaOf)].find((one) => one.id === id)!;
          const window = { ...problem.windows.find(({ kind }) => kind === 'ordinary')!, propped: true };
          const rules = (eating: boolean) => brokenIn({ ...problem, eating }, idea, window);
          return rules(false).includes('H12') && !rules(true).includes('H12');
        };
        expect(now.plan).toEqual(bed.plan!.filter(({ idea }) => !barredNow(idea)));
        gone += bed.plan!.length - now.plan!.length;
        expect({ ...now, plan: bed.plan, eating: bed.eating }).toEqual(bed);
      }),
      { numRuns: all },
    );
    expect(gone).toBeGreaterThan(all / 4);
  });

  it('at a bed without a plan has none afterwards', () => {
    const { plan: _, ...unplanned } = FULL;
    expect(notEating(unplanned, IDEAS)).toEqual({ ...unplanned, eating: false });
  });
});
