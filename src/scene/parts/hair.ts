/** Hair and head scarf around a drawn head; numbers are in half face heights (see head.ts). */
import type { Hair } from '../spec.ts';
import { between, distance, plus, smooth, straight, xy, type Point, type Shape } from '../shapes.ts';
import type { HeadFrame } from './head.ts';

const page = ({ p }: HeadFrame, pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([x, y]) => p(x, y));

/** A chain of round lobes through the points, swelling to the left of the walking direction. */
function lobes(points: readonly Point[], swell: number): string {
  let d = '';
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i]!, points[i + 1]!];
    const span = distance(a, b) || 1;
    const out = { x: ((b.y - a.y) / span) * swell * span, y: (-(b.x - a.x) / span) * swell * span };
    const [c1, c2] = [between(a, b, 0.02), between(a, b, 0.98)];
    d += `C${xy(plus(c1, out))} ${xy(plus(c2, out))} ${xy(b)}`;
  }
  return d;
}

function curls(head: HeadFrame): Shape[] {
  const { form, p } = head;
  const c = form.cheek;
  const outer = page(head, [
    [-c - 0.06, form.eyes + 0.12],
    [-c - 0.18, form.eyes - 0.22],
    [-c - 0.1, -0.58],
    [-0.68, -0.94],
    [-0.26, -1.12],
    [0.24, -1.12],
    [0.66, -0.95],
    [c + 0.1, -0.6],
    [c + 0.18, form.eyes - 0.24],
    [c + 0.06, form.eyes + 0.12],
  ]);
  const inner = page(head, [
    [c + 0.06, form.eyes + 0.12],
    [c - 0.08, form.eyes - 0.22],
    [0.62, form.hairline - 0.04],
    [0.24, form.hairline - 0.1],
    [-0.18, form.hairline - 0.1],
    [-0.6, form.hairline - 0.04],
    [-c + 0.08, form.eyes - 0.22],
    [-c - 0.06, form.eyes + 0.12],
  ]);
  const start = outer[0]!;
  const twirl = (x: number, y: number, s: number) =>
    smooth([
      p(x - s, y + s * 0.4),
      p(x - s * 0.4, y - s * 0.8),
      p(x + s * 0.7, y - s * 0.3),
      p(x + s * 0.3, y + s * 0.6),
      p(x - s * 0.3, y + s * 0.1),
    ]);
  return [
    {
      d: `M${xy(start)}${lobes(outer, 0.42)}${lobes(inner, -0.16)}Z`,
      fill: 'hair',
      line: 'ink',
    },
    {
      d: [
        twirl(-0.7, -0.66, 0.12),
        twirl(-0.22, -0.88, 0.13),
        twirl(0.28, -0.86, 0.12),
        twirl(0.74, -0.62, 0.12),
        twirl(c + 0.1, -0.12, 0.1),
        twirl(-c - 0.1, -0.1, 0.1),
      ].join(''),
      line: 'soft',
      weight: 1.4,
    },
  ];
}

function short(head: HeadFrame): Shape[] {
  const { form, p } = head;
  const c = form.cheek;
  const h = form.hairline;
  const side = form.eyes - 0.04;
  const crown = smooth(
    page(head, [
      [-c - 0.02, side],
      [-c - 0.09, -0.3],
      [-0.74, -0.84],
      [-0.3, -1.1],
      [0.14, -1.14],
      [0.62, -0.98],
      [c + 0.06, -0.42],
      [c + 0.02, side],
    ]),
  );
  // tufts of the fringe, combed to one side: sharp below, round above
  const tips: [number, number][] = [
    [c - 0.1, -0.18],
    [c - 0.2, h + 0.04],
    [0.42, h + 0.14],
    [0.4, h - 0.06],
    [0.08, h + 0.12],
    [0.06, h - 0.08],
    [-0.3, h + 0.06],
    [-0.34, h - 0.1],
    [-0.62, h + 0.06],
    [-c + 0.1, -0.16],
    [-c - 0.02, side],
  ];
  const fringe = tips
    .map(([x, y], i) => {
      const before = i === 0 ? ([c + 0.02, side] as const) : tips[i - 1]!;
      const bend = p((x + before[0]) / 2 - 0.02, (y + before[1]) / 2 + 0.04);
      const end = p(x, y);
      return `Q${xy(bend)} ${xy(end)}`;
    })
    .join('');
  return [
    { d: `${crown}${fringe}Z`, fill: 'hair', line: 'ink' },
    {
      d: [
        smooth(
          page(head, [
            [0.2, -1],
            [0.42, -0.86],
            [0.56, -0.64],
          ]),
        ),
        smooth(
          page(head, [
            [-0.02, -0.98],
            [0.16, -0.84],
            [0.22, -0.66],
          ]),
        ),
        smooth(
          page(head, [
            [-0.3, -0.94],
            [-0.22, -0.8],
            [-0.2, -0.68],
          ]),
        ),
      ].join(''),
      line: 'soft',
      weight: 1.4,
    },
  ];
}

/** Where a plait begins, and its lobes down to the tie. */
function plait(head: HeadFrame, half: number): Shape[] {
  const { form, p } = head;
  const x = (form.cheek + 0.1) * half;
  const knots = [0.62, 0.84, 1.06, 1.27, 1.46];
  const lobe = (y: number, i: number) => {
    const below = knots[i + 1]!;
    const wide = 0.185 - i * 0.018;
    const drift = x + half * (0.05 + i * 0.035);
    const lean = i % 2 === 0 ? 0.05 : -0.05;
    const side = (y + below) / 2;
    const flat: [number, number][] = [
      [drift, y - 0.03],
      [drift + wide, side + lean],
      [drift + half * 0.03, below + 0.04],
      [drift - wide, side - lean],
    ];
    return smooth(page(head, flat), true);
  };
  const shapes: Shape[] = [
    {
      d: knots.slice(0, -1).map(lobe).join(''),
      fill: 'hair',
      line: 'ink',
      weight: head.radius > 45 ? 2.4 : 1.7,
    },
  ];
  const end = x + half * 0.19;
  shapes.push({
    d: smooth(
      [p(end - 0.07, 1.48), p(end + 0.07, 1.48), p(end + 0.1, 1.66), p(end, 1.74), p(end - 0.1, 1.66)],
      true,
    ),
    fill: 'hair',
    line: 'ink',
  });
  shapes.push({
    d: straight([p(end - 0.1, 1.43), p(end + 0.1, 1.43), p(end + 0.09, 1.54), p(end - 0.09, 1.54)], true),
    fill: 'blanket',
    line: 'ink',
    weight: head.radius > 45 ? 2 : 1.5,
  });
  return shapes;
}

function parted(head: HeadFrame): Shape[] {
  const { form } = head;
  const c = form.cheek;
  const wing = (half: number) =>
    smooth(
      (
        [
          [0, -1.12],
          [0.5, -1.03],
          [c + 0.06, -0.5],
          [c + 0.15, form.eyes],
          [c + 0.14, 0.5],
          [c + 0.02, 0.66],
          [c - 0.03, 0.34],
          [c - 0.02, form.eyes - 0.14],
          [c - 0.16, -0.42],
          [0.36, -0.66],
          [0.02, -0.84],
        ] as [number, number][]
      ).map(([x, y]) => head.p(half * x, y)),
      true,
      0.9,
    );
  const strand = (half: number) =>
    smooth(
      page(head, [
        [half * 0.12, -0.98],
        [half * 0.52, -0.82],
        [half * (c - 0.06), -0.42],
      ]),
    ) +
    smooth(
      page(head, [
        [half * 0.4, -0.98],
        [half * (c - 0.08), -0.66],
        [half * (c + 0.05), -0.2],
      ]),
    );
  return [
    { d: wing(1), fill: 'hair', line: 'ink' },
    { d: wing(-1), fill: 'hair', line: 'ink' },
    { d: strand(1) + strand(-1), line: 'soft', weight: 1.4 },
  ];
}

function scarf(head: HeadFrame): Shape[] {
  const { form } = head;
  const c = form.cheek;
  const half: [number, number][] = [
    [0.56, -1.04],
    [c + 0.06, -0.52],
    [c + 0.13, form.eyes],
    [c + 0.02, 0.62],
    [0.66, 1.06],
    [0.3, 1.24],
  ];
  return [
    {
      d: smooth(
        page(head, [
          [0, -1.15],
          ...half,
          [0, 1.28],
          ...half
            .slice()
            .reverse()
            .map(([x, y]) => [-x, y] as [number, number]),
        ]),
        true,
      ),
      fill: 'scarf',
      line: 'ink',
    },
  ];
}

function scarfFolds(head: HeadFrame): Shape[] {
  const { form } = head;
  const c = form.cheek;
  return [
    {
      d: [
        smooth(
          page(head, [
            [-0.62, -0.5],
            [0, -0.92],
            [0.62, -0.5],
          ]),
        ),
        smooth(
          page(head, [
            [c - 0.02, 0.28],
            [0.62, 0.84],
            [0.1, 1.12],
          ]),
        ),
        smooth(
          page(head, [
            [-c + 0.02, 0.28],
            [-0.6, 0.82],
            [-0.16, 1.08],
          ]),
        ),
        smooth(
          page(head, [
            [0.56, 1],
            [0.22, 1.14],
            [-0.2, 1.19],
          ]),
        ),
      ].join(''),
      line: 'ink',
      weight: 1.4,
    },
  ];
}

/** What of the hair lies behind the face. */
export function hairBehind(head: HeadFrame, hair: Hair): Shape[] {
  switch (hair) {
    case 'plait':
      return [...plait(head, 1), ...plait(head, -1)];
    case 'scarf':
      return scarf(head);
    case 'short':
    case 'curls':
      return [];
  }
}

/** What of the hair lies over the face and its ears. */
export function hairInFront(head: HeadFrame, hair: Hair): Shape[] {
  switch (hair) {
    case 'short':
      return short(head);
    case 'curls':
      return curls(head);
    case 'plait':
      return parted(head);
    case 'scarf':
      return scarfFolds(head);
  }
}
