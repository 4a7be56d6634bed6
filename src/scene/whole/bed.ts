/** The bed: floor, frame on its lifting columns, mattress, pillow, and the outline of where the hill was. */
import type { SceneSpec } from '../spec.ts';
import { at, oval, plus, smooth, straight, type Point, type Shape } from '../shapes.ts';
import { BED, FLOOR, type WholeGeometry } from './layout.ts';

const box = (center: Point, halfWidth: number, top: number, bottom: number): Point[] => [
  at(center.x - halfWidth, top),
  at(center.x + halfWidth, top),
  at(center.x + halfWidth, bottom),
  at(center.x - halfWidth, bottom),
];

function column(g: WholeGeometry, u: number, raised = 0): Shape[] {
  const top = g.flat(u, -BED.thick - 6, 30);
  const foot = at(top.x, FLOOR - 12 - raised);
  const sleeve = Math.min(top.y + 34, foot.y - 12);
  const base = [
    at(foot.x - 19, foot.y - 4),
    at(foot.x + 19, foot.y - 4),
    at(foot.x + 19, foot.y + 3),
    at(foot.x - 19, foot.y + 3),
  ];
  return [
    { d: straight(box(foot, 4.5, sleeve - 4, foot.y), true), fill: 'metal', line: 'ink' },
    { d: straight(box(top, 9, top.y, sleeve), true), fill: 'frame', line: 'ink' },
    { d: straight(base, true), fill: 'frame', line: 'ink' },
    {
      d: oval(at(foot.x - 14, foot.y + 7), 5, 5) + oval(at(foot.x + 14, foot.y + 7), 5, 5),
      fill: 'metal',
      line: 'ink',
      weight: 1.8,
    },
  ];
}

/** A board across the end of the bed: the face that looks to the foot end, and its upper rim. */
function panel(g: WholeGeometry, u: number, thick: number, height: number, low: number): Shape[] {
  const deep = BED.depth;
  const to = u + thick;
  const face = [g.flat(to, low, 0), g.flat(to, height, 0), g.flat(to, height, deep), g.flat(to, low, deep)];
  const rim = [
    g.flat(u, height, 0),
    g.flat(u, height, deep),
    g.flat(to, height, deep),
    g.flat(to, height, 0),
  ];
  return [
    { d: straight(face, true) + straight(rim, true), fill: 'frame', line: 'ink' },
    { d: straight([g.flat(to, height - 8, 8), g.flat(to, height - 8, deep - 8)]), line: 'soft', weight: 1.4 },
  ];
}

function post(g: WholeGeometry, u: number, thick: number, height: number): Shape {
  const corners = [
    g.flat(u, -34, 0),
    g.flat(u, height - 3, 0),
    g.flat(u + 2, height, 0),
    g.flat(u + thick - 2, height, 0),
    g.flat(u + thick, height - 3, 0),
    g.flat(u + thick, -34, 0),
  ];
  return { d: smooth(corners, true, 0.25), fill: 'frame', line: 'ink' };
}

/** The blocks that staff put under the foot end; gone when it is not raised. */
function blocks(spec: SceneSpec, g: WholeGeometry): Shape[] {
  if (spec.bedRaise <= 0.1) return [];
  const high = 15 * spec.bedRaise;
  const x = g.flat(352, -BED.thick - 6, 30).x;
  const each = [-14, 14].map((dx) => [
    at(x + dx - 9.5, FLOOR - high),
    at(x + dx + 9.5, FLOOR - high),
    at(x + dx + 11.5, FLOOR + 1),
    at(x + dx - 11.5, FLOOR + 1),
  ]);
  return [{ d: each.map((block) => straight(block, true)).join(''), fill: 'plate', line: 'ink' }];
}

/** Where the raised mattress was, as one line, and one arrow down to where it is now. */
function ghost(spec: SceneSpec, g: WholeGeometry): Shape[] {
  if (spec.bedRaise > 0.9) return [];
  const far = BED.depth;
  const was = straight([g.hill(g.hinge + 92, 0, far), g.hill(BED.foot + 8, 0, far)]);
  if (spec.bedRaise >= 0.4) return [{ d: was, line: 'mark', dash: '9 7', weight: 3 }];
  const to = plus(g.flat(BED.foot - 6, 26, far), at(0, -4));
  const from = Math.max(8, to.y - 84);
  const arrow = [
    at(to.x - 8, from),
    at(to.x + 8, from),
    at(to.x + 8, to.y - 24),
    at(to.x + 22, to.y - 24),
    to,
    at(to.x - 22, to.y - 24),
    at(to.x - 8, to.y - 24),
  ];
  return [
    { d: was, line: 'mark', dash: '9 7', weight: 3 },
    { d: straight(arrow, true), fill: 'mark', line: 'ink' },
  ];
}

/** What of the bed lies behind the child: floor, frame, columns, mattress and sheet. */
export function drawBedBehind(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const fold = [g.hinge - 34, g.hinge - 14, g.hinge, g.hinge + 14];
  const along = spec.headRaise > 0.01 ? [BED.head, ...fold, BED.foot] : [BED.head, BED.foot];
  const topSheet = [
    ...along.map((u) => g.bed(u, 0, 0)),
    ...along.map((u) => g.bed(u, 0, BED.depth)).reverse(),
  ];
  const side = [...along.map((u) => g.bed(u, 0, 0)), ...along.map((u) => g.bed(u, -BED.thick, 0)).reverse()];
  const overhang = along.map((u) => g.bed(u, -8, 0));
  const frame = [
    g.flat(10, -BED.thick, 0),
    g.flat(408, -BED.thick, 0),
    g.flat(408, -BED.thick - 9, 0),
    g.flat(10, -BED.thick - 9, 0),
  ];
  const strut = [g.flat(g.hinge - 70, -BED.thick, 0), g.bed(g.hinge - 70, -BED.thick, 0)];
  const shapes: Shape[] = [
    { d: oval(at(240, FLOOR), 235, 20), fill: 'floor' },
    ...ghost(spec, g),
    ...column(g, 66),
    ...blocks(spec, g),
    ...column(g, 352, spec.bedRaise > 0.1 ? 15 * spec.bedRaise : 0),
    ...panel(g, 4, 10, 34, -20),
    { d: straight(frame, true), fill: 'frame', line: 'ink' },
  ];
  if (spec.headRaise > 0.05)
    shapes.push(
      { d: straight(strut), line: 'ink', weight: 5 },
      { d: straight(strut), line: 'metal', weight: 2.4 },
    );
  const folds = [
    [g.bed(g.hinge + 60, 0, 92), g.bed(g.hinge + 84, 0, 84), g.bed(g.hinge + 96, 0, 70)],
    [g.bed(352, 0, 8), g.bed(366, 0, 14), g.bed(372, 0, 26)],
  ];
  shapes.push(
    { d: straight(side, true), fill: 'mattress', line: 'ink' },
    { d: straight(topSheet, true), fill: 'sheet' },
    {
      d: smooth(
        along.map((u) => g.bed(u, 0, BED.depth)),
        false,
        0.3,
      ),
      line: 'ink',
    },
    {
      d: straight([...along.map((u) => g.bed(u, 0, 0)), ...[...overhang].reverse()], true),
      fill: 'sheet',
    },
    {
      d: smooth(
        along.map((u) => g.bed(u, 0, 0)),
        false,
        0.3,
      ),
      line: 'soft',
      weight: 1.4,
    },
    { d: smooth(overhang, false, 0.3), line: 'ink', weight: 1.4 },
    { d: folds.map((line) => smooth(line)).join(''), line: 'soft', weight: 1.4 },
    ...panel(g, 402, 11, 24, -30),
    ...pillow(g),
  );
  return shapes;
}

function pillow(g: WholeGeometry): Shape[] {
  const [from, to] = [Math.max(18, g.pillowFrom), g.pillowTo];
  const middle = (from + to) / 2;
  const puff = [
    g.bed(from, 2, 12),
    g.bed(middle, 1, 8),
    g.bed(to, 2, 13),
    g.bed(to + 3, 6, 50),
    g.bed(to - 1, 8, 92),
    g.bed(middle, 13, 96),
    g.bed(from + 2, 10, 93),
    g.bed(from - 3, 8, 52),
  ];
  return [
    { d: smooth(puff, true, 0.9), fill: 'pillow', line: 'ink' },
    {
      d:
        smooth([g.bed(from + 5, 4, 22), g.bed(from + 14, 6, 28), g.bed(from + 20, 6, 38)]) +
        smooth([g.bed(to - 5, 8, 78), g.bed(to - 16, 9, 74)]),
      line: 'soft',
      weight: 1.4,
    },
  ];
}

/** What of the bed stands before the child. */
export function drawBedFront(g: WholeGeometry): Shape[] {
  return [post(g, 4, 10, 34), post(g, 402, 11, 24)];
}
