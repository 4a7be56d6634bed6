/** Who is in the pictures of topics: the child, the family in the family's tone, and staff in the plain tunic. */
import { at, plus, smooth, turn, type Shape } from '../shapes.ts';
import type { DrawnAge } from '../spec.ts';
import { drawHand, type HandPose } from '../parts/hand.ts';
import { points } from '../parts/points.ts';
import { drawProfile, type ProfileLook } from '../parts/person.ts';
import { arm, type Reach } from '../play/arms.ts';
import { dots } from '../play/brush.ts';
import { childHead, type ChildLook } from '../play/child.ts';
import { ink } from './page.ts';

export type Who = 'child' | 'sibling' | 'grown' | 'other' | 'kin' | 'staff' | 'doctor';

const CLOTH: Record<Who, string> = {
  child: 'gown',
  sibling: 'band',
  grown: 'bag',
  other: 'scarf',
  kin: 'bag',
  staff: 'wet',
  doctor: 'wet',
};
const AGE: Record<Who, DrawnAge> = {
  child: 5,
  sibling: 5,
  grown: 14,
  other: 14,
  kin: 14,
  staff: 14,
  doctor: 14,
};

/** Staff have a tone of their own, a family has the child's. */
const skinFor = (who: Who) => (who === 'staff' || who === 'doctor' ? 'hand' : 'skin');
/** Cloth and skin of somebody: the child's own tone for the family, one tone for staff. */
export const coloursOf = (who: Who) => ({ cloth: CLOTH[who], skin: skinFor(who) });

export type HeadLook = Omit<ChildLook, 'left' | 'right'>;

/** Hair of a head so small that its strands would run together. */
const CAP = [
  -0.94, 0.04, -1.02, -0.46, -0.62, -1, 0, -1.13, 0.62, -1, 1.02, -0.46, 0.94, 0.04, 0.66, -0.4, 0.1, -0.5,
  -0.66, -0.36,
];
const SMALL_HEAD = 28;

/** A head from the front; half its height is `r`. A tunic goes with a knot of hair, a grown-up has longer hair. */
export function head(who: Who, look: HeadLook): Shape[] {
  const { x, y, r, tilt = 0 } = look;
  const place = (flat: readonly number[]) => points(flat, at(x, y), r).map((p) => turn(p, at(x, y), tilt));
  const drawn = childHead(look, AGE[who]);
  const own = (r > SMALL_HEAD ? drawn : drawn.slice(r > 16 ? 0 : 2, -1)).map((s) => ({
    ...s,
    ...(s.fill === 'skin' ? { fill: skinFor(who) } : {}),
    ...(s.line === 'skin' ? { line: skinFor(who) } : {}),
    ...(s.weight === 2 ? { weight: 2.6 } : {}),
  }));
  if (r <= SMALL_HEAD) own.push({ d: smooth(place(CAP), true, 0.9), fill: 'hair', line: 'ink', weight: 2.6 });
  if (who === 'staff') {
    const knot = place([0, -1.22]);
    return [dots(knot, r * 0.8 + 2.6), dots(knot, r * 0.8 - 2.6, 'hair'), ...own];
  }
  if (who === 'grown') {
    const long = [-0.7, -0.6, -1.02, 0.2, -0.9, 0.95, 0, 0.8, 0.9, 0.95, 1.02, 0.2, 0.7, -0.6];
    return [{ d: smooth(place(long), true), fill: 'hair', line: 'ink', weight: 2.6 }, ...own];
  }
  return own;
}

/** A head from behind: hair and two ears. */
export function headBehind(who: Who, x: number, y: number, r: number): Shape[] {
  const ears = [at(x - r * 0.86, y + r * 0.16), at(x + r * 0.86, y + r * 0.16)];
  const knot = [at(x, y - r * 1.2)];
  return [
    ...(who === 'staff' ? [dots(knot, r * 0.8 + 2.6), dots(knot, r * 0.8 - 2.6, 'hair')] : []),
    dots(ears, r * 0.36 + 2),
    dots(ears, r * 0.36 - 3, skinFor(who)),
    ink.ring([x, y, r * 0.86, r], 'hair', 2.6),
  ];
}

/** A head from the side. */
export const profile = (
  who: Who,
  x: number,
  y: number,
  r: number,
  look: Omit<ProfileLook, 'skin' | 'hair'>,
) => drawProfile(at(x, y), r, { ...look, hair: who === 'staff' ? 'bun' : 'short', skin: skinFor(who) });

/** Where a hand goes, and how wide the arm is. */
export type ArmTo = Reach;

export interface Figure {
  who: Who;
  /** Middle of the head and half its height. */
  x: number;
  y: number;
  r: number;
  /** Where the clothes end; the figure goes on behind something. */
  hem: number;
  /** Hands at the left and at the right of the page; none where left out. */
  left?: ArmTo | undefined;
  right?: ArmTo | undefined;
  eyes?: ChildLook['eyes'];
  mouth?: ChildLook['mouth'];
  tilt?: number;
  /** Seen from behind. */
  behind?: true;
  /** The head from the side, looking to larger or smaller x. */
  facing?: 1 | -1;
  bow?: number;
  speaking?: true;
  /** With trousers and shoes down to here. */
  feet?: number;
}

/** Somebody upright: what is behind the arms, and the arms, which may reach over other things. */
export function figure(f: Figure): { body: Shape[]; arms: Shape[]; all: Shape[] } {
  const { who, x, y, r, hem } = f;
  const neck = y + r * 0.9;
  const w = r * (who === 'child' || who === 'sibling' ? 1.2 : 1.42);
  const wide = w * (who === 'sibling' ? 1.15 : 1.08);
  const cloth = CLOTH[who];
  const body: Shape[] = [];
  if (f.feet !== undefined) {
    const [a, b] = [x - w * 0.5, x + w * 0.5];
    body.push(
      ink.flats(
        [a, b].map((m) => [
          m - w * 0.4,
          hem - 6,
          m + w * 0.4,
          hem - 6,
          m + w * 0.3,
          f.feet! - 5,
          m - w * 0.3,
          f.feet! - 5,
        ]),
        who === 'staff' || who === 'doctor' ? 'wet' : 'soft',
        2.6,
      ),
      ink.ring([a, f.feet - 4, w * 0.46, 6, b, f.feet - 4, w * 0.46, 6], 'ink', 2),
    );
  }
  body.push(
    ink.soft(
      [
        x - r * 0.34,
        neck - 2,
        x - w * 0.8,
        neck + r * 0.34,
        x - w,
        neck + r * 0.95,
        x - wide,
        hem,
        x + wide,
        hem,
        x + w,
        neck + r * 0.95,
        x + w * 0.8,
        neck + r * 0.34,
        x + r * 0.34,
        neck - 2,
      ],
      cloth,
      2.6,
      0.5,
    ),
  );
  if (f.facing !== undefined)
    body.push(
      ...profile(who, x, y, r, {
        facing: f.facing,
        mouth: f.speaking ? 'speaking' : 'shut',
        bow: f.bow ?? 0,
      }),
    );
  else if (f.behind) body.push(...headBehind(who, x, y, r));
  else {
    // a tunic is crossed at the neck
    if (who === 'staff' || who === 'doctor')
      body.push(
        ink.rule(
          [
            [x - r * 0.34, neck, x, neck + r * 0.55, x + r * 0.34, neck],
            [x, neck + r * 0.55, x, Math.min(hem, neck + r * 2)],
          ],
          2,
        ),
      );
    body.push(...head(who, f));
  }
  const shoulder = (side: 1 | -1) => at(x + side * w * 0.74, neck + r * 0.62);
  const width = r * 0.42 + 2;
  const arms = [
    ...(f.left ? arm(shoulder(-1), f.left, -1, width, coloursOf(who)) : []),
    ...(f.right ? arm(shoulder(1), f.right, 1, width, coloursOf(who)) : []),
  ];
  return { body, arms, all: [...body, ...arms] };
}

export interface Lying extends ChildLook {
  /** Edges of the bed, and where the blanket begins. */
  bed: readonly [left: number, right: number];
  hem: number;
  /** Bare arms' hands stay under the blanket. */
  tucked?: true;
}

/** The child lying on the back, seen from above the bed's end: pillow, head, gown, blanket; then the arms. */
export function lying(c: Lying): { behind: Shape[]; arms: Shape[] } {
  const { x, y, r, hem } = c;
  const [left, right] = c.bed;
  const neck = y + r * 0.92;
  const w = r * 1.3;
  const mid = (t: number) => left + (right - left) * t;
  const shoulder = (side: 1 | -1) => at(x + side * w * 0.74, neck + r * 0.5);
  const rest = (side: 1 | -1): Reach => [x + side * w * 0.9, hem + r * 0.1, side === 1 ? 112 : 68];
  const width = r * 0.38 + 3;
  const child = coloursOf('child');
  return {
    behind: [
      ink.flat([left - 4, hem, left - 4, y - r * 1.5, right + 4, y - r * 1.5, right + 4, hem], 'frame', 2.6),
      ink.flat([left, 300, left, y - r * 0.75, right, y - r * 0.75, right, 300], 'sheet', 2.2),
      ink.soft(
        points(
          [-1.95, -0.8, -1.5, -1.28, 1.5, -1.28, 1.95, -0.8, 1.8, 0.85, 1.4, 1.15, -1.4, 1.15, -1.8, 0.85],
          at(x, y),
          r,
        ).flatMap((p) => [p.x, p.y]),
        'pillow',
        2.6,
        0.7,
      ),
      ink.soft(
        [
          x - r * 0.3,
          neck - 3,
          x - w * 0.85,
          neck + r * 0.15,
          x - w,
          neck + r * 0.8,
          x - w,
          hem + r * 0.4,
          x + w,
          hem + r * 0.4,
          x + w,
          neck + r * 0.8,
          x + w * 0.85,
          neck + r * 0.15,
          x + r * 0.3,
          neck - 3,
          x,
          neck + r * 0.3,
        ],
        'gown',
        2.6,
        0.55,
      ),
      ...head('child', c),
      ink.soft(
        [
          left - 3,
          hem + 5,
          mid(0.25),
          hem - 2,
          mid(0.75),
          hem - 2,
          right + 3,
          hem + 5,
          right + 3,
          300,
          left - 3,
          300,
        ],
        'blanket',
        2.6,
        0.4,
      ),
      ink.strokes([[left - 1, hem + 19, mid(0.25), hem + 12, mid(0.75), hem + 12, right + 1, hem + 19]], 1.8),
    ],
    arms: c.tucked
      ? []
      : [
          ...arm(shoulder(-1), c.left ?? rest(-1), -1, width, child),
          ...arm(shoulder(1), c.right ?? rest(1), 1, width, child),
        ],
  };
}

/** A hand seen close, its arm and sleeve coming from `from`. */
export function handFrom(
  who: Who,
  pose: HandPose,
  [x, y, length, angle]: readonly [number, number, number, number],
  from: readonly [number, number],
  thumb: 1 | -1 = 1,
): Shape[] {
  const { cloth, skin } = coloursOf(who);
  const wrist = at(x, y);
  const back = plus(wrist, turn(at(-length * 0.45, 0), at(0, 0), angle));
  const line = smooth([at(from[0], from[1]), at((back.x + from[0]) / 2, (back.y + from[1]) / 2), back]);
  const bare = smooth([back, plus(wrist, turn(at(3, 0), at(0, 0), angle))]);
  const w = length * 0.52;
  return [
    { d: bare, line: 'ink', weight: w + 2.6 },
    { d: bare, line: skin, weight: w - 2.6 },
    ...drawHand(wrist, length, angle, pose, thumb, skin).map((s, i): Shape => ({
      ...s,
      weight: i === 0 ? 2.6 : 1.6,
    })),
    { d: line, line: 'ink', weight: w * 1.35 + 2.6 },
    { d: line, line: cloth, weight: w * 1.35 - 2.6 },
  ];
}
