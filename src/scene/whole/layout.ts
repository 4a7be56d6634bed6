/**
 * The bed from the side, in numbers. Everything is worked out for a child whose head lies at the left of the
 * picture (its right leg is near us and pulled); `flip` tells the drawing to mirror every point for a left leg.
 */
import type { DrawnAge, SceneSpec } from '../spec.ts';
import { at, between, distance, plus, turn, type Point, type View } from '../shapes.ts';
import { DRAWN_TILT } from './slope.ts';

/** Child sizes in scene units; the sole keeps its place, so a longer child lies nearer the head end. */
interface Build {
  /** Hip to sole. */
  leg: number;
  /** Hip to neck. */
  torso: number;
  /** Half the face height. */
  head: number;
  /** Thickness of limbs against a five-year-old's. */
  girth: number;
  /** Size of the feet, toes and foot plate against the foot as it is written down in foot.ts. */
  foot: number;
}

export const BUILDS: Record<DrawnAge, Build> = {
  2: { leg: 134, torso: 74, head: 34, girth: 1.06, foot: 0.98 },
  5: { leg: 174, torso: 76, head: 30, girth: 1.12, foot: 1.14 },
  9: { leg: 178, torso: 78, head: 28, girth: 1.1, foot: 1.17 },
  14: { leg: 180, torso: 79, head: 26, girth: 1.14, foot: 1.22 },
};

/** Along the bed, from the head end; `depth` is from its near to its far side, `thick` the mattress. */
export const BED = { head: 15, foot: 400, depth: 100, thick: 22 } as const;
/** Along the bed, where the sole of an unslid leg lies. */
const SOLE = 330;
/** How far a body can slide before its foot plate meets the end board. */
export const SLIDE = 52;
/** Height of the level bed's near edge in the picture. */
const LEVEL = 216;
/** What the bed tilts about. */
const PIVOT = at(170, LEVEL);
/** Degrees of the head end at `headRaise` 1. */
const BACKREST = 42;
/** The ground under the hanging weight and under the bed's wheels. */
export const FLOOR = 336;
export const WHEEL_RADIUS = 12;
/** The wheel's axle, in a line with the pulled leg. */
const axleOn = (bed: Place): Point => bed(430, 30 - WHEEL_RADIUS, NEAR);
export const BAG = { width: 38, height: 58 } as const;
/** The bag's room above the floor at `loadHeight` 1. */
const LOAD_ROOM = 92;
/** Seat of the chair that a bag may come to rest on. */
export const SEAT = 40;
/** The pulled leg lies nearer to us than the free one. */
const NEAR = 28;
const FAR = 68;

/** A place on the bed (along, above, across) as a point of the picture. */
export type Place = (u: number, h: number, d: number) => Point;

function bedAt(raise: number): Place {
  return (u, h, d) => turn(at(u + 0.2 * d, LEVEL - h - 0.62 * d), PIVOT, -DRAWN_TILT * raise);
}

/** The part of the bed above the hinge folds up with `headRaise`. */
function foldedAt(base: Place, hinge: number, degrees: number): Place {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return (u, h, d) => {
    const du = u - hinge;
    return du >= 0 ? base(u, h, d) : base(hinge + du * cos + h * sin, h * cos - du * sin, d);
  };
}

/** Where a straight cord from `from` meets a wheel on its upper side. */
function tangent(from: Point, center: Point, radius: number): Point {
  const reach = Math.max(distance(from, center), radius + 0.01);
  const toward = Math.atan2(from.y - center.y, from.x - center.x);
  const angle = toward + Math.acos(radius / reach);
  return at(center.x + radius * Math.cos(angle), center.y + radius * Math.sin(angle));
}

/** Where bed, child, leg, plate, wheel and bag lie in the whole picture. */
export function layoutWhole(spec: SceneSpec, view: View) {
  const build = BUILDS[spec.age];
  const slide = SLIDE * spec.slide;
  const out = spec.offLine;
  const flat = bedAt(spec.bedRaise);
  const hill = bedAt(1);
  const hipAlong = SOLE - build.leg;
  const hinge = hipAlong - 10;
  const bed = foldedAt(flat, hinge, BACKREST * spec.headRaise);

  // the lying body, then the one that climbs out: every joint runs from one to the other
  const shift = (u: number) => u + slide;
  const soleDepth = 16 * build.foot;
  const ankleHeight = 15 * build.foot + 9 * spec.heelGap;
  const hipNear = between(
    flat(shift(hipAlong), 19 * build.girth, NEAR),
    flat(shift(hipAlong) + 6, 19, NEAR - 14),
    out,
  );
  const ankleLying = flat(shift(SOLE) - soleDepth, ankleHeight, NEAR);
  const ankle = between(ankleLying, flat(shift(SOLE) - soleDepth - 8, ankleHeight - 6, 0), out);

  const hipLying = flat(shift(hipAlong) - 2, 20, 49);
  const hip = between(hipLying, plus(hipLying, at(2, 2)), out);
  const neckLying = bed(shift(hipAlong) - build.torso, 22, 49);
  const neck = between(neckLying, plus(hip, at(-14, -build.torso * 0.94)), out);

  const knee = between(
    flat(shift(hipAlong) + build.leg * 0.29, 36 + build.leg * 0.27, FAR),
    plus(hip, at(-16, 30)),
    out,
  );
  const otherAnkle = between(
    flat(shift(hipAlong) + build.leg * 0.52, 17 * build.foot, FAR),
    plus(hip, at(-18, 36 + build.leg * 0.42)),
    out,
  );
  const otherHip = between(flat(shift(hipAlong) + 4, 18, FAR - 4), plus(hip, at(-4, 8)), out);

  // the pull: one cord from the plate over the wheel to the bag
  const wheel = axleOn(flat);
  const plate = plateAt(hipNear, ankle, soleDepth, spec.plateGap, spec.plateTilt + 10 * out);
  const overWheel = tangent(plate.tie, wheel, WHEEL_RADIUS);
  const drop = at(wheel.x + WHEEL_RADIUS, wheel.y);

  // loadHeight is set by staff on the raised, unslid bed; what moves since then uses up or frees the same cord
  const usualWheel = axleOn(hill);
  const usualHip = hill(hipAlong, 19 * build.girth, NEAR);
  const usualAnkle = hill(SOLE - soleDepth, 15 * build.foot + 9, NEAR);
  const usualTie = plateAt(usualHip, usualAnkle, soleDepth, 1, 0).tie;
  const setHeight = heightSet(spec);
  const usualRun = distance(usualTie, tangent(usualTie, usualWheel, WHEEL_RADIUS));
  const cordLength = usualRun + (FLOOR - setHeight - BAG.height - usualWheel.y);
  const run = distance(plate.tie, overWheel);
  const freeTop = wheel.y + cordLength - run;
  const onSeat = spec.loadTouch === 'other';
  const rest = onSeat ? FLOOR - SEAT - BAG.height : FLOOR - BAG.height;
  const bagTop = Math.min(Math.max(freeTop, wheel.y + 14), rest);
  const slack = Math.max(0, freeTop - bagTop);
  const bagAcross = acrossOf(spec, flat, drop);
  const bag = at(drop.x + bagAcross, bagTop);

  return {
    flip: spec.side === 'left',
    view,
    build,
    bed,
    flat,
    hill,
    hinge,
    pillowFrom: hipAlong - build.torso - build.head * 2.1 - 8,
    pillowTo: hipAlong - build.torso + 6,
    hip,
    neck,
    hipNear,
    ankle,
    otherHip,
    knee,
    otherAnkle,
    soleDepth,
    plate,
    wheel,
    overWheel,
    drop,
    bag,
    /** Bag bottom above the floor. */
    room: FLOOR - BAG.height - bagTop,
    /** The bag lies on the floor or on the chair. */
    resting: rest - bagTop < 1,
    cord: { length: cordLength, toWheel: run, toBag: bagTop - wheel.y, slack },
    climbing: out,
  };
}

/** How high above the floor the bag was when the cord got its length. */
function heightSet(spec: SceneSpec): number {
  const asked = spec.loadHeight * LOAD_ROOM;
  switch (spec.loadTouch) {
    case 'none':
      return asked;
    case 'floor':
      return 0;
    case 'bed-end':
      return Math.max(asked, LOAD_ROOM * 0.9);
    case 'other':
      return Math.min(asked, SEAT - 2);
  }
}

/** How far the bag hangs aside from the plumb line. */
function acrossOf(spec: SceneSpec, flat: Place, drop: Point): number {
  if (spec.loadTouch === 'bed-end') return flat(BED.foot + 13, -32, 0).x + BAG.width / 2 - 1 - drop.x;
  if (spec.loadSwing === 1) return -13;
  return spec.cord === 'off-wheel' ? -WHEEL_RADIUS - 6 : 0;
}

/** The foot plate stands across the line of the leg, a little beyond the sole. */
function plateAt(hip: Point, ankle: Point, soleDepth: number, gap: number, tilt: number) {
  const line = angleOf(hip, ankle);
  const center = plus(ankle, turn(at(soleDepth + 6.5 + 11 * gap, -4), at(0, 0), line));
  return { center, angle: line + tilt, tie: plus(center, turn(at(5, 0), at(0, 0), line + tilt)) };
}

/** Direction of a line in degrees, clockwise on the page from pointing right. */
export const angleOf = (from: Point, to: Point): number =>
  (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;

export type WholeGeometry = ReturnType<typeof layoutWhole>;
