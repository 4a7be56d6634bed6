/** Things on and above the bedside table, and the plain steps of soreness. */
import type { SceneSpec } from '../spec.ts';
import { at, hatch, oval, plus, ring, smooth, straight, type Point, type Shape } from '../shapes.ts';
import { arc, mirrored, points } from '../parts/points.ts';
import type { ChildGeometry } from './child-layout.ts';

const fine = 1.4;

/**
 * Clocks run clockwise and steps of soreness rise the same way whichever leg is in traction: what the whole
 * picture will mirror is mirrored here first about its own middle. A mirrored rise would read as a fall.
 */
const neverMirrored = (spec: SceneSpec, middle: number, shapes: Shape[]): Shape[] =>
  spec.side === 'left' ? shapes : mirrored(shapes, 2 * middle);

/** A wall clock; the swept field shows the time that has gone by, ending at the hand that moved. */
function clock(spec: SceneSpec, center: Point, radius: number, sweep: number): Shape[] {
  const on = (degrees: number, k: number) => {
    const a = ((degrees - 90) * Math.PI) / 180;
    return at(center.x + Math.cos(a) * radius * k, center.y + Math.sin(a) * radius * k);
  };
  const steps = Math.max(2, Math.ceil(sweep / 20));
  const wedge = [center, ...Array.from({ length: steps + 1 }, (_, i) => on((sweep * i) / steps, 0.78))];
  const tip = on(sweep, 0.78);
  return neverMirrored(spec, center.x, [
    { d: oval(center, radius, radius), fill: 'sheet', line: 'ink', weight: 3.4 },
    { d: straight(wedge, true), fill: 'band-shade', line: 'ink', weight: fine },
    { d: hatch(wedge, 5.5, 45), line: 'ink', weight: fine },
    {
      d: [0, 30, 60, 90, 120, 150, 180, 210, 240, 270, 300, 330]
        .map((d) => straight([on(d, 0.86), on(d, 0.94)]))
        .join(''),
      line: 'ink',
      weight: 2,
    },
    { d: straight([center, on(0, 0.76)]), line: 'ink', weight: 2.4, dash: '3 5' },
    { d: straight([center, tip]), line: 'ink', weight: 5 },
    { d: oval(center, 4, 4), fill: 'ink' },
  ]);
}

/** A vessel seen from the front, a little from above: opening, wall, and what is in it up to `level` (0–1). */
function tumbler(base: Point, width: number, height: number, level: number): Shape[] {
  const [top, low] = [width / 2, width * 0.38];
  const half = (t: number) => low + (top - low) * t;
  const y = (t: number) => base.y - 8 - (height - 8) * t;
  const rim = at(base.x, y(1));
  const water =
    level > 0
      ? [
          at(base.x - half(level) + 3, y(level)),
          at(base.x - low + 3, base.y - 6),
          at(base.x, base.y),
          at(base.x + low - 3, base.y - 6),
          at(base.x + half(level) - 3, y(level)),
        ]
      : [];
  return [
    {
      d:
        smooth(
          [
            at(base.x - top, rim.y),
            at(base.x - low, base.y - 7),
            at(base.x, base.y),
            at(base.x + low, base.y - 7),
            at(base.x + top, rim.y),
          ],
          false,
          0.45,
        ) + 'Z',
      fill: 'white',
      line: 'ink',
      weight: 3,
    },
    ...(level > 0
      ? [
          { d: smooth(water, true, 0.35), fill: 'wet' },
          { d: oval(at(base.x, y(level)), half(level) - 3, 7), fill: 'tear', line: 'ink', weight: fine },
        ]
      : []),
  ];
}

function rimOf(base: Point, width: number, height: number): Shape {
  return { d: oval(at(base.x, base.y - height), width / 2, width * 0.1), line: 'ink', weight: 3 };
}

function cup(base: Point, level: number, untouched: boolean): Shape[] {
  const [width, height] = [92, 112];
  const straw = points(untouched ? [10, -20, -6, -132, -34, -150] : [6, -14, -14, -126, -48, -134], base);
  return [
    ...tumbler(base, width, height, level),
    { d: straight(straw), line: 'ink', weight: 9 },
    { d: straight(straw), line: 'sheet', weight: 4.6 },
    rimOf(base, width, height),
  ];
}

/** A urine bottle lying on its flat side: a slanting neck with a wide mouth, a grip along the top. */
function bottle(base: Point, filled: boolean): Shape[] {
  const put = (...flat: number[]) => points(flat, base);
  const body = [
    -20, -3, -38, -12, -40, -44, -66, -88, -36, -108, -12, -78, 40, -78, 58, -66, 60, -14, 48, -3,
  ];
  const inside = put(-37, -40, -35, -14, -20, -6, 46, -6, 57, -16, 57, -42, 30, -46, 0, -42);
  const grip = smooth(put(-14, -84, 0, -112, 44, -110, 46, -76));
  return [
    { d: grip, line: 'ink', weight: 13 },
    { d: grip, line: 'white', weight: 8 },
    { d: smooth(put(...body), true, 0.6), fill: 'white', line: 'ink', weight: 3 },
    ...(filled
      ? [
          { d: smooth(inside, true, 0.5), fill: 'plate' },
          { d: hatch(inside, 8, 0), line: 'ink', weight: 1 },
          { d: smooth(put(-37, -41, 0, -43, 30, -46, 57, -42)), line: 'ink', weight: 3 },
        ]
      : []),
    { d: oval(put(-51, -98)[0]!, 20, 10, -34), fill: 'pad', line: 'ink', weight: 3 },
    {
      d: straight(put(36, -24, 48, -24)) + straight(put(36, -40, 48, -40)) + straight(put(36, -56, 48, -56)),
      line: 'ink',
      weight: fine,
    },
  ];
}

function bowl(center: Point, rx: number, used: boolean): Shape[] {
  const depth = rx * 0.72;
  const ry = rx * 0.3;
  const body = points(
    [-1, 0, -0.86, 0.44, -0.5, 0.72, 0, 0.8, 0.5, 0.72, 0.86, 0.44, 1, 0],
    center,
    rx,
    depth / 0.8,
  );
  const content = ring(plus(center, at(0, ry * 0.2)), rx * 0.76, ry * 0.66);
  return [
    { d: smooth(body) + 'Z', fill: 'metal', line: 'ink', weight: 3 },
    { d: oval(center, rx, ry), fill: 'white', line: 'ink', weight: 3 },
    ...(used
      ? [
          { d: smooth(content, true), fill: 'band-shade', line: 'ink', weight: 2 },
          { d: hatch(content, 6, 20), line: 'ink', weight: fine },
        ]
      : [{ d: arc(center, rx * 0.74, 200, 340, ry / rx), line: 'soft', weight: fine }]),
    { d: smooth(points([-0.7, 0.42, -0.42, 0.58], center, rx, depth / 0.8)), line: 'white', weight: 4 },
  ];
}

/** What comes up, from the mouth into the bowl. */
function stream(from: Point, to: Point): Shape[] {
  const side = (s: number) => [
    at(from.x + s * 6, from.y),
    at(from.x + (to.x - from.x) * 0.6 + s * 9, from.y + (to.y - from.y) * 0.4),
    at(to.x + s * 14, to.y),
  ];
  return [
    {
      d: smooth([...side(-1), ...side(1).slice().reverse()], true, 0.7),
      fill: 'band-shade',
      line: 'ink',
      weight: 2.4,
    },
    {
      d: smooth([at(from.x, from.y + 6), at(to.x - 4, (from.y + to.y) / 2), at(to.x, to.y - 4)]),
      line: 'ink',
      weight: fine,
    },
  ];
}

function pan(base: Point, used: boolean): Shape[] {
  const put = (...flat: number[]) => points(flat, base);
  const opening = ring(put(-4, -40)[0]!, 42, 14);
  return [
    {
      d: smooth(put(-64, -42, -58, -16, -42, -3, 34, -3, 50, -16, 56, -42), false, 0.8) + 'Z',
      fill: 'metal',
      line: 'ink',
      weight: 3,
    },
    { d: oval(put(-4, -42)[0]!, 60, 23), fill: 'white', line: 'ink', weight: 3 },
    { d: smooth(opening, true), fill: used ? 'pad' : 'sheet', line: 'ink', weight: 2.4 },
    ...(used
      ? [
          { d: oval(put(-15, -40)[0]!, 17, 6.5, -12), fill: 'brown', line: 'ink', weight: 2.4 },
          { d: oval(put(12, -38)[0]!, 15, 6, 10), fill: 'brown', line: 'ink', weight: 2.4 },
        ]
      : [{ d: arc(put(-4, -38)[0]!, 32, 200, 340, 0.33), line: 'soft', weight: fine }]),
  ];
}

/** One day gone by: a sun over a moon. */
function day(center: Point, half: number): Shape[] {
  const sun = plus(center, at(0, -half * 0.82));
  const moon = plus(center, at(0, half * 0.82));
  const spokes = [0, 45, 90, 135, 180, 225, 270, 315].map((d) => {
    const a = (d * Math.PI) / 180;
    return straight([
      at(sun.x + Math.cos(a) * half * 0.48, sun.y + Math.sin(a) * half * 0.48),
      at(sun.x + Math.cos(a) * half * 0.68, sun.y + Math.sin(a) * half * 0.68),
    ]);
  });
  const box = (y0: number, y1: number) =>
    straight(points([-0.86, y0, 0.86, y0, 0.86, y1, -0.86, y1], center, half), true);
  return [
    { d: box(-1.64, 0), fill: 'sheet', line: 'ink', weight: 2.6 },
    { d: box(0, 1.64), fill: 'soft', line: 'ink', weight: 2.6 },
    { d: oval(sun, half * 0.3, half * 0.3), fill: 'band-shade', line: 'ink', weight: 2 },
    { d: spokes.join(''), line: 'ink', weight: 2 },
    {
      d: smooth(
        points(
          [0.1, -0.5, -0.4, -0.3, -0.48, 0.12, -0.16, 0.46, 0.36, 0.38, 0.02, 0.2, -0.1, -0.14],
          moon,
          half,
        ),
        true,
        0.9,
      ),
      fill: 'sheet',
      line: 'ink',
      weight: 1.6,
    },
  ];
}

/** The thing the spec puts beside the child. */
export function childProp(spec: SceneSpec, g: ChildGeometry): Shape[] {
  const { upper, lower, table } = g;
  const middle = (lower.left + lower.right) / 2;
  const foot = at(middle, table.top);
  const wall = at(middle, (upper.top + upper.bottom) / 2);
  switch (spec.prop) {
    case 'none':
      return [];
    case 'medicine-cup': {
      const base = at(table.left + 34, table.top);
      return [
        ...tumbler(base, 58, 62, 0),
        {
          d: [0.3, 0.5, 0.7]
            .map((t) => straight([at(base.x + 6, base.y - 62 * t), at(base.x + 20, base.y - 62 * t)]))
            .join(''),
          line: 'ink',
          weight: 1.8,
        },
        rimOf(base, 58, 62),
        ...clock(spec, at(table.right - 38, 216), 40, 125),
      ];
    }
    case 'bottle-used':
      return bottle(at(middle + 2, table.top), true);
    case 'bottle-empty-clock':
      return [...bottle(at(middle + 2, table.top), false), ...clock(spec, wall, 54, 285)];
    case 'cup-sipped':
      return cup(foot, 0.42, false);
    case 'cup-full-clock':
      return [...cup(foot, 0.9, true), ...clock(spec, plus(wall, at(12, -8)), 52, 285)];
    case 'bowl-clean':
      return bowl(at(middle, 258), 58, false);
    case 'bowl-used': {
      const center = at(g.chest.x + g.shoulder * 0.98, 232);
      const mouth = at(g.head.x + g.radius * 0.32, g.head.y + g.radius * 0.6);
      return [...bowl(center, 62, true), ...stream(mouth, plus(center, at(-6, 2)))];
    }
    case 'pan-today':
      return [...pan(at(middle + 2, table.top), true), ...day(wall, 26)];
    case 'pan-three-days':
      return [
        ...pan(at(middle + 2, table.top), false),
        ...[-1, 0, 1].flatMap((i) => day(plus(wall, at(i * 46, 0)), 24)),
      ];
  }
}

const HEIGHTS = {
  falling: [1, 0.74, 0.48, 0.22],
  flat: [0.68, 0.68, 0.68, 0.68],
  rising: [0.22, 0.48, 0.74, 1],
} as const;

/** Four plain block steps and a line that goes down, along or up. */
export function sorenessSteps(spec: SceneSpec, g: ChildGeometry): Shape[] {
  if (spec.soreness === 'none') return [];
  const alone = spec.prop === 'none';
  const { left, right, top } = g.upper;
  const bottom = alone ? top + 200 : g.upper.bottom;
  const floor = bottom - 12;
  const wide = (right - left - 20) / 4;
  const tall = floor - top - 40;
  const heights = HEIGHTS[spec.soreness];
  const blocks = heights.map((h, i) => {
    const x = left + 10 + i * wide;
    return [at(x, floor), at(x, floor - tall * h), at(x + wide, floor - tall * h), at(x + wide, floor)];
  });
  const over = heights.map((h, i) => at(left + 10 + (i + 0.5) * wide, floor - tall * h - 16));
  const [from, to] = [over[0]!, over[3]!];
  const turnBy = Math.atan2(to.y - from.y, to.x - from.x);
  const barb = (side: number) =>
    at(to.x - 17 * Math.cos(turnBy + side * 0.6), to.y - 17 * Math.sin(turnBy + side * 0.6));
  return neverMirrored(spec, (left + right) / 2, [
    {
      d: straight(points([left, top, right, top, right, bottom, left, bottom]), true),
      fill: 'sheet',
      line: 'ink',
    },
    { d: blocks.map((b) => straight(b, true)).join(''), fill: 'band-shade', line: 'ink', weight: 2.6 },
    { d: blocks.map((b) => hatch(b, 7, 45)).join(''), line: 'ink', weight: fine },
    { d: straight([from, to]) + straight([barb(1), to, barb(-1)]), line: 'mark', weight: 5.5 },
  ]);
}
