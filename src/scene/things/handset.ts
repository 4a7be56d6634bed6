/** The ward's call handset with a thumb: the picture of the product. */
import { at, oval, straight, type Shape } from '../shapes.ts';
import { arc } from '../parts/points.ts';
import { BOLD, FINE, pen, type Placement } from './pen.ts';
import { toeRow } from './toes.ts';
import { standingNurse } from './people.ts';
import { drawProfile } from '../parts/person.ts';

/** The handset alone: oblong body on a lead, one big round button. */
function handset(where: Partial<Placement>, pressed: boolean): Shape[] {
  const p = pen(where);
  const button = p.put([56, 34])[0]!;
  const r = (k: number) => k * p.scale;
  return [
    p.soft(
      [56, 4, 74, 7, 83, 20, 82, 46, 76, 78, 70, 97, 56, 102, 42, 97, 36, 78, 30, 46, 29, 20, 38, 7],
      'sheet',
      BOLD * 1.15,
    ),
    p.stroke([38, 22, 38, 44, 42, 70], FINE, 'soft'),
    { d: oval(button, r(20), r(20)), fill: 'pad', line: 'ink', weight: BOLD * Math.min(1, p.scale * 1.2) },
    {
      d: oval(
        pressed ? at(button.x, button.y + r(1.5)) : at(button.x, button.y - r(1)),
        r(pressed ? 13 : 14.5),
        r(pressed ? 13 : 14.5),
      ),
      fill: 'mark',
      line: 'ink',
      weight: BOLD * Math.min(1, p.scale * 1.2),
    },
  ];
}

function lead(where: Partial<Placement>): Shape[] {
  const p = pen(where);
  const line = [56, 100, 55, 110, 44, 116, 26, 113, 14, 104, 5, 101];
  return [
    p.stroke(line, 7),
    p.stroke(line, 3, 'pad'),
    p.flat([50, 98, 62, 98, 60, 107, 52, 107], 'soft', 2.4),
  ];
}

/** Handset in a hand: the palm behind, four fingers round the far edge, the thumb on the button. */
function held(where: Partial<Placement>, pressed: boolean): Shape[] {
  const p = pen(where);
  const dip = pressed ? 2 : 0;
  const fingers = [0, 1, 2, 3].map((i) => {
    const y = 54 + i * 11.2;
    const tip = [55, 56, 54, 50][i]!;
    const left = [26, 25, 27, 31][i]!;
    return p.soft(
      [
        left + 1,
        y - 1,
        left + 9,
        y - 5,
        tip - 6,
        y - 4,
        tip,
        y + 1,
        tip - 1,
        y + 6,
        tip - 8,
        y + 7.5,
        left + 8,
        y + 7,
        left + 1,
        y + 5,
      ],
      'hand',
      2.6,
      0.85,
    );
  });
  const nails = [0, 1, 2, 3].map((i) => {
    const y = 54 + i * 11.2;
    const tip = [55, 56, 54, 50][i]!;
    return [tip - 5, y - 1, tip - 1.5, y + 1.4, tip - 4.5, y + 4];
  });
  return [
    ...lead(where),
    p.soft(
      [70, 58, 92, 56, 103, 72, 106, 96, 108, 117, 78, 117, 74, 104, 60, 98, 40, 94, 40, 60],
      'hand',
      BOLD,
    ),
    ...handset(where, pressed),
    ...fingers,
    p.strokes(nails, 1.4),
    // the thumb lies over the front and ends on the button
    p.soft(
      [
        107,
        118,
        107,
        98,
        104,
        76,
        97,
        62,
        84,
        49,
        73,
        39 + dip,
        64,
        29 + dip,
        55,
        27 + dip,
        49,
        33 + dip,
        52,
        42 + dip,
        62,
        53,
        69,
        64,
        73,
        80,
        74,
        98,
        78,
        118,
      ],
      'hand',
      BOLD,
      0.8,
    ),
    p.soft(
      [55, 30 + dip, 61, 31 + dip, 65, 37 + dip, 62, 41 + dip, 56, 39 + dip, 53, 34 + dip],
      'sheet',
      1.6,
    ),
    p.strokes(
      [
        [73, 45, 70, 49],
        [77, 48, 74, 52],
        [74, 84, 80, 90, 82, 97],
      ],
      FINE,
    ),
  ];
}

/** The ward's handset by itself, in nobody's hand. */
export const callButton = (): Shape[] => held({ x: 58, y: 60, scale: 1, turned: 0 }, false);

function frame(weight: number): Shape {
  const h = weight / 2 + 0.5;
  return {
    d: straight([at(h, h), at(120 - h, h), at(120 - h, 120 - h), at(h, 120 - h)], true),
    line: 'ink',
    weight,
  };
}

/** Pressed fully in, with the press shown as short bold strokes round the button. */
export function callButtonRingNow(): Shape[] {
  const where = { x: 60, y: 66, scale: 0.78, turned: 0 };
  const button = pen(where).put([56, 34])[0]!;
  const rays = [188, 216, 244, 272, 300, 328].map((degrees) => {
    const a = (degrees * Math.PI) / 180;
    const [c, s] = [Math.cos(a), Math.sin(a)];
    return straight([at(button.x + 30 * c, button.y + 29 * s), at(button.x + 40 * c, button.y + 37 * s)]);
  });
  return [...held(where, true), { d: rays.join(''), line: 'mark', weight: 5 }, frame(8)];
}

/** A nurse bends down and listens; the handset is in the hand all the same. */
export function callButtonTellNurse(): Shape[] {
  const p = pen();
  return [
    p.soft([58, 119, 62, 90, 74, 72, 94, 64, 112, 68, 118.5, 80, 118.5, 119], 'wet', BOLD, 0.7),
    p.strokes([[80, 78, 86, 92, 84, 118]], FINE),
    ...drawProfile(at(81, 38), 26, { facing: -1, mouth: 'shut', hair: 'bun', bow: 14 }),
    { d: [10, 20, 30].map((r) => arc(at(8, 34), r, -34, 34)).join(''), line: 'mark', weight: 4.4 },
    ...held({ x: 33, y: 85, scale: 0.55, turned: 0 }, false),
  ];
}

/** The handset lies on the blanket; a nurse comes through the door in her own time. */
export function callButtonNextVisit(): Shape[] {
  const p = pen();
  return [
    p.flat([52, 4, 114, 4, 114, 78, 52, 78], 'frame'),
    p.flat([58, 10, 96, 10, 96, 78, 58, 78], 'sheet', 2.4),
    p.flat([96, 10, 112, 4, 112, 84, 96, 78], 'plate', 2.4),
    ...standingNurse(at(77, 34), 0.62),
    p.soft([1.5, 82, 20, 76, 50, 79, 84, 75, 118.5, 80, 118.5, 118.5, 1.5, 118.5], 'blanket', BOLD, 0.5),
    p.strokes([[2, 110, 40, 107, 80, 111, 118, 108]], FINE),
    p.stroke([56, 97, 72, 104, 94, 96, 116, 101], 6),
    p.stroke([56, 97, 72, 104, 94, 96, 116, 101], 2.6, 'pad'),
    ...handset({ x: 34, y: 92, scale: 0.56, turned: -82 }, false),
  ];
}

/** Toes of a raised foot, from the big one outward: middle, tip, half width. */
const TOES = [
  [43, 60, 10],
  [57.5, 65, 6.4],
  [69, 69, 5.8],
  [79, 74, 5],
  [87, 80, 4],
] as const;

/** Nurse and grown-up bow over the foot together. */
export function callButtonNotSure(): Shape[] {
  const p = pen();
  return [
    p.soft([1.5, 118.5, 1.5, 70, 4, 56, 16, 48, 28, 50, 36, 66, 38, 118.5], 'wet', BOLD, 0.7),
    p.soft([118.5, 118.5, 118.5, 70, 116, 56, 104, 48, 94, 50, 90, 66, 88, 118.5], 'bag', BOLD, 0.7),
    ...drawProfile(at(33, 31), 22, { facing: 1, mouth: 'shut', hair: 'bun', bow: 24 }),
    ...drawProfile(at(89, 31), 22, { facing: -1, mouth: 'shut', hair: 'short', bow: 24 }),
    ...toeRow(p, TOES, 100, BOLD),
    p.soft([1.5, 118.5, 4, 96, 30, 90, 62, 91, 92, 95, 116, 97, 118.5, 118.5], 'blanket', BOLD, 0.6),
    p.strokes([[6, 106, 32, 101, 62, 102, 92, 106, 114, 107]], FINE),
  ];
}
