/** The leg bandage in every close picture: turns, edges, folds, wet, stain, and the pen lines on the skin. */
import type { SceneSpec } from '../spec.ts';
import { at, hatch, mix, ring, smooth, type Point, type Shape } from '../shapes.ts';
import { turnEdges } from '../parts/turns.ts';
import { along, drop, hump, inked, joined, quiet, round, waves, type Profile } from './strokes.ts';

/** A bandage on a lying leg, `from` the knee side `to` the foot side of the page. */
export interface Wrap {
  from: number;
  to: number;
  /** Outlines of the bare leg. */
  upper: Profile;
  lower: Profile;
  /** Where staff drew the line; the edge slides, the line stays. Left out where the page cuts the bandage. */
  penFrom?: number;
  penTo?: number;
  /** Distance of two edges: half the width of the bandage. */
  pitch: number;
  /** Size of what happens to it: 1 on the bandage picture, smaller elsewhere. */
  size: number;
}

const LAYER = 6;
const BOW = -9;

/** A line across the leg, bowed as round things are. */
function across(
  upper: Profile,
  lower: Profile,
  x: number,
  lean = 0,
  part: readonly [number, number] = [0, 1],
): Point[] {
  return Array.from({ length: 4 }, (_, i) => {
    const t = mix(part[0], part[1], i / 3);
    const own = x + (t - 0.5) * lean;
    return at(own + BOW * Math.sin(Math.PI * t), mix(upper(own), lower(own), t));
  });
}

type Tied = Pick<SceneSpec, 'bandTight'>;
/** The bare leg pushed out beyond a tight edge; `way` is −1 where the skin lies toward the knee. */
export function bulging(
  line: Profile,
  edge: number,
  way: -1 | 1,
  out: -1 | 1,
  { bandTight }: Tied,
  size = 1,
): Profile {
  const swell = bandTight * 11 * size;
  return (x) =>
    line(x) +
    out *
      swell *
      (hump(x, edge + way * 33 * size, 24 * size) - 0.95 * hump(x, edge - way * 2 * size, 15 * size));
}

/** The turns of a bandage along the leg, with what has changed on them. */
export function drawWrap(spec: SceneSpec, wrap: Wrap): Shape[] {
  const { from, to, size, pitch } = wrap;
  const length = to - from;
  const folds = spec.bandWrinkle * 5 * size;
  const foldsEnd = from + Math.min(length * 0.8, 110 * size);
  const wave = (x: number) =>
    folds *
    Math.max(0, Math.sin(((x - from) / (26 * size)) * 2 * Math.PI)) *
    Math.min(1, Math.max(0, (foldsEnd - x) / (30 * size)));
  const upper: Profile = (x) => wrap.upper(x) - LAYER * size - wave(x);
  const lower: Profile = (x) => wrap.lower(x) + LAYER * size + wave(x);
  const step = folds ? 6.5 * size : 22;
  const top = smooth(along(upper, from, to, step), false, 0.85);
  const bottom = smooth(along(lower, to, from, step), false, 0.85);
  const [first, last] = [smooth(across(upper, lower, from).reverse()), smooth(across(upper, lower, to))];
  const [openFrom, openTo] = [wrap.penFrom === undefined, wrap.penTo === undefined];
  // an edge the page cuts off gets no line; the fill closes there by itself
  const outline = openFrom
    ? joined(top, last, bottom)
    : openTo
      ? joined(bottom, first, top)
      : joined(top, last, bottom, first) + 'Z';
  const shapes: Shape[] = [inked(outline, 'band')];

  // where the page cuts a bandage off, its turns go on beyond the page
  const turns = turnEdges(openFrom ? to - 12 * pitch : from, openTo ? from + 12 * pitch : to, pitch).filter(
    (x) => x > from + pitch * 0.5 && x < to - pitch * 0.4,
  );
  const lean = pitch * 0.7;
  // marks on the bandage stay inside its outline
  const [inUpper, inLower]: Profile[] = [(x) => upper(x) + 1.3, (x) => lower(x) - 1.3] as Profile[];
  const strips = turns.map((x) => {
    const [a, b] = [across(inUpper!, inLower!, x, lean), across(inUpper!, inLower!, x + pitch * 0.22, lean)];
    return joined(smooth(a), smooth(b.reverse())) + 'Z';
  });
  // the last turn alone has no edge to show
  if (turns.length > 0) {
    shapes.push({ d: strips.join(''), fill: 'band-shade' });
    shapes.push(quiet(turns.map((x) => smooth(across(inUpper!, inLower!, x, lean))).join(''), 'soft', 1.7));
  }
  if (spec.bandGap > 0) shapes.push(...gaps(spec, upper, lower, turns, lean, pitch, to));
  shapes.push(...happenings(spec, wrap, upper, lower));
  if (folds) shapes.push(...foldLines(spec, from, foldsEnd, size, upper, lower));
  if (spec.bandWet > 0) shapes.push(inked(outline));
  return shapes;
}

function gaps(
  spec: SceneSpec,
  upper: Profile,
  lower: Profile,
  turns: number[],
  lean: number,
  pitch: number,
  to: number,
): Shape[] {
  const middle = Math.floor(turns.length / 2);
  const places = spec.bandGap === 1 ? [middle] : [Math.max(0, middle - 1), middle + 1];
  const wide = Math.min(
    pitch * (spec.bandGap === 1 ? 0.5 : 0.85),
    pitch * 0.25 + to - turns[turns.length - 1]!,
  );
  return places.flatMap((i) => {
    const x = turns[Math.min(i, turns.length - 1)];
    if (x === undefined) return [];
    const [a, b] = [across(upper, lower, x, lean, [0.14, 0.86]), across(upper, lower, x, lean, [0.14, 0.86])];
    const lens = [
      ...a,
      ...b
        .map((p, k) => at(p.x + wide * Math.sin((Math.PI * k) / 3), p.y))
        .reverse()
        .slice(1, -1),
    ];
    return [inked(smooth(lens, true, 0.9), 'skin', 2)];
  });
}

function foldLines(
  spec: SceneSpec,
  from: number,
  end: number,
  size: number,
  upper: Profile,
  lower: Profile,
): Shape[] {
  const creases: string[] = [];
  const gap = 26 * size;
  for (let x = from + gap * 0.95, i = 0; x < end - gap * 0.3; x += gap, i++) {
    const part = [
      [0, 0.62],
      [0.34, 1],
      [0, 0.45],
      [0.5, 1],
    ][i % 4] as [number, number];
    const bend = across(upper, lower, Math.max(x, from + 24 * size), i % 2 ? 10 * size : -8 * size, part);
    creases.push(smooth(bend.map((p, k) => at(Math.max(1, p.x + (k % 2 ? 3.5 : -3.5) * size), p.y))));
    if (spec.bandWrinkle === 2) {
      const [lo, hi] = part;
      creases.push(
        smooth(
          across(upper, lower, Math.max(x - gap * 0.4, from + 24 * size), 6 * size, [
            mix(lo, hi, 0.3),
            mix(lo, hi, 0.8),
          ]),
        ),
      );
    }
  }
  return [inked(creases.join(''), undefined, 2.2)];
}

/** What the bandage itself went through: wet, stained. */
function happenings(spec: SceneSpec, { from, to, size }: Wrap, upper: Profile, lower: Profile): Shape[] {
  const shapes: Shape[] = [];
  const length = to - from;
  const c = wrapSpot({ from, to }, upper, lower);
  if (spec.bandWet > 0) {
    const reach = mix(0.16, 0.38, spec.bandWet) * length;
    const x = from + length * 0.5;
    const field = soaked(lower, upper, x, reach, 0.22 + 0.44 * spec.bandWet);
    const halo = soaked(lower, upper, x, reach * 1.1, 0.3 + 0.48 * spec.bandWet);
    shapes.push({ d: smooth(halo, true, 0.9), fill: 'tear' }, { d: smooth(field, true, 0.9), fill: 'wet' });
    shapes.push(quiet(hatch(field, 11 * Math.max(0.7, size), 62), 'ink', 1.3));
    const count = 1 + Math.round(spec.bandWet * 2);
    const drops = Array.from({ length: count }, (_, i) => {
      const t = (i + 1) / (count + 1);
      return drop(
        at(x + (t * 2 - 1) * reach * 0.72, mix(lower(x), upper(x), i % 2 ? 0.2 : 0.36 * spec.bandWet + 0.1)),
        7 * size,
      );
    });
    const hang = at(x + reach * 0.2, lower(x + reach * 0.2));
    const drip = smooth(
      [
        at(hang.x - 8 * size, hang.y - 3),
        at(hang.x - 3 * size, hang.y + 6 * size),
        at(hang.x, hang.y + 15 * size),
        at(hang.x + 3 * size, hang.y + 6 * size),
        at(hang.x + 8 * size, hang.y - 3),
      ],
      true,
    );
    shapes.push(inked(drops.join(''), 'white', 1.6), inked(drip, 'wet', 1.8));
  }
  if (spec.bandStain !== 'none') {
    const r = Math.min(34 * size, length * 0.3);
    const rim = ring(c, r * 1.25, r, 12, 11).map((p, i) =>
      at(c.x + (p.x - c.x) * [1, 0.84, 1.1][i % 3]!, c.y + (p.y - c.y) * [1.06, 0.9, 1][i % 3]!),
    );
    const inner = rim.map((p) => at(mix(c.x, p.x, 0.62), mix(c.y, p.y, 0.62)));
    const token = spec.bandStain === 'red' ? 'red' : 'brown';
    shapes.push(
      inked(smooth(rim, true), token, 1.8),
      quiet(hatch(rim, 6 * Math.max(0.8, size), spec.bandStain === 'red' ? 45 : -30), 'ink', 1.2),
    );
    shapes.push(quiet(smooth(inner, true), 'ink', 1.4));
    shapes.push(
      inked(
        round(at(Math.min(c.x + r * 1.75, to - 8 * size), c.y + r * 0.6), r * 0.19, r * 0.15),
        token,
        1.4,
      ),
    );
  }
  return shapes;
}

/** Heights of a wet field's uneven rim, from the knee side to the foot side. */
const SOAKED = [0, 0.62, 0.94, 0.84, 1, 0.9, 1.04, 0.8, 0.66, 0] as const;
/** A field that has soaked up into the cloth from its underside. */
function soaked(lower: Profile, upper: Profile, middle: number, reach: number, high: number): Point[] {
  const last = SOAKED.length - 1;
  const rim = SOAKED.map((h, i) => {
    // both ends stand nearly upright
    const t = i === 0 || i === last ? i / last : mix(0.05, 0.95, (i - 1) / (last - 2));
    const x = middle + (t * 2 - 1) * reach;
    return at(x, mix(lower(x), upper(x), h * high));
  });
  return [...rim, ...along(lower, middle + reach, middle - reach, Math.min(64, reach * 0.6)).slice(1, -1)];
}

/** The place on a bandage where spots, rays and dots sit. */
export const wrapSpot = ({ from, to }: Pick<Wrap, 'from' | 'to'>, upper: Profile, lower: Profile): Point => {
  const x = mix(from, to, 0.46);
  return at(x, mix(upper(x), lower(x), 0.46));
};

/** Wavy lines over a bandage that smells. */
export const smellLines = (foot: Point, size: number): Shape =>
  inked(waves(foot, 78 * size, 7 * size, 3, 26 * size), undefined, 2.6);

/** Pen lines on the bare skin, and what a tight edge does to it. Drawn before the bandage. */
export function drawSkinAtEdges(spec: SceneSpec, wrap: Wrap): Shape[] {
  const shapes: Shape[] = [];
  for (const [pen, edge, way] of [
    [wrap.penFrom, wrap.from, -1],
    [wrap.penTo, wrap.to, 1],
  ] as const) {
    if (pen === undefined) continue;
    const x = pen + way * 8 * wrap.size;
    const d = smooth(
      across(
        (v) => wrap.upper(v) + 2,
        (v) => wrap.lower(v) - 2,
        x,
      ),
    );
    const weight = 4.2 * Math.max(0.8, wrap.size);
    // a light rim keeps the line readable on dark skin
    shapes.push({ d, line: 'sole', weight: weight + 4 }, { d, line: 'pen', weight });
    if (spec.bandTight > 0) shapes.push(...dents(spec, wrap, edge, way));
  }
  return shapes;
}

/** A tight edge cuts a deep furrow, and the skin beside it stands up smooth and shiny. */
function dents(spec: SceneSpec, { upper, lower, size }: Wrap, edge: number, way: -1 | 1): Shape[] {
  const furrow = [0, 7 * size * spec.bandTight].map((off) =>
    across(
      (v) => upper(v) + 2,
      (v) => lower(v) - 2,
      edge + way * (6 * size + off),
    ),
  );
  const gloss = (t: number, from: number, to: number) =>
    smooth(
      [0, 0.5, 1].map((k) => {
        const x = edge + way * mix(from, to, k) * size;
        return at(x, mix(upper(x), lower(x), t));
      }),
    );
  return [
    { d: joined(smooth(furrow[0]!), smooth([...furrow[1]!].reverse())) + 'Z', fill: 'skin-shade' },
    inked(smooth(furrow[0]!), undefined, 1.6 + 1.2 * spec.bandTight),
    {
      d: gloss(0.1, 20, 46) + gloss(0.2, 24, 38) + (spec.bandTight === 2 ? gloss(0.8, 24, 40) : ''),
      line: 'white',
      weight: 4.4 * size,
    },
  ];
}
