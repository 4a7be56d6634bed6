/** Something came up: what was begun stays, the rest is planned anew, and what is kept for a hard moment goes with it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import {
  cameUp,
  changesBetween,
  pinsBetween,
  pushedOut,
  pinsWith,
  restOfDay,
  settled,
  type CameUp,
} from '#domain/play-bed/came-up.ts';
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { readBed } from '#domain/play-bed/bed-store.ts';
import { nextMoment } from '#domain/play-bed/offer.ts';
import { planWith } from '#domain/play/plan.ts';
import { vetted } from '#domain/play/vet.ts';
import type { Placement } from '#domain/play/types.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { cases } from '../../helpers/same-cases.ts';
import { anyBed, TYPICAL as UNPLANNED } from '../../helpers/play-beds.ts';

const whole = planWith(problemOf(UNPLANNED, IDEAS).problem, []);
/** The typical bed with its whole day planned. */
const TYPICAL = { ...UNPLANNED, plan: whole.kind === 'plan' ? whole.placements : whole.rest.placements };

/** What the bed has done lies before now. */
const FIRST = Math.max(6 * 60, ...UNPLANNED.done.map(({ from, minutes }) => from + minutes));
const minute = fc.integer({ min: FIRST, max: 20 * 60 });
const length = fc.constantFrom(15, 30, 60, 90);
const anyCameUp: fc.Arbitrary<CameUp> = fc.oneof(
  fc.record({
    kind: fc.constant('taken' as const),
    by: fc.constantFrom('x-ray', 'round', 'visitor'),
    minutes: length,
  }),
  fc.record({ kind: fc.constant('asleep' as const), minutes: length }),
  fc.constant({ kind: 'sore' as const }),
  fc.record({
    kind: fc.constant('moment' as const),
    id: fc.constantFrom(...TYPICAL.sketch.moments.map(({ id }) => id), 'needle-99'),
    from: fc.integer({ min: 84, max: 230 }).map((step) => step * 5),
  }),
);
const endOf = ({ from, minutes }: { from: number; minutes: number }) => from + minutes;
const planned = (now: number, what: CameUp) => {
  const bed = cameUp(TYPICAL, now, what);
  const { problem, stay } = restOfDay(bed, IDEAS, now, TYPICAL);
  const found = planWith(problem, stay);
  return { bed, problem, placements: found.kind === 'plan' ? found.placements : found.rest.placements };
};

describe('whatever comes up, at any minute', () => {
  it('leaves a bed that can be kept and read again', () => {
    fc.assert(
      fc.property(minute, anyCameUp, (now, what) => {
        const bed = cameUp(TYPICAL, now, what);
        expect(readBed(JSON.parse(JSON.stringify(bed))).faults).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('plans nothing into what came up, and leaves what began before now', () => {
    fc.assert(
      fc.property(minute, length, fc.constantFrom('taken', 'asleep'), (now, minutes, kind) => {
        const what: CameUp =
          kind === 'asleep' ? { kind: 'asleep', minutes } : { kind: 'taken', by: 'x-ray', minutes };
        const { bed, placements } = planned(now, what);
        const fresh = bed.sketch.events.find(
          ({ id }) => !TYPICAL.sketch.events.some((event) => event.id === id),
        )!;
        for (const placement of placements)
          expect(placement.from >= endOf(fresh) || endOf(placement) <= fresh.from).toBe(true);
        const begun = TYPICAL.plan!.filter(({ from }) => from < now);
        for (const { idea, from } of begun)
          expect(placements.some((one) => one.idea === idea && one.from === from)).toBe(true);
      }),
      { numRuns: 12, examples: [[871, 15, 'taken']] },
    );
  });

  it('gives what was begun a window at every minute of the day, a moment cut short included', () => {
    for (let now = FIRST; now <= 20 * 60; now++)
      for (const minutes of [15, 60]) {
        const bed = cameUp(TYPICAL, now, { kind: 'taken', by: 'x-ray', minutes });
        const { problem } = restOfDay(bed, IDEAS, now, TYPICAL);
        const stands = ({ window, from }: Placement) =>
          problem.windows.some((one) => one.id === window && one.from <= from && from < endOf(one));
        expect(problem.done?.filter((placement) => !stands(placement))).toEqual([]);
        const fresh = bed.sketch.events.find(({ id }) => id === 'x-ray-1')!;
        const into = problem.done?.filter((one) => one.from < endOf(fresh) && endOf(one) > fresh.from);
        expect(into, `at ${now}, for ${minutes}`).toEqual([]);
        expect(vetted(problem).faults).toEqual([]);
      }
  });

  it('with nothing changed, the same plan stays', () => {
    const { problem, stay } = restOfDay(TYPICAL, IDEAS, 7 * 60);
    expect(settled(problem, stay, planWith(problem, stay))).toEqual(TYPICAL.plan);
  });
});

it('a hard moment that moves takes its kept idea along', () => {
  const moment = TYPICAL.sketch.moments.find(({ id }) => id === 'bandage-1')!;
  const kept = TYPICAL.plan!.filter(({ window }) => window === moment.id);
  expect(kept.length).toBeGreaterThan(0);
  const { problem, placements } = planned(13 * 60, { kind: 'moment', id: moment.id, from: moment.from + 10 });
  const next = nextMoment(problem, placements, 13 * 60)!;
  expect(next.moment.from).toBe(moment.from + 10);
  expect(next.kept.map(({ idea }) => idea)).toEqual(kept.map(({ idea }) => idea));
});

it('a hard moment that moves takes along what a hand keeps in it, and whatever comes up later leaves it there', () => {
  const moment = TYPICAL.sketch.moments.find(({ id }) => id === 'bandage-1')!;
  const kept = TYPICAL.plan!.filter(({ window }) => window === moment.id);
  const pinned: PlayBed = { ...TYPICAL, pins: kept };
  const now = 13 * 60;
  const after = (before: PlayBed, what: CameUp) => {
    const bed = cameUp(before, now, what);
    const { problem, stay } = restOfDay(bed, IDEAS, now, before);
    const found = planWith(problem, stay);
    return { ...bed, plan: settled(problem, stay, found) };
  };
  const moved = after(pinned, { kind: 'moment', id: moment.id, from: moment.from + 10 });
  const later = after(moved, { kind: 'sore' });
  for (const bed of [moved, later]) {
    const there = bed.plan.filter(({ window }) => window === moment.id);
    expect(there.map(({ idea, from }) => [idea, from])).toEqual(
      kept.map(({ idea, from }) => [idea, from + 10]),
    );
    expect(bed.plan.filter(({ idea }) => idea === kept[0]!.idea)).toHaveLength(1);
  }
});

it('a hard moment that is moved by hand takes its pins along, too, and no other', () => {
  const moment = TYPICAL.sketch.moments.find(({ id }) => id === 'bandage-1')!;
  const pins = TYPICAL.plan!.filter(({ window }) => window === moment.id || window.startsWith('w-'));
  expect(pinsWith({ ...TYPICAL, pins }, moment.id, moment.from + 35)).toEqual(
    pins.map((pin) => (pin.window === moment.id ? { ...pin, from: pin.from + 35 } : pin)),
  );
  expect(pinsWith({ ...TYPICAL, pins }, 'no-such-moment', 600)).toEqual(pins);
});

/** Until when it is calm: through the next two windows, and for two hours at least. */
const calmUntil = (bed: PlayBed, from: number) => {
  const { windows } = problemOf(bed, IDEAS).problem;
  const ends = windows.map(endOf).filter((end) => end > from);
  return Math.max(from + 120, ...ends.slice(0, 2));
};

it('sore now: the next two windows are calm and two hours at least, later is as it was', () => {
  const { problem } = planned(10 * 60, { kind: 'sore' });
  const before = restOfDay(TYPICAL, IDEAS, 0).problem.windows;
  const until = calmUntil(TYPICAL, 10 * 60);
  expect(problem.windows.filter(({ from }) => from >= 10 * 60 && from < until).length).toBeGreaterThan(1);
  for (const window of problem.windows) {
    if (window.from >= 10 * 60 && endOf(window) <= until) expect(window.energy).toBe(1);
    if (window.from >= until)
      expect(window.energy).toBe(before.find(({ id }) => id === window.id)?.energy ?? window.energy);
  }
});

it('a long stretch ahead is calm to its end, though it is longer than two hours', () => {
  const sketch = {
    ...TYPICAL.sketch,
    wake: 420,
    events: [],
    moments: [],
    energy: [],
    propped: [],
    quiet: [],
    grownUp: [],
  };
  const bed: PlayBed = { ...TYPICAL, sketch, done: [] };
  const [first] = problemOf(bed, IDEAS).problem.windows;
  const sore = cameUp(bed, 600, { kind: 'sore' });
  expect(first!.minutes).toBeGreaterThan(400);
  for (const { from, energy } of restOfDay(sore, IDEAS, 600).problem.windows)
    if (from >= 600 && from < endOf(first!)) expect([from, energy]).toEqual([from, 1]);
});

it('soreness makes no minute of the day livelier, and leaves what lies behind it alone', () => {
  const steps = fc.uniqueArray(
    fc.record({
      from: fc.nat(24 * 12).map((n) => 5 * n),
      energy: fc.constantFrom(1 as const, 2 as const, 3 as const),
    }),
    { maxLength: 6, selector: ({ from }) => from },
  );
  const feltAt = (bed: PlayBed, minute: number) =>
    bed.sketch.energy.filter(({ from }) => from <= minute).at(-1)?.energy ?? 2;
  fc.assert(
    fc.property(steps, fc.nat(24 * 60), (energy, now) => {
      const told = [...energy].sort((a, b) => a.from - b.from);
      const bed: PlayBed = { ...TYPICAL, sketch: { ...TYPICAL.sketch, energy: told } };
      const sore = cameUp(bed, now, { kind: 'sore' });
      if (sore === bed) {
        expect(now).toBeGreaterThan(bed.sketch.lightsOut - 5);
        return;
      }
      const from = Math.max(bed.sketch.wake, 5 * Math.ceil(now / 5));
      for (let minute = 0; minute < 24 * 60; minute += 5) {
        const calm = minute >= from && minute < calmUntil(bed, from);
        expect([minute, feltAt(sore, minute)]).toEqual([minute, calm ? 1 : feltAt(bed, minute)]);
      }
    }),
    { numRuns: cases(60) },
  );
});

it('of what was told for the day each part still stands in it, or is named as pushed out of it', () => {
  let named = 0;
  fc.assert(
    fc.property(
      anyBed,
      fc.integer({ min: 0, max: 1439 }),
      fc.constantFrom(15, 30, 60, 90),
      (bed, now, minutes) => {
        const after = cameUp(bed, now, { kind: 'taken', by: 'x-ray', minutes });
        const out = pushedOut(bed.sketch, after.sketch);
        for (const list of ['moments', 'events'] as const) {
          const ids = (day: readonly { id: string }[]) => day.map(({ id }) => id).sort();
          const left = after.sketch[list].filter(({ id }) => bed.sketch[list].some((one) => one.id === id));
          expect(ids([...left, ...out[list]])).toEqual(ids(bed.sketch[list]));
          named += out[list].length;
        }
      },
    ),
    { numRuns: cases(200) },
  );
  expect(named).toBeGreaterThan(0);
});

it('a hard moment that comes into an X-ray still to come takes its place: nothing of the day is left shorter than half', () => {
  const xRay = { id: 'x-ray-1', from: 10 * 60 + 15, minutes: 45 };
  const bed = { ...TYPICAL, sketch: { ...TYPICAL.sketch, events: [xRay] } };
  const moment = bed.sketch.moments[0]!;
  const after = cameUp(bed, 8 * 60, { kind: 'moment', id: moment.id, from: 10 * 60 + 20 });
  expect(after.sketch.events).toEqual([]);
  expect(pushedOut(bed.sketch, after.sketch).events).toEqual([xRay]);
  fc.assert(
    fc.property(anyBed, minute, anyCameUp, (any, now, what) => {
      for (const event of cameUp(any, now, what).sketch.events) {
        const told = any.sketch.events.find(({ id }) => id === event.id);
        if (!told || told.minutes === event.minutes) continue;
        // it has begun, and ends now; or it begins later, and most of it is left
        const cut = told.from < now && event.from === told.from;
        expect([event.id, cut || 2 * event.minutes >= told.minutes]).toEqual([event.id, true]);
      }
    }),
    { numRuns: cases(200) },
  );
});

it('after lights-out nothing comes up any more', () => {
  const { lightsOut } = TYPICAL.sketch;
  for (const now of [lightsOut - 4, lightsOut, lightsOut + 90])
    for (const what of [
      { kind: 'asleep', minutes: 60 },
      { kind: 'taken', by: 'x-ray', minutes: 30 },
    ] as const)
      expect(cameUp(TYPICAL, now, what)).toBe(TYPICAL);
  const late = cameUp(TYPICAL, lightsOut - 5, { kind: 'asleep', minutes: 60 });
  expect(late.sketch.events.every(({ minutes }) => minutes > 0)).toBe(true);
});

it('what changed is told once: gone, new, or moved', () => {
  const at = (idea: string, from: number): Placement => ({ idea, window: 'w', from, minutes: 10 });
  expect(
    changesBetween([at('a', 10), at('b', 20), at('c', 30)], [at('b', 40), at('c', 30), at('d', 50)], 0),
  ).toEqual({
    gone: [at('a', 10)],
    come: [at('d', 50)],
    moved: [{ from: 20, placement: at('b', 40) }],
  });
});

it('a pin is told where its idea stays as it was planned; one that brings another time or another idea is told as that', () => {
  const at = (idea: string, from: number, minutes = 10): Placement => ({ idea, window: 'w', from, minutes });
  const plan = [at('a', 10), at('b', 20)];
  const free = { pins: [], plan };
  const pinned = { pins: [at('a', 10)], plan };
  expect(pinsBetween(free, pinned)).toEqual({ stuck: [at('a', 10)], loose: [] });
  expect(pinsBetween(pinned, free)).toEqual({ stuck: [], loose: [at('a', 10)] });
  expect(pinsBetween(pinned, pinned)).toEqual({ stuck: [], loose: [] });
  // five minutes longer, and another idea in its place
  for (const other of [at('a', 10, 15), at('c', 10)])
    expect(pinsBetween(free, { pins: [other], plan })).toEqual({ stuck: [], loose: [] });
  // not today: it is gone, not let go of
  expect(pinsBetween(pinned, { pins: [], plan: [at('b', 20)] })).toEqual({ stuck: [], loose: [] });
});
