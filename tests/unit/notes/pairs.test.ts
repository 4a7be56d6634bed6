import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mergeNotes, type Entry, type EntryKind, type NewEntry } from '#domain/notes/entries.ts';
import { countEvents, eventsOf, pairsOf, PAIR_MINUTES } from '#domain/notes/pairs.ts';
import { cases } from '../../helpers/same-cases.ts';
import { anyWardNotes, lineOf, moment, numbered, phone } from '../../helpers/ward-days.ts';
import { minutes } from '#domain/units.ts';

const WEE: NewEntry = { kind: 'wee', into: 'bottle', amount: 'usual' };
const wees = (...rows: readonly [device: string, minute: number][]): Entry[] => {
  const phones = new Map<string, ReturnType<typeof phone>>();
  return rows.map(([device, minute]) => {
    const write = phones.get(device) ?? phone(device);
    phones.set(device, write);
    return write(minute, WEE);
  });
};
const countOf = (notes: readonly Entry[], ...kinds: EntryKind[]) =>
  countEvents(eventsOf(notes, (entry) => kinds.includes(entry.kind)));
let told = 0;
const say = (pair: { first: string; second: string }, same: boolean): Entry => ({
  id: `dddddd-${++told}`,
  t: moment(5000),
  off: minutes(0),
  kind: 'pair',
  first: pair.first,
  second: pair.second,
  same,
});

describe('both of you?', () => {
  test('asked about the like by two phones within ten minutes, and not after eleven', () => {
    expect(PAIR_MINUTES).toBe(10);
    expect(pairsOf(wees(['a', 0], ['b', 10]))).toEqual([{ first: 'a-1', second: 'b-1', kind: 'wee' }]);
    expect(pairsOf(wees(['a', 0], ['b', 11]))).toEqual([]);
  });

  test('one phone that wrote twice meant two', () => {
    expect(pairsOf(wees(['a', 0], ['a', 1]))).toEqual([]);
    expect(countOf(wees(['a', 0], ['a', 1]), 'wee')).toEqual({ low: 2, high: 2 });
  });

  test('two for one of them is two for all that may be one with it', () => {
    const three = wees(['a', 0], ['b', 2], ['c', 4]);
    expect(countOf(three, 'wee')).toEqual({ low: 1, high: 3 });
    // not his and hers: what the third wrote cannot be what the first two wrote together
    const one = [...three, say({ first: 'a-1', second: 'c-1' }, false)];
    expect(countOf(one, 'wee')).toEqual({ low: 2, high: 3 });
    // the second and third are one, and the first is not the second: then it is not the third either
    const pair = [
      ...three,
      say({ first: 'b-1', second: 'c-1' }, true),
      say({ first: 'a-1', second: 'b-1' }, false),
    ];
    expect(countOf(pair, 'wee')).toEqual({ low: 2, high: 2 });
  });

  test.each<NewEntry>([
    { kind: 'strike', strikes: 'c-1' },
    { kind: 'pair', first: 'c-1', second: 'd-1', same: true },
    { kind: 'clock', device: 'c', upTo: 3, minutes: 60 },
    { kind: 'unknown', raw: 'a later kind' },
  ])('never about a $kind: it is no event', (what) => {
    const notes = [phone('a')(0, what), phone('b')(3, what)];
    expect(pairsOf(notes)).toEqual([]);
    expect(eventsOf(notes)).toEqual([]);
  });

  test('one phone that already shows summer time and one that does not may have noted one event', () => {
    const [a, b] = wees(['a', 0], ['b', 3]);
    expect(pairsOf([a!, { ...b!, off: minutes(b!.off + 60) }])).toHaveLength(1);
  });

  test('another amount is another event', () => {
    const notes = [phone('a')(0, WEE), phone('b')(3, { ...WEE, amount: 'small' } as NewEntry)];
    expect(pairsOf(notes)).toEqual([]);
  });

  test.each<[string, NewEntry, NewEntry]>([
    [
      'soreness of 5 and of 6',
      { kind: 'sore', value: 5, scale: 'numbers', when: 'rest' },
      { kind: 'sore', value: 6, scale: 'numbers', when: 'rest' },
    ],
    [
      'an idea that shall come again and the same that shall not',
      { kind: 'play', idea: 'dot-grid', again: true },
      { kind: 'play', idea: 'dot-grid', again: false },
    ],
    [
      'two sub-answers of one sign',
      { kind: 'sign', sign: 'band-wet', answer: 'different', details: ['one'] },
      { kind: 'sign', sign: 'band-wet', answer: 'different', details: ['two'] },
    ],
    [
      'a sign with a sub-answer and without',
      { kind: 'sign', sign: 'band-wet', answer: 'different', details: ['one'] },
      { kind: 'sign', sign: 'band-wet', answer: 'different' },
    ],
  ])('%s are two events, and the like of either is asked about', (_, one, other) => {
    expect(pairsOf([phone('a')(0, one), phone('b')(3, other)])).toEqual([]);
    for (const what of [one, other])
      expect(pairsOf([phone('a')(0, what), phone('b')(3, what)])).toHaveLength(1);
  });

  test('who wrote it, and in which order a look holds its answers, makes no difference', () => {
    const look = (answers: Record<string, 'different' | 'like-usual'>): NewEntry => ({
      kind: 'look',
      answers,
    });
    const one = {
      ...phone('a')(0, look({ 'toes-cool': 'different', 'band-wet': 'like-usual' })),
      by: 'grown-up-a',
    };
    const other = phone('b')(5, look({ 'band-wet': 'like-usual', 'toes-cool': 'different' }));
    expect(pairsOf([one as Entry, other])).toHaveLength(1);
  });

  test('in which order a phone keeps the fields of a note makes no difference', () => {
    const [one, other] = [phone('a')(0, WEE), phone('b')(5, WEE)];
    const turned = Object.fromEntries(Object.entries(other).reverse()) as unknown as Entry;
    expect(pairsOf([one, turned])).toHaveLength(1);
  });

  test('both phones said "the same": it is one, and nobody is asked again', () => {
    const notes = wees(['a', 0], ['b', 5]);
    const both = [1, 2].map(() => say({ first: 'a-1', second: 'b-1' }, true));
    expect(countOf([...notes, ...both], 'wee')).toEqual({ low: 1, high: 1 });
    expect(pairsOf([...notes, ...both])).toEqual([]);
    const two = [1, 2].map(() => say({ first: 'b-1', second: 'a-1' }, false));
    expect(countOf([...notes, ...two], 'wee')).toEqual({ low: 2, high: 2 });
  });

  test('of three phones any two were called the same, all round: it is one', () => {
    const notes = wees(['a', 0], ['b', 2], ['c', 4]);
    const round = [
      ['a-1', 'b-1'],
      ['b-1', 'c-1'],
      ['c-1', 'a-1'],
    ].map(([first, second]) => say({ first: first!, second: second! }, true));
    expect(countOf([...notes, ...round], 'wee')).toEqual({ low: 1, high: 1 });
  });

  test('a struck note is in no pair', () => {
    const notes = wees(['a', 0], ['b', 5]);
    const strike: Entry = { id: 'a-9', t: moment(7), off: minutes(0), kind: 'strike', strikes: 'b-1' };
    expect(pairsOf([...notes, strike])).toEqual([]);
    expect(countOf([...notes, strike], 'wee')).toEqual({ low: 1, high: 1 });
  });

  test('until a tap it is 1–2, after "the same" once, after "two" twice', () => {
    const notes = wees(['a', 0], ['b', 5]);
    const [pair] = pairsOf(notes);
    expect(countOf(notes, 'wee')).toEqual({ low: 1, high: 2 });
    for (const same of [true, false]) {
      const answered = [...notes, say(pair!, same)];
      expect(pairsOf(answered)).toEqual([]);
      expect(countOf(answered, 'wee')).toEqual(same ? { low: 1, high: 1 } : { low: 2, high: 2 });
    }
  });

  test('a struck answer is none', () => {
    const notes = wees(['a', 0], ['b', 5]);
    const answer = say(pairsOf(notes)[0]!, true);
    const strike: Entry = { id: 'a-9', t: moment(7), off: minutes(0), kind: 'strike', strikes: answer.id };
    expect(pairsOf([...notes, answer, strike])).toEqual(pairsOf(notes));
  });

  test('one says the same, the other says two: neither wins, it is asked again', () => {
    const notes = wees(['a', 0], ['b', 5]);
    const [pair] = pairsOf(notes);
    const answers = [say(pair!, true), say({ first: pair!.second, second: pair!.first }, false)] as const;
    const both = [...notes, ...answers];
    const [one, two] = answers.map(({ id }) => [id]);
    expect(pairsOf(both)).toEqual([{ ...pair, contradicted: { one, two } }]);
    expect(countOf(both, 'wee')).toEqual({ low: 1, high: 2 });
    // one of the answers is crossed out: the other stands
    const strike = (id: string): Entry => ({
      ...{ id: 'a-9', t: moment(7), off: minutes(0) },
      ...{ kind: 'strike', strikes: id },
    });
    expect(countOf([...both, strike(answers[1].id)], 'wee')).toEqual({ low: 1, high: 1 });
    expect(countOf([...both, strike(answers[0].id)], 'wee')).toEqual({ low: 2, high: 2 });
  });

  test('a word about two unlike notes puts nothing together', () => {
    const notes = [phone('a')(0, WEE), phone('b')(1, { kind: 'bell' })];
    const claimed = say({ first: 'a-1', second: 'b-1' }, true);
    expect(countOf([...notes, claimed], 'wee', 'bell')).toEqual({ low: 2, high: 2 });
  });

  test.each([
    ['the first phone twice around the other', ['a', 'b', 'a'], { low: 2, high: 3 }],
    ['three phones within ten minutes', ['a', 'b', 'c'], { low: 1, high: 3 }],
    ['one phone alone', ['a', 'a', 'a'], { low: 3, high: 3 }],
  ] as const)('chains of three: %s', (_, devices, expected) => {
    const notes = wees(...devices.map((device, i) => [device, 4 * i] as [string, number]));
    expect(countOf(notes, 'wee')).toEqual(expected);
  });

  test('"two" about the first two of a chain asks about the next two', () => {
    const notes = wees(['a', 0], ['b', 6], ['a', 12]);
    const [pair] = pairsOf(notes);
    expect(pair).toMatchObject({ first: 'a-1', second: 'b-1' });
    const next = [...notes, say(pair!, false)];
    expect(pairsOf(next)).toMatchObject([{ first: 'b-1', second: 'a-2' }]);
    expect(countOf(next, 'wee')).toEqual({ low: 2, high: 3 });
  });
});

describe('laws of pairs', () => {
  const crowded = fc.array(lineOf(fc.constant(WEE), 0, 45), { maxLength: 9 }).map((lines) => numbered(lines));

  /** The oracle tries every way to put notes of two phones together by twos. */
  function fewest(notes: readonly Entry[]): number {
    const [first, ...rest] = notes;
    if (!first) return 0;
    const alone = 1 + fewest(rest);
    const together = rest
      .filter((e) => e.id.slice(0, 6) !== first.id.slice(0, 6) && Math.abs(e.t - first.t) <= 10)
      .map((e) => 1 + fewest(rest.filter((other) => other !== e)));
    return Math.min(alone, ...together);
  }

  test('two phones: "at least" is the fewest events there can have been, "at most" every note', () => {
    fc.assert(
      fc.property(crowded, (notes) => {
        expect(countOf(notes, 'wee')).toEqual({ low: fewest(notes), high: notes.length });
      }),
      { numRuns: cases(300) },
    );
  });

  test('no tap leads out of the range that was shown, and when all are answered it is one number', () => {
    fc.assert(
      fc.property(crowded, fc.infiniteStream(fc.boolean()), (notes, taps) => {
        const shown = countOf(notes, 'wee');
        let all = notes;
        for (let pairs = pairsOf(all); pairs.length; pairs = pairsOf(all)) {
          all = [...all, say(pairs[0]!, taps.next().value as boolean)];
          const { low, high } = countOf(all, 'wee');
          expect(low).toBeGreaterThanOrEqual(shown.low);
          expect(high).toBeLessThanOrEqual(shown.high);
          expect(low).toBeLessThanOrEqual(high);
        }
        const { low, high } = countOf(all, 'wee');
        expect(low).toBe(high);
      }),
      { numRuns: cases(300) },
    );
  });

  test('each note is in two pairs at most, every pair is of two phones, near and alike', () => {
    fc.assert(
      fc.property(anyWardNotes, (notes) => {
        const byId = new Map(notes.map((entry) => [entry.id, entry]));
        for (const { first, second, kind } of pairsOf(notes)) {
          const [a, b] = [byId.get(first)!, byId.get(second)!];
          expect([a.kind, b.kind]).toEqual([kind, kind]);
          expect(a.id.slice(0, 6)).not.toBe(b.id.slice(0, 6));
          expect(Math.abs(a.t - b.t)).toBeLessThanOrEqual(10);
        }
      }),
      { numRuns: cases(300) },
    );
  });

  test('who said what of a pair is told alike, in whichever order the answers came', () => {
    const notes = wees(['a', 0], ['b', 5]);
    const [pair] = pairsOf(notes);
    const answers = [false, false, true, true].map((same) => say(pair!, same));
    const [two, other, one, another] = answers.map(({ id }) => id);
    const told = { one: [one, another].sort(), two: [two, other].sort() };
    expect(pairsOf([...notes, ...answers])[0]!.contradicted).toEqual(told);
    expect(pairsOf([...answers.reverse(), ...notes])[0]!.contradicted).toEqual(told);
  });

  test('it makes no difference in which order the notes came', () => {
    fc.assert(
      fc.property(
        anyWardNotes.chain((all) =>
          fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length })),
        ),
        ([all, shuffled]) => {
          expect(pairsOf(shuffled)).toEqual(pairsOf(all));
          expect(countOf(mergeNotes(shuffled, all), 'wee', 'drink')).toEqual(countOf(all, 'wee', 'drink'));
        },
      ),
      { numRuns: cases(200) },
    );
  });
});
