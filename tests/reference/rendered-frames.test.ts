/**
 * Moving codes from screen to camera: the drawn frames as a camera of 640 by 480 would see them, turned, blurred,
 * shaded and with noise, every fifth lost, read by two decoders that share nothing with the maker.
 * Outside: `qr` 0.7 and `jsqr` 1.4 as decoders, `uqr` as the maker. The camera is made up, not measured.
 */
import jsqr from 'jsqr';
import { decodeQR } from 'qr/decode.js';
import { describe, expect, test } from 'vitest';
import { codePicture } from '#device/code-picture.ts';
import { frameCollector, framesOf } from '#domain/notes/frames.ts';
import { packNotes, unpackNotes } from '#domain/notes/pack.ts';
import { seen, type Hand, type Seen } from '../helpers/film.ts';
import { chance, fortnight } from '../helpers/fortnight.ts';

type Decoder = (image: Seen) => string | undefined;
/** Most noise of 255 each can stand, found by trying: jsqr takes stronger noise on plain ground for a pattern. */
const NOISE = { qr: [15, 40], jsqr: [4, 10] } as const;
// the package is CommonJS, and its one function may come inside another default
const readByJsqr = ((jsqr as unknown as { default?: typeof jsqr }).default ?? jsqr) as typeof jsqr;
const DECODERS: readonly (readonly [keyof typeof NOISE, Decoder])[] = [
  [
    'qr',
    (image) => {
      try {
        // its usual limit is one frame of a screen; a shared machine may be slower
        return decodeQR(image, { timeLimit: 2000 });
      } catch {
        return undefined;
      }
    },
  ],
  ['jsqr', ({ data, width, height }) => readByJsqr(data, width, height)?.data],
];

/** Frames a second on the screen; the limit is 8 seconds with every fifth frame lost. */
const PACE = 4;
const LIMIT_SECONDS = 8;

const handOf = (seed: number, [least, most]: readonly [number, number]): Hand => {
  const next = chance(seed);
  return {
    degrees: next() * 16 - 8,
    scale: 5.2 + next() * 1.2,
    blur: 0.8 + next() * 0.6,
    noise: least + next() * (most - least),
    shade: next() * 0.4,
  };
};

describe.each(DECODERS)('a fortnight’s notes on the screen, read by %s', (name, decode) => {
  test.each(['even', 'likely'] as const)(
    '600 notes (%s), every fifth frame lost: whole within 8 seconds',
    (mix) => {
      const entries = fortnight(600, 12, mix);
      const frames = framesOf(packNotes(entries));
      const collector = frameCollector();
      let shown = 0;
      let unread = 0;
      let whole: Uint8Array | undefined;
      // the film does not begin with the first frame
      for (let n = 3; !whole && shown < PACE * LIMIT_SECONDS; n++) {
        shown++;
        if (shown % 5 === 0) continue;
        const text = decode(seen(codePicture(frames.frame(n)), handOf(n, NOISE[name]), n));
        if (text === undefined) {
          unread++;
          continue;
        }
        expect(text).toBe(frames.frame(n));
        const result = collector.take(text);
        if (result.ok) whole = result.whole;
      }
      if (!whole) throw new Error(`not whole after ${shown} frames, ${unread} of them unread`);
      expect(shown / PACE).toBeLessThanOrEqual(LIMIT_SECONDS);
      expect(unpackNotes(whole)).toEqual({ ok: true, entries });
    },
  );
});

test('a frame that is only grey is read by nobody: the film is not a short cut to the text', () => {
  const frames = framesOf(packNotes(fortnight(60, 12, 'even')));
  const grey = seen(codePicture(frames.frame(0)), { degrees: 0, scale: 6, blur: 9, noise: 20, shade: 0 }, 1);
  for (const [, decode] of DECODERS) expect(decode(grey)).toBeUndefined();
});
