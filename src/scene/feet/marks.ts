/** What tells of a change without words: arcs of waving toes, prickles, cold, a feeling hand, an arrow. */
import type { SceneSpec } from '../spec.ts';
import {
  at,
  between,
  hatch,
  mix,
  oval,
  plus,
  smooth,
  straight,
  turn,
  type Point,
  type Shape,
  pointsOf,
  ring,
} from '../shapes.ts';
import { alongSide, MIDDLE, APART, type FeetGeometry, type Foot, type Toe } from './layout.ts';
import { bend, coarse, onward } from './curves.ts';
import { rays } from './pull.ts';

const centre = MIDDLE + APART;

/** One or two arcs below each toe; `reach` 0–1 is how far it waves. */
function arcsBelow(foot: Foot, reach: number): string {
  const arc = (toe: Toe, k: number): string => {
    const wide = toe.width * (0.32 + 0.11 * k) * mix(0.6, 1, reach);
    const y = toe.tip.y + 4 + (k + 1) * mix(3, 7, reach);
    const lift = mix(3, 8, reach);
    return bend([at(toe.tip.x - wide, y - lift), at(toe.tip.x, y), at(toe.tip.x + wide, y - lift)]);
  };
  return (reach > 0.3 ? [0, 1] : [0]).flatMap((k) => foot.toes.map((toe) => arc(toe, k))).join('');
}

/** Numb or tight toes are told by their own marks, which arcs would clutter. */
const hasOwnMarks = (spec: SceneSpec): boolean => spec.mark === 'numb-dots' || spec.swell === 2;

/**
 * Quiet arcs below each toe of the pulled foot that waves. Where none waves the arcs are empty and
 * crossed out: below the toes, because a cross on a foot would forbid something.
 */
export function drawWaving(spec: SceneSpec, foot: Foot): Shape[] {
  if (spec.wiggle <= 0.05) return drawStill(foot);
  if (hasOwnMarks(spec)) return [];
  return [{ d: arcsBelow(foot, spec.wiggle), line: 'soft', weight: 3.2 }];
}

/** The free foot waves whenever the child is asked to, so that a still foot is seen beside a waving one. */
export function drawOtherWaving(spec: SceneSpec, foot: Foot): Shape[] {
  // beside a hand that feels, waving would distract
  if (hasOwnMarks(spec) || spec.coolMark > 0 || spec.otherCoolMark > 0) return [];
  return [{ d: arcsBelow(foot, 1), line: 'soft', weight: 3.2 }];
}

function drawStill(foot: Foot): Shape[] {
  const middle = foot.toes[2]!.tip;
  const stroke = [-1, 1]
    .map((k) =>
      straight([at(middle.x - 15, middle.y + 23 - 15 * k), at(middle.x + 15, middle.y + 23 + 15 * k)]),
    )
    .join('');
  return [
    { d: arcsBelow(foot, 1), line: 'ink', weight: 2, dash: '2 5' },
    { d: stroke, line: 'white', weight: 14 },
    { d: stroke, line: 'mark', weight: 7 },
  ];
}

/** Numb toes prickle: a jagged spark from the tip of each. */
export function drawPrickles(foot: Foot): Shape[] {
  const zig = [at(-5, 0), at(6, 9), at(-5, 18), at(5, 29)];
  const starts = foot.toes.flatMap((toe, i) =>
    (i === 0 ? [-13, 11] : [0]).map((dx) => at(Math.min(466, toe.tip.x + dx + (i ? 2 : 0)), toe.tip.y + 5)),
  );
  const sparks = starts.map((start) =>
    straight(zig.map((p) => at(start.x + p.x, Math.min(start.y + p.y, 356)))),
  );
  return [{ d: sparks.join(''), line: 'mark', weight: 4.4 }];
}

const crystal = (p: Point, r: number): string =>
  [0, 60, 120].map((a) => straight([turn(at(p.x, p.y - r), p, a), turn(at(p.x, p.y + r), p, a)])).join('');

/** Cold toes, beside the hatching on them: cold marks and a hand that feels with its back. */
export function drawCold(foot: Foot, level: 1 | 2): Shape[] {
  const ankle = foot.outerAnkle.y;
  const places =
    level === 2
      ? [
          at(centre + 99, ankle + 24),
          at(centre + 74, ankle - 14),
          at(centre - 99, ankle + 24),
          at(centre - 74, ankle - 14),
        ]
      : [at(centre + 92, ankle + 14), at(centre + 72, ankle - 18)];
  const marks = coarse(places.map((p, i) => crystal(p, (level === 2 ? 18 : 13) - (i % 2) * 3)).join(''));
  return [
    { d: marks, line: 'ink', weight: level === 2 ? 7.5 : 6 },
    { d: marks, line: 'wet', weight: level === 2 ? 3.6 : 2.6 },
    ...drawHand(foot),
  ];
}

/** A helper's hand from the side, palm down and away from the toes; its back lies against them. */
function drawHand(foot: Foot): Shape[] {
  const from = foot.toes[0]!.tip;
  const to = foot.toes[4]!.tip;
  const angle = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const place = (x: number, y: number) => {
    const p = turn(at(from.x + x, from.y + y + 4), from, angle * 0.8);
    return at(Math.max(3, Math.min(477, p.x)), Math.max(3, Math.min(357, p.y)));
  };
  const pts = (numbers: string) => pointsOf(numbers).map((p) => place(p.x, p.y));
  const hand = pts(
    '150 -8 118 -12 92 -10 58 -3 10 0 -18 3 -34 12 -38 22 -31 29 -20 24 -6 20 32 21 60 27 90 41 124 44 152 38',
  );
  const behind = pts('60 -6 20 -4 -26 -2 -46 8 -53 19 -46 27 -30 20 20 14');
  const thumb = pts('106 28 84 31 60 35 38 37 28 43 34 51 60 52 90 49 114 43');
  const knuckles = smooth(pts('64 0 60 8')) + smooth(pts('22 4 19 11'));
  const thumbNail = pts('31 41 40 39 44 44 36 47');
  const sleeve = pts('142 -15 210 -32 210 60 146 47');
  return [
    { d: coarse(smooth(behind, true)), fill: 'hand', line: 'ink' },
    { d: coarse(smooth(hand, true, 0.9)), fill: 'hand', line: 'ink' },
    { d: knuckles, line: 'ink', weight: 1.5 },
    { d: coarse(smooth(thumb)), fill: 'hand', line: 'ink' },
    { d: coarse(smooth(thumbNail, true)), fill: 'sheet', line: 'ink', weight: 1.3 },
    { d: straight(sleeve, true), fill: 'pad', line: 'ink' },
  ];
}

/** The arrow of "pull your foot up": full when it follows, empty and dashed when not. */
export function drawLift(spec: SceneSpec): Shape[] {
  if (spec.lift === 'not-asked') return [];
  const arrow = [at(0, -42), at(18, -16), at(8, -16), at(8, 40), at(-8, 40), at(-8, -16), at(-18, -16)].map(
    (p) => plus(p, at(MIDDLE, 112)),
  );
  return spec.lift === 'follows'
    ? [{ d: straight(arrow, true), fill: 'mark', line: 'ink' }]
    : [{ d: straight(arrow, true), fill: 'white', line: 'ink', dash: '6 5' }];
}

/** Marks at ankle, heel and the other leg. */
export function drawPlaces(spec: SceneSpec, g: FeetGeometry): Shape[] {
  const { outerAnkle, innerAnkle } = g.pulled;
  switch (spec.mark) {
    case 'skin-patch': {
      const p = plus(outerAnkle, at(0, 2));
      const patch = ring(p, 15, 13, 25, 9).map((q, i) => between(p, q, [1, 0.86, 1.1][i % 3]!));
      return [
        { d: smooth(patch, true), fill: 'skin-shade', line: 'ink', weight: 1.8 },
        { d: hatch(patch, 5, 30), line: 'ink', weight: 1.4 },
        { d: oval(p, 23, 23), line: 'mark', weight: 2.6, dash: '5 5' },
      ];
    }
    case 'heel-rays':
      return [
        ...rays(plus(outerAnkle, at(-2, 10)), 22, 40, 6, -60, 120),
        ...rays(plus(innerAnkle, at(2, 16)), 22, 40, 6, 120, 120),
      ];
    default:
      return [];
  }
}

/** Radii of an uneven field. */
const UNEVEN = [1, 0.86, 1.05, 0.94, 1.08, 0.82, 0.98, 1.06, 0.88, 1.02, 0.92, 1.04] as const;

/** The free leg sore and swollen at its ankle, as for a foot on our right: form, field, hatching and rays. */
export function drawSoreOther(foot: Foot): Shape[] {
  const y = foot.outerAnkle.y;
  const [high, low] = [Math.max(24, y - 62), y + 50];
  const [a, b] = [alongSide(foot.inner, high), alongSide(foot.outer, high)];
  const half = Math.abs(b.x - a.x) / 2;
  const middle = (a.x + b.x) / 2;
  // fullest at the ankle bones, which vanish, and back in its own line on the foot
  const side = (line: readonly Point[], way: -1 | 1, full: number) => [
    alongSide(line, high),
    at(middle + way * (half + full * 0.6), mix(high, low, 0.26)),
    at(middle + way * (half + full), mix(high, low, 0.52)),
    at(middle + way * (half + full * 0.94), mix(high, low, 0.78)),
    alongSide(line, low),
  ];
  const [left, right] = [side(foot.inner, -1, 20), side(foot.outer, 1, 26)];
  const centre = at(middle + 4, mix(high, low, 0.55));
  const sore = ring(centre, half + 7, (low - high) * 0.36, 64, UNEVEN.length).map((p, i) =>
    between(centre, p, UNEVEN[i]!),
  );
  const burst = [-1, 1].flatMap((way) =>
    [-30, -6, 18].map((angle, i) => {
      const from = at(centre.x + way * (half + 34), centre.y);
      const to = at(centre.x + way * (half + (i === 1 ? 64 : 56)), centre.y);
      return straight([turn(from, centre, way * angle), turn(to, centre, way * angle)]);
    }),
  );
  return [
    { d: smooth(left) + onward(smooth(right.slice().reverse())) + 'Z', fill: 'skin' },
    { d: smooth(left) + smooth(right), line: 'ink' },
    { d: smooth(sore, true), fill: 'flush' },
    { d: hatch(sore, 8, 45), line: 'ink', weight: 1.8 },
    { d: burst.join(''), line: 'mark', weight: 5.5 },
  ];
}
