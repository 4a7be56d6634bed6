/** The child chooses: what is chosen stands there, breaks no rule of the day and spends nothing that is kept. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { ALONE, type PlayBed } from '#domain/play-bed/bed.ts';
import { restOfDay, settled } from '#domain/play-bed/came-up.ts';
import { choiceAt, notNow, withChoice } from '#domain/play-bed/choose.ts';
import { ideaOf } from '#domain/play-bed/own-idea.ts';
import { checkPlan } from '#domain/play/check.ts';
import { planWith } from '#domain/play/plan.ts';
import { FAMILIES, type Placement } from '#domain/play/types.ts';
import { FULL } from '../../helpers/play-beds.ts';
import { cases } from '../../helpers/same-cases.ts';

const QUICK = { steps: 20, tries: 20, nodes: 200 };
const ideaById = new Map([...IDEAS, ...FULL.own.map(ideaOf)].map((idea) => [idea.id, idea]));
const endOf = ({ from, minutes }: { from: number; minutes: number }) => from + minutes;
/** What the bed has done lies before now. */
const FIRST = Math.max(...FULL.done.map(endOf));
const minute = fc.integer({ min: FIRST, max: FULL.sketch.lightsOut });
const hard = (bed: PlayBed) => new Set(bed.sketch.moments.map(({ id }) => id));

/** The bed with the rest of its day planned around what was changed, as a page does it. */
function replanned(before: PlayBed, change: Partial<PlayBed>, now: number) {
  const bed = { ...before, ...change };
  const { problem, stay } = restOfDay(bed, IDEAS, now, before);
  const found = planWith(problem, stay, QUICK);
  const { refused } = found.kind === 'plan' ? found : found.rest;
  return { problem, refused, bed: { ...bed, plan: settled(problem, stay, found) } };
}
const stands = (plan: readonly Placement[], idea: string, from: number) =>
  plan.some((one) => one.idea === idea && one.from === from);

/** Whatever is chosen, by a child of this bed at this minute: the bed and its plan after it. */
function chosen(before: PlayBed, now: number, idea: string) {
  const choice = choiceAt(before, IDEAS, now)!;
  const after = replanned(before, withChoice(before, IDEAS, now, idea)!, now);
  return { choice, ...after };
}

describe('whatever a child chooses, at any minute', () => {
  it('stands in that slot, keeps every rule, and no hard moment loses its idea for it', () => {
    const seen = { ideas: 0, alone: 0, moments: 0 };
    fc.assert(
      fc.property(minute, fc.integer({ min: 0, max: 2 }), (now, which) => {
        const choice = choiceAt(FULL, IDEAS, now);
        const idea = choice && [...choice.two, ...(choice.alone ? [ALONE] : [])][which];
        if (!idea) return;
        const { problem, refused, bed } = chosen(FULL, now, idea);
        expect(refused).toEqual([]);
        expect(checkPlan(problem, { placements: bed.plan })).toEqual([]);
        const goesOn = choice.planned?.idea === idea && choice.planned.from < now;
        expect(stands(bed.plan, idea, goesOn ? choice.planned!.from : choice.from)).toBe(true);
        const { window } = bed.plan.find((one) => one.idea === idea)!;
        const inMoment = hard(FULL).has(window);
        if (inMoment) seen.moments += 1;
        else if (idea === ALONE) seen.alone += 1;
        else seen.ideas += 1;
        for (const id of hard(FULL)) {
          const kept = FULL.plan!.filter((one) => one.window === id && endOf(one) > now);
          expect(bed.plan.some((one) => one.window === id)).toBe(FULL.plan!.some((one) => one.window === id));
          if (window !== id) expect(kept.map((one) => one.idea)).not.toContain(idea);
        }
        const begun = FULL.plan!.filter((one) => one.from < now && one.idea !== choice.planned?.idea);
        for (const one of begun) expect(stands(bed.plan, one.idea, one.from), one.idea).toBe(true);
        if (!inMoment)
          for (const moment of FULL.sketch.moments)
            if (choice.from >= endOf(moment) && choice.from - endOf(moment) <= 10)
              expect(ideaById.get(idea)!.energy).toBe(1);
      }),
      {
        numRuns: cases(60),
        examples: FULL.sketch.moments.map(({ from }) => [from + 3, 1] as [number, number]),
      },
    );
    expect(Math.min(seen.ideas, seen.alone, seen.moments), JSON.stringify(seen)).toBeGreaterThan(0);
  });

  it('is one of two that are both possible, of different families, and neither stands elsewhere in the day', () => {
    let pairs = 0;
    for (let now = FIRST; now < FULL.sketch.lightsOut; now += 7) {
      const choice = choiceAt(FULL, IDEAS, now);
      if (!choice || choice.two.length < 2) continue;
      pairs += 1;
      const families = choice.two.map((id) => FAMILIES[ideaById.get(id)!.kind]);
      expect(new Set(families).size, `at ${now}`).toBe(2);
      for (const id of choice.two) {
        expect(withChoice(FULL, IDEAS, now, id), id).toBeDefined();
        const elsewhere = FULL.plan!.filter((one) => one.from !== choice.planned?.from);
        expect(elsewhere.map(({ idea }) => idea)).not.toContain(id);
      }
      expect(choice.from).toBeGreaterThanOrEqual(now);
    }
    expect(pairs).toBeGreaterThan(40);
  });

  it('can be chosen anew: the first idea comes back in the place of the second', () => {
    let turns = 0;
    for (const placement of FULL.plan!) {
      if (placement.from < FIRST || hard(FULL).has(placement.window)) continue;
      const now = placement.from + 1;
      const [other] = choiceAt(FULL, IDEAS, now)?.two.filter((id) => id !== placement.idea) ?? [];
      if (!other) continue;
      const once = chosen(FULL, now, other).bed;
      const back = withChoice(once, IDEAS, now, placement.idea);
      if (!back) continue;
      turns += 1;
      const twice = replanned(once, back, now).bed;
      expect(twice.plan.map(({ idea }) => idea)).toContain(placement.idea);
      expect(stands(twice.plan, other, choiceAt(once, IDEAS, now)!.from)).toBe(false);
      expect(twice.pins.filter(({ idea }) => idea === other)).toEqual([]);
    }
    expect(turns).toBeGreaterThan(2);
  });

  it('may be chosen anew before the planner has answered: the first choice leaves nothing behind', () => {
    let turns = 0;
    for (let now = FIRST; now < FULL.sketch.lightsOut; now += 13) {
      const choice = choiceAt(FULL, IDEAS, now);
      const other = choice?.two.find((id) => id !== choice.planned?.idea);
      const first = choice?.alone && withChoice(FULL, IDEAS, now, ALONE);
      if (!choice || !other || !first || choice.planned?.idea === ALONE) continue;
      turns += 1;
      const waiting = { ...FULL, ...first };
      const { from } = choice;
      expect(choiceAt(waiting, IDEAS, now)).toMatchObject({ from, planned: { idea: ALONE } });
      const second = withChoice(waiting, IDEAS, now, other)!;
      expect(second.pins.filter((pin) => !FULL.pins.some((known) => known.idea === pin.idea))).toEqual([
        expect.objectContaining({ idea: other, from }),
      ]);
    }
    expect(turns).toBeGreaterThan(10);
  });

  it('is never what a hand keeps there and a rule bars since', () => {
    let asked = 0;
    for (const pin of FULL.plan!) {
      if (pin.from < FIRST) continue;
      const child = { ...FULL.child, never: [...FULL.child.never, pin.idea] };
      const plan = FULL.plan!.filter((one) => one !== pin);
      const choice = choiceAt({ ...FULL, pins: [pin], child, plan }, IDEAS, pin.from);
      if (!choice) continue;
      asked += 1;
      expect(choice.two).not.toContain(pin.idea);
    }
    expect(asked).toBeGreaterThan(2);
  });

  it('before anything is planned, a child who wants to be alone is left alone from now on, bored or not', () => {
    const { plan: _plan, ...unplanned } = { ...FULL, pins: [], done: [], bored: true };
    const now = 16 * 60 + 32;
    expect(choiceAt(unplanned, IDEAS, now)).toMatchObject({ from: 16 * 60 + 35, alone: true });
    const { bed } = chosen(unplanned, now, ALONE);
    expect(stands(bed.plan, ALONE, 16 * 60 + 35)).toBe(true);
    expect(bed.plan!.find(({ idea }) => idea === ALONE)!.minutes).toBe(30);
  });
});

describe('not now', () => {
  it('leaves what goes on out of its time, plans nothing else into it, and keeps every rule', () => {
    let left = 0;
    for (const placement of FULL.plan!) {
      const now = placement.from + 2;
      const said = notNow(FULL, now);
      const isDone = FULL.done.some(({ idea }) => idea === placement.idea);
      expect(said?.idea).toBe(isDone || hard(FULL).has(placement.window) ? undefined : placement.idea);
      if (!said) continue;
      left += 1;
      const { problem, bed } = replanned(FULL, said.change, said.from);
      expect(checkPlan(problem, { placements: bed.plan })).toEqual([]);
      const into = bed.plan.filter((one) => one.from < endOf(placement) && endOf(one) > placement.from);
      expect(into).toEqual([]);
      for (const one of FULL.plan!)
        if (one.from < placement.from) expect(stands(bed.plan, one.idea, one.from)).toBe(true);
      for (const id of hard(FULL)) expect(bed.plan.some(({ window }) => window === id)).toBe(true);
    }
    expect(left).toBeGreaterThan(3);
    expect(notNow(FULL, FULL.sketch.wake)).toBeUndefined();
  });
});
