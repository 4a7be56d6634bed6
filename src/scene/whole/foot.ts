/** A bare foot from the side, at the end of a leg: ankle, heel, instep and five toes in their order. */
import type { SceneSpec } from '../spec.ts';
import {
  at,
  between,
  hatch,
  oval,
  plus,
  ring,
  smooth,
  straight,
  turn,
  type Point,
  type Shape,
} from '../shapes.ts';
import { SWELL } from '../parts/foot.ts';
import { angleOf } from './layout.ts';
import { leftOf, scale, unit } from './limbs.ts';

export interface FootLook {
  /** The big toe of the near foot lies away from us, that of the free foot towards us. */
  bigToe: 'away' | 'towards';
  pitch: number;
  roll: number;
  size: number;
  swell: SceneSpec['swell'];
  toneShift: SceneSpec['toneShift'];
}

/** Tip, breadth and length of the toes, the big one first. */
const TOES = [
  { tip: 31, wide: 5.3, long: 9 },
  { tip: 31.5, wide: 4.1, long: 7.6 },
  { tip: 29.5, wide: 3.9, long: 7 },
  { tip: 27, wide: 3.7, long: 6.4 },
  { tip: 24, wide: 3.8, long: 6 },
] as const;

/** One step across the foot, away from us, from toe to toe. */
const ACROSS = at(2.1, -3.5);

function footFrame(from: Point, ankle: Point, look: FootLook) {
  const leg = unit(from, ankle);
  const up = leftOf(leg);
  const rolled = Math.cos((look.roll * Math.PI) / 180);
  // the shin's end keeps its direction while the foot turns about the ankle
  return (a: number, b: number, depth = 0, follows = 1): Point => {
    const flat = plus(plus(ankle, scale(up, a * look.size * rolled)), scale(leg, b * look.size));
    return plus(turn(flat, ankle, (look.pitch - 5) * follows), scale(ACROSS, depth * look.size));
  };
}

/** The foot at the end of a leg, with its toes. */
export function drawFoot(from: Point, ankle: Point, look: FootLook): Shape[] {
  const place = footFrame(from, ankle, look);
  const [near, far] = [0, 4];
  const away = look.bigToe === 'away';
  const spread = 1 + Math.abs(look.roll) / 60;
  const across = (i: number) => (away ? 4 - i : i) * spread;
  const body: Point[] = [
    away ? place(8.6, -15, 0, 0) : place(9.9, -10, 0, 0),
    place(9.6, -6, 0, 0.6),
    place(16, -2, 1.4),
    place(23, 3, far * 0.8),
    place(29, 7, away ? far : far * 0.7),
    place(30, 12, away ? far : 2),
    place(24, 15.5, away ? 3 : near),
    place(13, 13.6, near),
    place(3, 13.6, near),
    place(-8, 15.4, near),
    place(-14.5, 10, near),
    place(-14, 2, near),
    place(-9.2, -5, near, 0.5),
    away ? place(-8.4, -15, 0, 0) : place(-9.7, -10, 0, 0),
  ];
  // open towards the leg, so that shin and foot are one skin
  const shapes: Shape[] = [{ d: smooth(body), fill: 'skin', line: 'ink' }];
  const shifted = look.toneShift !== 'none';
  const wider = SWELL[look.swell];
  const order = away ? [0, 1, 2, 3, 4] : [4, 3, 2, 1, 0];
  const turned = angleOf(place(0, 0), place(10, 0)) + 90;
  const nails: string[] = [];
  const creases: string[] = [];
  for (const i of order) {
    const toe = TOES[i]!;
    const center = place(toe.tip, 9.4 - i * 0.5, across(i));
    const [rx, ry] = [toe.wide * wider * look.size, toe.long * look.size];
    shapes.push({
      d: oval(center, rx, ry, turned),
      fill: shifted ? 'shift' : 'skin',
      line: 'ink',
      weight: 1.9,
    });
    if (shifted)
      shapes.push({
        d: hatch(ring(center, rx, ry, turned), look.toneShift === 'paler' ? 4.4 : 2.8, 25),
        line: 'ink',
        weight: 1,
      });
    const nail = (t: number) => place(toe.tip + toe.long * t, 9.4 - i * 0.5 - toe.wide * 0.32, across(i));
    if (away || i === 0) nails.push(straight([nail(0.42), nail(0.6)]));
    if (look.swell === 0 && away)
      creases.push(straight([place(toe.tip - 1, 7.4, across(i)), place(toe.tip - 1.4, 9.4, across(i))]));
  }
  // the toes grow out of the foot: their roots are covered again
  const root = [0, 1, 2, 3, 4].map((i) =>
    place(TOES[i]!.tip - TOES[i]!.long * 0.78, 8.6 - i * 0.4, across(i)),
  );
  const floor = [4, 2, 0].map((i) => between(place(18, 9, across(i)), place(10, 6, across(i) * 0.6), 0.5));
  shapes.push({ d: smooth([...root, ...floor], true), fill: 'skin' });
  const wide = 2.9 * look.size;
  shapes.push(
    { d: nails.join(''), line: 'soft', weight: wide + 1.4 },
    { d: nails.join(''), line: 'nail', weight: wide },
  );
  if (creases.length > 0) shapes.push({ d: creases.join(''), line: 'soft', weight: 0.9 });
  // ankle bone
  shapes.push({
    d: smooth([place(3.5, -1.5), place(2.5, 2.5), place(-1.5, 3), place(-4, 0.5)]),
    line: 'soft',
    weight: 1.4,
  });
  return shapes;
}
