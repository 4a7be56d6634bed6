// Whatever the build lets through, the nurse gets a code for and the bed gets a plan for.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEA_ORDER, THING_ORDER } from '#content/idea-order.ts';
import { IDEAS } from '#content/ideas.ts';
import { LIMITS, startCard, type BedCard } from '#domain/bed-card/card.ts';
import { decodeBedCard, encodeBedCard } from '#domain/bed-card/code.ts';
import { handedOver } from '#domain/bed-card/limits.ts';
import { EVENT_KINDS, MEALS } from '#domain/play-bed/bed.ts';
import { MOST, readBed } from '#domain/play-bed/bed-store.ts';
import { factsOf, ofAge, problemOf, startBed, withoutCard } from '#domain/play-bed/problem.ts';
import { decodePlay, encodePlay } from '#domain/play-bed/travel.ts';
import { planDay } from '#domain/play/plan.ts';
import { instant, minutes } from '#domain/units.ts';
import { WARD_MINUTES } from '#domain/ward-minutes.ts';
import { readFamily } from '#state/family.svelte.ts';
import { familyOf } from '#state/card.svelte.ts';
import { anyAge } from '../../helpers/bed-cards.ts';
import { anyDay, anySettings, dayTaken, settingsTaken } from '../../helpers/wards.ts';

const DAY = '2026-11-25';
const MADE = instant(Date.UTC(2026, 10, 25, 9, 7) / 60_000);

describe('a ward’s settings that the build takes', () => {
  it('make a card for every leg and bell, which the other phone reads and keeps to the minute', () => {
    let taken = 0;
    fc.assert(
      fc.property(
        anySettings,
        fc.constantFrom('left', 'right'),
        fc.constantFrom('cord', 'button', 'desk', 'other'),
        (settings, side, bell) => {
          const ward = settingsTaken(settings);
          if (!ward) return;
          taken += 1;
          const card: BedCard = { ...startCard(ward), side, bell, madeAt: MADE, off: minutes(60) };
          const read = decodeBedCard(encodeBedCard(card));
          expect(read).toEqual({ ok: true, card: handedOver(card) });
          // what the first page keeps of it is read back as that, too
          const { bed } = familyOf(card);
          expect(readFamily({ bed }).bed).toEqual(bed);
          expect(bed).toMatchObject({
            secondStepMinutes: settings.secondStepMinutes,
            medicineWaitMinutes: settings.medicineWaitMinutes,
          });
        },
      ),
      { numRuns: 1500 },
    );
    expect(taken).toBeGreaterThan(100);
  });

  it('have the bounds of the card', () => {
    for (const key of ['secondStepMinutes', 'medicineWaitMinutes'] as const)
      expect(LIMITS[key]).toEqual(WARD_MINUTES[key]);
  });
});

describe('a ward’s day that the build takes', () => {
  it('begins a bed for every age that reads back as it was, and whose plan reaches the other phone', () => {
    let taken = 0;
    let planned = 0;
    fc.assert(
      fc.property(anyDay, fc.option(anyAge), (values, age) => {
        const day = dayTaken(values);
        if (!day) return;
        taken += 1;
        const facts = age
          ? factsOf({ age, hands: 'both', head: 'propped' } as BedCard, 7, MADE)
          : withoutCard(1);
        const begun = startBed('boat', DAY, facts, day);
        const { bed, faults } = readBed(JSON.parse(JSON.stringify(begun)));
        expect(faults).toEqual([]);
        expect(bed).toMatchObject({
          sketch: { wake: day.wake, quiet: day.quiet, events: begun.sketch.events },
        });
        const { problem, faults: unused } = problemOf(bed!, IDEAS);
        expect(unused).toEqual([]);
        const result = planDay(problem, { steps: 3, tries: 3, nodes: 30 });
        const { placements: plan } = result.kind === 'plan' ? result : result.rest;
        planned += plan.length;
        const whole = { ...bed!, plan };
        expect(decodePlay(encodePlay(whole, IDEA_ORDER, THING_ORDER), IDEA_ORDER, THING_ORDER)).toEqual({
          ok: true,
          bed: readBed(whole).bed,
        });
      }),
      { numRuns: 120 },
    );
    expect(taken).toBeGreaterThan(20);
    expect(planned).toBeGreaterThan(taken);
  });

  it('feeds a child of every age, also once the bed is told another age', () => {
    let late = 0;
    fc.assert(
      fc.property(
        anyDay,
        fc.integer({ min: 1, max: 17 }),
        fc.integer({ min: 0, max: 215 }),
        (values, ...ages) => {
          const day = dayTaken(values);
          if (!day) return;
          const [years, months] = ages;
          const begun = startBed('boat', DAY, withoutCard(years), day);
          const grown = { ...begun, ...ofAge(begun, months, day) };
          for (const { sketch } of [begun, grown]) {
            const inTime = sketch.events.filter(
              ({ from, minutes }) => from >= sketch.wake && from + minutes <= sketch.lightsOut,
            );
            expect(inTime.map(({ id }) => id)).toEqual(expect.arrayContaining([...MEALS]));
            expect(sketch.lightsOut).toBeLessThanOrEqual(day.lightsOut);
          }
          if (begun.sketch.lightsOut > 19 * 60 + 30 && years < 6) late += 1;
        },
      ),
      { numRuns: 1200 },
    );
    expect(late).toBeGreaterThan(5);
  });

  it('keeps the light of the youngest on for no snack and no visitor', () => {
    const day = dayTaken({
      ...{ wake: '07:00', lightsOut: '21:30', quiet: [] },
      events: [
        ['breakfast', '07:30', 30],
        ['lunch', '12:00', 30],
        ['supper', '18:00', 30],
        ['visitor', '19:00', 60],
        ['snack', '20:30', 15],
      ],
    });
    const { sketch } = startBed('boat', DAY, withoutCard(4), day!);
    expect(sketch.lightsOut).toBe(19 * 60 + 30);
    expect(sketch.events.map(({ id }) => id)).toEqual([...MEALS]);
  });

  it('holds as many quiet times as a bed, and one more is named', () => {
    const quiet = (many: number) =>
      Array.from({ length: many }, (_, at) => [`1${at}:40`, `1${at}:45`]).slice(0, many);
    const day = {
      wake: '07:00',
      lightsOut: '21:30',
      quiet: quiet(MOST.stretches),
      events: [
        ['breakfast', '07:30', 30],
        ['lunch', '12:00', 30],
        ['supper', '17:30', 30],
      ],
    };
    expect(dayTaken(day)?.quiet).toHaveLength(MOST.stretches);
    expect(dayTaken({ ...day, quiet: quiet(MOST.stretches + 1) })).toBeUndefined();
    expect(EVENT_KINDS.length).toBeLessThanOrEqual(MOST.events);
  });

  it('wakes nobody after the light of the youngest is out', () => {
    const late = (wake: string) => ({
      ...{ wake, lightsOut: '22:00', quiet: [] },
      events: [
        ['breakfast', '20:00', 5],
        ['lunch', '20:30', 5],
        ['supper', '21:00', 5],
      ],
    });
    expect(dayTaken(late('19:25'))).toBeDefined();
    expect(dayTaken(late('19:30'))).toBeUndefined();
  });
});
