/** A child's head seen from the front, at any size and turned any way: used lying in bed and large. */
import type { DrawnAge, Face, Hair } from '../spec.ts';
import { at, hatch, oval, plus, smooth, turn, type Point, type Shape } from '../shapes.ts';
import { features } from './face.ts';
import { hairBehind, hairInFront } from './hair.ts';

export interface HeadLook {
  face: Face;
  hair: Hair;
  age: DrawnAge;
  /** What the mouth does besides what the face says: gasping, or being sick. */
  mouth?: 'gasping' | 'sick';
  /** Token of the skin where it is not the family's child: a grown-up's is `hand`. */
  skin?: string;
  /** Raised inner brows and a still mouth on an otherwise calm face. */
  worried?: boolean;
}

/** Proportions in half face heights: the crown is at −1, the chin at +1, the middle of the face at x = 0. */
export interface HeadForm {
  cheek: number;
  jaw: number;
  chin: number;
  /** Height of the eyes; the younger the child, the lower. */
  eyes: number;
  /** Distance of an eye from the middle. */
  spread: number;
  eye: number;
  nose: number;
  mouth: number;
  hairline: number;
}

const FORMS: Record<DrawnAge, HeadForm> = {
  2: {
    cheek: 0.93,
    jaw: 0.8,
    chin: 0.4,
    eyes: 0.24,
    spread: 0.39,
    eye: 0.125,
    nose: 0.46,
    mouth: 0.67,
    hairline: -0.52,
  },
  5: {
    cheek: 0.88,
    jaw: 0.71,
    chin: 0.34,
    eyes: 0.16,
    spread: 0.37,
    eye: 0.115,
    nose: 0.41,
    mouth: 0.63,
    hairline: -0.5,
  },
  9: {
    cheek: 0.83,
    jaw: 0.64,
    chin: 0.29,
    eyes: 0.1,
    spread: 0.355,
    eye: 0.105,
    nose: 0.38,
    mouth: 0.61,
    hairline: -0.5,
  },
  14: {
    cheek: 0.77,
    jaw: 0.58,
    chin: 0.25,
    eyes: 0.04,
    spread: 0.335,
    eye: 0.094,
    nose: 0.36,
    mouth: 0.6,
    hairline: -0.54,
  },
};

/** The form of a head at an age. */
export const headForm = (age: DrawnAge): HeadForm => FORMS[age];

/** Turns the head's own numbers into points of the page. */
export interface HeadFrame {
  form: HeadForm;
  radius: number;
  angle: number;
  p: (x: number, y: number) => Point;
  /** A line and its pair on the other half of the face. */
  both: (pairs: readonly (readonly [number, number])[]) => [Point[], Point[]];
  /** Weight of brows, eyes and mouth: bolder on a large head, never thinner than a pencil on a small one. */
  weight: number;
}

function frame(center: Point, radius: number, angle: number, form: HeadForm): HeadFrame {
  const p = (x: number, y: number) => turn(plus(center, at(x * radius, y * radius)), center, angle);
  return {
    form,
    radius,
    angle,
    p,
    both: (pairs) => [pairs.map(([x, y]) => p(x, y)), pairs.map(([x, y]) => p(-x, y))],
    weight: Math.max(1.7, Math.min(3.2, radius * 0.048)),
  };
}

/** The token a child's skin is filled with: `drained` when pale, the family's own tone otherwise. */
export const skinOf = (face: Face): string => (face === 'drained' ? 'drained' : 'skin');

function outline({ form, p }: HeadFrame, scarf: boolean): Point[] {
  const half: [number, number][] = scarf
    ? [
        [0.42, -0.62],
        [form.cheek * 0.84, -0.2],
        [form.cheek * 0.86, form.eyes + 0.05],
        [form.jaw * 0.9, 0.58],
        [form.chin * 0.95, 0.88],
      ]
    : [
        [0.5, -0.9],
        [form.cheek - 0.04, -0.42],
        [form.cheek, form.eyes],
        [form.jaw, 0.6],
        [form.chin, 0.92],
      ];
  const top = scarf ? -0.76 : -1;
  const bottom = scarf ? 0.96 : 1;
  return [
    p(0, top),
    ...half.map(([x, y]) => p(x, y)),
    p(0, bottom),
    ...half
      .slice()
      .reverse()
      .map(([x, y]) => p(-x, y)),
  ];
}

function ears({ form, p, radius, angle }: HeadFrame, fill: string): Shape[] {
  return [1, -1].flatMap((half) => {
    const [x, y] = [half * (form.cheek + 0.05), form.eyes + 0.12];
    return [
      { d: oval(p(x, y), radius * 0.13, radius * 0.2, angle + half * 8), fill, line: 'ink' },
      {
        d: smooth([p(x + half * 0.02, y - 0.1), p(x + half * 0.06, y), p(x - half * 0.01, y + 0.09)]),
        line: 'skin-shade',
        weight: 1.4,
      },
    ];
  });
}

/** Skin that changed is hatched as well as tinted: it must show without colour. */
function changedSkin({ form, p, angle }: HeadFrame, face: Face, radius: number): Shape[] {
  const gap = Math.max(3.2, radius * 0.085);
  const weight = radius > 45 ? 1.7 : 1.2;
  if (face === 'flushed') {
    const middle = (half: number) => p(half * (form.cheek * 0.62), form.eyes + 0.34);
    const glow = (half: number) => oval(middle(half), radius * 0.19, radius * 0.13, angle);
    const strokes = (half: number) =>
      [-0.09, 0, 0.09]
        .map((x) =>
          smooth([
            p(half * form.cheek * 0.62 + x + 0.03, form.eyes + 0.28),
            p(half * form.cheek * 0.62 + x - 0.03, form.eyes + 0.4),
          ]),
        )
        .join('');
    return [
      { d: glow(1) + glow(-1), fill: 'flush' },
      { d: strokes(1) + strokes(-1), line: 'ink', weight },
    ];
  }
  if (face === 'drained') {
    // hollow cheeks, high up under the eyes
    const hollow = (half: number) =>
      [
        [form.cheek - 0.07, form.eyes + 0.08],
        [form.cheek - 0.1, form.eyes + 0.32],
        [form.cheek * 0.62, form.eyes + 0.4],
        [form.cheek * 0.5, form.eyes + 0.26],
      ].map(([x, y]) => p(half * x!, y!));
    return [{ d: hatch(hollow(1), gap, 60) + hatch(hollow(-1), gap, 60), line: 'soft', weight }];
  }
  return [];
}

/** Shapes of a head centred on `center`; `radius` is half the face height; positive degrees turn clockwise. */
export function drawHead(center: Point, radius: number, angleDegrees: number, look: HeadLook): Shape[] {
  const head = frame(center, radius, angleDegrees, headForm(look.age));
  const fill = look.skin ?? skinOf(look.face);
  const scarf = look.hair === 'scarf';
  return [
    ...hairBehind(head, look.hair),
    ...(scarf ? [] : ears(head, fill)),
    { d: smooth(outline(head, scarf), true), fill, line: 'ink' },
    ...changedSkin(head, look.face, radius),
    ...features(head, look),
    ...hairInFront(head, look.hair),
  ];
}
