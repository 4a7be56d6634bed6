// A hard moment at one bed: what the plan keeps comes first, and nothing is offered that a rule of the day bars.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { momentAtBed, type MomentAtBed } from '#domain/play-bed/moment-at-bed.ts';
import { momentCard } from '#domain/play-bed/moments.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { checkPlan } from '#domain/play/check.ts';
import { anyBed, FULL } from '../../helpers/play-beds.ts';

const ids = (steps: readonly { id: string }[]) => steps.map(({ id }) => id);

describe('a hard moment at a bed', () => {
  it('has the steps of the child’s age, in their order', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { problem } = problemOf(bed, IDEAS);
        for (const { id, kind } of problem.windows) {
          const found = momentAtBed(problem, bed.plan ?? [], id);
          expect(found !== undefined).toBe(kind === 'hard');
          if (!found) continue;
          const card = momentCard(bed.child.ageMonths);
          // a sticker is small: not for a child who puts things into the mouth
          const given = (steps: readonly { id: string }[]) =>
            ids(steps).filter((step) => step !== 'sticker-on-page' || !bed.child.mouths);
          for (const phase of ['before', 'during', 'after'] as const)
            expect(ids(found[phase])).toEqual(given(card[phase]));
        }
      }),
    );
  });

  it('offers during it only what the checker of plans would let stand there', () => {
    // the checker shares no code with what is tested (src/domain/README.md)
    let offered = 0;
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { problem } = problemOf(bed, IDEAS);
        for (const window of problem.windows) {
          const found = momentAtBed(problem, [], window.id);
          for (const idea of found?.during.flatMap(({ possible }) => possible) ?? []) {
            offered += 1;
            const there = { ...window, grownUp: true };
            const alone = { ...problem, windows: [there], pins: [], done: [] };
            const placement = { idea, window: window.id, from: window.from, minutes: window.minutes };
            const broken = checkPlan(alone, { placements: [placement] }).map(({ rule }) => rule);
            // how long an idea lasts and what the day holds besides are the planner's to say
            expect(broken.filter((rule) => !['H2', 'H11', 'H16'].includes(rule))).toEqual([]);
          }
        }
      }),
    );
    expect(offered).toBeGreaterThan(10);
  });

  it('offers no cord and no screen in the hour before lights-out', () => {
    const { problem: day } = problemOf(FULL, IDEAS);
    const room = { ...day.room, things: IDEAS.flatMap(({ things }) => things), usedElsewhere: [] };
    const problem = { ...day, room, child: { ...day.child, ageMonths: 120 } };
    const moment = problem.windows.find(({ kind }) => kind === 'hard')!;
    const given = ({ before, during, after }: MomentAtBed) =>
      [...before, ...during, ...after].flatMap(({ possible }) => possible);
    const away = (id: string) => {
      const { screen, cautions } = IDEAS.find((idea) => idea.id === id)!;
      return screen === 'yes' || cautions.includes('cord');
    };
    const at = (lightsOut: number) => given(momentAtBed({ ...problem, lightsOut }, [], moment.id)!);
    const end = moment.from + moment.minutes;
    expect(at(end + 60).some(away)).toBe(true);
    expect(at(end + 55).some(away)).toBe(false);
    // all else is still there
    expect(at(end + 55)).toEqual(at(end + 60).filter((id) => !away(id)));
  });

  it('leaves alone what is kept for another moment of the day', () => {
    const { problem } = problemOf(FULL, IDEAS);
    const [first, second] = problem.windows.filter(({ kind }) => kind === 'hard');
    const card = momentAtBed(problem, [], first!.id)!;
    const idea = card.during.flatMap(({ possible }) => possible)[0]!;
    const kept = { idea, window: second!.id, from: second!.from, minutes: second!.minutes };
    const after = momentAtBed(problem, [kept], first!.id)!;
    expect(after.during.flatMap(({ possible }) => possible)).not.toContain(idea);
    expect(after.kept).toEqual([]);
    expect(momentAtBed(problem, [kept], second!.id)!.kept).toEqual([kept]);
  });

  it('knows no moment that is not in the day', () => {
    const { problem } = problemOf(FULL, IDEAS);
    expect(momentAtBed(problem, FULL.plan ?? [], 'needle-99')).toBeUndefined();
  });
});
