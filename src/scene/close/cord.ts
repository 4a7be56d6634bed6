/** The cord from foot plate over the wheel to the weight, and what can happen to it. */
import type { SceneSpec } from '../spec.ts';
import { at, between, mix, smooth, straight, turn, type Point, type Shape } from '../shapes.ts';
import type { BedEndGeometry } from './bed-end.ts';
import { arc, inked, joined, quiet, rays, round } from './strokes.ts';

/** A twisted cord along a path. */
const rope = (d: string, weight = 6.4): Shape[] => [
  { d, line: 'cord', weight },
  { d, line: 'sheet', weight: 2, dash: '4 7' },
];

/** The cord from plate to bag, as it runs or as it got off its way. */
export function drawCordState(spec: SceneSpec, g: BedEndGeometry): Shape[] {
  const knot = at(g.plateBack.x + 5, g.plateBack.y);
  const top = at(g.axle.x, g.axle.y - g.radius);
  const slack = g.bag.resting;
  const middle = at((knot.x + top.x - 20) / 2, mix(knot.y, top.y, 0.5));
  const tie: Shape[] = [inked(round(knot, 5, 4.4), 'metal', 2)];
  const down = hangingPart(g, slack);
  const overWheel = smooth(arc(g.axle, g.radius, -90, 0, 4));
  const sag = slack
    ? smooth([knot, at(middle.x, middle.y + 15), at(top.x - 20, top.y + 3), top])
    : straight([knot, top]);
  switch (spec.cord) {
    case 'off-wheel':
      return [...tie, ...drawJam(g, knot, slack)];
    case 'frayed':
      return [...tie, ...drawFrayed(knot, middle, top, joined(overWheel, down))];
    case 'knot-at-wheel':
      return [
        ...tie,
        ...rope(joined(sag, overWheel, down)),
        ...drawKnot(at(g.axle.x - 26, g.axle.y - g.radius)),
      ];
    case 'under-blanket':
      return [
        ...tie,
        ...rope(joined(smooth([knot, at(middle.x, middle.y + 12), top]), overWheel, down)),
        ...drawBlanket(knot, top),
      ];
    case 'toy-on-cord': {
      const dip = at(Math.max(knot.x + 26, 190), middle.y + 20);
      return [...tie, ...rope(joined(straight([knot, dip, top]), overWheel, down)), ...drawToy(dip)];
    }
    case 'caught':
      return [...tie, ...drawCaught(g, knot, top, joined(overWheel, down))];
    case 'on-wheel':
      return [...tie, ...rope(joined(sag, overWheel, down))];
  }
}

function hangingPart(g: BedEndGeometry, slack: boolean): string {
  const [from, to] = [g.leaves, g.bag.tied];
  if (!slack) return straight([from, to]);
  const room = to.y - from.y;
  return smooth([
    from,
    at(from.x + 4, from.y + room * 0.2),
    at(from.x + 22, from.y + room * 0.42),
    at(from.x + 4, from.y + room * 0.62),
    at(from.x + 18, from.y + room * 0.86),
    at(to.x + 10, to.y - 8),
    to,
  ]);
}

/** Beside the wheel: the groove is empty, the cord is jammed on the axle with a sharp bend. */
function drawJam(g: BedEndGeometry, knot: Point, slack: boolean): Shape[] {
  const { axle } = g;
  const jam = at(axle.x - 4, axle.y - 8);
  const turns = [
    [-16, -4, -2, 13, 15, 3, 6, -13],
    [-10, 11, 8, 12, 17, -6, -3, -15],
  ].map(([a, b, c, d, e, f, h, i]) =>
    smooth(
      [
        at(axle.x + a!, axle.y + b!),
        at(axle.x + c!, axle.y + d!),
        at(axle.x + e!, axle.y + f!),
        at(axle.x + h!, axle.y + i!),
      ],
      true,
    ),
  );
  return [
    ...rope(
      joined(
        straight([knot, jam]),
        smooth([jam, at(axle.x + 8, axle.y - 5), at(axle.x + 9, axle.y + 3), g.leaves]),
        hangingPart(g, slack),
      ),
      6.4,
    ),
    ...rope(turns.join(''), 6),
    inked(rays(axle, 44, 72, -150, 40, 8, 14), 'mark', 1.4),
  ];
}

function drawFrayed(knot: Point, middle: Point, top: Point, rest: string): Shape[] {
  const half = Math.min(32, (top.x - knot.x) / 4);
  const [left, right] = [at(middle.x - half, middle.y), at(middle.x + half, middle.y)];
  const strands = [-1, 1].flatMap((way) => {
    const root = way < 0 ? left : right;
    return [-78, -48, -19, 16, 45, 76].map((angle, i) => {
      const long = [26, 33, 24, 25, 34, 27][i]!;
      const tip = turn(at(root.x - way * long, root.y), root, way < 0 ? angle : -angle);
      const bow = between(root, tip, 0.55);
      return smooth([at(root.x + way * 6, root.y), at(bow.x - 3 * way, bow.y + (i % 2 ? 5 : -5)), tip]);
    });
  });
  return [
    ...rope(straight([knot, left])),
    ...rope(joined(straight([right, top]), rest)),
    inked(
      smooth([left, at(middle.x - 6, middle.y + 2.5), at(middle.x + 6, middle.y - 2.5), right]),
      undefined,
      1.8,
    ),
    inked(strands.join(''), undefined, 2.8),
    { d: rays(middle, 48, 74, -125, -55, 4, 13) + rays(middle, 48, 74, 55, 125, 4, 13), fill: 'mark' },
  ];
}

function drawKnot(c: Point): Shape[] {
  const loops =
    round(at(c.x - 5, c.y - 6), 15, 8, -32) +
    round(at(c.x + 4, c.y + 5), 15, 8, -32) +
    round(at(c.x - 1, c.y), 9, 14, -32);
  const tails =
    smooth([at(c.x - 12, c.y + 6), at(c.x - 20, c.y + 16), at(c.x - 18, c.y + 28)]) +
    smooth([at(c.x + 6, c.y - 10), at(c.x + 10, c.y - 20), at(c.x + 18, c.y - 25)]);
  return [
    ...rope(tails, 5),
    { d: loops, fill: 'cord', line: 'sheet', weight: 1.6 },
    inked(rays(at(c.x - 2, c.y), 28, 50, -176, -62, 5, 12), 'mark', 1.4),
  ];
}

/** A blanket someone laid over the cord. */
function drawBlanket(knot: Point, top: Point): Shape[] {
  const [a, b] = [Math.min(knot.x + 12, top.x - 130), top.x - 20];
  const y = top.y;
  const crest = [
    at(a, y + 8),
    at(mix(a, b, 0.18), y - 12),
    at(mix(a, b, 0.5), y - 3),
    at(mix(a, b, 0.8), y - 12),
    at(b, y + 8),
  ];
  const hem = [
    at(b + 8, y + 96),
    at(mix(a, b, 0.82), y + 106),
    at(mix(a, b, 0.62), y + 96),
    at(mix(a, b, 0.4), y + 108),
    at(mix(a, b, 0.2), y + 98),
    at(a - 10, y + 106),
  ];
  const folds = [0.2, 0.42, 0.62, 0.82].map((t, i) =>
    smooth([
      at(mix(a, b, t), y + (i % 2 ? 8 : 2)),
      at(mix(a, b, t) + (i % 2 ? 5 : -4), y + 44),
      at(mix(a, b, t) + (i % 2 ? -2 : 3), y + 84),
    ]),
  );
  const stripe = (up: number) => smooth(hem.map((p) => at(p.x, p.y - up)));
  return [
    { d: joined(smooth(crest), smooth(hem)) + 'Z', fill: 'blanket', line: 'ink' },
    { d: stripe(13), line: 'pillow', weight: 6 },
    { d: stripe(25), line: 'pillow', weight: 2.4 },
    quiet(folds.join(''), 'ink', 1.6),
  ];
}

/** A soft toy that hangs over the cord by its arms. */
function drawToy(c: Point): Shape[] {
  const ears = [-1, 1]
    .map((way) =>
      smooth([
        at(c.x + way * 5, c.y - 34),
        at(c.x + way * 10, c.y - 60),
        at(c.x + way * 20, c.y - 70),
        at(c.x + way * 24, c.y - 58),
        at(c.x + way * 17, c.y - 34),
      ]),
    )
    .join('');
  const arms = [-1, 1]
    .map((way) =>
      smooth(
        [
          at(c.x + way * 13, c.y + 8),
          at(c.x + way * 24, c.y - 7),
          at(c.x + way * 38, c.y - 6),
          at(c.x + way * 42, c.y + 12),
          at(c.x + way * 36, c.y + 22),
          at(c.x + way * 29, c.y + 15),
          at(c.x + way * 27, c.y + 6),
          at(c.x + way * 18, c.y + 22),
        ],
        true,
      ),
    )
    .join('');
  const legs = [-1, 1]
    .map((way) =>
      smooth(
        [
          at(c.x + way * 6, c.y + 56),
          at(c.x + way * 8, c.y + 84),
          at(c.x + way * 18, c.y + 92),
          at(c.x + way * 27, c.y + 84),
          at(c.x + way * 22, c.y + 52),
        ],
        true,
      ),
    )
    .join('');
  const body = [
    at(c.x, c.y + 2),
    at(c.x + 18, c.y + 12),
    at(c.x + 25, c.y + 42),
    at(c.x + 15, c.y + 64),
    at(c.x, c.y + 68),
    at(c.x - 15, c.y + 64),
    at(c.x - 25, c.y + 42),
    at(c.x - 18, c.y + 12),
  ];
  return [
    inked(ears + legs, 'blanket'),
    inked(smooth(body, true), 'blanket'),
    { d: round(at(c.x, c.y + 42), 14, 17), fill: 'pillow', line: 'ink', weight: 1.4 },
    inked(round(at(c.x, c.y - 16), 25, 22), 'blanket'),
    inked(arms, 'blanket'),
    inked(round(at(c.x - 9, c.y - 19), 1.8, 2.2) + round(at(c.x + 9, c.y - 19), 1.8, 2.2), 'ink', 1.4),
    inked(
      straight([at(c.x - 4, c.y - 11), at(c.x + 4, c.y - 11), at(c.x, c.y - 6)], true) +
        straight([at(c.x, c.y - 6), at(c.x, c.y - 1)]),
      'mouth',
      1.4,
    ),
  ];
}

/** Hooked under the knob of the bed end. */
function drawCaught(g: BedEndGeometry, knot: Point, top: Point, rest: string): Shape[] {
  const post = at(g.boardTop.x, g.boardTop.y - 9);
  return [
    ...rope(
      joined(
        straight([knot, at(post.x - 9, post.y + 3)]),
        smooth([at(post.x - 9, post.y + 3), at(post.x, post.y + 7), at(post.x + 9, post.y + 3)]),
        straight([at(post.x + 9, post.y + 3), at(top.x - 14, top.y + 4), top]),
        rest,
      ),
    ),
    ...rope(smooth([at(post.x - 10, post.y - 4), at(post.x, post.y - 1), at(post.x + 10, post.y - 4)]), 5),
    inked(rays(post, 38, 62, -130, -50, 5, 12), 'mark', 1.4),
  ];
}
