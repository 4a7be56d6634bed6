/** An arm of the child close up: upper arm, elbow, forearm and hand as one limb, with a sleeve that grows out of the gown. */
import { at, between, oval, plus, smooth, type Point, type Shape } from '../shapes.ts';
import { drawHand } from '../parts/hand.ts';
import { limb } from '../parts/points.ts';
import type { ArmLine, ChildGeometry } from './child-layout.ts';

/** A quadratic through the elbow keeps a softly bent arm one round limb. */
function softLine({ shoulder: a, elbow: b, wrist: c }: ArmLine): Point[] {
  const control = at(2 * b.x - (a.x + c.x) / 2, 2 * b.y - (a.y + c.y) / 2);
  return [0, 1 / 6, 1 / 3, 1 / 2, 2 / 3, 5 / 6, 1].map((t) => {
    const along = (p: number, q: number, r: number) =>
      (1 - t) * (1 - t) * p + 2 * t * (1 - t) * q + t * t * r;
    return at(along(a.x, control.x, c.x), along(a.y, control.y, c.y));
  });
}

const isSharp = ({ shoulder, elbow, wrist }: ArmLine): boolean => {
  const [u, v] = [at(shoulder.x - elbow.x, shoulder.y - elbow.y), at(wrist.x - elbow.x, wrist.y - elbow.y)];
  return (u.x * v.x + u.y * v.y) / (Math.hypot(u.x, u.y) * Math.hypot(v.x, v.y)) > -0.5;
};

/** Two halves and an elbow drawn as one outline: inked first, filled over the ink that lies inside. */
function bentArm(arm: ArmLine, width: number, fill: string, cloth: Shape[]): Shape[] {
  const half = (a: Point, b: Point, k: readonly number[]) =>
    smooth(
      limb(
        [a, between(a, b, 1 / 3), between(a, b, 2 / 3), b],
        k.map((v) => v * width),
      ),
      true,
      0.6,
    );
  const on = (t: number) => between(arm.shoulder, arm.elbow, t);
  const upper = half(on(0.3), arm.elbow, [1.12, 1.12, 1.08, 1]);
  const bare = half(on(0.7), arm.elbow, [1.05, 1.05, 1.03, 1]);
  const fore = half(arm.elbow, arm.wrist, [0.98, 1.04, 0.9, 0.72]);
  const joint = oval(arm.elbow, width * 1.08, width * 1.08);
  return [
    { d: upper + joint, line: 'ink', weight: 4.8 },
    { d: upper, fill },
    ...cloth,
    { d: fore, line: 'ink', weight: 4.8 },
    ...[fore, joint, bare].map((d): Shape => ({ d, fill })),
  ];
}

/** The sleeve is open at the shoulder, so that gown and sleeve are one cloth. */
function sleeve(arm: ArmLine, line: readonly Point[], width: number, g: ChildGeometry): Shape[] {
  const { chest, shoulder: w } = g;
  const half = arm.shoulder.x > chest.x ? 1 : -1;
  const [from, end] = [line[0]!, line[1]!];
  const length = Math.hypot(end.x - from.x, end.y - from.y) || 1;
  const out = at((half * (end.y - from.y)) / length, (-half * (end.x - from.x)) / length);
  const off = (p: Point, k: number) => plus(p, at(out.x * width * k, out.y * width * k));
  const top = at(chest.x + half * w * 0.56, chest.y + 0.5);
  const pit = at(chest.x + half * w * 0.84, chest.y + 54);
  const cap = off(between(from, end, 0.12), 1.3);
  const [upper, lower] = [off(end, 1.46), off(end, -1.36)];
  const cuff = plus(end, at(((end.x - from.x) / length) * 5, ((end.y - from.y) / length) * 5));
  const outer = [top, cap, upper];
  const hem = [upper, cuff, lower];
  const inner = [lower, between(lower, pit, 0.5), pit];
  return [
    { d: smooth([...outer, cuff, lower, pit], true, 0.55), fill: 'gown' },
    { d: smooth(outer, false, 0.9) + smooth(hem) + smooth(inner), line: 'ink' },
  ];
}

/** An arm along its line, with the hand at its end. */
export function drawArm(arm: ArmLine, g: ChildGeometry, fill: string): Shape[] {
  const width = g.arm;
  const hand = drawHand(arm.wrist, width * 2.85, arm.points, arm.pose, arm.thumb, fill);
  if (isSharp(arm)) {
    const cuff = between(arm.shoulder, arm.elbow, 0.56);
    return [...bentArm(arm, width, fill, sleeve(arm, [arm.shoulder, cuff], width, g)), ...hand];
  }
  const soft = softLine(arm);
  const halves = [1.14, 1.12, 1.08, 0.98, 0.84, 0.7].map((k) => k * width);
  return [
    { d: smooth(limb(soft.slice(1), halves), true, 0.8), fill, line: 'ink' },
    ...hand,
    ...sleeve(arm, [soft[0]!, soft[3]!], width, g),
  ];
}
