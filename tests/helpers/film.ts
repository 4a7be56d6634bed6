/** A phone's camera before another phone's screen, as numbers: what it sees of a code picture. */
import type { CodePicture } from '#device/code-picture.ts';
import { chance } from './fortnight.ts';

export interface Seen {
  width: number;
  height: number;
  /** Red, green, blue and alpha of every point. */
  data: Uint8ClampedArray;
}

export interface Hand {
  /** How far the phone is turned. */
  degrees: number;
  /** Points of the camera to one square of the code. */
  scale: number;
  /** Spread of the blur, in points. */
  blur: number;
  /** Most that noise adds or takes, of 255. */
  noise: number;
  /** How much darker the far corner is than the near one, from 0 to 1. */
  shade: number;
}

/** The dark squares of the drawn path itself, so that what is tested is what is shown. */
function squares({ size, path }: CodePicture): boolean[][] {
  const dark = Array.from({ length: size }, () => new Array<boolean>(size).fill(false));
  for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g))
    for (let i = 0; i < Number(run); i++) dark[Number(y)]![Number(x) + i] = true;
  return dark;
}

/** One picture of the camera, 640 by 480. */
export function seen(picture: CodePicture, hand: Hand, seed: number): Seen {
  const [width, height] = [640, 480];
  const next = chance(seed);
  const dark = squares(picture);
  const turn = (hand.degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn) / hand.scale, Math.sin(turn) / hand.scale];
  const middle = [width / 2 + next() * 20 - 10, height / 2 + next() * 20 - 10] as const;
  let light = new Float64Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      let sum = 0;
      // four looks into every point: edges are grey, as a lens makes them
      for (const [dx, dy] of [
        [0.25, 0.25],
        [0.75, 0.25],
        [0.25, 0.75],
        [0.75, 0.75],
      ] as const) {
        const [px, py] = [x + dx - middle[0], y + dy - middle[1]];
        const u = Math.floor(px * cos + py * sin + picture.size / 2);
        const v = Math.floor(py * cos - px * sin + picture.size / 2);
        const outside = u < 0 || v < 0 || u >= picture.size || v >= picture.size;
        // around the screen a room, neither black nor white
        sum += outside ? 110 : dark[v]![u] ? 25 : 225;
      }
      light[y * width + x] = sum / 4;
    }
  for (const step of [1, width]) light = blurred(light, step, hand.blur);
  const data = new Uint8ClampedArray(width * height * 4);
  light.forEach((value, at) => {
    const far = (at % width) / width / 2 + Math.floor(at / width) / height / 2;
    const grey = value * (1 - hand.shade * far) + (next() * 2 - 1) * hand.noise;
    data.set([grey, grey, grey, 255], at * 4);
  });
  return { width, height, data };
}

/** A bell-shaped blur along one direction. */
function blurred(light: Float64Array, step: number, spread: number): Float64Array<ArrayBuffer> {
  const reach = Math.ceil(spread * 2.5);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * spread ** 2 || 1)),
  );
  const all = weights.reduce((a, b) => a + b, 0);
  return new Float64Array(light.length).map(
    (_, at) =>
      weights.reduce((sum, weight, i) => sum + weight * (light[at + (i - reach) * step] ?? light[at]!), 0) /
      all,
  );
}
