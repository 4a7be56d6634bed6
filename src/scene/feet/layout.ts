/**
 * Both bare feet seen from the foot end and a little from above, as points. Everything is measured for a pulled
 * left leg, which lies on our right, and mirrored at the end for a pulled right leg.
 */
import type { DrawnAge, SceneSpec } from '../spec.ts';
import { along } from './curves.ts';
import { SWELL } from '../parts/foot.ts';
import { otherSide } from '../parts/sides.ts';
import { at, between, mix, type Point, type View } from '../shapes.ts';

export interface Toe {
  base: Point;
  tip: Point;
  /** Cubics from the outer base round the tip to the inner base. */
  shape: Point[];
  /** The same line as plain points. */
  outline: Point[];
  nail: Point[];
  /** The white edge of the nail. */
  nailEdge: Point[];
  /** What shows of the toe pad below the nail. */
  pad: Point[];
  creases: Point[][];
  /** Light on tight skin. */
  shine: Point[];
  width: number;
}

export interface Foot {
  /** Sides of leg and foot, from the top of the picture down to the toes. */
  inner: Point[];
  outer: Point[];
  /** Big toe first. */
  toes: Toe[];
  /** Toes and forefoot: the field that can change colour, as one polygon. */
  front: Point[];
  innerAnkle: Point;
  outerAnkle: Point;
  ankleLines: Point[][];
  /** Fine lines of the instep; none on tight or very young skin. */
  tendons: Point[][];
  folds: Point[][];
  /** Shadow on the sheet. */
  shadow: Point[];
}

interface Build {
  length: number;
  width: number;
  toeLength: number;
  ankle: number;
  /** How much the young foot is padded. */
  chubby: number;
}

const BUILDS: Record<DrawnAge, Build> = {
  2: { length: 0.84, width: 1.04, toeLength: 0.8, ankle: 1.22, chubby: 1 },
  5: { length: 1, width: 1.05, toeLength: 1, ankle: 1.08, chubby: 0.35 },
  9: { length: 1.08, width: 1.02, toeLength: 1.08, ankle: 1, chubby: 0 },
  14: { length: 1.15, width: 1, toeLength: 1.16, ankle: 0.96, chubby: 0 },
};

/** Page line on which the longest toe of a resting foot ends. */
const TIP_LINE = 256;
/** Where the middle of each foot lies from the middle of the picture. */
export const APART = 119;
export const MIDDLE = 240;

// u runs outward from the middle of the foot, v from the ankle toward the toes
const INNER: readonly (readonly [number, number])[] = [
  [-36, -64],
  [-37, -26],
  [-45, -5],
  [-42, 14],
  [-43, 34],
  [-51, 56],
  [-65, 78],
  [-76, 92],
];
const OUTER: readonly (readonly [number, number])[] = [
  [36, -64],
  [36, -18],
  [44, 7],
  [41, 25],
  [47, 44],
  [61, 62],
  [74, 76],
];
/** Middle of the toe base, length, width and lean of each toe, big toe first. */
const TOES = [
  { u: -55.5, v: 100, length: 56, width: 46, fan: -1.5 },
  { u: -17.5, v: 107, length: 48, width: 30, fan: 0 },
  { u: 11.5, v: 104, length: 43, width: 28, fan: 0.8 },
  { u: 39, v: 97, length: 38, width: 27, fan: 1.8 },
  { u: 65.5, v: 86, length: 33, width: 26, fan: 3 },
] as const;
const REST_PITCH = 5;
const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
const radians = (degrees: number) => (degrees * Math.PI) / 180;

export interface FootPose {
  age: DrawnAge;
  swell: 0 | 1 | 2;
  pitch: number;
  roll: number;
  wiggle: number;
}

/** Page coordinates of a place on the foot that lies on our right. */
function placing({ age, pitch, roll }: FootPose) {
  const build = BUILDS[age];
  const ankleY = TIP_LINE - Math.max(...TOES.map((t) => t.v * build.length + t.length * build.toeLength));
  // a drooping foot shows more of its back, a foot pulled up less
  const stretch = 1 + (pitch - REST_PITCH) * 0.0042;
  const sine = Math.sin(radians(roll));
  const narrow = mix(1, Math.cos(radians(roll)), 0.55);
  return {
    build,
    ankleY,
    place: (u: number, v: number): Point => {
      const reach = clamp(v / 80, 0, 1.6);
      const low = clamp((v + 40) / 80, 0, 1);
      const x = MIDDLE + APART + u * mix(1, narrow, low) + sine * 26 * reach;
      const y = ankleY + (v > 0 ? v * stretch : v) + u * sine * 0.34 * clamp(reach, 0, 1);
      return at(clamp(x, 3, 477), clamp(y, 0, 357));
    },
  };
}

function layoutToe(index: number, pose: FootPose, place: (u: number, v: number) => Point, build: Build): Toe {
  const raw = TOES[index]!;
  const swelling = SWELL[pose.swell];
  const half = (raw.width * build.width * swelling * (1 + build.chubby * 0.02)) / 2;
  const length = raw.length * build.toeLength * (1 + (swelling - 1) * 0.12);
  const u0 = raw.u * build.width * swelling;
  const v0 = raw.v * build.length;
  // waving toes fan out; still toes lie limp and close together, and swollen ones have no room to
  const lean = radians(raw.fan * 2.4 * pose.wiggle * (1 - pose.swell / 2));
  const local = (s: number, w: number) => {
    const [on, off] = [s * length, w * half];
    return place(
      u0 + off * Math.cos(lean) + on * Math.sin(lean),
      v0 + on * Math.cos(lean) - off * Math.sin(lean),
    );
  };
  const big = index === 0;
  const full = 1 + (swelling - 1) * 0.42;
  const waist = 0.95 + build.chubby * 0.04 + (swelling - 1) * 0.15;
  const tipWidth = (big ? 0.66 : 0.6) + build.chubby * 0.05 + (swelling - 1) * 0.5;
  const profile = [
    [0, 1],
    [0.22, waist],
    [0.4, full],
    [0.62, full],
    [0.86, full],
    [1, tipWidth],
    [1, 0],
  ] as const;
  const shape = [
    ...profile.map(([s, w]) => local(s, w)),
    ...profile
      .slice()
      .reverse()
      .slice(1)
      .map(([s, w]) => local(s, -w)),
  ];
  const wide = big ? 0.6 : 0.58;
  const [root, edge] = big ? [0.5, 0.85] : [0.54, 0.86];
  const middle = (root + edge) / 2;
  const [up, down] = [middle - (middle - root) * 0.75, middle + (edge - middle) * 0.8];
  const nail = [
    [middle, wide],
    [up, wide],
    [root, wide * 0.8],
    [root, 0],
    [root, -wide * 0.8],
    [up, -wide],
    [middle, -wide],
    [down, -wide],
    [edge, -wide * 0.8],
    [edge, 0],
    [edge, wide * 0.8],
    [down, wide],
    [middle, wide],
  ].map(([s, w]) => local(s!, w!));
  const across = (s: number, w: number, sag: number) => [local(s, w), local(s + sag, 0), local(s, -w)];
  return {
    base: local(0, 0),
    tip: local(1, 0),
    shape,
    outline: along(shape),
    nail,
    nailEdge: across(edge - 0.062, wide * 0.7, 0.027),
    pad: across(0.925, 0.4, 0.025),
    creases: big
      ? [across(0.27, 0.42, 0.04), across(0.36, 0.5, 0.04)]
      : [across(0.22, 0.42, 0.04), across(0.35, 0.5, 0.04)],
    shine: [local(0.14, -0.5), local(0.3, -0.6), local(0.46, -0.55)],
    width: half * 2,
  };
}

/** A foot on our right in a pose: the pulled one, or, mirrored, the other. */
function layoutFoot(pose: FootPose): Foot {
  const { build, place } = placing(pose);
  const swelling = SWELL[pose.swell];
  const side = (line: readonly (readonly [number, number])[]) =>
    line.map(([u, v]) => {
      const puffed = mix(1, mix(1, swelling, 0.92), clamp((v - 20) / 60, 0, 1));
      const slim = mix(build.ankle, build.width, clamp((v - 10) / 50, 0, 1));
      return place(u * puffed * slim, v > 0 ? v * build.length : v);
    });
  const top = (u: number) => at(MIDDLE + APART + u * build.ankle, 0);
  const toes = TOES.map((_, index) => layoutToe(index, pose, place, build));
  const [big, little] = [toes[0]!, toes[4]!];
  const inner = [top(-43), ...side(INNER), big.outline.at(-1)!];
  const outer = [top(43), ...side(OUTER), little.outline[0]!];
  const L = build.length;
  const back = (u: number, v: number) => place(u * build.width * mix(1, swelling, 0.7), v * L);
  const toeRow = toes
    .slice()
    .reverse()
    .flatMap((toe) => toe.outline);
  const front = [
    ...outer.slice(-4, -1),
    ...toeRow,
    ...inner.slice(-4, -1).reverse(),
    back(-38, 70),
    back(-20, 60),
    back(0, 67),
    back(20, 55),
    back(38, 63),
  ];
  const bone = (u: number, v: number, deep: number, high: number) =>
    [-1, 0, 1].map((t) => place((u + deep * (1 - t * t)) * build.ankle, v + high * t));
  return {
    inner,
    outer,
    toes,
    front,
    innerAnkle: place(-33 * build.ankle, -3),
    outerAnkle: place(32 * build.ankle, 9),
    ankleLines: [bone(-36, -4, 7, 11), bone(36, 8, -7, 11)],
    tendons: [
      [place(-12, 34 * L), place(-23, 56 * L), place(-34, 76 * L)],
      [place(-2, 38 * L), place(-6, 58 * L), place(-12, 80 * L)],
      [place(8, 37 * L), place(13, 56 * L), place(17, 76 * L)],
      [place(17, 34 * L), place(27, 50 * L), place(37, 66 * L)],
    ],
    folds: [
      [place(-26 * build.ankle, 22), place(0, 30), place(24 * build.ankle, 27)],
      [place(-18 * build.ankle, 31), place(0, 37), place(14 * build.ankle, 36)],
    ],
    shadow: [
      little.shape[3]!,
      ...toes
        .slice()
        .reverse()
        .map((toe) => toe.tip),
      big.shape[9]!,
    ].map((p) => at(clamp(mix(MIDDLE + APART, p.x, 1.05), 3, 477), Math.min(357, p.y + 6))),
  };
}

/** Place on a side line at a page height. */
export function alongSide(line: readonly Point[], y: number): Point {
  const i = line.findIndex((p, k) => k > 0 && p.y >= y);
  if (i < 1) return line[line.length - 1]!;
  const [a, b] = [line[i - 1]!, line[i]!];
  return between(a, b, clamp((y - a.y) / (b.y - a.y || 1), 0, 1));
}

const PLATE = { half: 102, height: 17, restTop: 306 } as const;

/** Where both feet, plate and bandage lie as seen from the bed's end. */
export function layoutFeet(spec: SceneSpec, view: View) {
  const { age } = spec;
  const pulled = layoutFoot({
    age,
    swell: spec.swell,
    pitch: spec.footPitch,
    roll: spec.legRoll,
    wiggle: spec.wiggle,
  });
  const other = otherSide(layoutFoot({ age, swell: 0, pitch: REST_PITCH, roll: 0, wiggle: 0 }), view.width);
  const { ankleY } = placing({ age, swell: 0, pitch: REST_PITCH, roll: 0, wiggle: 0 });
  const lowestToe = Math.max(...pulled.toes.map((toe) => toe.tip.y));
  const plateTop = mix(lowestToe - 2, PLATE.restTop, spec.plateGap);
  const plate = {
    center: at(MIDDLE + APART, plateTop + PLATE.height / 2),
    half: PLATE.half,
    height: PLATE.height,
  };
  const penY = ankleY - 34;
  const geometry = {
    pulled,
    other,
    plate: { ...plate, tilt: spec.plateTilt * 0.65, top: plateTop },
    /** Where the leg bandage ended when the pen line was drawn, and where it ends now. */
    penY,
    edgeY: penY + spec.bandFoot * 58,
    ankleY,
    lowestToe,
    cordEnd: at(MIDDLE + APART, view.height - 2),
  };
  return { ...(spec.side === 'left' ? geometry : otherSide(geometry, view.width)), side: spec.side };
}
export type FeetGeometry = ReturnType<typeof layoutFeet>;
