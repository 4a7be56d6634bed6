/** Brows, eyes, nose and mouth of the drawn child; numbers are in half face heights (see head.ts). */
import { oval, smooth, straight, type Point, type Shape } from '../shapes.ts';
import type { HeadFrame, HeadLook } from './head.ts';

type Pair = readonly [number, number];

/** A line on both halves of the face. */
function lines(head: HeadFrame, pairs: readonly Pair[], weight = head.weight, line = 'ink'): Shape {
  const [a, b] = head.both(pairs);
  return { d: smooth(a) + smooth(b), line, weight };
}

/** A field on both halves of the face. */
function fields(head: HeadFrame, pairs: readonly Pair[], rest: Omit<Shape, 'd'>): Shape {
  const [a, b] = head.both(pairs);
  return { d: smooth(a, true) + smooth(b, true), ...rest };
}

function ovals(head: HeadFrame, x: number, y: number, rx: number, ry: number, rest: Omit<Shape, 'd'>): Shape {
  const at = (half: number): Point => head.p(half * x, y);
  const size = [rx * head.radius, ry * head.radius, head.angle] as const;
  return { d: oval(at(1), ...size) + oval(at(-1), ...size), ...rest };
}

const only = (head: HeadFrame, pairs: readonly Pair[]) => pairs.map(([x, y]) => head.p(x, y));

function brows(head: HeadFrame, { face }: HeadLook): Shape {
  const { eyes: e, spread: s } = head.form;
  const bold = head.weight * 1.15;
  switch (face) {
    case 'sore':
      return {
        ...lines(head, [
          [s + 0.22, e - 0.14],
          [s + 0.02, e - 0.27],
          [s - 0.17, e - 0.35],
          [s - 0.27, e - 0.27],
        ]),
        weight: bold * 1.2,
      };
    case 'crying':
      return lines(
        head,
        [
          [s + 0.22, e - 0.17],
          [s, e - 0.31],
          [s - 0.2, e - 0.44],
        ],
        bold,
      );
    case 'scared':
      return lines(
        head,
        [
          [s + 0.2, e - 0.37],
          [s, e - 0.48],
          [s - 0.19, e - 0.54],
        ],
        bold,
      );
    case 'flushed':
      return lines(
        head,
        [
          [s + 0.19, e - 0.21],
          [s, e - 0.29],
          [s - 0.17, e - 0.33],
        ],
        bold,
      );
    case 'drained':
      return lines(
        head,
        [
          [s + 0.2, e - 0.2],
          [s, e - 0.3],
          [s - 0.17, e - 0.36],
        ],
        bold,
      );
    case 'drowsy':
      return lines(
        head,
        [
          [s + 0.2, e - 0.2],
          [s, e - 0.25],
          [s - 0.16, e - 0.24],
        ],
        bold,
      );
    case 'away':
      return lines(
        head,
        [
          [s + 0.19, e - 0.36],
          [s, e - 0.41],
          [s - 0.18, e - 0.38],
        ],
        bold,
      );
    case 'calm':
      return lines(
        head,
        [
          [s + 0.17, e - 0.24],
          [s, e - 0.3],
          [s - 0.15, e - 0.27],
        ],
        bold,
      );
  }
}

/** A lid that has sunk over the eye: a filled dome with a bold lower edge. */
function lids(head: HeadFrame, depth: number, fill: string): Shape[] {
  const { eyes: e, spread: s, eye: k } = head.form;
  const [w, low] = [k * 1.32, e - k + depth * 2 * k];
  return [
    fields(
      head,
      [
        [s - w, low - 0.01],
        [s - w * 0.6, e - k * 1.25],
        [s + w * 0.5, e - k * 1.28],
        [s + w, low],
        [s, low + k * 0.3],
      ],
      { fill, line: 'ink', weight: Math.max(1.2, head.weight * 0.5) },
    ),
    lines(
      head,
      [
        [s - w, low - 0.01],
        [s, low + k * 0.3],
        [s + w * 1.1, low],
      ],
      head.weight * 1.1,
    ),
  ];
}

function eyes(head: HeadFrame, { face }: HeadLook): Shape[] {
  const { form, weight } = head;
  const { eyes: e, spread: s, eye: k } = form;
  const large = head.radius > 45;
  const glint = (x: number, y: number): Shape[] => {
    // one lamp, so the glint sits on the same side of both eyes
    if (!large) return [];
    const size = k * 0.26 * head.radius;
    const d = [1, -1].map((half) => oval(head.p(half * s + x, y), size, size)).join('');
    return [{ d, fill: 'white' }];
  };
  switch (face) {
    case 'calm':
      return [
        ovals(head, s, e, k * 0.72, k, { fill: 'ink' }),
        ...glint(k * 0.24, e - k * 0.38),
        lines(
          head,
          [
            [s - k * 0.95, e - k * 0.75],
            [s, e - k * 1.18],
            [s + k * 1.25, e - k * 0.6],
          ],
          weight * 0.8,
        ),
      ];
    case 'flushed':
      return [
        ovals(head, s, e, k * 1.25, k * 0.95, { fill: 'white', line: 'ink', weight: 1.4 }),
        ovals(head, s, e, k * 0.68, k * 0.9, { fill: 'ink' }),
        ...glint(k * 0.24, e + k * 0.2),
        ...lids(head, 0.36, 'skin'),
        lines(
          head,
          [
            [s - k, e + k * 1.35],
            [s, e + k * 1.6],
            [s + k, e + k * 1.3],
          ],
          weight * 0.6,
        ),
      ];
    case 'sore':
      return [
        lines(
          head,
          [
            [s - k * 1.4, e + k * 0.1],
            [s - k * 0.2, e + k * 0.42],
            [s + k * 1.3, e - k * 0.1],
          ],
          weight * 1.35,
        ),
        lines(
          head,
          [
            [s + k * 1.3, e - k * 0.1],
            [s + k * 1.9, e - k * 0.6],
          ],
          weight * 0.8,
        ),
        lines(
          head,
          [
            [s + k * 1.3, e + k * 0.1],
            [s + k * 2, e + k * 0.35],
          ],
          weight * 0.8,
        ),
        lines(
          head,
          [
            [s - k * 1.2, e + k * 1.1],
            [s, e + k * 1.35],
            [s + k * 0.9, e + k * 1],
          ],
          weight * 0.6,
        ),
        // the furrow between the brows
        lines(
          head,
          [
            [0.045, e - 0.3],
            [0.06, e - 0.12],
          ],
          weight * 0.7,
        ),
      ];
    case 'crying':
      return [
        lines(
          head,
          [
            [s - k * 1.5, e - k * 0.3],
            [s - k * 0.2, e + k * 0.3],
            [s + k * 1.4, e + k * 0.3],
          ],
          weight * 1.35,
        ),
        lines(
          head,
          [
            [s + k * 1.4, e + k * 0.3],
            [s + k * 2, e + k * 0.1],
          ],
          weight * 0.8,
        ),
      ];
    case 'scared':
      return [
        ovals(head, s, e - 0.02, k * 1.5, k * 1.72, { fill: 'white', line: 'ink', weight: weight * 0.85 }),
        ovals(head, s, e - 0.02, k * 0.6, k * 0.66, { fill: 'ink' }),
        lines(
          head,
          [
            [s - k * 1.2, e + k * 2],
            [s, e + k * 2.3],
            [s + k * 1.2, e + k * 1.95],
          ],
          weight * 0.55,
        ),
      ];
    case 'drowsy':
      return [
        ovals(head, s, e + k * 0.3, k * 1.25, k * 0.78, { fill: 'white', line: 'ink', weight: 1.2 }),
        ovals(head, s, e + k * 0.5, k * 0.6, k * 0.56, { fill: 'ink' }),
        ...lids(head, 0.66, 'skin'),
      ];
    case 'drained':
      return [
        ovals(head, s, e, k * 1.25, k * 0.9, { fill: 'white', line: 'ink', weight: 1.4 }),
        ovals(head, s, e + k * 0.1, k * 0.62, k * 0.78, { fill: 'soft', line: 'ink', weight: 1.4 }),
        ...lids(head, 0.48, 'drained'),
        lines(
          head,
          [
            [s - k * 1.3, e + k * 1.2],
            [s - k * 0.2, e + k * 1.95],
            [s + k * 1.1, e + k * 1.5],
          ],
          weight * 0.75,
        ),
      ];
    case 'away': {
      const x = (half: number) => half * s + k * 0.5;
      const iris = [1, -1]
        .map((half) => oval(head.p(x(half), e - k * 0.95), k * 0.56 * head.radius, k * 0.56 * head.radius))
        .join('');
      return [
        ovals(head, s, e, k * 1.45, k * 1.2, { fill: 'white', line: 'ink', weight: weight * 0.85 }),
        { d: iris, fill: 'ink' },
        fields(
          head,
          [
            [s - k * 1.5, e - k * 0.55],
            [s, e - k * 1.0],
            [s + k * 1.5, e - k * 0.55],
            [s + k * 1.1, e - k * 1.55],
            [s, e - k * 1.8],
            [s - k * 1.1, e - k * 1.55],
          ],
          { fill: 'skin' },
        ),
        lines(
          head,
          [
            [s - k * 1.5, e - k * 0.5],
            [s, e - k * 1.0],
            [s + k * 1.5, e - k * 0.5],
          ],
          weight * 1.1,
        ),
      ];
    }
  }
}

function mouth(head: HeadFrame, look: HeadLook): Shape[] {
  const { mouth: m } = head.form;
  const { weight } = head;
  const open = (points: readonly Pair[]): Shape => ({
    d: smooth(only(head, points), true),
    fill: 'mouth',
    line: 'ink',
    weight,
  });
  const line = (points: readonly Pair[], w = weight): Shape => ({
    d: smooth(only(head, points)),
    line: 'ink',
    weight: w,
  });
  if (look.mouth === 'gasping')
    return [
      open([
        [0, m - 0.12],
        [0.16, m - 0.06],
        [0.19, m + 0.06],
        [0.1, m + 0.2],
        [-0.1, m + 0.2],
        [-0.19, m + 0.06],
        [-0.16, m - 0.06],
      ]),
    ];
  if (look.mouth === 'sick')
    return [
      open([
        [0, m - 0.08],
        [0.2, m - 0.03],
        [0.22, m + 0.1],
        [0, m + 0.18],
        [-0.22, m + 0.1],
        [-0.2, m - 0.03],
      ]),
    ];
  switch (look.face) {
    case 'calm':
      return [
        line([
          [-0.19, m - 0.03],
          [-0.08, m + 0.025],
          [0.08, m + 0.025],
          [0.19, m - 0.03],
        ]),
        line(
          [
            [-0.07, m + 0.13],
            [0.07, m + 0.13],
          ],
          Math.max(1.2, weight * 0.45),
        ),
      ];
    case 'sore':
      return [
        line(
          [
            [-0.29, m + 0.1],
            [-0.2, m + 0.0],
            [-0.07, m - 0.02],
            [0.07, m + 0.01],
            [0.2, m - 0.01],
            [0.29, m + 0.09],
          ],
          weight * 1.3,
        ),
        line(
          [
            [-0.14, m + 0.15],
            [0, m + 0.13],
            [0.14, m + 0.15],
          ],
          weight * 0.7,
        ),
      ];
    case 'crying':
      return [
        open([
          [0, m - 0.14],
          [0.2, m - 0.1],
          [0.31, m + 0.1],
          [0.26, m + 0.2],
          [0, m + 0.17],
          [-0.26, m + 0.2],
          [-0.31, m + 0.1],
          [-0.2, m - 0.1],
        ]),
        {
          d: smooth(
            only(head, [
              [-0.15, m + 0.14],
              [-0.1, m + 0.06],
              [0.1, m + 0.06],
              [0.15, m + 0.14],
              [0, m + 0.15],
            ]),
            true,
          ),
          fill: 'blanket',
        },
      ];
    case 'scared':
      return [
        open([
          [0, m - 0.06],
          [0.13, m - 0.01],
          [0.16, m + 0.09],
          [0.06, m + 0.14],
          [-0.06, m + 0.14],
          [-0.16, m + 0.09],
          [-0.13, m - 0.01],
        ]),
      ];
    case 'flushed':
      return [
        open([
          [-0.15, m + 0.01],
          [0, m - 0.02],
          [0.15, m + 0.01],
          [0.07, m + 0.08],
          [-0.07, m + 0.08],
        ]),
      ];
    case 'drowsy':
      return [
        open([
          [-0.12, m + 0.0],
          [0.02, m - 0.05],
          [0.15, m + 0.02],
          [0.12, m + 0.14],
          [0, m + 0.17],
          [-0.09, m + 0.11],
        ]),
      ];
    case 'drained':
      return [
        line([
          [-0.17, m + 0.06],
          [-0.06, m + 0.0],
          [0.07, m + 0.0],
          [0.17, m + 0.07],
        ]),
      ];
    case 'away': {
      const [a, b] = [0.22, 0.075];
      return [
        {
          d: smooth(
            only(head, [
              [-a, m],
              [-a * 0.8, m - b],
              [a * 0.8, m - b],
              [a, m],
              [a * 0.8, m + b],
              [-a * 0.8, m + b],
            ]),
            true,
          ),
          fill: 'white',
          line: 'ink',
          weight,
        },
        {
          d: straight(
            only(head, [
              [-a, m],
              [a, m],
            ]),
          ),
          line: 'ink',
          weight: 1.4,
        },
      ];
    }
  }
}

function nose(head: HeadFrame): Shape {
  const y = head.form.nose;
  return {
    d: smooth(
      only(head, [
        [-0.07, y - 0.01],
        [-0.02, y + 0.045],
        [0.05, y + 0.03],
        [0.075, y - 0.02],
      ]),
    ),
    line: 'ink',
    weight: Math.max(1.3, head.weight * 0.65),
  };
}

/** A drop with its point up; `size` in half face heights. */
function drop(head: HeadFrame, x: number, y: number, size: number): string {
  const d = smooth(
    [
      [0, -1.5],
      [0.55, -0.35],
      [0.62, 0.35],
      [0, 0.85],
      [-0.62, 0.35],
      [-0.55, -0.35],
    ].map(([dx, dy]) => head.p(x + dx! * size, y + dy! * size)),
    true,
    0.8,
  );
  return d;
}

/** Tears, shine: what runs over the face. */
function onTheSkin(head: HeadFrame, { face }: HeadLook): Shape[] {
  const { eyes: e, spread: s, eye: k, cheek, jaw } = head.form;
  if (face === 'crying')
    return [
      fields(
        head,
        [
          [s + 0.02, e + k * 0.55],
          [s + 0.16, e + k * 0.6],
          [(s + cheek) / 2 + 0.1, e + 0.3],
          [jaw * 0.84, 0.66],
          [jaw * 0.66, 0.68],
          [s + 0.1, e + 0.34],
        ],
        { fill: 'tear', line: 'ink', weight: Math.max(1.2, head.weight * 0.55) },
      ),
      {
        d: drop(head, jaw + 0.06, 0.8, 0.13) + drop(head, -jaw - 0.06, 0.8, 0.13),
        fill: 'tear',
        line: 'ink',
        weight: Math.max(1.2, head.weight * 0.6),
      },
    ];
  if (face === 'flushed' && head.radius > 45)
    return [
      {
        d:
          smooth(
            only(head, [
              [-0.36, e - 0.46],
              [-0.2, e - 0.52],
              [-0.04, e - 0.53],
            ]),
          ) +
          smooth(
            only(head, [
              [0.08, e - 0.53],
              [0.14, e - 0.525],
            ]),
          ),
        line: 'white',
        weight: head.weight * 1.5,
      },
    ];
  return [];
}

/** Everything a face shows, back to front. */
export function features(head: HeadFrame, look: HeadLook): Shape[] {
  return [...eyes(head, look), brows(head, look), nose(head), ...onTheSkin(head, look), ...mouth(head, look)];
}
