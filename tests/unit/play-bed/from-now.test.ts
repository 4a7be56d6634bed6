// Whoever asks for a plan gets one with something in it, at whatever minute: the rest of today, or the whole day anew.
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { WARD_DAY } from '#content/ward-day.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { fromNow, problemOf, startBed, withoutCard } from '#domain/play-bed/problem.ts';
import { planDay } from '#domain/play/plan.ts';
import { WARM_UP } from '#domain/play/solve.ts';

const bedOf = (ageYears: number): PlayBed =>
  startBed('circle', '2026-01-15', withoutCard(ageYears), WARD_DAY);
const plannedAt = (bed: PlayBed, minute: number) => {
  // whether there is anything at all needs no long search
  const found = planDay(fromNow(problemOf(bed, IDEAS).problem, minute), WARM_UP);
  return (found.kind === 'plan' ? found : found.rest).placements;
};

describe('a plan asked for late in the evening', () => {
  it.each([1, 3, 5, 8, 12, 16])('at %i years, with little time left, is never empty', (ageYears) => {
    const bed = bedOf(ageYears);
    const { lightsOut } = bed.sketch;
    for (let minute = lightsOut - 10; minute < lightsOut; minute += 1)
      expect(
        plannedAt(bed, minute).length,
        `${lightsOut - minute} minutes before lights out`,
      ).toBeGreaterThan(0);
  });

  it('lies in what is left of the day as long as five minutes are left', () => {
    const bed = bedOf(5);
    const { lightsOut } = bed.sketch;
    for (let left = 5; left <= 30; left += 1)
      for (const { from } of plannedAt(bed, lightsOut - left))
        expect(from).toBeGreaterThanOrEqual(lightsOut - left);
  });

  it('is the whole day where less is left, and after lights out', () => {
    const bed = bedOf(5);
    const { lightsOut } = bed.sketch;
    const whole = plannedAt(bed, 0);
    for (const minute of [lightsOut - 4, lightsOut - 1, lightsOut, 23 * 60 + 59])
      expect(plannedAt(bed, minute)).toEqual(whole);
  });

  it('is the whole day where what is left is taken to its end', () => {
    const bed = bedOf(5);
    const { lightsOut, events } = bed.sketch;
    const bath = { id: 'late', kind: 'wash' as const, from: lightsOut - 60, minutes: 60 };
    const taken = { ...bed, sketch: { ...bed.sketch, events: [...events, bath] } };
    expect(plannedAt(taken, lightsOut - 50)).toEqual(plannedAt(taken, 0));
  });
});
