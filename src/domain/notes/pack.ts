/**
 * Notes as few bytes: for codes that go from phone to phone. Between two notes the time is a difference, the number
 * a step of its phone, every word its place in a list; `coder.ts` then makes what comes often cheap.
 *
 * Bytes: 0xB7, version, check sum of all that follows (4), check sum of the notes themselves (4), the notes. The first
 * six stand there in every version to come, so that an old phone can say "too new" and not "damaged".
 */
import { checkSum } from './check-sum.ts';
import { Damaged, Reader, Writer, type Coder } from './coder.ts';
import { parseEntry, type Entry } from './entries.ts';
import { CHOICES, MARKS, QUESTIONS, WRITERS, type ChoiceKind } from './kinds.ts';
import { jsonOf, MOST_PACKED, plainText } from './plain.ts';
import { SIGN_IDS, WORRY_IDS } from '../signs/ids.ts';

const OURS = 0xb7;
const VERSION = 1;
const HEAD = 10;

/**
 * The lists as they stood when version 1 was shipped. Lists grow at their ends only, and what was added later is
 * spelled out, so old and new phones read each other for ever.
 */
const SIGNS = [...SIGN_IDS.slice(0, 40), ...WORRY_IDS.slice(0, 3)] as readonly string[];
const ASKED = QUESTIONS.slice(0, 24) as readonly string[];
const BY = WRITERS.slice(0, 5);
const ANSWERS = ['not-looked', 'like-usual', 'not-sure', 'different'];
const CHOSEN = {
  drink: { amount: 4, what: 3 },
  food: { amount: 3 },
  wee: { into: 4, amount: 4 },
  poo: { what: 4 },
  sleep: { what: 3 },
  mood: { picture: 5 },
  care: { what: 6 },
  visit: { who: 5 },
  answer: { what: 6 },
  'bed-note': { what: 6 },
} as const satisfies { [K in ChoiceKind]: { [F in keyof (typeof CHOICES)[K]]: number } };

/** Every shape of note in version 1, as numbers in the code; 0 is a note told in JSON. */
const SHAPES = [
  ...['json', 'sign', 'look', 'sore', 'play', 'asked', 'own-words', 'strike', 'pair', 'clock'],
  ...MARKS.slice(0, 6),
  ...Object.keys(CHOSEN),
];
const SHAPE_BITS = 5;
/** No look of ours asks so much, and no sign has so many sub-answers; a stranger's may, and must not stop all the others. */
const MOST_LISTED = 1000;

type Row = Record<string, unknown>;
export type Unpacked =
  | { ok: true; entries: Entry[] }
  | {
      ok: false;
      /** `foreign`: not our notes at all. `too-new`: a later version wrote them. */
      reason: 'damaged' | 'foreign' | 'too-new';
    };

/**
 * Packs notes for a code.
 * Shape: any notes in any order; sorted ones (as `mergeNotes` gives them) become smallest. Same notes, same bytes.
 * Errors: throws a RangeError for more than 100,000 notes, and for more text than any transfer holds.
 * Not: secret. Whoever reads the code reads the notes.
 * @example packNotes([]).length // 11
 */
export function packNotes(entries: readonly Entry[]): Uint8Array {
  if (entries.length > MOST_PACKED)
    throw new RangeError(`domain/notes/pack › notes: at most ${MOST_PACKED}, saw ${entries.length}`);
  const coder = new Writer();
  const told = new Telling(coder);
  coder.count('notes', entries.length);
  let sum = 0;
  // read as any stored value is, so that what comes out is what went in
  try {
    for (const entry of entries) sum = checkSum(told.note(parseEntry(entry)), sum);
  } catch (error) {
    if (!(error instanceof Damaged)) throw error;
    throw new RangeError('domain/notes/pack › notes: more text than any transfer holds', { cause: error });
  }
  const body = coder.bytes();
  const packed = new Uint8Array(HEAD + body.length);
  packed.set([OURS, VERSION]);
  packed.set(body, HEAD);
  const view = new DataView(packed.buffer);
  view.setUint32(6, sum);
  view.setUint32(2, sumOf(packed));
  return packed;
}

/** The version is in the sum, or one wrong bit there would look like a later version. */
const sumOf = (packed: Uint8Array) => checkSum(packed.subarray(6), checkSum(packed.subarray(1, 2)));

/**
 * Reads packed notes: all of them, or none.
 * Shape: the entries in the order they were packed, each as `parseEntry` gives it. A note of a kind that this version
 * does not know comes back as `unknown` with all it held.
 * Errors: none thrown, whatever the bytes.
 * @example unpackNotes(packNotes([])) // { ok: true, entries: [] }
 */
export function unpackNotes(packed: Uint8Array): Unpacked {
  if (packed.length < HEAD || packed[0] !== OURS) return { ok: false, reason: 'foreign' };
  const view = new DataView(packed.buffer, packed.byteOffset, packed.byteLength);
  if (view.getUint32(2) !== sumOf(packed)) return { ok: false, reason: 'damaged' };
  if (packed[1] !== VERSION) return { ok: false, reason: 'too-new' };
  try {
    const coder = new Reader(packed.subarray(HEAD));
    const told = new Telling(coder);
    const count = coder.count('notes', 0);
    if (count > MOST_PACKED) throw new Damaged();
    let sum = 0;
    const entries: Entry[] = [];
    for (let i = 0; i < count; i++) {
      const text = told.note();
      sum = checkSum(text, sum);
      entries.push(parseEntry(JSON.parse(text)));
    }
    // the second sum is over the notes: it would also find a list that was changed where it must only grow
    if (!coder.atEnd() || sum !== view.getUint32(6)) throw new Damaged();
    return { ok: true, entries };
  } catch (error) {
    if (error instanceof Damaged || error instanceof SyntaxError) return { ok: false, reason: 'damaged' };
    throw error;
  }
}

/** Which shape of version 1 tells this entry exactly. */
function shapeOf(entry: Entry): number {
  const whole = Number.isSafeInteger(entry.t) && Number.isSafeInteger(entry.off);
  const by = entry.by === undefined || BY.includes(entry.by);
  if (!whole || !by) return 0;
  // version 1 has no place for the language of own words
  if (entry.kind === 'question')
    return 'ask' in entry
      ? SHAPES.indexOf('asked')
      : entry.in === undefined
        ? SHAPES.indexOf('own-words')
        : 0;
  if (entry.kind === 'sign' && (entry.details?.length ?? 0) > MOST_LISTED) return 0;
  if (entry.kind === 'look' && Object.keys(entry.answers).length > MOST_LISTED) return 0;
  // a count of the code ends one before the largest whole number there is
  if (entry.kind === 'clock' && entry.upTo === Number.MAX_SAFE_INTEGER) return 0;
  if (Object.hasOwn(CHOSEN, entry.kind)) {
    const known = Object.entries<number>(CHOSEN[entry.kind as ChoiceKind]).every(([field, length]) => {
      const at = wordsOf(entry.kind as ChoiceKind, field).indexOf((entry as unknown as Row)[field] as string);
      return at >= 0 && at < length;
    });
    if (!known) return 0;
  }
  // what cannot be read is in no list
  return Math.max(0, SHAPES.indexOf(entry.kind));
}

const wordsOf = (kind: ChoiceKind, field: string): readonly string[] =>
  (CHOICES[kind] as Readonly<Record<string, readonly string[]>>)[field]!;

/** A note told in JSON: what a later version wrote as it wrote it, so that a later version reads it as it is. */
function jsonTextOf(entry: Entry): string {
  const raw = entry.kind === 'unknown' ? jsonOf(entry.raw) : undefined;
  const text = plainText(entry);
  if (raw !== undefined && jsonOf(parseEntry(JSON.parse(raw))) === text) return raw;
  return text;
}

/** A number as it is written in an id: no sign, no zero in front, and small enough to count with. */
const COUNTER = /^(0|[1-9]\d{0,8})$/;
const HEX_DEVICE = /^[0-9a-f]{6}$/;

/**
 * Tells one note after the other, and remembers what the next one can lean on. With a `Writer` it tells the entry
 * it is given; with a `Reader` the wanted values are empty ones, and what comes back is what was told.
 */
class Telling {
  private readonly c: Coder;
  /** Phones by the order they came up, with the number of their last note and their clock's offset. */
  private readonly phones: { name: string; count: number; off: number }[] = [];
  private readonly words: string[] = [];
  private shape = 0;
  private phone = 0;
  private t = 0;
  private asked: readonly string[] = [];
  private answered: Readonly<Record<string, string>> = {};

  constructor(coder: Coder) {
    this.c = coder;
  }

  /** One note, as JSON text in a form that is alike on both sides. */
  note(entry?: Entry): string {
    const { c } = this;
    this.shape = c.choice(`shape after ${this.shape}`, SHAPE_BITS, entry ? shapeOf(entry) : 0);
    if (this.shape === 0) return c.text('json', entry ? jsonTextOf(entry) : '');
    const shape = SHAPES[this.shape] ?? fail();
    // past this point entry and shape belong together; a reader has neither
    const from: Row = (entry as Row | undefined) ?? {};
    const row: Row = {};
    row.id = this.noteId((from.id as string) ?? '');
    const ago = (entry?.t ?? 0) - this.t;
    const earlier = c.flag('earlier', ago < 0);
    const minutes = c.count('minutes', Math.abs(ago));
    this.t += earlier ? -minutes : minutes;
    row.t = this.t;
    const phone = this.phones[this.phone - 1];
    const lastOff = phone?.off ?? 0;
    const sameOff = c.flag('same offset', (entry?.off ?? 0) === lastOff);
    row.off = sameOff ? lastOff : c.shift('offset', entry?.off ?? 0);
    if (phone) phone.off = row.off as number;
    // nobody is left out where the row becomes text
    row.by = BY[c.choice(`by ${this.phone}`, 3, entry?.by ? BY.indexOf(entry.by) + 1 : 0) - 1];
    this.content(shape, from, row);
    return JSON.stringify(row);
  }

  private content(shape: string, from: Row, row: Row): void {
    const { c } = this;
    row.kind = shape;
    switch (shape) {
      case 'sign': {
        const sign = this.sign('sign', from.sign);
        row.sign = sign;
        row.answer = c.flag('not sure', from.answer === 'not-sure') ? 'not-sure' : 'different';
        const details = (from.details as readonly string[] | undefined) ?? [];
        const count = c.count(`details of ${sign}`, details.length);
        if (count) row.details = this.list(count, (i) => this.word('detail', details[i]));
        return;
      }
      case 'look':
        row.answers = this.look((from.answers as Record<string, string> | undefined) ?? {});
        return;
      case 'sore': {
        row.value = 0;
        row.scale = c.flag('scale', from.scale === 'steps') ? 'steps' : 'numbers';
        row.when = c.flag('moving', from.when === 'moving') ? 'moving' : 'rest';
        row.value = c.choice(
          `sore ${row.scale as string} ${row.when as string}`,
          4,
          (from.value as number) ?? 0,
        );
        return;
      }
      case 'play':
        row.idea = this.word('idea', from.idea);
        row.again = c.flag('again', from.again === true);
        return;
      case 'asked': {
        row.kind = 'question';
        const at = c.choice('asked', 5, ASKED.indexOf(from.ask as string) + 1);
        row.ask = at ? (ASKED[at - 1] ?? fail()) : this.word('ask', from.ask);
        return;
      }
      case 'own-words':
        row.kind = 'question';
        row.own = c.text('own', (from.own as string) ?? '');
        return;
      case 'strike':
        row.strikes = this.otherId('strikes', from.strikes);
        return;
      case 'pair':
        row.first = this.otherId('first', from.first);
        row.second = this.otherId('second', from.second);
        row.same = c.flag('same', from.same === true);
        return;
      case 'clock': {
        const at = this.device('clock', from.device as string | undefined);
        row.device = this.phones[at - 1]?.name ?? fail();
        row.upTo = c.count('up to', (from.upTo as number) ?? 0);
        row.minutes = c.shift('clock', (from.minutes as number) ?? 0);
        return;
      }
    }
    if (!Object.hasOwn(CHOSEN, shape)) return;
    const kind = shape as ChoiceKind;
    for (const [field, length] of Object.entries<number>(CHOSEN[kind])) {
      const words = wordsOf(kind, field);
      const at = c.choice(
        `${kind} ${field}`,
        bitsFor(length),
        Math.max(0, words.indexOf(from[field] as string)),
      );
      row[field] = (at < length ? words[at] : undefined) ?? fail();
    }
    if (kind === 'answer') row.question = this.otherId('question', from.question);
  }

  private look(wanted: Readonly<Record<string, string>>): Row {
    const { c } = this;
    const keys = Object.keys(wanted);
    // the full look asks the same questions every time
    if (!c.flag('same questions', same(keys, this.asked))) {
      let before = '';
      this.asked = this.list(c.count('questions', keys.length), (i) => {
        before = this.sign(`question after ${before}`, keys[i]);
        return before;
      });
    }
    // a name of the machine's own may be a key, so nothing may stand behind the record
    const answers = Object.create(null) as Record<string, string>;
    let before = '';
    for (const key of this.asked) {
      const last = Object.hasOwn(this.answered, key) ? this.answered[key] : '';
      const at = c.choice(`answered after ${before} ${last}`, 2, Math.max(0, ANSWERS.indexOf(wanted[key]!)));
      before = answers[key] = ANSWERS[at]!;
    }
    this.answered = answers;
    return answers;
  }

  private list<T>(count: number, one: (i: number) => T): T[] {
    if (count > MOST_PACKED) throw new Damaged();
    return Array.from({ length: count }, (_, i) => one(i));
  }

  private sign(about: string, wanted: unknown): string {
    const at = this.c.choice(about, 6, SIGNS.indexOf(wanted as string) + 1);
    return at ? (SIGNS[at - 1] ?? fail()) : this.word('sign', wanted);
  }

  /** A word that is in no list: spelled out the first time, then called by its number. */
  private word(about: string, wanted: unknown): string {
    const text = (wanted as string | undefined) ?? '';
    const known = this.words.indexOf(text);
    const at = this.c.count(`word ${about}`, known < 0 ? this.words.length : known);
    if (at > this.words.length) throw new Damaged();
    if (at === this.words.length) this.words.push(this.c.text('word', text));
    return this.words[at]!;
  }

  /** A phone by its number from 1; its name is told the first time. */
  private device(about: string, name: string | undefined): number {
    const { c } = this;
    const known = this.phones.findIndex((phone) => phone.name === name);
    const at = c.count(about, name === undefined ? 0 : 1 + (known < 0 ? this.phones.length : known));
    if (at > this.phones.length + 1) throw new Damaged();
    if (at === this.phones.length + 1) {
      const hex = c.flag('usual name', HEX_DEVICE.test(name ?? ''));
      const bytes = [0, 2, 4].map((i) =>
        hex ? c.choice('name', 8, parseInt(name?.slice(i, i + 2) ?? '0', 16)) : 0,
      );
      const told = hex
        ? bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('')
        : c.text('name', name ?? '');
      this.phones.push({ name: told, count: 0, off: 0 });
    }
    return at;
  }

  /** An id is a phone and a number; 0 instead of a phone is an id of any other form, spelled out. */
  private id(about: string, wanted: string, ahead: number): [at: number, id: string, count: number] {
    const dash = wanted.lastIndexOf('-');
    const regular = dash >= 0 && COUNTER.test(wanted.slice(dash + 1));
    const at = this.device(`${about} phone after ${this.phone}`, regular ? wanted.slice(0, dash) : undefined);
    const phone = this.phones[at - 1];
    if (!phone) return [0, this.c.text('id', wanted), 0];
    const from = phone.count + ahead;
    const count =
      from + this.c.shift(`${about} number`, (regular ? Number(wanted.slice(dash + 1)) : 0) - from);
    return [at, `${phone.name}-${count}`, count];
  }

  private noteId(wanted: string): string {
    const [at, id, count] = this.id('note', wanted, 1);
    this.phone = at;
    if (at) this.phones[at - 1]!.count = count;
    return id;
  }

  private otherId(about: string, wanted: unknown): string {
    return this.id(about, (wanted as string | undefined) ?? '', 0)[1];
  }
}

const same = (a: readonly string[], b: readonly string[]) =>
  a.length === b.length && a.every((x, i) => x === b[i]);
const bitsFor = (length: number) => Math.ceil(Math.log2(length));

/** A place in a list that version 1 does not have. Without words: the caller learns only that it is damaged. */
function fail(): never {
  throw new Damaged();
}
