import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { browserCodeCamera, cameraFailureOf } from '#device/code-camera.ts';
import { codePicture } from '#device/code-picture.ts';
import { seen } from '../../helpers/film.ts';

const problem = (name: string) => Object.assign(new Error('no'), { name });
/** A stream that knows whether its lamp is on. */
function lamp() {
  const track = { on: true, stop: () => (track.on = false) };
  return { track, stream: { getTracks: () => [track] } };
}
const screen = () =>
  ({
    srcObject: null,
    muted: false,
    videoWidth: 640,
    videoHeight: 480,
    setAttribute: vi.fn(),
    play: async () => undefined,
  }) as unknown as HTMLVideoElement;
const camera = (getUserMedia: unknown) => vi.stubGlobal('navigator', { mediaDevices: { getUserMedia } });
/** The browser's own reader, which sees these texts one after the other. */
function ownReader(texts: (string | undefined)[], formats = ['qr_code']) {
  vi.stubGlobal(
    'BarcodeDetector',
    class {
      static getSupportedFormats = async () => formats;
      detect = async () => {
        const text = texts.shift();
        return text === undefined ? [] : [{ rawValue: text }];
      };
    },
  );
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

describe('a camera that cannot be had', () => {
  test.each([
    ['NotAllowedError', 'refused'],
    ['SecurityError', 'refused'],
    ['NotReadableError', 'busy'],
    ['AbortError', 'busy'],
    ['NotFoundError', 'none'],
    ['OverconstrainedError', 'none'],
    ['TypeError', 'none'],
  ] as const)('%s: %s', async (name, reason) => {
    expect(cameraFailureOf(problem(name))).toBe(reason);
    ownReader([]);
    camera(() => Promise.reject(problem(name)));
    expect(await browserCodeCamera().start(screen())).toEqual({ ok: false, reason });
  });

  test.each([{}, { mediaDevices: {} }])('a browser that gives none: %j', async (navigator) => {
    vi.stubGlobal('navigator', navigator);
    expect(await browserCodeCamera().start(screen())).toEqual({ ok: false, reason: 'none' });
  });

  test('one that cannot be shown is given back', async () => {
    ownReader([]);
    const { track, stream } = lamp();
    camera(async () => stream);
    const video = Object.assign(screen(), { play: () => Promise.reject(problem('NotAllowedError')) });
    expect(await browserCodeCamera().start(video)).toEqual({ ok: false, reason: 'refused' });
    expect(track.on).toBe(false);
  });
});

describe('a camera that reads', () => {
  test('tells every text it sees, until it is stopped, and then goes dark', async () => {
    ownReader([undefined, 'ONE', 'ONE', undefined, 'TWO', 'LATE']);
    const { track, stream } = lamp();
    camera(async () => stream);
    const eye = browserCodeCamera();
    const heard: string[] = [];
    eye.onText((text) => {
      heard.push(text);
      if (text === 'TWO') eye.stop();
    });
    const video = screen();
    expect(await eye.start(video)).toEqual({ ok: true });
    expect(video.srcObject).toBe(stream);
    await vi.advanceTimersByTimeAsync(5000);
    expect(heard).toEqual(['ONE', 'ONE', 'TWO']);
    expect(track.on).toBe(false);
    expect(video.srcObject).toBeNull();
    eye.stop();
  });

  test('a picture that cannot be read ends nothing', async () => {
    let looks = 0;
    vi.stubGlobal(
      'BarcodeDetector',
      class {
        static getSupportedFormats = async () => ['qr_code'];
        detect = async () => {
          if (++looks < 3) throw problem('InvalidStateError');
          return [{ rawValue: 'ONE' }];
        };
      },
    );
    camera(async () => lamp().stream);
    const eye = browserCodeCamera();
    const heard: string[] = [];
    const deaf = eye.onText((text) => heard.push(text));
    await eye.start(screen());
    await vi.advanceTimersByTimeAsync(250);
    expect(heard[0]).toBe('ONE');
    deaf();
    const before = heard.length;
    await vi.advanceTimersByTimeAsync(1000);
    expect(heard).toHaveLength(before);
    eye.stop();
  });

  test('stopped while the browser still asks, it never stays on', async () => {
    ownReader(['ONE']);
    const { track, stream } = lamp();
    let give: (value: unknown) => void = () => undefined;
    camera(() => new Promise((resolve) => (give = resolve)));
    const eye = browserCodeCamera();
    const started = eye.start(screen());
    await vi.advanceTimersByTimeAsync(1);
    eye.stop();
    give(stream);
    expect(await started).toEqual({ ok: false, reason: 'refused' });
    expect(track.on).toBe(false);
  });

  test.each([
    ['has no reader of its own', undefined],
    ['has one that knows no such codes', ['ean_13']],
  ])('a browser that %s uses ours, on a made-up picture of a real code', async (_, formats) => {
    vi.useRealTimers();
    if (formats) ownReader(['WRONG'], formats);
    const picture = seen(
      codePicture('BARE TOES 12'),
      { degrees: 4, scale: 10, blur: 0.8, noise: 8, shade: 0.2 },
      3,
    );
    vi.stubGlobal('document', {
      createElement: () => ({
        width: 0,
        height: 0,
        getContext: () => ({ drawImage: vi.fn(), getImageData: () => picture }),
      }),
    });
    camera(async () => lamp().stream);
    const eye = browserCodeCamera();
    const heard = new Promise<string>((resolve) => eye.onText(resolve));
    expect(await eye.start(screen())).toEqual({ ok: true });
    expect(await heard).toBe('BARE TOES 12');
    eye.stop();
  });
});
