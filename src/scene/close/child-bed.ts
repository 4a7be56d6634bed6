/** What the child close up lies on and under, and the table beside the bed. */
import type { SceneSpec } from '../spec.ts';
import { at, smooth, straight, type Shape } from '../shapes.ts';
import { points } from '../parts/points.ts';
import { MIDDLE, type ChildGeometry } from './child-layout.ts';

/** Kicked off: a heap that slides over the edge of the bed. */
function thrownBlanket(view: { height: number }): Shape {
  const heap = points([120, 352, 178, 338, 226, 316, 268, 322, 306, 296, 342, 312, 360, 336, 366, 352]);
  return { d: smooth(heap) + `L366 ${view.height}L120 ${view.height}Z`, fill: 'blanket', line: 'ink' };
}

function bedsideTable({ table, view }: ChildGeometry): Shape[] {
  return [
    {
      d: straight(
        points([
          table.left + 12,
          table.top + 14,
          table.left + 12,
          view.height,
          table.right - 12,
          view.height,
          table.right - 12,
          table.top + 14,
        ]),
        true,
      ),
      fill: 'mattress',
      line: 'ink',
    },
    {
      d: straight(
        points([
          table.left,
          table.top,
          table.right,
          table.top,
          table.right,
          table.top + 14,
          table.left,
          table.top + 14,
        ]),
        true,
      ),
      fill: 'plate',
      line: 'ink',
    },
  ];
}

/** What lies behind the child: sheet, pillow, and a table where something stands on it. */
export function bedding(g: ChildGeometry, withTable: boolean): Shape[] {
  const { bed, view, head, radius } = g;
  const pillow = points(
    [
      -142, -46, -120, -66, 0, -72, 120, -66, 142, -46, 148, 10, 140, 62, 118, 76, 0, 82, -118, 76, -140, 62,
      -148, 10,
    ],
    at(MIDDLE, 92),
  );
  return [
    {
      d: straight([at(0, 0), at(view.width, 0), at(view.width, view.height), at(0, view.height)], true),
      fill: 'ground',
    },
    {
      d: straight([at(0, 338), at(view.width, 338), at(view.width, view.height), at(0, view.height)], true),
      fill: 'floor',
    },
    {
      d: smooth(
        points([
          bed.left + 6,
          view.height,
          bed.left,
          40,
          bed.left + 10,
          10,
          bed.right - 10,
          10,
          bed.right,
          40,
          bed.right - 6,
          view.height,
        ]),
        false,
        0.4,
      ),
      fill: 'sheet',
      line: 'ink',
    },
    { d: smooth(pillow, true, 0.8), fill: 'pillow', line: 'ink' },
    {
      d:
        smooth([at(head.x - radius - 26, 60), at(head.x - radius - 34, 90), at(head.x - radius - 28, 124)]) +
        smooth([at(head.x + radius + 26, 60), at(head.x + radius + 32, 92), at(head.x + radius + 26, 122)]) +
        smooth(points([bed.left + 18, 214, bed.left + 34, 236, bed.left + 32, 268])) +
        smooth(points([bed.right - 16, 222, bed.right - 32, 244, bed.right - 30, 270])),
      line: 'soft',
      weight: 1.4,
    },
    ...(withTable ? bedsideTable(g) : []),
  ];
}

/** The blanket over the child, thrown off where the child shakes. */
export function blanket({ bed, view, belly, bellyRadius: r }: ChildGeometry, spec: SceneSpec): Shape[] {
  if (spec.mark === 'fit-arcs') return [thrownBlanket(view)];
  const swollen = spec.belly === 1;
  const hem = swollen
    ? points([bed.left + 4, 322, belly.x - r, 322, belly.x, 334, belly.x + r, 322, bed.right - 4, 322])
    : points([bed.left + 4, 320, belly.x - r, 324, belly.x, 328, belly.x + r, 324, bed.right - 4, 320]);
  const fold = hem.map((p) => at(p.x, Math.min(view.height - 3, p.y + 15)));
  return [
    {
      d: smooth(hem) + `L${bed.right - 5} ${view.height}L${bed.left + 5} ${view.height}Z`,
      fill: 'blanket',
      line: 'ink',
    },
    { d: smooth(fold), line: 'ink', weight: 1.4 },
  ];
}
