import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { encode } from 'uqr';
import { checkSum } from '#domain/notes/check-sum.ts';
import {
  bytesOfCharacters,
  FRAME_BYTES,
  frameCollector,
  framesOf,
  LARGEST_TRANSFER,
  charactersOf,
  type Collector,
  type FrameSequence,
} from '#domain/notes/frames.ts';
import { packNotes } from '#domain/notes/pack.ts';
import { chance, fortnight } from '../../helpers/fortnight.ts';
import { cases } from '../../helpers/same-cases.ts';

const someBytes = (length: number, seed: number) => {
  const next = chance(seed);
  return Uint8Array.from({ length }, () => Math.floor(next() * 256));
};
/** Films frames in the given order until whole; how many it took. */
function film(collector: Collector, frames: FrameSequence, numbers: Iterable<number>) {
  let taken = 0;
  for (const n of numbers) {
    taken++;
    const result = collector.take(frames.frame(n));
    if (!result.ok) throw new Error(`frame ${n}: asked for a good one, saw ${result.reason}`);
    if (result.whole) return { taken, whole: result.whole };
    if (taken > frames.needed + 100) throw new Error(`after ${taken} frames: asked for the whole, saw none`);
  }
  return { taken, whole: undefined };
}
function* countFrom(start: number): Generator<number> {
  for (let n = start; ; n++) yield n;
}

describe('moving frames', () => {
  const transfer = fc.tuple(fc.integer({ min: 1, max: 3000 }), fc.nat(), fc.integer({ min: 31, max: 300 }));

  test('without loss, as many as there are pieces are enough', () => {
    fc.assert(
      fc.property(transfer, ([length, seed, size]) => {
        const bytes = someBytes(length, seed);
        const frames = framesOf(bytes, { size });
        const { taken, whole } = film(frameCollector(), frames, countFrom(0));
        expect(whole).toEqual(bytes);
        expect(taken).toBe(frames.needed);
      }),
      { numRuns: cases(100) },
    );
  });

  test('whatever is lost, seen twice or out of order: what arrives is what was sent', () => {
    fc.assert(
      fc.property(transfer, fc.array(fc.nat(400), { maxLength: 60 }), ([length, seed, size], seen) => {
        const bytes = someBytes(length, seed);
        const frames = framesOf(bytes, { size });
        const collector = frameCollector();
        let before = 0;
        for (const n of [...seen, ...seen]) {
          const result = collector.take(frames.frame(n));
          if (!result.ok) throw new Error(result.reason);
          expect(result.needed).toBe(frames.needed);
          expect(result.got).toBeGreaterThanOrEqual(before);
          expect(result.got).toBeLessThanOrEqual(new Set(seen).size);
          expect(result.whole !== undefined).toBe(result.got === result.needed);
          if (result.whole) expect(result.whole).toEqual(bytes);
          before = result.got;
        }
        // and from any later frame on it can be made whole
        expect(film(collector, frames, countFrom(1000)).whole).toEqual(bytes);
      }),
      { numRuns: cases(100) },
    );
  });

  // a square table of random bits is solvable 0.289 of the time, and each frame more halves what is left: 1.6 on average
  test('one who comes late needs hardly two frames more', () => {
    for (const needed of [2, 7, 20, 60]) {
      const frames = framesOf(someBytes(needed * 100, needed), { size: 115 });
      expect(frames.needed).toBe(needed);
      const more = Array.from(
        { length: 100 },
        (_, run) => film(frameCollector(), frames, countFrom(needed + 37 * run)).taken - needed,
      );
      expect(more.reduce((a, b) => a + b, 0) / 100).toBeLessThan(2.2);
      expect(Math.max(...more)).toBeLessThan(14);
    }
  });

  test('every frame tells something to one who has seen none', () => {
    for (const needed of [1, 2, 3, 5]) {
      const frames = framesOf(someBytes(needed * 16, 5), { size: 31 });
      expect(frames.needed).toBe(needed);
      for (let n = 0; n < 100; n++)
        expect(frameCollector().take(frames.frame(n))).toMatchObject({ ok: true, got: 1, needed });
    }
  });

  test('frames of two transfers in one film are kept apart', () => {
    const [one, two] = [someBytes(900, 1), someBytes(900, 2)];
    const collector = frameCollector();
    const [a, b] = [framesOf(one), framesOf(two)];
    const wholes: Uint8Array[] = [];
    for (let n = 0; n < a.needed; n++)
      for (const frames of [a, b]) {
        const result = collector.take(frames.frame(n));
        if (result.ok && result.whole) wholes.push(result.whole);
      }
    expect(wholes).toEqual([one, two]);
  });

  test('half a transfer gives nothing', () => {
    const frames = framesOf(someBytes(2000, 3));
    const collector = frameCollector();
    for (let n = 0; n < frames.needed - 1; n++) {
      const result = collector.take(frames.frame(n));
      expect(result).toEqual({ ok: true, got: n + 1, needed: frames.needed });
    }
  });

  test('a frame that contradicts the others spoils the transfer, which then begins anew', () => {
    const bytes = someBytes(600, 4);
    const frames = framesOf(bytes);
    const collector = frameCollector();
    const wrong = bytesOfCharacters(frames.frame(0))!;
    wrong[20]! ^= 1;
    new DataView(wrong.buffer).setUint32(wrong.length - 4, checkSum(wrong.subarray(0, -4)));
    expect(collector.take(charactersOf(wrong))).toMatchObject({ ok: true, got: 1 });
    for (let n = 1; n < frames.needed - 1; n++) collector.take(frames.frame(n));
    expect(collector.take(frames.frame(frames.needed - 1))).toEqual({ ok: false, reason: 'damaged' });
    expect(film(collector, frames, countFrom(0)).whole).toEqual(bytes);
  });

  test('every frame fits a code of version 10 at medium correction', () => {
    const frames = framesOf(packNotes(fortnight(600, 2, 'even')));
    for (let n = 0; n < 40; n++) {
      const text = frames.frame(n);
      expect(bytesOfCharacters(text)!.length).toBeLessThanOrEqual(FRAME_BYTES);
      expect(encode(text, { ecc: 'M' }).version).toBeLessThanOrEqual(10);
    }
    // two more bytes would not fit, so the limit is no smaller than it must be
    expect(encode(charactersOf(new Uint8Array(FRAME_BYTES).fill(255)), { ecc: 'M' }).version).toBe(10);
    expect(encode(charactersOf(new Uint8Array(FRAME_BYTES + 2).fill(255)), { ecc: 'M' }).version).toBe(11);
  });

  test('a day of two phones is one or two frames, a fortnight at most fifteen', () => {
    for (const mix of ['even', 'likely'] as const) {
      expect(framesOf(packNotes(fortnight(43, 6, mix))).needed).toBeLessThanOrEqual(2);
      expect(framesOf(packNotes(fortnight(600, 6, mix))).needed).toBeLessThanOrEqual(15);
    }
  });

  test.each([0, LARGEST_TRANSFER + 1])('%i bytes are a fault of the caller', (length) => {
    expect(() => framesOf(new Uint8Array(length))).toThrow(`1 to 65536, saw ${length}`);
  });
  test.each([0, 30, 99.5, NaN])('frames of %d bytes are a fault of the caller', (size) => {
    expect(() => framesOf(new Uint8Array(9), { size })).toThrow(`at least 31, saw ${size}`);
  });

  // two phones seldom have one version: the sum over these frames is from the day version 1 was made
  test('frames stay as they were first shown', () => {
    const frames = framesOf(
      Uint8Array.from({ length: 600 }, (_, i) => i * 37),
      { size: 40 },
    );
    const texts = [...Array.from({ length: 300 }, (_, n) => n), 70_000, 2 ** 24 - 1].map(frames.frame);
    expect(checkSum(texts.join('\n'))).toBe(3610637061);
  });

  test('the largest transfer arrives', () => {
    const bytes = someBytes(LARGEST_TRANSFER, 9);
    expect(film(frameCollector(), framesOf(bytes), countFrom(5000)).whole).toEqual(bytes);
  });
});

describe('what a camera may also see', () => {
  /** A frame with a sum that fits, whatever it says: three bytes each for transfer, length of the whole and number. */
  function madeUp(transfer: number, length: number, number: number, piece: Uint8Array): string {
    const frame = new Uint8Array(11 + piece.length + 4);
    const view = new DataView(frame.buffer);
    frame.set([0xb8, 1]);
    [transfer, length, number].forEach((value, i) =>
      view.setUint32(1 + 3 * i, value | (frame[1 + 3 * i]! << 24)),
    );
    frame.set(piece, 11);
    view.setUint32(11 + piece.length, checkSum(frame.subarray(0, -4)));
    return charactersOf(frame);
  }

  test('a frame made by hand is one of ours', () => {
    const bytes = someBytes(50, 6);
    const frames = framesOf(bytes, { size: 40 });
    expect(madeUp(checkSum(bytes) >>> 8, 50, 0, bytes.slice(0, 25))).toBe(frames.frame(0));
    expect(madeUp(checkSum(bytes) >>> 8, 50, 1, bytes.slice(25))).toBe(frames.frame(1));
  });

  test('what is shorter than a frame with a piece, or begins otherwise, is foreign; what is long enough is ours', () => {
    const frame = bytesOfCharacters(madeUp(7, 1, 0, new Uint8Array(1)))!;
    expect(frame).toHaveLength(16);
    for (let length = 1; length <= 15; length++)
      expect(frameCollector().take(charactersOf(frame.slice(0, length)))).toEqual({
        ok: false,
        reason: 'foreign',
      });
    expect(frameCollector().take(charactersOf(frame.fill(0, 15)))).toEqual({ ok: false, reason: 'damaged' });
    frame[0] = 0xb7;
    expect(frameCollector().take(charactersOf(frame))).toEqual({ ok: false, reason: 'foreign' });
  });

  test('nobody shows nothing, more than there may be, or a large whole in crumbs', () => {
    const take = (length: number, size: number) =>
      frameCollector().take(madeUp(7, length, 0, new Uint8Array(size)));
    for (const [length, size] of [
      ...[
        [0, 16],
        [LARGEST_TRANSFER + 1, 100],
        [8, 7],
        [3000, 7],
        [3000, 1],
      ],
    ] as const)
      expect(take(length!, size!)).toEqual({ ok: false, reason: 'damaged' });
    expect(take(LARGEST_TRANSFER, 100)).toMatchObject({ ok: true, got: 1 });
    expect(take(3000, 8)).toMatchObject({ ok: true, got: 1 });
    // a whole of one small piece is no crumb
    expect(frameCollector().take(framesOf(someBytes(3, 1)).frame(0))).toMatchObject({
      whole: someBytes(3, 1),
    });
  });

  test('three transfers are kept apart; a fourth makes room of the one not seen for longest', () => {
    const [one, two, three, four] = [21, 22, 23, 24].map((seed) => framesOf(someBytes(500, seed)));
    const got = (collector: Collector, frames: FrameSequence, n: number) => {
      const result = collector.take(frames.frame(n));
      return result.ok && result.got;
    };
    const collector = frameCollector();
    for (const frames of [one!, two!, three!]) expect(got(collector, frames, 0)).toBe(1);
    // the first is seen again, so the second is the one not seen for longest
    expect(got(collector, one!, 1)).toBe(2);
    expect(got(collector, four!, 0)).toBe(1);
    expect(got(collector, three!, 1)).toBe(2);
    expect(got(collector, one!, 2)).toBe(3);
    expect(got(collector, two!, 1)).toBe(1);
  });

  test('codes of something else are foreign', () => {
    const collector = frameCollector();
    for (const text of [
      '',
      'A',
      'HTTPS://EXAMPLE.ORG/',
      'https://example.org/',
      '😀😀😀',
      'WIFI:T:WPA;S:X;;',
      '0'.repeat(5000),
    ])
      expect(collector.take(text)).toEqual({ ok: false, reason: 'foreign' });
  });

  test('a later version says so', () => {
    const frame = bytesOfCharacters(framesOf(someBytes(50, 1)).frame(0))!;
    frame[1] = 2;
    expect(frameCollector().take(charactersOf(frame))).toEqual({ ok: false, reason: 'damaged' });
    new DataView(frame.buffer).setUint32(frame.length - 4, checkSum(frame.subarray(0, -4)));
    expect(frameCollector().take(charactersOf(frame))).toEqual({ ok: false, reason: 'too-new' });
  });

  test('a hundred thousand spoilt frames among good ones: no crash, and the whole is still the whole', () => {
    const bytes = packNotes(fortnight(60, 8, 'even'));
    const frames = framesOf(bytes, { size: 60 });
    const next = chance(21);
    const below = (n: number) => Math.floor(next() * n);
    const characters = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:az\u0000😀';
    let collector = frameCollector();
    let wholes = 0;
    const runs = cases(100_000);
    for (let run = 0; run < runs; run++) {
      const n = below(60);
      const good = frames.frame(n);
      let text = good;
      const how = below(60) ? below(3) : 3;
      for (let change = 0; change <= below(3); change++) {
        const at = below(text.length);
        text =
          how === 0
            ? text.slice(0, at)
            : how === 1
              ? text.slice(0, at) + characters[below(characters.length)]! + text.slice(at + 1)
              : text.slice(0, at) + characters[below(characters.length)]! + text.slice(at);
      }
      // the last kind is spoilt inside, with a sum that fits: only the sum over the whole finds it
      if (how === 3) {
        const inside = bytesOfCharacters(good)!;
        inside[2 + below(inside.length - 6)] = below(256);
        new DataView(inside.buffer).setUint32(inside.length - 4, checkSum(inside.subarray(0, -4)));
        text = charactersOf(inside);
      }
      const spoilt = collector.take(text);
      if (how < 3 && text !== good && spoilt.ok) throw new Error(`read: ${text}`);
      const result = run % 3 ? spoilt : collector.take(frames.frame(below(60)));
      for (const one of [spoilt, result])
        if (one.ok && one.whole) {
          wholes++;
          if (checkSum(one.whole) !== checkSum(bytes)) throw new Error('another whole');
          collector = frameCollector();
        }
    }
    expect(wholes).toBeGreaterThan(runs / 1000);
  });
});

describe('bytes as characters of a code', () => {
  test('as many as the largest code holds are read, and no more', () => {
    expect(bytesOfCharacters('0'.repeat(4296))).toEqual(new Uint8Array(2864));
    expect(bytesOfCharacters('0'.repeat(4299))).toBeUndefined();
  });

  // Source: RFC 9285, examples of sections 4.3 and 4.4
  test.each([
    ['AB', 'BB8'],
    ['Hello!!', '%69 VD92EX0'],
    ['base-45', 'UJCLQE7W581'],
    ['ietf!', 'QED8WEX0'],
  ])('%s is %s', (bytes, characters) => {
    expect(charactersOf(Buffer.from(bytes))).toBe(characters);
    expect(Buffer.from(bytesOfCharacters(characters)!).toString()).toBe(bytes);
  });

  test('come back, and every sign is one of the alphanumeric form', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        expect(charactersOf(bytes)).toMatch(/^[0-9A-Z $%*+\-./:]*$/);
        expect(bytesOfCharacters(charactersOf(bytes))).toEqual(bytes);
      }),
    );
  });

  // GGW is 65536: one more than two bytes hold (RFC 9285, section 6)
  test.each(['GGW', ':::', 'A', 'ABCD', 'ab8', ' é ', '::'])('%s comes from no bytes', (characters) => {
    expect(bytesOfCharacters(characters)).toBeUndefined();
  });
});
