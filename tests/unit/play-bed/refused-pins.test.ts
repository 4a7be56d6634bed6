/** What a hand wanted kept and the day cannot hold is told with its rules, as long as it is wanted. */
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { cameUp, restOfDay, settled } from '#domain/play-bed/came-up.ts';
import { refusedPins } from '#domain/play-bed/refused-pins.ts';
import { planWith } from '#domain/play/plan.ts';
import { FULL, TYPICAL } from '../../helpers/play-beds.ts';

const QUICK = { steps: 20, tries: 20, nodes: 200 };
const NOW = 13 * 60;
/** The bed with its day planned from now on, and what the planner refused. */
function planned(bed: PlayBed, before: PlayBed = bed) {
  const { problem, stay } = restOfDay(bed, IDEAS, NOW, before);
  const found = planWith(problem, stay, QUICK);
  const { refused } = found.kind === 'plan' ? found : found.rest;
  return { refused, bed: { ...bed, plan: settled(problem, stay, found) } };
}
const ahead = FULL.plan!.filter(({ from }) => from >= NOW);

describe('what a hand wants kept', () => {
  it('is told as the planner told it, for every place of the day and whatever is barred since', () => {
    let refusals = 0;
    for (const pin of ahead) {
      const barred = {
        ...FULL,
        pins: [pin],
        child: { ...FULL.child, never: [...FULL.child.never, pin.idea] },
      };
      const { refused, bed } = planned(barred);
      expect(refusedPins(bed, IDEAS, NOW)).toEqual(refused);
      refusals += refused.length;
    }
    expect(refusals).toBe(ahead.length);
  });

  it('and stands in the plan is not spoken of', () => {
    const { bed } = planned({ ...FULL, pins: ahead });
    expect(bed.plan).toEqual(expect.arrayContaining(ahead));
    expect(refusedPins(bed, IDEAS, NOW)).toEqual([]);
  });

  it('and met an X-ray that came up does not fit the time', () => {
    const pin = ahead.find(({ window }) => window.startsWith('w-'))!;
    const before = { ...FULL, pins: [pin] };
    const after = cameUp(before, pin.from, { kind: 'taken', by: 'x-ray', minutes: 60 });
    const { bed } = planned(after, before);
    expect(refusedPins(bed, IDEAS, NOW)).toEqual([{ pin, rules: ['H2'] }]);
    // once its time has come, nobody can keep it any more
    expect(refusedPins(bed, IDEAS, pin.from + 1)).toEqual([]);
  });

  it('is not spoken of before a plan was made', () => {
    const { plan: _, ...unplanned } = TYPICAL;
    expect(refusedPins({ ...unplanned, pins: [{ ...ahead[0]!, idea: 'no-such-idea' }] }, IDEAS)).toEqual([]);
  });
});
