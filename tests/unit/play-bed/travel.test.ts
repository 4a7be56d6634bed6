// A plan goes from one phone to another: whole, or not at all with the reason.
import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDEA_ORDER, THING_ORDER } from '#content/idea-order.ts';
import { decodeBedCard } from '#domain/bed-card/code.ts';
import { ALPHABET } from '#domain/bed-card/letters.ts';
import { BED_SHAPES, CAUTION_QUESTIONS, EVENT_KINDS, FEARS, type PlayBed } from '#domain/play-bed/bed.ts';
import { ISOLATIONS, NEEDS, PERMISSIONS, PROCEDURES, readBed, WISHES } from '#domain/play-bed/bed-store.ts';
import { Writer } from '#domain/notes/coder.ts';
import { decodePlay, encodePlay } from '#domain/play-bed/travel.ts';
import { bedTold, TABLES } from '#domain/play-bed/version-1.ts';
import { TOLD_FEARS } from '#domain/play-bed/version-2.ts';
import { BARRED, KINDS } from '#domain/play/types.ts';
import { THREE } from '../../helpers/bed-cards.ts';
import { anyLetter } from '../../helpers/letters.ts';
import { anyBed, FULL, TYPICAL } from '../../helpers/play-beds.ts';
import { draws } from '../../helpers/play-days.ts';

const encoded = (bed: PlayBed) => encodePlay(bed, IDEA_ORDER, THING_ORDER);
const decoded = (text: string) => decodePlay(text, IDEA_ORDER, THING_ORDER);
const CODE = encoded(TYPICAL);
const EMPTY = encoded({
  ...TYPICAL,
  sketch: { ...TYPICAL.sketch, events: [], moments: [], propped: [], quiet: [], grownUp: [], energy: [] },
  child: { ageMonths: 12, mouths: true, likes: [], dislikes: [], never: [], lacks: [] },
  room: { shared: true, isolation: 'none', things: [], usedElsewhere: [] },
  ...{ own: [], pins: [], done: [], plan: [], notToday: [], permissions: [] },
  history: { yesterday: [], lastThreeDays: [] },
});

describe('a plan that travels', () => {
  it('arrives as it was, whatever it holds', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        expect(decoded(encoded(bed))).toEqual({ ok: true, bed });
      }),
      { numRuns: 400 },
    );
    for (const bed of [TYPICAL, FULL]) expect(decoded(encoded(bed))).toEqual({ ok: true, bed });
  });

  it('holds every field: one that is changed changes the code', () => {
    fc.assert(
      fc.property(anyBed, anyBed, (a, b) => {
        for (const field of Object.keys(a) as (keyof PlayBed)[]) {
          const { bed } = readBed({ ...a, [field]: b[field] });
          const same = JSON.stringify(bed) === JSON.stringify(a);
          expect(encoded(bed!) === encoded(a), field).toBe(same);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('with fears, no shared language or a limit of sound is of version 2, and without them what it always was', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        const { fears, wordless, loudest, eatingUnsaid, childChooses, ...before } = bed;
        const isNew = fears !== undefined || wordless !== undefined || loudest !== undefined;
        const first = eatingUnsaid ? 'P3' : isNew ? 'P2' : 'P1';
        expect(encoded({ ...bed, childChooses: undefined }).slice(0, 2)).toBe(first);
        expect(encoded(bed).slice(0, 2)).toBe(childChooses ? 'P4' : first);
        expect(encoded({ ...before, fears: [], wordless: false, loudest: 2 })).toBe(encoded(before));
        expect(decoded(encoded(before))).toEqual({ ok: true, bed: before });
      }),
      { numRuns: 60 },
    );
    expect(encoded({ ...TYPICAL, fears: ['needles'] }).length - CODE.length).toBeLessThanOrEqual(6);
  });

  it('of version 2 is never read as one of version 1, whose tail it would lose', () => {
    const code = encoded({ ...TYPICAL, fears: ['dark', 'water'], wordless: true, loudest: 1 });
    expect(decoded(sealed(`P1${code.slice(2, -7)}`)).ok).toBe(false);
  });

  it('before anybody spoke of eating is of version 3, so that no meal is taken away on the next phone', () => {
    const unsaid: PlayBed = { ...TYPICAL, eating: false, eatingUnsaid: true };
    const code = encoded(unsaid);
    expect(code.slice(0, 2)).toBe('P3');
    expect(decoded(code)).toMatchObject({ ok: true, bed: { eating: false, eatingUnsaid: true } });
    expect(encoded({ ...unsaid, eatingUnsaid: undefined }).slice(0, 2)).toBe('P1');
    // said and unsaid at once it is no plan
    const eats = encoded({ ...TYPICAL, wordless: true });
    expect(decoded(sealed(`P3${eats.slice(2, -7)}`))).toMatchObject({ ok: false, reason: 'damaged' });
  });

  it('with a slot left to the child is of version 4, whether or not anybody spoke of eating', () => {
    const childChooses = [{ idea: 'door-sign', or: 'hum-guess' }];
    for (const eating of [
      { eating: true },
      { eating: false },
      { eating: false, eatingUnsaid: true as const },
    ]) {
      const bed: PlayBed = { ...TYPICAL, ...eating, childChooses };
      expect(encoded(bed).slice(0, 2)).toBe('P4');
      expect(decoded(encoded(bed))).toEqual({ ok: true, bed });
      // as an older version its tail would be lost, and the slot would be an order
      for (const older of ['P1', 'P2', 'P3'])
        expect(decoded(sealed(older + encoded(bed).slice(2, -7))).ok).toBe(false);
    }
  });

  it('does not tell that it came as a code: the phone that takes it says so of itself', () => {
    expect(encoded({ ...TYPICAL, taken: true })).toBe(CODE);
  });

  it('needs at most 420 letters for a typical day', () => {
    expect([TYPICAL.plan!.length, TYPICAL.sketch.events.length, TYPICAL.sketch.moments.length]).toEqual([
      12, 10, 3,
    ]);
    expect([TYPICAL.room.things.length, TYPICAL.child.likes.length]).toEqual([15, 4]);
    expect(TYPICAL.own[0]!.title.length).toBe(30);
    expect(CODE.length).toBeLessThanOrEqual(420);
  });

  it('is letters that a code holds as capitals and digits, longer than any link to a bed card', () => {
    // the link of a bed card, as static/before-paint.js tells it
    const card = /^#[0-9A-Za-z-]{20,60}$/;
    for (const code of [CODE, EMPTY, encoded(FULL)]) {
      expect(code).toMatch(/^P1[0-9A-HJKMNP-TV-Z]{70,}$/);
      expect(card.test(`#${code}`)).toBe(false);
    }
    expect(EMPTY.length).toBe(72);
  });

  it('ends with a check sum that another tool counts alike', () => {
    // Source: CRC-32 of Node's own zlib, over the letters as 16-bit units, low byte first
    for (const code of [CODE, EMPTY]) {
      let sum = 0;
      for (const letter of code.slice(-7))
        sum = sum * 32 + '0123456789ABCDEFGHJKMNPQRSTVWXYZ'.indexOf(letter);
      expect(sum).toBe(crc32(Buffer.from(code.slice(0, -7), 'utf16le')));
    }
  });

  it('may be followed in small letters, with spaces or dashes', () => {
    const whole = { ok: true, bed: TYPICAL };
    expect(decoded(CODE.toLowerCase())).toEqual(whole);
    expect(decoded(CODE.replace(/(.{4})/g, '$1-'))).toEqual(whole);
    expect(decoded(` ${CODE.replace(/(.{9})/g, '$1\n')}`)).toEqual(whole);
  });

  it('has a place for every choice there is today', () => {
    expect(TABLES.shapes).toEqual(expect.arrayContaining([...BED_SHAPES]));
    expect(TABLES.events).toEqual(expect.arrayContaining([...EVENT_KINDS]));
    expect(TABLES.kinds).toEqual(expect.arrayContaining([...KINDS]));
    expect(TABLES.questions).toEqual(expect.arrayContaining(Object.keys(CAUTION_QUESTIONS)));
    expect(TABLES.barred).toEqual(expect.arrayContaining([...BARRED]));
    expect(TABLES.needs).toEqual(expect.arrayContaining([...NEEDS]));
    expect(TABLES.permissions).toEqual(expect.arrayContaining([...PERMISSIONS]));
    expect(TABLES.isolations).toEqual(expect.arrayContaining([...ISOLATIONS]));
    expect(TABLES.procedures).toEqual(expect.arrayContaining([...PROCEDURES]));
    expect(TABLES.wishes).toEqual(expect.arrayContaining([...WISHES]));
    expect(TOLD_FEARS).toEqual(expect.arrayContaining([...FEARS]));
  });

  it('is refused with the place when it is no bed, or names what no list holds', () => {
    expect(() => encoded({ ...TYPICAL, shape: 'anchor' as 'boat' })).toThrow(/bed › shape: one of .*anchor/);
    expect(() => encoded({ ...TYPICAL, freeHands: 3 as 2 })).toThrow(/bed › freeHands/);
    expect(() => encoded({ ...TYPICAL, notToday: ['no-such-idea'] })).toThrow(/not today: .*no-such-idea/);
    expect(() => encoded({ ...TYPICAL, room: { ...TYPICAL.room, things: ['kite'] } })).toThrow(
      /things: .*kite/,
    );
  });
});

describe('a phone with other lists', () => {
  const NEWER = [...IDEA_ORDER, 'idea-of-next-year'];
  it('that are longer reads old codes as they were', () => {
    fc.assert(
      fc.property(anyBed, (bed) => {
        expect(decodePlay(encoded(bed), NEWER, [...THING_ORDER, 'thing-of-next-year'])).toEqual({
          ok: true,
          bed,
        });
      }),
      { numRuns: 100 },
    );
  });

  it('that are shorter reads what it knows, and says "too new" of what it does not', () => {
    const known = encodePlay(TYPICAL, NEWER, [...THING_ORDER, 'thing-of-next-year']);
    expect(decoded(known)).toEqual({ ok: true, bed: TYPICAL });
    const liked = { ...TYPICAL, child: { ...TYPICAL.child, likes: ['idea-of-next-year'] } };
    const tried = { ...TYPICAL, history: { yesterday: ['idea-of-next-year'], lastThreeDays: [] } };
    const placed = { ...TYPICAL, plan: [{ ...TYPICAL.plan![0]!, idea: 'idea-of-next-year' }] };
    for (const bed of [liked, tried, placed]) {
      const code = encodePlay(bed, NEWER, THING_ORDER);
      expect(decoded(code)).toMatchObject({ ok: false, reason: 'too-new' });
      expect(decodePlay(code, NEWER, THING_ORDER).ok).toBe(true);
    }
    const thing = { ...TYPICAL, room: { ...TYPICAL.room, things: ['thing-of-next-year'] } };
    expect(decoded(encodePlay(thing, IDEA_ORDER, [...THING_ORDER, 'thing-of-next-year']))).toEqual({
      ok: false,
      reason: 'too-new',
      where: 'things',
    });
  });
});

/** The same letters with a right check sum. */
const sealed = (text: string) => {
  const sum = crc32(Buffer.from(text, 'utf16le'));
  return text + [6, 5, 4, 3, 2, 1, 0].map((n) => ALPHABET[Math.floor(sum / 32 ** n) % 32]).join('');
};

/** A code around these bytes, written here from its description. */
function withContent(bytes: Uint8Array): string {
  const bits = [...bytes].map((byte) => byte.toString(2).padStart(8, '0')).join('');
  const letters = (bits.match(/.{1,5}/g) ?? []).map((five) => ALPHABET[parseInt(five.padEnd(5, '0'), 2)]);
  const length = letters.length.toString(2).padStart(15, '0').match(/.{5}/g)!;
  const head = `P1${length.map((five) => ALPHABET[parseInt(five, 2)]).join('')}`;
  return sealed(head + letters.join('').padEnd(60, '0'));
}

describe('a code that is not whole', () => {
  it('is never read as another bed: fifty thousand spoilt ones', () => {
    const { below, oneOf } = draws(20261125);
    const codes = [CODE, EMPTY];
    const letter = () => ALPHABET[below(32)]!;
    const spoil = [
      (code: string, n: number) => code.slice(0, n) + letter() + code.slice(n + 1),
      (code: string, n: number) => code.slice(0, n) + code.slice(n + 1),
      (code: string, n: number) => code.slice(0, n) + letter() + code.slice(n),
      (code: string, n: number) => code.slice(0, n) + code[n + 1] + code[n] + code.slice(n + 2),
      (code: string, n: number) => code.slice(0, n),
      (code: string, n: number) => code.slice(n),
      (code: string, n: number) => code.slice(0, n) + oneOf(codes).slice(n),
      (code: string, n: number) =>
        code.slice(0, n) + oneOf(['é', '\u0000', '🐋', '%', 'م']) + code.slice(n + 1),
    ];
    for (let round = 0; round < 50_000; round++) {
      const code = oneOf(codes);
      let text = code;
      for (let times = 1 + below(3); times > 0 && text.length > 2; times--)
        text = oneOf(spoil)(text, below(text.length - 1));
      if (codes.includes(text)) continue;
      const read = decoded(text);
      if (read.ok) expect.fail(`read ${text} out of ${code}`);
    }
  });

  it('with a right check sum over nonsense is a bed within all limits, or is refused', () => {
    const { below } = draws(7);
    const alike = new Set<string>();
    for (let round = 0; round < 4000; round++) {
      let text = CODE.slice(0, -7);
      for (let times = 1 + below(4); times > 0; times--) {
        const n = 5 + below(text.length - 5);
        text = text.slice(0, n) + ALPHABET[below(32)] + text.slice(n + 1);
      }
      const read = decoded(sealed(text));
      alike.add(read.ok ? 'read' : read.reason);
      if (read.ok) expect(readBed(read.bed)).toEqual({ bed: read.bed, faults: [] });
    }
    expect(alike.has('damaged')).toBe(true);
  });

  it('with a right check sum over a bed outside the limits is damaged, and says where', () => {
    const { sketch, child, plan, own } = TYPICAL;
    const event = sketch.events[0]!;
    const many = <T>(n: number, make: (i: number) => T) => Array.from({ length: n }, (_, i) => make(i));
    const WRONG: [string, Partial<Record<keyof PlayBed, unknown>>][] = [
      ['day', { day: '2026-02-30' }],
      ['day', { day: '2026-15-01' }],
      ['child › ageMonths', { child: { ...child, ageMonths: 11 } }],
      ['child › ageMonths', { child: { ...child, ageMonths: 216 } }],
      ['freeHands', { freeHands: 3 }],
      ['limits › screenMinutes', { limits: { screenMinutes: 1441, grownUpMinutes: 0 } }],
      ['sketch › wake', { sketch: { ...sketch, wake: 1325 } }],
      ['sketch › lightsOut', { sketch: { ...sketch, lightsOut: sketch.wake } }],
      ['sketch › events › 1 › from', { sketch: { ...sketch, events: [{ ...event, from: 1445 }] } }],
      ['sketch › events › 1 › minutes', { sketch: { ...sketch, events: [{ ...event, minutes: 0 }] } }],
      ['sketch › events › 1 › id', { sketch: { ...sketch, events: [{ ...event, id: '<b>' }] } }],
      [
        'sketch › events',
        { sketch: { ...sketch, events: many(25, (i) => ({ ...event, id: `nap-${i + 1}` })) } },
      ],
      ['sketch › quiet', { sketch: { ...sketch, quiet: many(7, () => ({ from: 500, until: 600 })) } }],
      ['plan', { plan: many(49, (i) => ({ ...plan![0]!, from: 5 * i })) }],
      ['own › 1 › title', { own: [{ ...own[0]!, title: 'x' }], plan: [], pins: [], done: [] }],
      ['own › 1 › title', { own: [{ ...own[0]!, title: 'one\u202etwo' }], plan: [], pins: [], done: [] }],
      ['own › 1 › minutes', { own: [{ ...own[0]!, minutes: [0, 61] }], plan: [], pins: [], done: [] }],
      ['own › own-1', { own: [own[0]!, own[0]!] }],
    ];
    for (const [where, change] of WRONG) {
      const writer = new Writer();
      bedTold(writer, { ideaIds: IDEA_ORDER, thingIds: THING_ORDER }, { ...TYPICAL, ...change } as PlayBed);
      const read = decoded(withContent(writer.bytes()));
      expect(read, where).toEqual({ ok: false, reason: 'damaged', where: `bed › ${where}` });
    }
  });

  it('with a right check sum over half a bed, or over more than one, is damaged', () => {
    const writer = new Writer();
    bedTold(writer, { ideaIds: IDEA_ORDER, thingIds: THING_ORDER }, TYPICAL);
    const bytes = writer.bytes();
    expect(withContent(bytes)).toBe(CODE);
    for (const other of [
      bytes.slice(0, -1),
      bytes.slice(0, 60),
      Uint8Array.from([...bytes, 0]),
      new Uint8Array(0),
    ])
      expect(decoded(withContent(other))).toMatchObject({ ok: false, reason: 'damaged' });
  });

  it('says how much is there while letters are missing at the end', () => {
    for (const code of [CODE, EMPTY])
      for (let n = 0; n < code.length; n++)
        expect(decoded(code.slice(0, n)), String(n)).toMatchObject({ ok: false, reason: 'incomplete' });
    expect(decoded(CODE.slice(0, 100))).toMatchObject({ where: `100 of ${CODE.length}` });
    expect(decoded('')).toEqual({ ok: false, reason: 'incomplete', where: '0 of 72' });
  });

  it('with one wrong letter in its content is damaged', () => {
    for (let n = 5; n < CODE.length; n++) {
      const other = ALPHABET[(ALPHABET.indexOf(CODE[n]!) + 1) % 32];
      expect(decoded(CODE.slice(0, n) + other + CODE.slice(n + 1)), String(n)).toMatchObject({
        ok: false,
        reason: 'damaged',
      });
    }
  });

  it('of a later version is too new, if it is whole', () => {
    for (const version of '56789ABZ') {
      const text = `P${version}${CODE.slice(2, -7)}`;
      expect(decoded(sealed(text))).toEqual({ ok: false, reason: 'too-new', where: 'version' });
      expect(decoded(`${text}0000000`)).toMatchObject({ ok: false });
    }
    expect(decoded(sealed(`P0${CODE.slice(2, -7)}`))).toMatchObject({ ok: false, reason: 'damaged' });
  });

  it('is a stranger where it is none of ours, a bed card among them', () => {
    for (const text of [
      ...THREE,
      'https://example.org/?P1',
      'a telephone number',
      'pizza',
      '🐋'.repeat(200),
      'x'.repeat(1e6),
    ])
      expect(decoded(text)).toEqual({ ok: false, reason: 'foreign' });
  });

  it('is a stranger to those who read bed cards', () => {
    for (const code of [CODE, EMPTY, encoded(FULL)]) {
      expect(decodeBedCard(code)).toEqual({ ok: false, reason: 'foreign' });
      expect(decodeBedCard(code.toLowerCase())).toEqual({ ok: false, reason: 'foreign' });
    }
    fc.assert(
      fc.property(anyBed, (bed) => {
        expect(decodeBedCard(encoded(bed))).toEqual({ ok: false, reason: 'foreign' });
      }),
      { numRuns: 50 },
    );
  });

  it('never stops the phone, whatever it is', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: anyLetter }),
          fc.string().map((text) => `P1${text}`),
        ),
        (text) => {
          expect(decoded(text).ok).toBe(false);
        },
      ),
    );
  });
});
