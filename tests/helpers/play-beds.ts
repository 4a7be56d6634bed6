/** Beds for the tests: a typical day on the ward with its plan, and every bed that may travel. */
import fc from 'fast-check';
import { IDEA_ORDER, THING_ORDER } from '#content/idea-order.ts';
import { IDEAS } from '#content/ideas.ts';
import { BED_SHAPES, EVENT_KINDS, FEARS, type PlayBed } from '#domain/play-bed/bed.ts';
import { readBed } from '#domain/play-bed/bed-store.ts';
import { ideaOf } from '#domain/play-bed/own-idea.ts';
import { windowsOf } from '#domain/play/day.ts';
import { planDay } from '#domain/play/plan.ts';
import { KINDS, type Placement } from '#domain/play/types.ts';
import { anyOwn, OWN } from './own-ideas.ts';

const at = (clock: string) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));
const event = (id: string, from: string, minutes: number) => ({ id, from: at(from), minutes });

/** A girl of seven, ten events, three hard moments, fifteen things, four likes, one own idea of thirty characters. */
const UNPLANNED: PlayBed = {
  shape: 'boat',
  day: '2026-11-25',
  child: {
    ageMonths: 88,
    mouths: false,
    likes: ['draw', 'short-film', 'three-word-tale', 'twenty-asks'],
    dislikes: ['song-swap'],
    never: ['slow-bubbles'],
    lacks: [],
  },
  freeHands: 1,
  room: {
    shared: true,
    isolation: 'contact',
    things: [
      ...['book', 'box', 'card', 'cards', 'cloth', 'paper', 'pen', 'phone', 'player', 'print', 'screen'],
      ...['soft-toy', 'speaker', 'tray', 'window'],
    ],
    usedElsewhere: ['cards'],
  },
  eating: true,
  permissions: ['hand-massage'],
  sketch: {
    wake: at('07:00'),
    lightsOut: at('20:30'),
    events: [
      event('breakfast', '07:30', 30),
      event('wash', '08:15', 30),
      event('medicine', '09:00', 10),
      event('round', '10:00', 20),
      event('school', '10:45', 45),
      event('lunch', '12:00', 30),
      event('nap', '13:00', 60),
      event('visitor-1', '15:30', 60),
      event('supper', '17:30', 30),
      event('medicine-2', '19:00', 10),
    ],
    moments: [
      {
        id: 'needle-1',
        from: at('09:15'),
        minutes: 15,
        procedure: 'needle',
        weight: 3,
        freeHands: 1,
        wish: 'look-away',
      },
      {
        id: 'bandage-1',
        from: at('14:30'),
        minutes: 20,
        procedure: 'bandage',
        weight: 2,
        freeHands: 1,
        wish: 'watch',
      },
      {
        id: 'other-1',
        from: at('18:15'),
        minutes: 10,
        procedure: 'other',
        weight: 1,
        freeHands: 0,
        grownUp: true,
      },
    ],
    propped: [{ from: at('08:00'), until: at('12:00') }],
    quiet: [{ from: at('13:00'), until: at('14:30') }],
    grownUp: [{ from: at('08:00'), until: at('20:00') }],
    energy: [
      { from: at('07:00'), energy: 2 },
      { from: at('10:00'), energy: 3 },
      { from: at('13:00'), energy: 1 },
    ],
  },
  limits: { screenMinutes: 45, grownUpMinutes: 120 },
  bored: true,
  notToday: ['torch-shadows'],
  own: [{ ...OWN, id: 'own-1', title: 'A map of our street, from bed!' }],
  pins: [],
  history: {
    yesterday: ['chain-tale', 'comic-strip', 'hum-guess', 'thank-map', 'twenty-asks'],
    lastThreeDays: [
      'ceiling-map',
      'chain-tale',
      'comic-strip',
      'door-sign',
      'hum-guess',
      'thank-map',
      'twenty-asks',
      'what-if',
    ],
  },
  done: [],
};

function planned(bed: PlayBed, most: number): PlayBed {
  const { windows, events } = windowsOf(bed.sketch);
  const result = planDay(
    {
      ...bed,
      ideas: [...IDEAS, ...bed.own.map(ideaOf)],
      lightsOut: bed.sketch.lightsOut,
      windows,
      events,
    },
    { steps: 40, tries: 50, nodes: 500 },
  );
  const { placements } = result.kind === 'plan' ? result : result.rest;
  const plan = placements.slice(0, most);
  return readBed({ ...bed, plan, pins: plan.slice(2, 3), done: plan.slice(0, 2) }).bed!;
}

/** The typical day with twelve placements, and with all that fit into it. */
export const TYPICAL = planned(UNPLANNED, 12);
export const FULL = planned(UNPLANNED, 99);

const five = (min: number, max: number) => fc.integer({ min: min / 5, max: max / 5 }).map((n) => n * 5);
const anyIdea = fc.constantFrom(...IDEA_ORDER);
const ids = <T extends string>(one: fc.Arbitrary<T>, maxLength: number) => fc.uniqueArray(one, { maxLength });
const words = ids(fc.oneof(anyIdea, fc.constantFrom(...KINDS), fc.constantFrom('own-1', 'own-42')), 12);
const things = ids(fc.constantFrom(...THING_ORDER), 30);
const spans = fc.array(
  fc.tuple(five(0, 1435), five(5, 600)).map(([from, length]) => ({
    from,
    until: Math.min(1440, from + length),
  })),
  { maxLength: 6 },
);
const timed = fc.tuple(five(0, 1435), five(5, 120)).map(([from, minutes]) => ({
  from,
  minutes: Math.min(minutes, 1440 - from),
}));
const named = (starts: readonly string[]) =>
  fc
    .tuple(fc.constantFrom(...starts), fc.constantFrom('', '-1', '-2', '-17', '-007', '-a1'))
    .map((parts) => parts.join(''));
const WINDOWS = ['w-0700', 'w-0930', 'w-0935-later', 'w-0930-open', 'w-0933', 'needle-1', 'a', 'w-2500'];
const level = fc.constantFrom(1 as const, 2 as const, 3 as const);
const hands = fc.constantFrom(0 as const, 1 as const, 2 as const);

const sketch = fc.record({
  wake: five(360, 700),
  lightsOut: five(900, 1320),
  events: fc.uniqueArray(
    fc.tuple(named([...EVENT_KINDS, 'meal']), timed).map(([id, time]) => ({ id, ...time })),
    { maxLength: 24, selector: ({ id }) => id },
  ),
  moments: fc.uniqueArray(
    fc
      .tuple(
        named(['needle', 'moment', 'w', 'a']),
        timed,
        fc.record(
          {
            procedure: fc.constantFrom('needle' as const, 'bandage' as const, 'other' as const),
            weight: level,
            freeHands: hands,
            wish: fc.constantFrom('watch' as const, 'look-away' as const, 'choose-then' as const),
            grownUp: fc.boolean(),
          },
          { requiredKeys: ['procedure', 'weight', 'freeHands'] },
        ),
      )
      .map(([id, time, more]) => ({ id, ...time, ...more })),
    { maxLength: 8, selector: ({ id }) => id },
  ),
  propped: spans,
  quiet: spans,
  grownUp: spans,
  energy: fc.array(fc.record({ from: five(0, 1435), energy: level }), { maxLength: 6 }),
});

/** Every bed that may travel, as it is read. */
export const anyBed: fc.Arbitrary<PlayBed> = fc
  .record({
    shape: fc.constantFrom(...BED_SHAPES),
    day: fc
      .tuple(
        fc.integer({ min: 2020, max: 2147 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 28 }),
      )
      .map(([y, m, d]) => `${y}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`),
    child: fc.record({
      ageMonths: fc.integer({ min: 12, max: 215 }),
      mouths: fc.boolean(),
      likes: words,
      dislikes: words,
      never: words,
      lacks: fc.subarray(['hearing' as const, 'learning' as const, 'sight' as const, 'speech' as const]),
    }),
    freeHands: hands,
    room: fc.record({
      shared: fc.boolean(),
      isolation: fc.constantFrom('none' as const, 'contact' as const, 'breath' as const),
      things,
      usedElsewhere: things,
    }),
    eating: fc.boolean(),
    eatingUnsaid: fc.constantFrom(true, undefined),
    permissions: fc.subarray(['free-ankle' as const, 'hand-massage' as const, 'plants' as const]),
    sketch,
    limits: fc.record({
      screenMinutes: fc.integer({ min: 0, max: 1440 }),
      grownUpMinutes: fc.integer({ min: 0, max: 1440 }),
    }),
    bored: fc.boolean(),
    notToday: words,
    own: fc.uniqueArray(anyOwn, { maxLength: 8, selector: ({ id }) => id }),
    history: fc.record({
      yesterday: ids(fc.oneof(anyIdea, fc.constant('own-3')), 8),
      lastThreeDays: ids(anyIdea, 20),
    }),
    lists: fc.array(
      fc.array(fc.tuple(fc.oneof(anyIdea, fc.integer({ min: 0, max: 7 })), timed, fc.nat(20)), {
        maxLength: 20,
      }),
      { minLength: 3, maxLength: 3 },
    ),
    hasPlan: fc.boolean(),
    chooses: fc.array(fc.record({ idea: anyIdea, or: fc.oneof(anyIdea, fc.constant('own-3')) }), {
      maxLength: 3,
    }),
    heeded: fc.option(
      fc.record({
        fears: fc.subarray([...FEARS].sort()),
        wordless: fc.boolean(),
        loudest: hands,
      }),
      { nil: {} },
    ),
  })
  .map(({ lists, hasPlan, heeded, chooses, ...bed }) => {
    const windows = [...WINDOWS, ...bed.sketch.moments.map(({ id }) => id)];
    const [plan, pins, done] = lists.map((list) =>
      list.flatMap(([idea, time, window]): Placement[] => {
        const id = typeof idea === 'number' ? bed.own[idea]?.id : idea;
        return id ? [{ idea: id, window: windows[window % windows.length]!, ...time }] : [];
      }),
    ) as [Placement[], Placement[], Placement[]];
    return readBed({
      ...bed,
      ...heeded,
      pins: [...pins, ...(hasPlan ? plan.slice(0, 2) : [])],
      done: [...done, ...(hasPlan ? plan.slice(1, 4) : [])],
      ...(chooses.length ? { childChooses: chooses } : {}),
      ...(hasPlan ? { plan } : {}),
    }).bed!;
  });
