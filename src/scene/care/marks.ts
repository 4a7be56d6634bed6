/**
 * What a care card points at in a scene, drawn over it: a ring, an arrow, a hand of the staff. Each is worked out
 * for one side, from the layout's own points, so that it meets what it shows at every age; `pictures.ts` mirrors it.
 */
import { layoutBandage } from '../close/bandage.ts';
import { layoutBedEnd } from '../close/bed-end.ts';
import { layoutFoot } from '../close/foot.ts';
import { layoutHeel } from '../close/heel.ts';
import { layoutKnee } from '../close/knee.ts';
import { arc, profile } from '../close/strokes.ts';
import { layoutThigh } from '../close/thigh.ts';
import { brush } from '../play/brush.ts';
import { at, mix, oval, smooth, straight, type Point, type Shape, VIEW } from '../shapes.ts';
import type { SceneSpec } from '../spec.ts';
import { handFrom } from '../topics/people.ts';
import { arrow } from '../topics/things.ts';
import { BED, layoutWhole } from '../whole/layout.ts';

const ink = brush();
const HEAVY = 5;
const HEAD = 13;

const dashedRing = (c: Point, rx: number, ry: number): Shape => ({
  d: oval(c, rx, ry),
  line: 'mark',
  weight: 4,
  dash: '10 8',
});
const way = (...flat: number[]) => arrow(flat, HEAVY, 'mark', HEAD);
/** An arrow with a head at each end. */
const bothWays = (a: Point, b: Point) => [...way(b.x, b.y, a.x, a.y), ...way(a.x, a.y, b.x, b.y)];
const dashedLine = (...points: Point[]): Shape => ({
  d: straight(points),
  line: 'mark',
  weight: 3.4,
  dash: '10 8',
});

/** The bandage on its roll, where the next turn begins, in the hand of the staff. */
function winding(spec: SceneSpec): Shape[] {
  const g = layoutBandage(spec, VIEW);
  const [upper, lower] = [profile(g.front), profile(g.back)];
  const x = g.edgeTop.x;
  const roll = at(x - 46, upper(x) - 34);
  const strip = [
    at(x + 4, upper(x) - 4),
    at(x - 2, mix(upper(x), lower(x), 0.4)),
    at(roll.x - 22, roll.y + 14),
  ];
  return [
    { d: smooth([...strip, at(roll.x + 14, roll.y - 20)], true, 0.3), fill: 'band', line: 'ink' },
    ...handFrom('staff', 'rest', [roll.x - 58, roll.y - 34, 74, 24], [0, -10], 1),
    { d: oval(roll, 32, 32), fill: 'band', line: 'ink' },
    {
      d: smooth(
        Array.from({ length: 15 }, (_, i) => {
          const [a, r] = [(i * 50 * Math.PI) / 180, 26 - i * 1.55];
          return at(roll.x + r * Math.cos(a), roll.y + r * Math.sin(a));
        }),
      ),
      line: 'band-shade',
      weight: 2.6,
    },
    ...way(...[roll.x + 40, roll.y - 26, roll.x + 66, roll.y - 34, roll.x + 92, roll.y - 26]),
  ];
}

/** One turn is as wide as two edges are apart, so each lies half on the one before: the half is hatched. */
function halfOverlap(spec: SceneSpec): Shape[] {
  const g = layoutBandage(spec, VIEW);
  const [upper, lower] = [profile(g.front), profile(g.back)];
  const PITCH = 34;
  const [a, b, c] = [g.edgeFoot.x - 4 * PITCH, g.edgeFoot.x - 3 * PITCH, g.edgeFoot.x - 2 * PITCH];
  const top = Math.min(upper(a), upper(b), upper(c)) - 26;
  const tick = (x: number, long: number) => [x, top - long, x, top + long];
  return [
    {
      d: smooth(
        [at(a, upper(a) - 5), at(b, upper(b) - 5), at(b, lower(b) + 5), at(a, lower(a) + 5)],
        true,
        0.08,
      ),
      line: 'mark',
      weight: 3.4,
      dash: '10 8',
    },
    {
      d: smooth(
        [at(b, upper(b) - 5), at(c, upper(c) - 5), at(c, lower(c) + 5), at(b, lower(b) + 5)],
        true,
        0.08,
      ),
      line: 'mark',
      weight: 3.4,
      dash: '10 8',
    },
    ink.rule([[a, top, c, top], tick(a, 12), tick(b, 8), tick(c, 12)], 4.4, 'mark'),
  ];
}

function kneeGap(spec: SceneSpec): Shape[] {
  const g = layoutBandage(spec, VIEW);
  const lower = profile(g.back);
  return [dashedRing(at(96, lower(96) - 4), 66, 34), ...way(...[92, 346, 94, 326, 95, lower(96) + 42])];
}

function kneecap(spec: SceneSpec): Shape[] {
  const { kneecap: cap } = layoutKnee(spec, VIEW);
  return [dashedRing(at(cap.x, cap.y), 58, 46)];
}

/** The leg lies between two straight lines, from thigh to foot plate. */
const line = (): Shape[] => [118, 362].map((x) => dashedLine(at(x, 14), at(x, 346)));

function loadLowered(spec: SceneSpec): Shape[] {
  const { bag } = layoutBedEnd(spec);
  const low = Math.max(...bag.outline.map((p) => p.y));
  return [
    ...handFrom('staff', 'rest', [bag.middle.x + 66, low - 6, 66, 176], [480, low - 40], 1),
    ...way(bag.middle.x - 62, low - 64, bag.middle.x - 62, low - 30, bag.middle.x - 62, low + 6),
  ];
}

function loadFree(spec: SceneSpec): Shape[] {
  const { bag } = layoutBedEnd(spec);
  const low = Math.max(...bag.outline.map((p) => p.y));
  const left = Math.min(...bag.outline.map((p) => p.x));
  const beside = bag.middle.y + 6;
  return [
    ...bothWays(at(bag.middle.x, low + 8), at(bag.middle.x, bag.shadow.y - 4)),
    ...bothWays(at(244, beside), at(left - 6, beside)),
  ];
}

function cordOnWheel(spec: SceneSpec): Shape[] {
  const { axle, radius } = layoutBedEnd(spec);
  return [
    dashedRing(axle, radius + 20, radius + 20),
    ...way(172, axle.y - radius - 34, 210, axle.y - radius - 34, 246, axle.y - radius - 34),
  ];
}

function pullHeld(spec: SceneSpec): Shape[] {
  const g = layoutBedEnd(spec);
  const { ankle, heel } = { ankle: g.bandEdge, heel: g.foot.heel };
  return [
    ...handFrom('staff', 'rest', [heel.x + 34, heel.y + 30, 62, 214], [heel.x + 150, 262], 1),
    ...way(
      ankle.x + 92,
      g.axle.y - g.radius - 40,
      ankle.x + 140,
      g.axle.y - g.radius - 40,
      ankle.x + 186,
      g.axle.y - g.radius - 40,
    ),
  ];
}

function heelFree(spec: SceneSpec): Shape[] {
  const { heel } = layoutHeel(spec, VIEW).foot;
  return [dashedRing(at(heel.x, heel.y + 12), 66, 38), ...way(heel.x, 350, heel.x, 336, heel.x, heel.y + 62)];
}

function footEnd(spec: SceneSpec): Shape[] {
  const { flat } = layoutWhole(spec, VIEW);
  const end = flat(BED.foot, 4, BED.depth);
  const [low, high] = [flat(BED.head, -BED.thick, 0), flat(BED.foot, -BED.thick, 0)];
  return [
    ...way(end.x + 2, end.y - 30, end.x + 2, end.y - 60, end.x + 2, end.y - 96),
    dashedLine(low, at(high.x, low.y)),
    ...way(high.x - 74, low.y - 2, high.x - 74, (low.y + high.y) / 2, high.x - 74, high.y + 6),
  ];
}

function footEndAndLoad(spec: SceneSpec): Shape[] {
  const { bag } = layoutWhole(spec, VIEW);
  return [...footEnd(spec), dashedRing(at(bag.x, bag.y + 34), 40, 48)];
}

/** Where the body lies heaviest: lower back and hips. */
function hips(spec: SceneSpec): Shape[] {
  const { hip } = layoutWhole(spec, VIEW);
  return [dashedRing(at(hip.x - 4, hip.y + 18), 52, 40)];
}

function smallLift(spec: SceneSpec): Shape[] {
  const { hip } = layoutWhole(spec, VIEW);
  return [...way(hip.x - 6, hip.y - 50, hip.x - 6, hip.y - 80, hip.x - 6, hip.y - 112)];
}

/** A clock on which half a minute is marked, over the bed. */
function halfMinute(spec: SceneSpec): Shape[] {
  const { flip } = layoutWhole(spec, VIEW);
  const c = at(150, 70);
  const R = 52;
  // mirrored with the picture, the marked half must still be the first one
  const half = arc(c, R - 8, flip ? 270 : -90, flip ? 90 : 90, 12);
  return [
    { d: oval(c, R, R), fill: 'sheet', line: 'ink', weight: 3.4 },
    { d: smooth(half) + 'Z', fill: 'mark' },
    {
      d: [0, 90, 180, 270]
        .map((a) => (a * Math.PI) / 180)
        .map((a) => straight([1, 0.84].map((k) => at(c.x + Math.cos(a) * R * k, c.y + Math.sin(a) * R * k))))
        .join(''),
      line: 'ink',
      weight: 3,
    },
    { d: straight([at(c.x, c.y - R * 0.78), c, at(c.x, c.y + R * 0.78)]), line: 'ink', weight: 5 },
  ];
}

function roomForFoot(spec: SceneSpec): Shape[] {
  const g = layoutFoot(spec);
  const c = g.ankle;
  const toes = g.foot.outline.reduce((a, b) => (b.y < a.y ? b : a));
  const r = Math.hypot(toes.x - c.x, toes.y - c.y) + 18;
  const middle = (Math.atan2(toes.y - c.y, toes.x - c.x) * 180) / Math.PI;
  const flat = (points: readonly Point[]) => points.flatMap((p) => [p.x, p.y]);
  const held = (points: readonly Point[]) => points.map((p) => at(p.x, Math.max(12, p.y)));
  return [
    ...way(...flat(held(arc(c, r, middle - 2, middle + 16, 4)))),
    ...way(...flat(held(arc(c, r, middle - 8, middle - 26, 4)))),
  ];
}

function straps(spec: SceneSpec): Shape[] {
  const g = layoutFoot(spec);
  return [dashedRing(at((g.tapeStart.x + g.plateMiddle.x) / 2, g.plateMiddle.y), 104, 34)];
}

/** Hands of the staff below thigh and knee. */
function legHeld(spec: SceneSpec): Shape[] {
  const g = layoutThigh(spec, VIEW);
  const lower = profile(g.back);
  return [
    ...handFrom('staff', 'rest', [176, lower(220) + 14, 96, -6], [60, 372], -1),
    ...handFrom('staff', 'rest', [432, lower(390) + 22, 92, 186], [500, 372], 1),
  ];
}

/** A hand of the staff shows the place. */
function skinSpot(spec: SceneSpec): Shape[] {
  const { foot } = layoutHeel(spec, VIEW);
  const c = foot.ankleMiddle;
  return [dashedRing(at(c.x, c.y + 8), 78, 60)];
}

const MARKS = {
  winding,
  'half-overlap': halfOverlap,
  'knee-gap': kneeGap,
  kneecap,
  line,
  'load-lowered': loadLowered,
  'load-free': loadFree,
  'cord-on-wheel': cordOnWheel,
  'pull-held': pullHeld,
  'heel-free': heelFree,
  'foot-end': footEnd,
  'foot-end-and-load': footEndAndLoad,
  hips,
  'small-lift': smallLift,
  'half-minute': halfMinute,
  'room-for-foot': roomForFoot,
  straps,
  'leg-held': legHeld,
  'skin-spot': skinSpot,
} as const satisfies Record<string, (spec: SceneSpec) => Shape[]>;

/** What a step may point at. */
export type CareMark = keyof typeof MARKS;
export const CARE_MARKS = Object.keys(MARKS) as CareMark[];

/** The marks of one step as shapes from back to front, for the side the layouts are worked out for. */
export const drawMark = (mark: CareMark, spec: SceneSpec): Shape[] => MARKS[mark](spec);
