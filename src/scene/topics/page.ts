/** The sheet every picture of a topic is drawn on: one pen, and curves made light before they are sent. */
import { heldInside } from '../parts/points.ts';
import { brush } from '../play/brush.ts';
import { at, pointsOf, type Point, type Shape } from '../shapes.ts';

/** Width and height of every topic's picture, in scene units. */
export const TOPIC_VIEW = { width: 400, height: 300 } as const;

/** What a family can point at on the picture of the set-up. */
export type SetUpPart =
  'bandage' | 'foot-plate' | 'cord' | 'wheel' | 'load' | 'foot-end' | 'heel-pad' | 'call-button';

/** A shape that may belong to a named part; `reach` is not seen and only widens what a finger can meet. */
export interface TopicShape extends Shape {
  part?: SetUpPart;
  reach?: true;
}

/** Draws in the units of the page itself. */
export const ink = brush();
/** A pen for a drawing of 120 × 120 units whose middle comes to lie at x, y. */
export const small = (x: number, y: number, scale: number, turned = 0) => brush({ x, y, scale, turned });

/** Shapes moved and scaled as a whole; a line of usual width stays one, broad ones are scaled. */
export const moved = (shapes: readonly TopicShape[], scale: number, dx: number, dy: number): TopicShape[] =>
  shapes.map(({ weight, ...shape }) => ({
    ...shape,
    ...(weight === undefined || weight === 2.4 ? {} : { weight: weight > 4 ? weight * scale + 0.6 : weight }),
    d: shape.d.replace(
      /(-?[\d.]+) (-?[\d.]+)/g,
      (_, x: string, y: string) => `${Number(x) * scale + dx} ${Number(y) * scale + dy}`,
    ),
  }));

/** How far, in scene units, a lighter curve may leave the one that was drawn: less than half a pixel on a phone. */
const STRAY = 0.5;
/** A shape wider or higher than this lies on whole units, a smaller one on halves. */
const WIDE = 10;

function extent(d: string): number {
  const own = pointsOf(d);
  const [xs, ys] = [own.map((p) => p.x), own.map((p) => p.y)];
  return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}

/**
 * The same curve with one control point instead of two where the eye cannot tell. The two curves are farthest
 * apart by √3/36 of the third difference of the cubic's points.
 */
function lighter(d: string, grid: number): string {
  const n = (value: number) => String(Math.round(value / grid) * grid);
  const write = (points: readonly Point[]) => points.map((p) => `${n(p.x)} ${n(p.y)}`).join(' ');
  let from: Point = at(0, 0);
  return d.replace(/([MLCQ])([-\d. ]+)/g, (_, command: string, numbers: string) => {
    const own = pointsOf(numbers);
    const start = from;
    from = own[own.length - 1]!;
    if (command !== 'C') return command + write(own);
    const [a, b, c] = own as [Point, Point, Point];
    const chord = Math.hypot(c.x - start.x, c.y - start.y);
    const off = (p: Point) =>
      Math.abs((c.x - start.x) * (p.y - start.y) - (c.y - start.y) * (p.x - start.x)) / chord;
    // a curve along its own chord is a straight edge
    if (chord > 0 && off(a) + off(b) < STRAY * 1.4) return 'L' + write([c]);
    const third = Math.hypot(c.x - 3 * b.x + 3 * a.x - start.x, c.y - 3 * b.y + 3 * a.y - start.y);
    if ((third * Math.sqrt(3)) / 36 > STRAY) return 'C' + write(own);
    return 'Q' + write([at((3 * (a.x + b.x) - start.x - c.x) / 4, (3 * (a.y + b.y) - start.y - c.y) / 4), c]);
  });
}

const held = (shapes: readonly TopicShape[]): TopicShape[] =>
  heldInside(shapes, TOPIC_VIEW.width, TOPIC_VIEW.height);

/** Some of it is on the page: what a closer look leaves outside is not sent. */
const seen = ({ d }: TopicShape): boolean => {
  const own = pointsOf(d);
  const [xs, ys] = [own.map((p) => p.x), own.map((p) => p.y)];
  return (
    Math.max(...xs) > 0 &&
    Math.min(...xs) < TOPIC_VIEW.width &&
    Math.max(...ys) > 0 &&
    Math.min(...ys) < TOPIC_VIEW.height
  );
};

/** Held inside the page, and light. */
export const framed = (shapes: readonly TopicShape[]): TopicShape[] =>
  held(
    held(shapes.filter(seen)).map((shape) => ({
      ...shape,
      d: lighter(shape.d, extent(shape.d) > WIDE ? 1 : 0.5),
    })),
  );
