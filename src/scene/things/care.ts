/** Quiet things around the bed: hands, lamp, water, and the four things that never wait. */
import { at, oval, straight, type Shape } from '../shapes.ts';
import { drawHand } from '../parts/hand.ts';
import { drawHead } from '../parts/head.ts';
import { arc, points } from '../parts/points.ts';
import { BOLD, FINE, pen } from './pen.ts';

/** Hands that leave things alone rest on each other in the lap. */
export function handsInLap(): Shape[] {
  const p = pen();
  return [
    // chest and belly of someone seated, then the two thighs
    p.soft([30, 1.5, 26, 30, 28, 66, 92, 66, 94, 30, 90, 1.5], 'bag', BOLD, 0.5),
    p.soft([60, 74, 40, 66, 18, 74, 8, 96, 8, 118.5, 58, 118.5], 'soft', BOLD, 0.7),
    p.soft([60, 74, 80, 66, 102, 74, 112, 96, 112, 118.5, 62, 118.5], 'soft', BOLD, 0.7),
    p.soft([30, 2, 14, 14, 8, 44, 18, 72, 34, 82, 44, 72, 34, 58, 32, 34], 'bag', BOLD, 0.8),
    p.soft([90, 2, 106, 14, 112, 44, 102, 72, 86, 82, 76, 72, 86, 58, 88, 34], 'bag', BOLD, 0.8),
    p.strokes([[60, 6, 60, 56]], FINE),
    // the fingers of the lower hand lie under the upper one: only its outline is seen
    drawHand(at(84, 74), 42, 164, 'rest', 1, 'hand')[0]!,
    ...drawHand(at(36, 74), 44, 12, 'rest', -1, 'hand'),
  ];
}

/** A small lamp that lights one place, for a look at night. */
export function smallLamp(): Shape[] {
  const p = pen();
  const light = points([26, 54, 94, 54, 112, 98, 8, 98]);
  return [
    { d: straight(light, true), fill: 'band' },
    p.flat([1.5, 98, 118.5, 98, 118.5, 110, 1.5, 110], 'plate'),
    p.soft([54, 54, 66, 54, 66, 82, 76, 90, 78, 98, 42, 98, 44, 90, 54, 82], 'metal', BOLD, 0.5),
    p.soft([42, 12, 78, 12, 96, 54, 24, 54], 'blanket', BOLD, 0.12),
    { d: oval(at(60, 54), 36, 6), fill: 'white', line: 'ink', weight: 2.6 },
    p.strokes(
      [
        [50, 18, 40, 46],
        [70, 18, 80, 46],
      ],
      FINE,
    ),
    p.strokes(
      [
        [16, 62, 8, 74],
        [104, 62, 112, 74],
        [30, 66, 24, 82],
        [90, 66, 96, 82],
      ],
      2.6,
      'mark',
    ),
  ];
}

/** Two hands rub each other under the running tap. */
export function cleanHands(): Shape[] {
  const p = pen();
  const water = [54, 34, 66, 34, 67, 62, 68, 118, 52, 118, 53, 62];
  return [
    p.soft([6, 4, 6, 26, 34, 26, 44, 30, 47, 40, 73, 40, 72, 20, 58, 7, 30, 4], 'metal', BOLD, 0.35),
    p.soft([20, 4, 18, 1.8, 40, 1.8, 38, 4], 'metal', 2.4),
    p.soft(water, 'tear', 2.4, 0.5),
    p.strokes(
      [
        [58, 44, 58, 58],
        [63, 46, 63, 60],
        [60, 100, 60, 114],
      ],
      FINE,
    ),
    // its fingers lie under the other hand's
    drawHand(at(98, 84), 58, 184, 'rest', 1, 'hand')[0]!,
    ...drawHand(at(20, 78), 60, 6, 'rest', -1, 'hand'),
    p.flat([1.5, 60, 22, 62, 22, 96, 1.5, 98], 'bag'),
    p.flat([118.5, 66, 97, 68, 97, 100, 118.5, 102], 'bag'),
    {
      d: [at(34, 50), at(86, 54), at(40, 108), at(82, 110)].map((c) => oval(c, 4.4, 5.4)).join(''),
      fill: 'tear',
      line: 'ink',
      weight: 2,
    },
  ];
}

/** Breathing, waking, shaking, fall: slipped over the edge of the bed, gasping, shaking. */
export function fallBreath(): Shape[] {
  const p = pen();
  const teeth = (x: number, y: number, lean: number) =>
    straight([0, 1, 2, 3, 4].map((i) => at(x + i * lean + (i % 2 === 0 ? 0 : 8), y + i * 11)));
  return [
    p.flat([1.5, 14, 66, 14, 62, 118.5, 1.5, 118.5], 'sheet'),
    p.flat([66, 14, 76, 20, 72, 118.5, 62, 118.5], 'mattress', 2.4),
    p.soft([8, 24, 34, 18, 62, 22, 66, 44, 62, 68, 36, 72, 10, 68, 5, 46], 'pillow', BOLD, 0.8),
    p.soft([66, 72, 46, 72, 30, 84, 20, 118.5, 82, 118.5, 92, 100, 92, 84, 84, 76], 'gown', BOLD, 0.7),
    ...drawHead(at(74, 50), 29, 30, { face: 'drowsy', hair: 'short', age: 5, mouth: 'gasping' }),
    p.soft([86, 86, 96, 88, 106, 100, 108, 112, 100, 114, 90, 102], 'skin', 2.6, 0.8),
    { d: teeth(10, 78, -1) + teeth(108, 22, 0), line: 'mark', weight: 4.4 },
    { d: [20, 29, 38].map((r) => arc(at(64, 64), r, 152, 196)).join(''), line: 'mark', weight: 3.8 },
  ];
}
