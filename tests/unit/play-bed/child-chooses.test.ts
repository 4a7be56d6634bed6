/** A slot that is left to the child: two ideas wait there, and no plan spends either of them elsewhere. */
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { ALONE, type PlayBed } from '#domain/play-bed/bed.ts';
import { readBed } from '#domain/play-bed/bed-store.ts';
import { otherOf, reservedIn, withMark } from '#domain/play-bed/child-chooses.ts';
import { restOfDay, settled } from '#domain/play-bed/came-up.ts';
import { choiceAt, leftToChild, otherStill, withChoice } from '#domain/play-bed/choose.ts';
import { nextDay } from '#domain/play-bed/problem.ts';
import { checkPlan } from '#domain/play/check.ts';
import { daySheet } from '#domain/play-bed/sheet.ts';
import { planWith } from '#domain/play/plan.ts';
import type { Placement } from '#domain/play/types.ts';
import { FULL } from '../../helpers/play-beds.ts';

const QUICK = { steps: 20, tries: 20, nodes: 200 };
const NOW = Math.max(...FULL.done.map(({ from, minutes }) => from + minutes));
/** What has not begun yet. */
const AHEAD = FULL.plan!.filter(({ from }) => from > NOW);

/** The bed with the rest of its day planned around what was changed, as a page does it. */
function replanned(before: PlayBed, change: Partial<PlayBed>, now: number) {
  const bed = { ...before, ...change };
  const { problem, stay } = restOfDay(bed, IDEAS, now, before);
  const found = planWith(problem, stay, QUICK);
  const plan = settled(problem, stay, found);
  expect(checkPlan(problem, { placements: plan })).toEqual([]);
  return { ...bed, plan };
}
const isThere = (bed: PlayBed, { idea, from }: Pick<Placement, 'idea' | 'from'>) =>
  bed.plan!.some((one) => one.idea === idea && one.from === from);
/** Each slot of the day that can be left to the child, with the bed after it was. */
const LEFT = AHEAD.flatMap((slot) => {
  const change = leftToChild(FULL, IDEAS, NOW, slot);
  return change ? [{ slot, change, bed: replanned(FULL, change, NOW) }] : [];
});

describe('a slot of the day that a play specialist leaves to the child', () => {
  it('is most of the day: hard moments, too', () => {
    const moments = new Set(FULL.sketch.moments.map(({ id }) => id));
    expect(LEFT.length).toBeGreaterThan(AHEAD.length / 2);
    expect(LEFT.some(({ slot }) => moments.has(slot.window))).toBe(true);
    expect(AHEAD.find(({ from }) => from < NOW + 60)).toBeDefined();
  });

  it('keeps its idea and its time, and the other idea is spent nowhere else', () => {
    for (const { slot, change, bed } of LEFT) {
      const [mark] = change.childChooses!;
      expect(isThere(bed, slot), slot.idea).toBe(true);
      expect(mark!.idea).toBe(slot.idea);
      expect(reservedIn(bed)).toEqual([mark!.or]);
      expect(bed.plan.map(({ idea }) => idea)).not.toContain(mark!.or);
      expect(otherOf(bed, slot)).toBe(mark!.or);
      expect(otherStill(bed, IDEAS, NOW, slot)).toBe(mark!.or);
      expect(readBed(structuredClone(bed))).toEqual({ bed, faults: [] });
    }
  });

  it('asks the child at its time for just these two; either stands there then, and the slot is no longer open', () => {
    let asked = 0;
    for (const { slot, change, bed } of LEFT) {
      const [mark] = change.childChooses!;
      const choice = choiceAt(bed, IDEAS, slot.from);
      if (choice?.planned?.idea !== slot.idea) continue;
      asked += 1;
      expect(choice.marked).toBe(true);
      expect([...choice.two].sort()).toEqual([slot.idea, mark!.or].sort());
      for (const idea of choice.two) {
        const after = replanned(bed, withChoice(bed, IDEAS, slot.from, idea)!, slot.from);
        expect(isThere(after, { idea, from: slot.from }), idea).toBe(true);
        expect(otherOf(after, { idea, from: slot.from })).toBeUndefined();
        expect(reservedIn(after)).toEqual([]);
        expect(choiceAt(after, IDEAS, slot.from)?.marked).toBe(false);
      }
    }
    expect(asked).toBeGreaterThan(3);
  });

  it("stays the child's when the day is planned anew around something else", () => {
    for (const { slot, bed } of LEFT.slice(0, 4)) {
      const again = replanned(bed, { freeHands: 2, bored: true }, NOW);
      expect(isThere(again, slot)).toBe(true);
      expect(otherOf(again, slot)).toBe(otherOf(bed, slot));
      expect(again.plan.map(({ idea }) => idea)).not.toContain(otherOf(bed, slot));
    }
  });

  it('no longer offers what is barred since: a family that says "never" is heard', () => {
    const { slot, bed } = LEFT[0]!;
    const or = otherOf(bed, slot)!;
    const said = { ...bed, child: { ...bed.child, never: [...bed.child.never, or] } };
    expect(otherStill(said, IDEAS, NOW, slot)).toBeUndefined();
    expect(choiceAt(said, IDEAS, slot.from)?.two ?? []).not.toContain(or);
  });

  it("is the planner's again once nothing is pinned there, the next day, and when the mark is taken back", () => {
    for (const { slot, bed } of LEFT) {
      expect(reservedIn({ ...bed, pins: [] })).toEqual([]);
      expect(otherOf({ ...bed, pins: [] }, slot)).toBeUndefined();
      expect(nextDay(bed, '2147-12-28')).not.toHaveProperty('childChooses');
      expect(withMark(bed, slot.idea)).toEqual({ childChooses: undefined });
    }
  });

  it("hangs at the bed's end with both ideas and what to take care of with either", () => {
    const cautionsOf = (id: string) => IDEAS.find((idea) => idea.id === id)?.cautions ?? [];
    for (const { slot, bed } of LEFT) {
      const or = otherOf(bed, slot)!;
      const sheet = daySheet(bed, IDEAS);
      expect(sheet.chooses).toEqual([{ idea: slot.idea, or }]);
      expect(sheet.cautions).toEqual(expect.arrayContaining([...cautionsOf(or)]));
      // what the bed bars since is on no sheet
      const said = { ...bed, child: { ...bed.child, never: [...bed.child.never, or] } };
      expect(daySheet(said, IDEAS).chooses).toEqual([]);
    }
    expect(LEFT.some(({ bed, slot }) => cautionsOf(otherOf(bed, slot)!).length > 0)).toBe(true);
  });

  it('is not one that has begun, nor the time a child wants to be alone', () => {
    const [slot] = AHEAD;
    expect(leftToChild(FULL, IDEAS, slot!.from + 1, slot!)).toBeUndefined();
    expect(leftToChild(FULL, IDEAS, NOW, { ...slot!, idea: ALONE })).toBeUndefined();
  });

  it('is one of six at most; where one is taken back another may be left', () => {
    const all = (bed: PlayBed) =>
      bed.plan!.reduce((left, slot) => ({ ...left, ...leftToChild(left, IDEAS, NOW, slot) }), bed);
    const most = all(FULL);
    expect(most.childChooses).toHaveLength(6);
    expect(new Set(reservedIn(most)).size).toBe(6);
    const [first] = most.childChooses!;
    const fewer = { ...most, ...withMark(most, first!.idea) };
    expect(fewer.childChooses).toHaveLength(5);
    expect(all(fewer).childChooses).toHaveLength(6);
  });

  it('two of them wait for four different ideas', () => {
    const [first, second] = LEFT.map(({ slot }) => slot);
    const one = replanned(FULL, leftToChild(FULL, IDEAS, NOW, first!)!, NOW);
    const two = replanned(one, leftToChild(one, IDEAS, NOW, second!)!, NOW);
    const waiting = [first!.idea, second!.idea, otherOf(two, first!), otherOf(two, second!)];
    expect(new Set(waiting).size).toBe(4);
    expect(waiting).not.toContain(undefined);
  });
});
