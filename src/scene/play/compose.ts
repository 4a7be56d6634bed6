/** One scene of play from its parts, back to front: bed, child and grown-up, bubbles, things, hands, things in front. */
import type { DrawnAge } from '../spec.ts';
import { heldInside } from '../parts/points.ts';
import { at, oval, pointsOf, straight, type Picture, type Point, type Shape } from '../shapes.ts';
import { brush, PLAY_SIZE, type Drawing, type Placed } from './brush.ts';
import { MARKS } from './marks.ts';
import { ON_PAPER } from './on-paper.ts';
import { pencil, PAPER_THINGS, story, written } from './paper-things.ts';
import { nearHand, type NearHand } from './arms.ts';
import { childAtTray, childInBed, nearFace, type ChildLook, type NearFace } from './child.ts';
import { grownUp, type GrownLook } from './grown-up.ts';
import { PROPS } from './props.ts';
import { ROOM_THINGS } from './room-things.ts';
import { SMALL } from './small.ts';
import { TOY_THINGS } from './toy-things.ts';

/** What an idea may ask to be fetched. */
export const PLAY_THINGS = { ...PAPER_THINGS, ...ROOM_THINGS, ...TOY_THINGS };
export type PlayThingId = keyof typeof PLAY_THINGS;

const DRAWINGS = {
  ...PLAY_THINGS,
  ...SMALL,
  ...MARKS,
  ...ON_PAPER,
  ...PROPS,
  pencil,
  story,
  written,
} as const satisfies Record<string, Drawing>;
export type DrawingId = keyof typeof DRAWINGS;

/** Where the child lies: alone in the middle, with room at the right, or low, with room above; `chat` leaves it to what is said. */
const PLACES = {
  mid: { x: 60, y: 44, r: 25 },
  left: { x: 36, y: 58, r: 20 },
  chat: { x: 32, y: 78, r: 18 },
  low: { x: 60, y: 80, r: 20 },
  far: { x: 60, y: 56, r: 18 },
  leaning: { x: 46, y: 62, r: 21 },
  tray: { x: 60, y: 32, r: 20 },
  'tray-left': { x: 44, y: 34, r: 18 },
} as const;

type Child = Omit<ChildLook, 'x' | 'y' | 'r'> & { at?: keyof typeof PLACES };

/** A white field with something in it: said (it has a tail) or thought (small rounds lead to the head). */
export type Bubble = readonly [
  kind: 'say' | 'think',
  x: number,
  y: number,
  w: number,
  h: number,
  toX: number,
  toY: number,
];

export interface PlayScene {
  child?: Child;
  /** Without a tray the child lies flat. */
  tray?: true;
  grown?: GrownLook;
  /** Faces close by, instead of the bed. */
  faces?: readonly NearFace[];
  bubbles?: readonly Bubble[];
  things?: readonly Placed<DrawingId>[];
  /** Hands seen close, where no whole child is seen. */
  hands?: readonly NearHand[];
  front?: readonly Placed<DrawingId>[];
}

function bubble([kind, x, y, w, h, toX, toY]: Bubble): Shape[] {
  const body = oval(at(x, y), w / 2, h / 2);
  const white = { fill: 'white', line: 'ink', weight: 2 };
  if (kind === 'think')
    return [
      { d: body, ...white },
      { d: oval(at(x + (toX - x) * 0.72, y + (toY - y) * 0.72), 3.4, 3), ...white },
      { d: oval(at(toX, toY), 2, 2), ...white },
    ];
  const long = Math.hypot(toX - x, toY - y);
  const [nx, ny] = [((toY - y) / long) * 6, ((x - toX) / long) * 6];
  const tail = straight([at(x + nx, y + ny), at(toX, toY), at(x - nx, y - ny)], true);
  return [
    { d: tail, ...white },
    { d: body, ...white },
    { d: tail, fill: 'white' },
  ];
}

const placed = (list: readonly Placed<DrawingId>[] = []): Shape[] =>
  list.flatMap(([id, x, y, scale, turned = 0]) => DRAWINGS[id](brush({ x, y, scale, turned })));

/** How far, in scene units, a lighter curve may leave the one that was drawn: a quarter of a pixel in a list. */
const STRAY = 0.3;
/** A shape wider or higher than this lies on whole units, a smaller one on halves. */
const WIDE = 14;
/** A line shorter than this is a speck in a list of pictures. */
const SPECK = 2.6;

function extent(d: string): number {
  const own = pointsOf(d);
  const [xs, ys] = [own.map((p) => p.x), own.map((p) => p.y)];
  return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}

/**
 * The same curve with one control point instead of two where the eye cannot tell: a third less to send. The two
 * curves are farthest apart by √3/36 of the third difference of the cubic's points.
 */
function lighter(d: string, grid: number): string {
  const n = (value: number) => String(Math.round(value / grid) * grid);
  const write = (points: readonly Point[]) => points.map((p) => `${n(p.x)} ${n(p.y)}`).join(' ');
  let from: Point = at(0, 0);
  return d.replace(/([MLCQ])([\d. ]+)/g, (_, command: string, numbers: string) => {
    const own = pointsOf(numbers);
    const start = from;
    from = own[own.length - 1]!;
    if (command !== 'C') return command + write(own);
    const [a, b, c] = own as [Point, Point, Point];
    const third = Math.hypot(c.x - 3 * b.x + 3 * a.x - start.x, c.y - 3 * b.y + 3 * a.y - start.y);
    if ((third * Math.sqrt(3)) / 36 > STRAY) return 'C' + write(own);
    const one = at((3 * (a.x + b.x) - start.x - c.x) / 4, (3 * (a.y + b.y) - start.y - c.y) / 4);
    return 'Q' + write([one, c]);
  });
}

const held = (shapes: readonly Shape[]) => heldInside(shapes, PLAY_SIZE, PLAY_SIZE);

/** Held inside the square, and light. */
function framed(shapes: readonly Shape[]): Picture {
  const light = held(shapes).flatMap((shape): Shape[] => {
    const size = extent(shape.d);
    const speck = !shape.fill && size > 0 && size < SPECK;
    return speck ? [] : [{ ...shape, d: lighter(shape.d, size > WIDE ? 1 : 0.5) }];
  });
  return { width: PLAY_SIZE, height: PLAY_SIZE, shapes: held(light) };
}

/** The bed ends where the grown-up sits. */
const BED_RIGHT = 88;

/**
 * A scene of play as one picture.
 *
 * Shape: 120 × 120 scene units, every point inside; curves on whole or half units.
 * @example compose({ things: [['cups', 60, 60, 1]] }, 5).height // 120
 */
export function compose(scene: PlayScene, age: DrawnAge): Picture {
  const { child, grown, tray } = scene;
  const where = PLACES[child?.at ?? (tray ? (grown ? 'tray-left' : 'tray') : grown ? 'left' : 'mid')];
  const bed =
    child && (tray ? childAtTray : childInBed)({ ...where, ...child }, age, grown ? BED_RIGHT : 118.8);
  const person = grown && grownUp(grown);
  const shapes = [
    ...(grown?.held ? (person?.behind ?? []) : []),
    // leaning on somebody, not on the pillow
    ...(bed?.behind.slice(grown?.held ? 1 : 0) ?? []),
    ...(grown?.held ? [] : (person?.behind ?? [])),
    ...(scene.faces ?? []).flatMap((face) => nearFace(face, age)),
    ...(scene.bubbles ?? []).flatMap(bubble),
    ...placed(scene.things),
    ...(bed?.arms ?? []),
    ...(person?.arm ?? []),
    ...(scene.hands ?? []).flatMap(nearHand),
    ...placed(scene.front),
  ];
  return framed(shapes);
}

/**
 * A thing by itself, for what is in the room.
 *
 * Shape: 120 × 120 scene units.
 * @example drawPlayThing('cups').width // 120
 */
export const drawPlayThing = (id: PlayThingId): Picture => framed(PLAY_THINGS[id](brush()));
