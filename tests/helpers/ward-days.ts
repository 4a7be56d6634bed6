/** Four days at a bed as two phones write them down, over the night in which London's clocks go back. */
import fc from 'fast-check';
import { mergeNotes, type Entry, type NewEntry } from '#domain/notes/entries.ts';
import type { SummarySettings } from '#domain/notes/summary.ts';
import { ALL_SIGN_IDS } from '#domain/signs/ids.ts';
import { instant, minutes, type Instant } from '#domain/units.ts';
import { SIGN_ROWS } from '#content/signs.ts';
import { WARD } from '#content/ward.ts';

export const BEGIN = instant(Date.UTC(2026, 9, 23) / 60_000);
export const DAY = 1440;
export const END = instant(BEGIN + 4 * DAY);
/** London, October 2026. Source: tests/reference/clock-changes.test.ts compares it with the system's zone data. */
export const london = (at: Instant) => minutes(at < Date.UTC(2026, 9, 25, 1) / 60_000 ? 60 : 0);

export const SETTINGS: SummarySettings = {
  offsetMinutes: minutes(0),
  child: { under3: false, canTell: 'yes' },
  signs: SIGN_ROWS,
  ward: WARD,
  lookOf: Object.fromEntries(Object.entries(SIGN_ROWS).map(([id, row]) => [id, row.look])),
};

/** A short writer for examples: minutes from the beginning, or `at` by the clock of a day in universal time. */
export function phone(device: string) {
  let count = 0;
  return (minute: number, what: NewEntry): Entry => {
    const t = instant(BEGIN + minute);
    return { id: `${device}-${++count}`, t, off: london(t), ...what } as Entry;
  };
}
export const clock = (hours: number, mins = 0, day = 0) => day * DAY + hours * 60 + mins;
export const moment = (minute: number): Instant => instant(BEGIN + minute);

const anyAnswer = fc.constantFrom('not-looked', 'like-usual', 'not-sure', 'different' as const);
/** A few signs only, so that they come again. */
const FEW = ['toes-cool', 'itchy-under', 'leg-jumps', 'no-wee', 'sore-rising'] as const;
const looked = ALL_SIGN_IDS.filter((id) => SIGN_ROWS[id]!.look);

export const anySeen: fc.Arbitrary<NewEntry> = fc.oneof(
  fc.record({
    kind: fc.constant('sign' as const),
    sign: fc.constantFrom<string>(...FEW),
    answer: fc.constantFrom('different' as const, 'not-sure' as const),
  }),
  fc.array(anyAnswer, { minLength: looked.length, maxLength: looked.length }).map((answers) => ({
    kind: 'look' as const,
    answers: Object.fromEntries(looked.map((sign, i) => [sign, answers[i]!])),
  })),
);
export const anyDaily: fc.Arbitrary<NewEntry> = fc.oneof(
  fc.record({
    kind: fc.constant('drink' as const),
    amount: fc.constantFrom('sip', 'quarter', 'half', 'full', 'not-said'),
    what: fc.constantFrom('water', 'milk'),
  }) as fc.Arbitrary<NewEntry>,
  fc.constant<NewEntry>({ kind: 'wee', into: 'bottle', amount: 'usual' }),
  fc.constantFrom<NewEntry>({ kind: 'poo', what: 'soft' }, { kind: 'poo', what: 'none-today' }),
  fc.constantFrom<NewEntry>({ kind: 'food', amount: 'some' }, { kind: 'mood', picture: 'loose' }),
  fc.record({
    kind: fc.constant('play' as const),
    idea: fc.constantFrom('dot-grid', 'song-swap'),
    again: fc.boolean(),
  }),
  fc.constantFrom<NewEntry>(
    { kind: 'question', ask: 'when-x-ray' },
    { kind: 'question', ask: 'may-turn' },
    { kind: 'question', ask: 'walk-when' },
    { kind: 'question', own: 'Own words' },
    { kind: 'answer', question: 'aaaaaa-1', what: 'later' },
    { kind: 'answer', question: 'aaaaaa-2', what: 'yes' },
  ),
);
export const anySleep: fc.Arbitrary<NewEntry> = fc.constantFrom<NewEntry>(
  { kind: 'sleep', what: 'fell-asleep' },
  { kind: 'sleep', what: 'woke' },
  { kind: 'sleep', what: 'nap' },
);
const anySore: fc.Arbitrary<NewEntry> = fc.oneof(
  fc.record({
    kind: fc.constant('sore' as const),
    value: fc.nat(3),
    scale: fc.constantFrom('numbers' as const, 'steps' as const),
    when: fc.constantFrom('rest' as const, 'moving' as const),
  }),
  fc.constantFrom<NewEntry>({ kind: 'medicine-told' }, { kind: 'asked-for-medicine' }),
);
export const anyCall = fc.constantFrom<NewEntry>(
  { kind: 'bell' },
  { kind: 'told' },
  { kind: 'nurse-came' },
  { kind: 'nurse-looked' },
);

interface Line {
  phone: 'aaaaaa' | 'bbbbbb';
  minute: number;
  what: NewEntry;
}
/** The phones number their notes in the order in which they wrote them. */
export function numbered(lines: readonly Line[]): Entry[] {
  const counts = { aaaaaa: 0, bbbbbb: 0 };
  const inOrder = [...lines].sort((a, b) => a.minute - b.minute);
  return inOrder.map(({ phone: device, minute, what }) => {
    const t = instant(BEGIN + minute);
    return { id: `${device}-${++counts[device]}`, t, off: london(t), ...what } as Entry;
  });
}

export const lineOf = (what: fc.Arbitrary<NewEntry>, from = 0, to = 4 * DAY): fc.Arbitrary<Line> =>
  fc.record({
    phone: fc.constantFrom('aaaaaa' as const, 'bbbbbb' as const),
    minute: fc.integer({ min: from, max: to }),
    what,
  });

/** Each line perhaps noted by the other phone, too, a little later. */
const withTwins = (lines: fc.Arbitrary<Line>, maxLength: number): fc.Arbitrary<Line[]> =>
  fc
    .array(fc.tuple(lines, fc.option(fc.integer({ min: 0, max: 13 }), { nil: undefined })), { maxLength })
    .map((rows) =>
      rows.flatMap(([line, later]) => {
        if (later === undefined) return [line];
        const other = line.phone === 'aaaaaa' ? ('bbbbbb' as const) : ('aaaaaa' as const);
        return [line, { ...line, phone: other, minute: line.minute + later }];
      }),
    );

export const anyEvent: fc.Arbitrary<NewEntry> = fc.oneof(anySeen, anyDaily, anySleep, anySore, anyCall);
/** Two phones' notes of four days, mostly of the last one; strikes, answers to pairs and clock corrections among them. */
export const anyWardNotes: fc.Arbitrary<Entry[]> = fc
  .tuple(
    withTwins(lineOf(anyEvent), 8),
    withTwins(lineOf(anyEvent, 3 * DAY - 60), 12),
    fc.array(
      fc.record({
        minute: fc.integer({ min: 0, max: 4 * DAY }),
        kind: fc.constantFrom('strike' as const, 'pair' as const, 'clock' as const),
        pick: fc.nat(),
        other: fc.nat(),
        same: fc.boolean(),
        shift: fc.integer({ min: -90, max: 90 }),
      }),
      { maxLength: 4 },
    ),
  )
  .map(([early, late, about]) => {
    const events = numbered([...early, ...late]);
    const id = (n: number) => events[n % Math.max(1, events.length)]?.id ?? 'aaaaaa-1';
    // a phone of their own, so that no number of a phone stands against its clock
    const inOrder = [...about].sort((a, b) => a.minute - b.minute);
    const notes = inOrder.map(({ minute, kind, pick, other, same, shift }, i): Entry => {
      const common = { id: `dddddd-${i + 1}`, t: moment(minute), off: london(moment(minute)) };
      if (kind === 'strike') return { ...common, kind, strikes: id(pick) };
      if (kind === 'pair') return { ...common, kind, first: id(pick), second: id(other), same };
      return { ...common, kind, device: 'bbbbbb', upTo: pick % 20, minutes: shift };
    });
    return mergeNotes(events, notes);
  });
