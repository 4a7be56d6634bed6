/** Settings as a ward may write them: within what the file allows, and just beyond it. */
import fc from 'fast-check';
import { readWard, type WardSettings } from '#content/ward.ts';
import { readWardDay, type WardDay } from '#content/ward-day.ts';
import { SECOND_STEPS } from '#content/second-steps.ts';
import { EVENT_KINDS } from '#domain/play-bed/bed.ts';
import { readJson } from './locales.ts';

const ours = readJson('src/content/ward.json') as Record<string, unknown>;
const clock = (minute: number) =>
  [Math.floor(minute / 60), minute % 60].map((part) => String(part).padStart(2, '0')).join(':');
const MEALS = ['breakfast', 'lunch', 'supper'];

/** Half numbers, and those at and beyond each end. */
const around = (low: number, high: number) =>
  fc.oneof(
    fc.integer({ min: low - 2, max: high + 2 }),
    fc.integer({ min: low * 2, max: high * 2 }).map((n) => n / 2),
  );

/** Settings of every kind, many of which the build refuses. */
export const anySettings = fc.record({
  secondStep: fc.constantFrom(...SECOND_STEPS),
  secondStepMinutes: around(2, 10),
  tellAgainMinutes: around(5, 15),
  visitAgainMinutes: around(60, 240),
  medicineWaitMinutes: around(30, 90),
  wardLanguage: fc.constantFrom('en', 'es', 'pl', 'ar'),
});

/** A day laid out from waking on, gap by gap: the meals in their order, other events and quiet times between them. */
export const anyDay = fc
  .record({
    wake: fc.integer({ min: 72, max: 252 }),
    left: fc.integer({ min: 0, max: 40 }),
    kinds: fc.shuffledSubarray(EVENT_KINDS.filter((kind) => !MEALS.includes(kind))),
    quiet: fc.nat(9),
    order: fc.infiniteStream(fc.nat(1000)),
    steps: fc.infiniteStream(fc.tuple(fc.nat(6), fc.integer({ min: 1, max: 8 }))),
  })
  .map(({ wake, left, kinds, quiet, order, steps }) => {
    const others = [...kinds, ...Array.from({ length: quiet }, () => 'quiet')];
    const places = [...others, ...MEALS.map(() => 'meal')]
      .map((what) => ({ what, at: order.next().value as number }))
      .sort((a, b) => a.at - b.at);
    let now = wake;
    const meals = [...MEALS];
    const day = { quiet: [] as unknown[], events: [] as unknown[] };
    for (const { what } of places) {
      const [gap, length] = steps.next().value as [number, number];
      const [from, until] = [now + gap, now + gap + length];
      now = until;
      if (what === 'quiet') day.quiet.push([clock(from * 5), clock(until * 5)]);
      else day.events.push([what === 'meal' ? meals.shift() : what, clock(from * 5), length * 5]);
    }
    return { wake: clock(wake * 5), lightsOut: clock(Math.min(264, now + left) * 5), ...day };
  });

/** What the build would take; nothing where it would stop. */
export function settingsTaken(settings: object): WardSettings | undefined {
  try {
    return readWard({ ...ours, ...settings });
  } catch {
    return undefined;
  }
}
/** What the build would take; nothing where it would stop. */
export function dayTaken(day: object): WardDay | undefined {
  try {
    return readWardDay(day);
  } catch {
    return undefined;
  }
}
