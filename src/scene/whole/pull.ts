/** The pull: foot plate, cord, wheel on its arm, hanging weight, and what can go wrong with them. */
import type { SceneSpec } from '../spec.ts';
import { at, between, oval, plus, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import { BAG, FLOOR, SEAT, WHEEL_RADIUS, type WholeGeometry } from './layout.ts';
import { scale } from './limbs.ts';

/** Width of the cord. */
const CORD = 2.2;

/** A point of the plate: `a` up along it, `b` away from the foot. */
const onPlate = (g: WholeGeometry, a: number, b: number): Point =>
  plus(g.plate.center, turn(at(b, -a), at(0, 0), g.plate.angle));

/** The foot plate from the side. */
export function drawPlate(g: WholeGeometry): Shape[] {
  const size = g.build.foot;
  const [high, low] = [22 * size, -17 * size];
  const depth = at(5.5, -15);
  const inner = [
    onPlate(g, low, -3.5),
    onPlate(g, high, -3.5),
    plus(onPlate(g, high, -3.5), depth),
    plus(onPlate(g, low, -3.5), depth),
  ];
  const slab = [onPlate(g, low, -3.5), onPlate(g, high, -3.5), onPlate(g, high, 3.5), onPlate(g, low, 3.5)];
  const top = [slab[1]!, plus(slab[1]!, depth), plus(slab[2]!, depth), slab[2]!];
  const outer = [slab[2]!, plus(slab[2]!, depth), plus(slab[3]!, depth), slab[3]!];
  return [
    {
      d: smooth([inner[2]!, plus(slab[2]!, depth), slab[2]!, slab[3]!, slab[0]!, inner[3]!], true, 0.1),
      fill: 'plate',
      line: 'ink',
    },
    { d: straight(outer, true) + straight(top, true), fill: 'plate', line: 'ink', weight: 1.6 },
    { d: smooth(slab, true, 0.15), fill: 'plate', line: 'ink' },
    { d: straight([onPlate(g, high - 7, -0.5), onPlate(g, low + 8, -0.5)]), line: 'soft', weight: 1.2 },
  ];
}

/** The arm that carries the wheel, fixed to the bed's end. */
export function drawWheel(g: WholeGeometry): Shape[] {
  const root = g.flat(408, -14, 28);
  const arm = [root, g.flat(424, -12, 28), g.wheel];
  const spokes = [0, 60, 120].map((a) =>
    straight([turn(plus(g.wheel, at(-8, 0)), g.wheel, a), turn(plus(g.wheel, at(8, 0)), g.wheel, a)]),
  );
  return [
    { d: straight(arm), line: 'ink', weight: 9 },
    { d: straight(arm), line: 'metal', weight: 4.6 },
    { d: oval(g.wheel, WHEEL_RADIUS, WHEEL_RADIUS), fill: 'metal', line: 'ink' },
    { d: oval(g.wheel, WHEEL_RADIUS - 3.6, WHEEL_RADIUS - 3.6), fill: 'sheet', line: 'ink', weight: 1.4 },
    { d: spokes.join(''), line: 'soft', weight: 1.4 },
    { d: oval(g.wheel, 2.6, 2.6), fill: 'ink', line: 'ink' },
  ];
}

/** Points of the cord around the wheel, from where it arrives to where it hangs down. */
function aroundWheel(g: WholeGeometry): Point[] {
  const r = WHEEL_RADIUS + 0.4;
  const from = Math.atan2(g.overWheel.y - g.wheel.y, g.overWheel.x - g.wheel.x);
  return [0, 0.25, 0.5, 0.75, 1].map((t) => {
    const a = from * (1 - t);
    return at(g.wheel.x + r * Math.cos(a), g.wheel.y + r * Math.sin(a));
  });
}

const rope = (points: readonly Point[], ease = 0): Shape => ({
  d: smooth(points, false, ease),
  line: 'cord',
  weight: CORD,
});

function hanging(g: WholeGeometry, from: Point): Shape {
  const end = plus(g.bag, at(0, 4));
  if (g.cord.slack < 1) return rope([from, end]);
  // a slack cord bows out beside the bag; the bow's width stands for the length that is left over
  const bow = Math.min(26, Math.sqrt(g.cord.slack * 9));
  return rope(
    [from, plus(between(from, end, 0.45), at(-bow * 0.4, 0)), plus(end, at(bow * 0.9, -4)), end],
    1,
  );
}

/** The cord from the plate over the wheel to the bag. */
export function drawCord(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const { tie } = g.plate;
  const loop: Shape = { d: oval(plus(tie, at(1, 0)), 3, 3), fill: 'cord', line: 'ink', weight: 1 };
  const middle = between(tie, g.overWheel, 0.45);
  switch (spec.cord) {
    case 'off-wheel': {
      const hub = plus(g.wheel, at(-WHEEL_RADIUS - 5, 3));
      return [
        rope([tie, plus(between(tie, hub, 0.5), at(0, 3)), hub], 1),
        hanging(g, hub),
        loop,
        ...glow(plus(g.wheel, at(4, -22)), 3),
      ];
    }
    case 'frayed': {
      const [a, b] = [between(tie, g.overWheel, 0.38), between(tie, g.overWheel, 0.62)];
      const strands = [-9, -5, 5, 8].flatMap((dy, i) => [
        straight([a, plus(a, at(7 + (i % 2) * 3, dy))]),
        straight([b, plus(b, at(-7 - (i % 2) * 3, dy * 0.9))]),
      ]);
      return [
        rope([tie, a]),
        { d: straight([a, b]), line: 'cord', weight: 1 },
        rope([b, ...aroundWheel(g)], 0.6),
        hanging(g, g.drop),
        { d: strands.join(''), line: 'cord', weight: 1.4 },
        loop,
        ...glow(plus(middle, at(0, -16)), 3),
      ];
    }
    case 'caught': {
      const hook = g.flat(407, 8, 0);
      return [
        rope([tie, plus(hook, at(-6, 2)), plus(hook, at(0, 8)), plus(hook, at(6, 2)), g.overWheel], 0.5),
        rope(aroundWheel(g), 0.6),
        hanging(g, g.drop),
        loop,
        ...glow(plus(hook, at(-2, -22)), 3),
      ];
    }
    case 'knot-at-wheel': {
      const knot = plus(g.overWheel, scale(plus(tie, scale(g.overWheel, -1)), 0.12));
      return [
        rope([tie, ...aroundWheel(g)], 0.4),
        hanging(g, g.drop),
        { d: oval(knot, 7.5, 6), fill: 'cord', line: 'ink' },
        {
          d: smooth([plus(knot, at(-4, 3)), plus(knot, at(0, -3)), plus(knot, at(4, 2))]),
          line: 'sheet',
          weight: 1.4,
        },
        rope([plus(knot, at(-3, 4)), plus(knot, at(-8, 11))]),
        loop,
        ...glow(plus(knot, at(-2, -12)), 3),
      ];
    }
    case 'on-wheel':
    case 'under-blanket':
    case 'toy-on-cord':
      return [rope([tie, ...aroundWheel(g)], 0.4), hanging(g, g.drop), loop, ...onCord(spec, g, middle)];
  }
}

/** Things that lie or hang on the cord. */
function onCord(spec: SceneSpec, g: WholeGeometry, middle: Point): Shape[] {
  if (spec.cord === 'toy-on-cord') {
    const body = plus(middle, at(0, 24));
    return [
      rope([plus(middle, at(-1, 0)), plus(middle, at(0, 9))]),
      {
        d: oval(plus(body, at(-7, -15)), 4, 5) + oval(plus(body, at(7, -15)), 4, 5),
        fill: 'blanket',
        line: 'ink',
        weight: 1.8,
      },
      { d: oval(plus(body, at(0, 6)), 8.5, 9.5), fill: 'blanket', line: 'ink', weight: 1.8 },
      { d: oval(plus(body, at(0, -9)), 9, 8), fill: 'blanket', line: 'ink', weight: 1.8 },
      {
        d: oval(plus(body, at(-3, -10)), 0.8, 0.8) + oval(plus(body, at(3, -10)), 0.8, 0.8),
        fill: 'ink',
        line: 'ink',
      },
      ...glow(plus(middle, at(0, -8)), 3),
    ];
  }
  if (spec.cord === 'under-blanket') {
    const [a, b] = [between(g.plate.tie, g.overWheel, -0.1), between(g.plate.tie, g.overWheel, 0.86)];
    const cloth = [
      plus(a, at(0, -16)),
      plus(between(a, b, 0.5), at(0, -12)),
      plus(b, at(2, -9)),
      plus(b, at(6, 14)),
      plus(b, at(2, 44)),
      plus(between(a, b, 0.6), at(0, 38)),
      plus(a, at(6, 46)),
      plus(a, at(-6, 14)),
    ];
    return [
      { d: smooth(cloth, true, 0.9), fill: 'blanket', line: 'ink' },
      {
        d:
          smooth([plus(a, at(5, -4)), plus(a, at(7, 16)), plus(a, at(10, 36))]) +
          smooth([plus(b, at(-6, 0)), plus(b, at(-4, 30))]),
        line: 'soft',
        weight: 1.4,
      },
      ...glow(plus(between(a, b, 0.5), at(0, -20)), 3),
    ];
  }
  return [];
}

/** Short rays over a place where something is wrong. */
function glow(center: Point, count: number): Shape[] {
  const rays = Array.from({ length: count }, (_, i) => {
    const angle = (i - (count - 1) / 2) * 34;
    return straight([
      turn(plus(center, at(0, 2)), plus(center, at(0, 12)), angle),
      turn(plus(center, at(0, -6)), plus(center, at(0, 12)), angle),
    ]);
  });
  return [{ d: rays.join(''), line: 'mark', weight: 2.6 }];
}

/** The bag at the cord's end, and what it touches. */
export function drawBag(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const top = g.bag;
  const hang = spec.loadSwing === 1 ? 9 : spec.loadTouch === 'bed-end' ? 3 : 0;
  const p = (x: number, y: number) => turn(plus(top, at(x, y)), top, hang);
  const w = BAG.width / 2;
  const seated = g.resting;
  const h = BAG.height;
  const body = [
    p(-9, 15),
    p(0, 13.5),
    p(9, 15),
    p(w - 3, 24),
    p(w + (seated ? 1 : -1), h - 14),
    p(w - 5, h - 1),
    p(0, h),
    p(-w + 5, h - 1),
    p(-w - (seated ? 1 : -1), h - 14),
    p(-w + 3, 24),
  ];
  const shapes: Shape[] = [
    { d: oval(p(0, 8), 4.6, 5), line: 'ink', weight: 2 },
    { d: smooth(body, true, 0.9), fill: 'bag', line: 'ink' },
    { d: smooth([p(-8.5, 20), p(0, 22), p(8.5, 20)]), line: 'ink', weight: 1.6 },
    {
      d: smooth([p(-w + 6, 32), p(-w + 5, 40), p(-w + 8, 48)]) + smooth([p(w - 8, 29), p(w - 6, 36)]),
      line: 'soft',
      weight: 1.6,
    },
  ];
  if (spec.loadSwing === 1) {
    const arc = (dx: number, sign: number) => smooth([p(dx, 22), p(dx + sign * 4, 34), p(dx + sign * 3, 46)]);
    shapes.push({ d: arc(-w - 6, -1) + arc(-w - 13, -1) + arc(w + 6, 1), line: 'mark', weight: 2.4 });
  }
  if (seated || spec.loadTouch === 'bed-end') {
    const spot = seated ? plus(top, at(0, h)) : p(-w, h * 0.6);
    const side = seated ? [-1, 1] : [-1];
    shapes.push({
      d: side
        .map((s) =>
          seated
            ? straight([plus(spot, at(s * (w + 4), -3)), plus(spot, at(s * (w + 13), -8))]) +
              straight([plus(spot, at(s * (w + 5), 2)), plus(spot, at(s * (w + 14), 3))])
            : straight([plus(spot, at(-4, -6)), plus(spot, at(-12, -12))]) +
              straight([plus(spot, at(-5, 3)), plus(spot, at(-14, 5))]),
        )
        .join(''),
      line: 'mark',
      weight: 2.6,
    });
  }
  return shapes;
}

/** The shadow under a bag that hangs free shows the room between it and the floor. */
export function drawBagGround(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const spread = 22 - Math.min(8, Math.max(0, g.room) * 0.12);
  const shadow: Shape = { d: oval(at(g.bag.x, FLOOR + 2), spread, 4), fill: 'band-shade' };
  if (spec.loadTouch !== 'other') return [shadow];
  const seat = FLOOR - SEAT;
  const x = g.bag.x;
  const leg = (dx: number, top: number, bottom: number) => straight([at(x + dx, top), at(x + dx, bottom)]);
  const legs =
    leg(-19, seat, FLOOR + 4) +
    leg(19, seat, FLOOR + 4) +
    leg(-11, seat, FLOOR - 4) +
    leg(12, seat, FLOOR - 4);
  const back = leg(21, seat - 62, seat);
  return [
    { d: legs, line: 'ink', weight: 6 },
    { d: legs, line: 'frame', weight: 2.4 },
    { d: back, line: 'ink', weight: 7 },
    { d: back, line: 'frame', weight: 3 },
    {
      d: smooth([at(x - 23, seat), at(x + 23, seat), at(x + 23, seat + 7), at(x - 23, seat + 7)], true, 0.2),
      fill: 'frame',
      line: 'ink',
    },
  ];
}
