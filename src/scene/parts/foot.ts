/**
 * A bare foot seen from its inner side, leg lying, toes to the ceiling: big toe in front, the four others
 * stepping back behind it, heel below. Built for a foot that points to the right of the page.
 */
import type { DrawnAge, SceneSpec } from '../spec.ts';
import { at, hatch, INK, smooth, turn, type Point, type Shape } from '../shapes.ts';

export interface FootLook {
  /** Middle of the ankle joint. */
  ankle: Point;
  /** Scene units per hundredth of a foot length. */
  scale: number;
  look: Pick<SceneSpec, 'age' | 'footPitch' | 'legRoll' | 'swell' | 'toneShift'>;
  /** The height of a bed the heel may not sink through; the heel flattens there. */
  floor?: number;
}

interface Build {
  /** Fullness of leg and foot against a nine year old's. */
  full: number;
  long: number;
  /** Depth of the arch: small children stand on flat feet. */
  arch: number;
}
export const FOOT_BUILD: Record<DrawnAge, Build> = {
  2: { full: 1.2, long: 0.9, arch: 0.25 },
  5: { full: 1.09, long: 0.96, arch: 0.6 },
  9: { full: 1, long: 1, arch: 0.9 },
  14: { full: 0.93, long: 1.04, arch: 1.1 },
};

/** How far front and back of the leg stand from its axis just above the ankle, in foot units. */
export const SHANK = { front: 15, back: 19 } as const;

const SOLE = -32;
/** How much wider toes are, by `swell`. */
export const SWELL = [1, 1.15, 1.3] as const;
type Pair = readonly [forward: number, up: number];

/** Lines of the foot in scene units. Not: the leg above the ankle, which belongs to the picture it is in. */
export function sideFoot({ ankle, scale, look, floor = Infinity }: FootLook) {
  const { full, long, arch } = FOOT_BUILD[look.age];
  const thick = SWELL[look.swell];
  const turned = Math.cos((look.legRoll * Math.PI) / 180);
  /** Foot units (forward from the ankle, up the leg from the ankle) to the page. */
  const place = (forward: number, up: number): Point => {
    const bendsWithFoot = Math.max(0, Math.min(1, (20 - up) / 18));
    const u = forward * turned * (forward > 20 ? 1 + ((forward - 20) / forward) * (long - 1) * 1.4 : 1);
    const p = turn(at(ankle.x - up * scale, ankle.y - u * scale), ankle, look.footPitch * bendsWithFoot);
    return at(p.x, p.y > floor ? floor + (p.y - floor) * 0.12 : p.y);
  };
  const over = (up: number) => SOLE + (up - SOLE) * (0.55 + 0.45 * full);
  const toe = (up: number) => -25 + (up + 25) * thick * (0.5 + 0.5 * full);
  const hollow = (up: number) => SOLE + (up - SOLE) * arch;
  const puff = (thick - 1) * 9;
  const back: Pair[] = [
    [-25, -29.8],
    [-29, -23],
    [-28.6, -14],
    [-24.5, -3],
    [-20.5 * full, 9],
    [-SHANK.back * full, 24],
  ];
  const outline: Pair[] = [
    [SHANK.front * full, 24],
    [16.5 * full, 12],
    [24, over(3)],
    [36, over(-5.5) + puff * 0.4],
    [48, over(-12) + puff * 0.8],
    [57, over(-16.2) + puff],
    [63.5, toe(-18.6)],
    [70, toe(-17.2)],
    [75.6, toe(-19.4)],
    [78.3, toe(-24.6)],
    [76, toe(-30)],
    [69, toe(-32)],
    [62.5, toe(-29.4)],
    [56, -31.8 - puff * 0.3],
    [48, -32.2],
    [38, hollow(-28.4)],
    [23, hollow(-24)],
    [8, hollow(-26)],
    [-4, -30.6],
    [-15, -32.2],
    ...back,
  ];
  const lay = (pairs: readonly Pair[]) => pairs.map(([u, v]) => place(u, v));

  const fan = 2.5 * (1 - look.legRoll / 60);
  /** The four smaller toes, the little one first because it lies farthest back. */
  const small = [4, 3, 2, 1].map((i) => {
    const [tip, r] = [[0, 75.5, 72.5, 69, 65][i]!, [0, 5.7, 5.3, 5, 4.8][i]! * thick * (0.5 + 0.5 * full)];
    const v = -22 + i * fan;
    const shape: Pair[] = [
      [tip - 30, v + r * 0.8],
      [tip - 18, v + r * 0.95],
      [tip - 7, v + r * 0.9],
      [tip - 1.6, v + r * 0.66],
      [tip, v - r * 0.1],
      [tip - 2, v - r * 0.8],
      [tip - 12, v - r],
      [tip - 30, v - r],
    ];
    const nail: Pair[] = [
      [tip - 6.4, v + r * 0.78],
      [tip - 2.6, v + r * 0.78],
      [tip - 0.6, v + r * 0.2],
      [tip - 2.2, v + r * 0.3],
      [tip - 5.4, v + r * 0.42],
    ];
    return { shape: lay(shape), nail: lay(nail) };
  });
  const far = fan * 4 - 22 + 4.8 * thick * (0.5 + 0.5 * full);
  return {
    outline: lay(outline),
    /** The far side of the back of the foot, from ankle to little toe. */
    instep: lay([
      [16.5 * full, 12],
      [24, over(3) + fan * 0.4],
      [36, over(-5.5) + fan * 1.2],
      [45, Math.max(over(-10.5) + fan * 2, far)],
      [52, far - 0.6],
      [57, far - 5],
      [54, -18],
      [20, -14],
    ]),
    small,
    nail: lay([
      [69.8, toe(-17.6)],
      [74.6, toe(-18.3)],
      [77.9, toe(-22.6)],
      [76.3, toe(-22.4)],
      [73, toe(-20.6)],
      [69.6, toe(-20)],
    ]),
    bigToe: lay([[60, toe(-19)], ...outline.slice(6, 13), [60, toe(-25)]]),
    toeFold: lay([
      [63.5, toe(-19.4)],
      [62, toe(-23)],
      [62.3, toe(-26)],
    ]),
    knuckles: lay([
      [67.4, toe(-19.2)],
      [66.9, toe(-21)],
      [67.3, toe(-22.6)],
    ]),
    ankleBone: lay([
      [12, 5],
      [10.5, -3],
      [4.5, -6.2],
      [-1.6, -3.4],
      [-2.6, 3],
    ]),
    ankleMiddle: place(5, 0),
    archLine: lay([
      [10, hollow(-25) + 5],
      [22, hollow(-23) + 5.5],
      [35, hollow(-26) + 5],
    ]),
    heelFold: lay([
      [-24, -9],
      [-22.4, -15],
      [-23.4, -20],
    ]),
    heel: place(-24, -22),
    toeTip: place(78.3, toe(-24.6)),
    toeRoot: place(40, -20),
    /** Where a grown-up's hand would feel how warm the toes are. */
    handRest: place(66, -6),
  };
}
export type SideFoot = ReturnType<typeof sideFoot>;

/** Lines that say "another colour" without colour: each kind of change has its own. */
export function shiftHatch(field: readonly Point[], shift: SceneSpec['toneShift'], gap = 5): string {
  if (shift === 'none') return '';
  if (shift === 'paler') return hatch(field, gap * 1.6, -20);
  if (shift === 'blue-grey') return hatch(field, gap, 40);
  if (shift === 'dusky-dark') return hatch(field, gap, 40) + hatch(field, gap * 1.3, -50);
  return hatch(field, gap * 1.2, 80);
}

/** How lines and fields are put on the page; a picture that cuts the foot off brings its own. */
export interface Pen {
  /** A field with ink along its points; from the last to the first it closes without a line. */
  open: (points: readonly Point[], fill: string, weight?: number) => Shape[];
  line: (points: readonly Point[]) => string;
  field: (points: readonly Point[], ease?: number) => string;
  kept: (points: readonly Point[]) => readonly Point[];
}
const SOFT_PEN: Pen = {
  open: (points, fill, weight = INK) => [{ d: smooth(points), fill, line: 'ink', weight }],
  line: (points) => smooth(points),
  field: (points, ease) => smooth(points, true, ease),
  kept: (points) => points,
};

/** The foot with the leg it hangs on: `front` and `back` run from the body to the ankle. */
export function drawSideFoot(
  foot: SideFoot,
  front: readonly Point[],
  back: readonly Point[],
  { swell, toneShift }: Pick<SceneSpec, 'swell' | 'toneShift'>,
  pen: Pen = SOFT_PEN,
): Shape[] {
  const whole = toneShift !== 'none' && toneShift !== 'blotched';
  const all = [...front, ...foot.outline, ...[...back].reverse()];
  const shapes: Shape[] = pen.open(foot.instep, 'skin');
  for (const { shape } of foot.small) shapes.push(...pen.open(shape, whole ? 'shift' : 'skin', 2));
  const nails = foot.small.map(({ nail }) => pen.field(nail, 0.6)).join('');
  shapes.push({ d: nails, fill: 'nail', line: 'ink', weight: 1.2 }, ...pen.open(all, 'skin'));
  if (whole)
    shapes.push(
      { d: pen.field(foot.bigToe, 0.8), fill: 'shift' },
      { d: pen.line(foot.bigToe.slice(1, -1)), line: 'ink' },
    );
  if (toneShift !== 'none')
    shapes.push({ d: shiftHatch(pen.kept(foot.bigToe), toneShift), line: 'ink', weight: 1.2 });
  if (toneShift === 'blotched') {
    const blots = [...foot.small.map((t) => t.shape), foot.bigToe].map((b) => pen.field(blot(b)));
    shapes.push({ d: blots.join(''), fill: 'shift', line: 'ink', weight: 1 });
  }
  shapes.push({ d: pen.field(foot.nail, 0.6), fill: 'nail', line: 'ink', weight: 1.4 });
  const folds = [foot.archLine, foot.heelFold];
  if (swell < 2) folds.push(foot.toeFold);
  if (swell < 1) folds.push(foot.knuckles);
  shapes.push({ d: folds.map((f) => pen.line(f)).join(''), line: 'skin-shade', weight: 2 });
  shapes.push({ d: pen.line(foot.ankleBone), line: 'ink', weight: 1.8 });
  return shapes.filter((s) => s.d !== '');
}

/** A patch in the middle of a field, a third of its size. */
function blot(field: readonly Point[]): Point[] {
  const c = at(
    field.reduce((s, p) => s + p.x, 0) / field.length,
    field.reduce((s, p) => s + p.y, 0) / field.length,
  );
  return field.map((p, i) =>
    at(c.x + (p.x - c.x) * (i % 2 ? 0.5 : 0.68), c.y + (p.y - c.y) * (i % 2 ? 0.5 : 0.68)),
  );
}
