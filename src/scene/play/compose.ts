/** One scene of play from its parts, back to front: bed, child and grown-up, bubbles, things, hands, things in front. */
import type { DrawnAge } from '../spec.ts';
import { lightSquare } from '../lighter.ts';
import { at, oval, straight, type Picture, type Shape } from '../shapes.ts';
import { SQUARE } from '../things/pen.ts';
import { brush, type Drawing, type Placed } from './brush.ts';
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

const framed = (shapes: readonly Shape[]): Picture => ({
  width: SQUARE,
  height: SQUARE,
  shapes: lightSquare(shapes),
});

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
