/** What is offered now may truly be done now, and never uses up what is kept for a hard moment. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { ideaOf } from '#domain/play-bed/own-idea.ts';
import { atMinute, ideasForNow, nextMoment } from '#domain/play-bed/offer.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { brokenIn } from '#domain/play/feasible.ts';
import { TYPICAL } from '../../helpers/play-beds.ts';

const { problem } = problemOf(TYPICAL, IDEAS);
const plan = TYPICAL.plan!;
const ideaById = new Map([...IDEAS, ...TYPICAL.own.map(ideaOf)].map((idea) => [idea.id, idea]));
const minute = fc.integer({ min: 7 * 60, max: 20 * 60 + 25 });
const yes = fc.boolean();

describe('three for now', () => {
  it('break no rule of the bed, are not kept for a hard moment, and differ in kind', () => {
    let offered = 0;
    fc.assert(
      fc.property(minute, yes, yes, yes, (now, grownUp, propped, quiet) => {
        const at = { grownUp, propped, quiet, energy: 2 as const };
        const found = ideasForNow(problem, plan, now, at);
        offered += found.length;
        const window = { kind: 'ordinary' as const, id: 'now', from: now, minutes: 30, ...at };
        for (const id of found) expect(brokenIn(problem, ideaById.get(id)!, window), id).toEqual([]);
        const next = nextMoment(problem, plan, now);
        if (next && next.moment.from - now < 180)
          for (const { idea } of next.kept) expect(found).not.toContain(idea);
        expect(new Set(found).size).toBe(found.length);
      }),
      { numRuns: 200 },
    );
    expect(offered).toBeGreaterThan(200);
  });

  it('where nobody sits there, none needs anybody', () => {
    for (const id of ideasForNow(problem, plan, 16 * 60, { ...atMinute(problem, 16 * 60), grownUp: false }))
      expect(ideaById.get(id)!.who, id).not.toBe('adult');
  });
});
