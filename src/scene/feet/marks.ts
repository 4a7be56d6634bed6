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
} from '../shapes.ts';
import { MIDDLE, APART, type FeetGeometry, type Foot } from './layout.ts';
import { dots } from './foot.ts';
import { rays } from './pull.ts';

const centre = MIDDLE + APART;

/** Arcs below each toe. Toes that do not wave keep their arcs, crossed out. */
export function drawWaving(spec: SceneSpec, foot: Foot): Shape[] {
  const still = spec.wiggle <= 0.05;
  const reach = still ? 1 : spec.wiggle;
  const arc = (toe: Foot['toes'][0], k: number) => {
    const wide = toe.width * (0.3 + 0.1 * k);
    const y = toe.tip.y + mix(5, 8, reach) + k * mix(5, 8, reach);
    return smooth([at(toe.tip.x - wide, y - 5), at(toe.tip.x, y), at(toe.tip.x + wide, y - 5)]);
  };
  const rows = still || reach > 0.3 ? [0, 1] : [0];
  const arcs: Shape = {
    d: rows.flatMap((k) => foot.toes.map((toe) => arc(toe, k))).join(''),
    line: still ? 'soft' : 'mark',
    weight: still ? 2.2 : 3,
  };
  if (!still) return [arcs];
  const y = foot.toes[1]!.tip.y + 8;
  const cross =
    straight([at(centre - 62, y - 22), at(centre + 56, y + 38)]) +
    straight([at(centre - 62, y + 38), at(centre + 56, y - 22)]);
  return [arcs, { d: cross, line: 'white', weight: 12 }, { d: cross, line: 'mark', weight: 7 }];
}

/** Prickles round numb toes. */
export function drawPrickles(foot: Foot): Shape[] {
  const d = foot.toes.flatMap((toe, i) =>
    [-1, 0, 1].map((k) => {
      const away = turn(at(toe.tip.x, toe.tip.y + 9), toe.tip, -k * 38 + (2 - i) * 4);
      const far = turn(at(toe.tip.x, toe.tip.y + (k === 0 ? 24 : 20)), toe.tip, -k * 38 + (2 - i) * 4);
      const side = turn(between(away, far, 0.5), away, 22);
      return straight([away, side, plus(far, at(0, 0))]);
    }),
  );
  return [{ d: d.join(''), line: 'mark', weight: 2.6 }];
}

const crystal = (p: Point, r: number): string =>
  [0, 60, 120].map((a) => straight([turn(at(p.x, p.y - r), p, a), turn(at(p.x, p.y + r), p, a)])).join('');

/** Cold toes: short level waves across them, cold marks beside them and a hand that feels with its back. */
export function drawCold(foot: Foot, level: 1 | 2): Shape[] {
  const toeWaves = foot.toes.flatMap((toe) => {
    const rows = level === 2 ? [0.02, 0.2, 0.38] : [0.3];
    return rows.map((s) => {
      const p = between(toe.base, toe.tip, s);
      const w = toe.width * 0.36;
      return smooth([
        at(p.x - w, p.y),
        at(p.x - w / 2, p.y - 3),
        p,
        at(p.x + w / 2, p.y + 3),
        at(p.x + w, p.y),
      ]);
    });
  });
  const ankle = foot.outerAnkle.y;
  const places =
    level === 2
      ? [
          at(centre + 100, ankle + 20),
          at(centre + 72, ankle - 8),
          at(centre - 98, ankle + 24),
          at(centre - 68, ankle - 4),
        ]
      : [at(centre + 88, ankle + 10)];
  const marks = places.map((p, i) => crystal(p, (level === 2 ? 15 : 11) - (i % 2) * 4)).join('');
  return [
    { d: toeWaves.join(''), line: 'ink', weight: level === 2 ? 2 : 1.6 },
    { d: marks, line: 'ink', weight: level === 2 ? 6.5 : 5 },
    { d: marks, line: 'wet', weight: level === 2 ? 3 : 2 },
    ...drawHand(foot),
  ];
}

/** A helper's hand from the side, palm down and away from the toes; its back lies against them. */
export function drawHand(foot: Foot): Shape[] {
  const from = foot.toes[0]!.tip;
  const to = foot.toes[4]!.tip;
  const angle = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const place = (x: number, y: number) => {
    const p = turn(at(from.x + x, from.y + y + 4), from, angle * 0.62);
    return at(Math.max(3, Math.min(477, p.x)), Math.max(3, Math.min(357, p.y)));
  };
  const pts = (list: readonly (readonly [number, number])[]) => list.map(([x, y]) => place(x, y));
  const behind = pts([
    [-30, 6],
    [-20, -2],
    [0, -1],
    [40, -4],
    [60, 10],
    [20, 22],
    [-22, 20],
  ]);
  const hand = pts([
    [150, -6],
    [118, -10],
    [92, -9],
    [64, -3],
    [36, 1],
    [8, 2],
    [-12, 6],
    [-17, 15],
    [-8, 22],
    [14, 21],
    [44, 22],
    [66, 26],
    [92, 40],
    [124, 42],
    [152, 36],
  ]);
  const thumb = pts([
    [104, 28],
    [84, 32],
    [60, 36],
    [36, 38],
    [28, 44],
    [36, 51],
    [62, 51],
    [90, 47],
    [112, 42],
  ]);
  const sleeve = pts([
    [142, -14],
    [210, -30],
    [210, 60],
    [144, 44],
  ]);
  return [
    { d: smooth(behind, true), fill: 'hand', line: 'ink' },
    { d: smooth(hand, true, 0.9), fill: 'hand', line: 'ink' },
    {
      d:
        smooth(
          pts([
            [62, 2],
            [58, 8],
          ]),
        ) +
        smooth(
          pts([
            [28, 6],
            [25, 12],
          ]),
        ),
      line: 'ink',
      weight: 1.5,
    },
    { d: smooth(thumb), fill: 'hand', line: 'ink' },
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
      const patch = Array.from({ length: 9 }, (_, i) => turn(at(p.x + (i % 2 ? 13 : 16), p.y), p, i * 40));
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
    case 'other-leg':
      return rays(at(g.other.outerAnkle.x, g.other.outerAnkle.y - 20), 30, 50, 12);
    default:
      return [];
  }
}
export { dots };
