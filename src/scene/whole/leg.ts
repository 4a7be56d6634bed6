/** The two legs: the pulled one straight with its bandage and kneecap, the free one bent beyond it. */
import type { SceneSpec } from '../spec.ts';
import { at, between, hatch, oval, plus, smooth, straight, type Point, type Shape } from '../shapes.ts';
import type { WholeGeometry } from './layout.ts';
import { alongLimb, bow, leftOf, profile, scale, soften, tube, unit } from './limbs.ts';
import { turnEdges } from '../parts/turns.ts';
import { drawFoot } from './foot.ts';

/** Upper and lower contour of a straight leg, hip to ankle, off its line. */
const UPPER = [
  [-0.12, 20],
  [0, 21],
  [0.18, 20],
  [0.36, 16.5],
  [0.43, 15.6],
  [0.5, 17.4],
  [0.57, 15],
  [0.66, 13.6],
  [0.8, 11.4],
  [0.94, 9.2],
  [1.02, 9],
] as const;
const LOWER = [
  [-0.12, 18],
  [0, 19],
  [0.16, 18.2],
  [0.34, 15],
  [0.47, 13.7],
  [0.56, 13],
  [0.68, 14],
  [0.8, 12],
  [0.93, 8.4],
  [1.02, 8.4],
] as const;

export const KNEE = 0.5;
/** Where the bandage starts and ends as put on by staff: below the knee, whose sides and back stay free. */
export const BAND = { top: KNEE + 0.09, foot: 0.93 } as const;
/** How far an edge may slip from its line. */
const SLIP = 0.1;

/** Lines of the pulled leg, by which everything on it is placed. */
export function legFrame(spec: SceneSpec, g: WholeGeometry) {
  const girth = g.build.girth;
  const line = alongLimb(g.hipNear, g.ankle);
  const kink = (s: number) => (spec.thigh === 'bent' ? 15 * Math.max(0, 1 - Math.abs(s - 0.19) / 0.19) : 0);
  const thick = (s: number) => (spec.thigh === 'thick' ? 12 * Math.max(0, 1 - ((s - 0.14) / 0.25) ** 2) : 0);
  const tight = (s: number) => {
    const top = BAND.top + spec.bandTop * SLIP;
    return spec.bandTight * 2.6 * Math.max(0, 1 - Math.abs(s - top + 0.035) / 0.04);
  };
  return {
    upper: (s: number, extra = 0) =>
      line(s, profile(UPPER, s) * girth + thick(s) + kink(s) + tight(s) + extra),
    lower: (s: number, extra = 0) =>
      line(s, -profile(LOWER, s) * girth - thick(s) * 0.5 + kink(s) - tight(s) * 0.6 - extra),
    line,
  };
}

const steps = (from: number, to: number, count: number) =>
  Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);

/** The outline of a stretch of the pulled leg. */
export function stretch(
  spec: SceneSpec,
  g: WholeGeometry,
  from: number,
  to: number,
  extra = 0,
  count = 10,
): Point[] {
  const frame = legFrame(spec, g);
  const along = steps(from, to, count);
  return [...along.map((s) => frame.upper(s, extra)), ...along.reverse().map((s) => frame.lower(s, extra))];
}

function bandage(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const frame = legFrame(spec, g);
  const top = BAND.top + spec.bandTop * SLIP;
  const foot = BAND.foot - spec.bandFoot * SLIP;
  const across = (s: number, lean: number): [Point, Point, Point] => [
    frame.upper(s - lean, -1),
    frame.line(s + 0.024, 0),
    frame.lower(s + lean, -1.6),
  ];
  const turns = turnEdges(top, foot, 0.048).map((s) => bow(...across(s, 0.02)));
  const edge = stretch(spec, g, top, foot, 1.8, 7);
  const shapes: Shape[] = [];
  // pen lines stay where staff drew them
  shapes.push({
    d: [BAND.top, BAND.foot].map((s) => straight([frame.upper(s, 2), frame.lower(s, 2)])).join(''),
    line: 'pen',
    weight: 2,
    dash: '4 3',
  });
  shapes.push({ d: smooth(edge, true, 0.5), fill: 'band', line: 'ink' });
  if (spec.bandWet > 0.02) {
    const from = foot - (foot - top) * 0.72 * spec.bandWet;
    const field = stretch(spec, g, from, foot - 0.01, 0.6, 6);
    shapes.push(
      { d: smooth(field, true, 0.8), fill: 'wet' },
      { d: hatch(field, 6, 70), line: 'ink', weight: 1 },
    );
  }
  shapes.push({ d: turns.join(''), line: 'band-shade', weight: 2.2 });
  const shade = [
    ...steps(top + 0.02, foot - 0.06, 3).map((s) => frame.lower(s, -0.6)),
    ...steps(foot - 0.06, top + 0.02, 3).map((s) => frame.line(s, -7)),
  ];
  shapes.push({ d: smooth(shade, true, 0.8), fill: 'band-shade' });
  if (spec.bandStain !== 'none') {
    const spot = [
      frame.line(0.66, 7),
      frame.line(0.72, 8),
      frame.line(0.79, 3),
      frame.line(0.76, -6),
      frame.line(0.69, -7),
      frame.line(0.63, -1),
    ];
    shapes.push(
      { d: smooth(spot, true), fill: spec.bandStain === 'red' ? 'red' : 'brown', line: 'ink', weight: 1.4 },
      { d: hatch(spot, 4, 20), line: 'ink', weight: 1 },
    );
  }
  if (spec.bandWrinkle > 0) {
    const rows = steps(top + 0.05, top + 0.09 + 0.06 * spec.bandWrinkle, spec.bandWrinkle + 1);
    const fold = (s: number) =>
      smooth([
        frame.upper(s, 3),
        frame.line(s + 0.02, 8),
        frame.line(s - 0.02, 2),
        frame.line(s + 0.02, -5),
        frame.lower(s - 0.01, 3),
      ]);
    shapes.push({ d: rows.map(fold).join(''), line: 'ink', weight: 1.8 });
  }
  if (spec.bandGap > 0) {
    const gaps = [0.62, 0.74].slice(0, spec.bandGap);
    shapes.push({
      d: gaps
        .map((s) =>
          smooth(
            [frame.line(s, 9), frame.line(s + 0.03, 1), frame.line(s, -8), frame.line(s - 0.025, 0)],
            true,
          ),
        )
        .join(''),
      fill: 'skin',
      line: 'ink',
      weight: 1.6,
    });
  }
  shapes.push({ d: bow(...across(top + 0.022, 0.004)), line: 'ink', weight: 1.4 });
  return shapes;
}

/** The bare kneecap tells how the leg is rolled. */
function kneecap(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const frame = legFrame(spec, g);
  const down = (spec.legRoll / 45) * 15;
  const middle = frame.line(KNEE, 11 * g.build.girth - down);
  const along = unit(g.hipNear, g.ankle);
  const up = leftOf(along);
  const side = (s: number, curve: number) =>
    smooth([
      plus(middle, plus(scale(along, s), scale(up, 5.5))),
      plus(middle, scale(along, s * curve)),
      plus(middle, plus(scale(along, s * 0.7), scale(up, -6))),
    ]);
  return [
    {
      d: oval(middle, 10, 5.8, (Math.atan2(along.y, along.x) * 180) / Math.PI),
      fill: 'skin',
      line: 'ink',
      weight: 1.7,
    },
    { d: side(-13.5, 1.05) + side(13.5, 1.05), line: 'soft', weight: 1.4 },
  ];
}

function pad(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const frame = legFrame(spec, g);
  const ease = 1 - 0.35 * (1 - spec.heelGap);
  const top = steps(0.58, 0.88, 3).map((s) => frame.lower(s, 0));
  const [a, b] = [top[0]!, top[3]!];
  const floor = [plus(b, at(4, 8 * ease + 5)), plus(between(a, b, 0.5), at(0, 8.5)), plus(a, at(-4, 7))];
  return [{ d: smooth([...top, ...floor], true, 0.6), fill: 'pad', line: 'ink' }];
}

/** The strips at both sides of the foot that carry the pull from bandage to plate. */
function strap(g: WholeGeometry, near: boolean): Shape[] {
  const line = alongLimb(g.hipNear, g.ankle);
  const lift = near ? at(0, 0) : at(4, -11);
  const from = plus(line(0.86, -1), lift);
  const to = plus(g.plate.center, plus(lift, at(-2, 3)));
  const side = scale(leftOf(unit(from, to)), 4.6);
  const strip = [plus(from, side), plus(to, side), plus(to, scale(side, -1)), plus(from, scale(side, -1))];
  return [{ d: straight(strip, true), fill: 'band', line: 'ink', weight: 1.8 }];
}

/** The pulled leg with its bandage. */
export function drawPulledLeg(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const skin = stretch(spec, g, -0.1, 1, 0, spec.thigh === 'usual' && spec.bandTight === 0 ? 8 : 14);
  const shapes: Shape[] = [
    ...pad(spec, g),
    { d: smooth(skin, true, 0.8), fill: 'skin', line: 'ink' },
    ...strap(g, false),
    ...drawFoot(g.hipNear, g.ankle, {
      bigToe: 'away',
      pitch: spec.footPitch,
      roll: spec.legRoll,
      size: g.build.foot,
      swell: spec.swell,
      toneShift: spec.toneShift,
    }),
    ...thighChange(spec, g),
    ...strap(g, true),
    ...bandage(spec, g),
    ...kneecap(spec, g),
  ];
  return shapes;
}

function thighChange(spec: SceneSpec, g: WholeGeometry): Shape[] {
  if (spec.thigh === 'usual') return [];
  const frame = legFrame(spec, g);
  if (spec.thigh === 'stained') {
    const spot = [
      frame.line(0.12, 10),
      frame.line(0.2, 13),
      frame.line(0.29, 6),
      frame.line(0.27, -6),
      frame.line(0.19, -12),
      frame.line(0.11, -3),
    ];
    return [
      { d: smooth(spot, true), fill: 'red', line: 'ink', weight: 1.6 },
      { d: hatch(spot, 4, 30), line: 'ink', weight: 1.1 },
    ];
  }
  const field = stretch(spec, g, 0.06, 0.34, -3, 5);
  return [{ d: hatch(field, 5.5, 55), line: 'ink', weight: 1.3 }];
}

/** The free leg. */
export function drawOtherLeg(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const k = g.build.girth;
  const spine = soften(g.otherHip, g.knee, g.otherAnkle);
  // the shin narrows once more under the foot, which is laid over it
  const shin = unit(spine[3]!, g.otherAnkle);
  const end = [plus(g.otherAnkle, scale(shin, -11 * g.build.foot)), plus(g.otherAnkle, scale(shin, 3))];
  const leg = tube(
    [...spine.slice(0, 4), ...end],
    [20 * k, 17.5 * k, 14.5 * k, 13 * k, 9.7 * g.build.foot, 5],
  );
  const shapes: Shape[] = [
    { d: smooth(leg, true, 0.9), fill: 'skin', line: 'ink' },
    ...drawFoot(spine[3]!, g.otherAnkle, {
      bigToe: 'towards',
      // at rest the free foot points a little
      pitch: g.climbing > 0.5 ? 8 : 22,
      roll: 0,
      size: g.build.foot * 0.95,
      swell: 0,
      toneShift: 'none',
    }),
  ];
  const cap = between(spine[1]!, spine[3]!, 0.5);
  const over = unit(cap, g.knee);
  const crown = plus(g.knee, scale(over, 2));
  shapes.push({
    d: smooth([plus(crown, at(-8, 4)), plus(crown, at(-1, -1)), plus(crown, at(6, 6))]),
    line: 'soft',
    weight: 1.4,
  });
  if (spec.mark === 'other-leg') {
    const shin = [between(g.knee, g.otherAnkle, 0.1), between(g.knee, g.otherAnkle, 0.8)];
    const field = tube([shin[0]!, between(shin[0]!, shin[1]!, 0.5), shin[1]!], [12 * k, 12.5 * k, 8.5 * k]);
    shapes.push({ d: hatch(field, 5, 15), line: 'ink', weight: 1.5 });
  }
  return shapes;
}
