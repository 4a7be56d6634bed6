/** Things on and above the bedside table. */
import type { SceneSpec } from '../spec.ts';
import { at, hatch, oval, plus, ring, smooth, straight, type Point, type Shape } from '../shapes.ts';
import { headForm } from '../parts/head.ts';
import { arc, mirrored, points } from '../parts/points.ts';
import type { ChildGeometry } from './child-layout.ts';

const fine = 1.4;

/**
 * Clocks run clockwise whichever leg is in traction: what the whole picture will mirror is mirrored here first
 * about its own middle.
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
    ...(untouched ? [bar(plus(base, at(-24, -142)), 26)] : []),
  ];
}

/** A stroke across what did not happen. */
const bar = (p: Point, half: number): Shape => ({
  d: straight([plus(p, at(-half, half * 0.8)), plus(p, at(half, -half * 0.8))]),
  line: 'mark',
  weight: 6,
});

/** A urine bottle on its flat foot: a slanted neck as wide as a fist, a hole at the back to hold it by. */
function bottle(base: Point, filled: boolean): Shape[] {
  const put = (...flat: number[]) => points(flat, base);
  const body = [
    -34, -3, -44, -12, -44, -58, -54, -84, -62, -100, -16, -122, -4, -98, 16, -84, 42, -78, 54, -64, 56, -12,
    46, -3,
  ];
  const inside = put(-41, -48, -41, -14, -33, -6, 43, -6, 51, -14, 51, -48);
  const grip = put(30, -62, 40, -60, 43, -52, 43, -26, 40, -18, 30, -16, 26, -24, 26, -54);
  const [mouth, above] = put(-39, -112, -39, -150) as [Point, Point];
  const drop = points([0, -20, 5, -10, 11, -2, 11, 5, 6, 12, 0, 13, -6, 12, -11, 5, -11, -2, -5, -10], above);
  return [
    { d: smooth(put(...body), true, 0.5), fill: 'white', line: 'ink', weight: 3 },
    ...(filled
      ? [
          { d: smooth(inside, true, 0.3), fill: 'band-shade' },
          { d: hatch(inside, 8, 0), line: 'ink', weight: 1 },
          { d: straight(put(-41, -48, 52, -48)), line: 'ink', weight: 3 },
        ]
      : []),
    // a hole to hold it by
    { d: smooth(grip, true, 0.8), fill: 'ground', line: 'ink', weight: 3 },
    { d: oval(mouth, 26, 9, -25.5), fill: 'pad', line: 'ink', weight: 3 },
    {
      d: [18, 32, 46, 60].map((y) => straight(put(0, -y, 14, -y))).join(''),
      line: 'ink',
      weight: 2,
    },
    filled
      ? { d: smooth(drop, true), fill: 'band-shade', line: 'ink', weight: 2.6 }
      : { d: smooth(drop, true), line: 'ink', weight: 2, dash: '3 4' },
    ...(filled ? [] : [bar(above, 20)]),
  ];
}

/**
 * The bladder, seen as through the cloth: small after a wee, round and tight after many hours without. Beside the
 * bottle it says what has not come.
 */
function bladder({ chest, blanketTop }: { chest: Point; blanketTop: number }, full: boolean): Shape[] {
  const size = full ? 1 : 0.48;
  const neck = at(chest.x, blanketTop - 3);
  const pear = points(
    [0, 0, -9, -8, -31, -22, -36, -46, -20, -66, 0, -71, 20, -66, 36, -46, 31, -22, 9, -8],
    neck,
    size,
  );
  const press = [-1, 1].flatMap((way) =>
    [0, 1].map((k) => arc(plus(neck, at(0, -40)), 45 + 9 * k, way > 0 ? -38 : 218, way > 0 ? 24 : 156)),
  );
  return [
    { d: smooth(pear, true), fill: 'band-shade', line: 'ink', weight: 2.4, dash: '5 4' },
    ...(full
      ? [
          { d: hatch(pear, 8, 0), line: 'ink', weight: 1 },
          { d: press.join(''), line: 'mark', weight: 3.4 },
        ]
      : []),
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

/** Three days, one under the other, each with its sun; the last is today. A filled day has something in it. */
function days(center: Point, todayFilled: boolean): Shape[] {
  const sun = (p: Point) =>
    oval(p, 5.5, 5.5) +
    [0, 45, 90, 135, 180, 225, 270, 315]
      .map((d) => {
        const a = (d * Math.PI) / 180;
        return straight([
          plus(p, at(Math.cos(a) * 9, Math.sin(a) * 9)),
          plus(p, at(Math.cos(a) * 13, Math.sin(a) * 13)),
        ]);
      })
      .join('');
  return [-1, 0, 1].flatMap((row): Shape[] => {
    const c = plus(center, at(0, row * 46));
    const today = row === 1;
    const box = straight(points([-56, -20, 56, -20, 56, 20, -56, 20], c), true);
    const heap = [c, plus(c, at(12, 0)), plus(c, at(24, 0))].map((p, i) => plus(p, at(10, i === 1 ? -3 : 5)));
    return [
      { d: box, fill: 'sheet', line: 'ink', weight: today ? 4.2 : 2.4 },
      { d: sun(plus(c, at(-36, 0))), line: 'ink', weight: 2 },
      ...(today && todayFilled
        ? [{ d: heap.map((p) => oval(p, 11, 7, -10)).join(''), fill: 'brown', line: 'ink', weight: 2.2 }]
        : [{ d: oval(plus(c, at(22, 0)), 20, 10), line: 'soft', weight: 2, dash: '3 5' }]),
    ];
  });
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
    case 'medicine-cup':
      return medicine(spec, g);
    case 'bottle-used':
    case 'bottle-empty-clock': {
      const used = spec.prop === 'bottle-used';
      return [
        ...bottle(at(middle - 4, table.top), used),
        ...bladder({ chest: g.chest, blanketTop: g.bed.hem }, !used),
        ...clock(spec, plus(wall, at(8, -18)), 48, used ? 35 : 285),
      ];
    }
    case 'cup-sipped':
    case 'cup-full-clock': {
      const sipped = spec.prop === 'cup-sipped';
      return [
        ...cup(foot, sipped ? 0.42 : 0.9, !sipped),
        ...clock(spec, plus(wall, at(8, -16)), 48, sipped ? 35 : 285),
        ...(sipped ? [] : [dryLips(spec, g)]),
      ];
    }
    case 'bowl-clean':
      return bowl(at(middle, 258), 58, false);
    case 'bowl-used': {
      const center = at(g.chest.x, g.chest.y + 64);
      const mouth = at(g.head.x, g.head.y + g.radius * (headForm(spec.age).mouth + 0.06));
      return [...bowl(center, 68, true), ...stream(mouth, plus(center, at(0, 4)))];
    }
    case 'pan-today':
    case 'pan-three-days': {
      const today = spec.prop === 'pan-today';
      return [...pan(at(middle + 2, table.top), today), ...days(plus(wall, at(0, 8)), today)];
    }
  }
}

/** Cracks across the lips. */
function dryLips(spec: SceneSpec, { head, radius }: ChildGeometry): Shape {
  const y = headForm(spec.age).mouth;
  const crack = (x: number) =>
    straight([
      at(head.x + x * radius, head.y + (y + 0.02) * radius),
      at(head.x + x * 0.9 * radius, head.y + (y + 0.085) * radius),
    ]);
  return { d: [-0.13, -0.02, 0.1].map(crack).join(''), line: 'ink', weight: 1.4 };
}

/** The emptied medicine cup and the time since, on the table, or on a shelf where the stair has the table's place. */
function medicine(spec: SceneSpec, { table, upper }: ChildGeometry): Shape[] {
  const onShelf = spec.soreness !== 'none';
  const top = onShelf ? 92 : table.top;
  const base = at(table.left + 34, top);
  const board = points([table.left, top, table.right, top, table.right, top + 10, table.left, top + 10]);
  return [
    ...(onShelf ? [{ d: straight(board, true), fill: 'plate', line: 'ink' }] : []),
    ...tumbler(base, 54, 58, 0),
    {
      d: [0.3, 0.5, 0.7]
        .map((t) => straight([at(base.x + 6, base.y - 58 * t), at(base.x + 19, base.y - 58 * t)]))
        .join(''),
      line: 'ink',
      weight: 1.8,
    },
    rimOf(base, 54, 58),
    ...clock(spec, at(upper.right - 36, top - 42), 36, 125),
  ];
}
