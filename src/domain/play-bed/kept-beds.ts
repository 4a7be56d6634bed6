/** Reads all the beds that a device keeps, and says for whom at the bed what of them could not be read. */
import type { Fault } from '../play/types.ts';
import { BED_SHAPES, type BedShape, type PlayBed } from './bed.ts';
import { readBed } from './bed-store.ts';
import { fieldsOf } from './fields.ts';

/** Parts of a bed as its page shows them. */
const BED_PARTS = [
  ...(['first', 'child', 'ward', 'day', 'moments', 'limits', 'heeds', 'own', 'plan', 'more'] as const),
] as const;
export type BedPart = (typeof BED_PARTS)[number];

/**
 * What could not be read. `all`: no bed. `around`: what stands beside the beds. `bed`: one bed as a whole, by its shape where
 * that is known. `parts`: parts of a bed that is there.
 */
export type UnreadBeds =
  | { what: 'all' }
  | { what: 'around' }
  | { what: 'bed'; shape?: BedShape }
  | { what: 'parts'; shape: BedShape; parts: readonly BedPart[] };

const PART_OF: Partial<Record<string, BedPart>> = {
  ...{ freeHands: 'first', eating: 'first', eatingUnsaid: 'first', bored: 'first' },
  ...{ child: 'child', room: 'ward', permissions: 'ward', sketch: 'day', limits: 'limits' },
  ...{ fears: 'heeds', wordless: 'heeds', loudest: 'heeds', own: 'own' },
  ...{ plan: 'plan', pins: 'plan', childChooses: 'plan', done: 'plan', history: 'plan', notToday: 'plan' },
};

function partOf({ where }: Fault): BedPart {
  const [, field = '', inner] = where.split(' › ');
  if (field === 'sketch' && inner === 'moments') return 'moments';
  return (Object.hasOwn(PART_OF, field) ? PART_OF[field] : undefined) ?? 'more';
}

/**
 * All beds out of what a device kept.
 *
 * Shape: any value -> the beds that can be read, each with what can be read of it, which one was open, and what could not
 * be read. Nothing kept is nothing unread. No two beds bear one shape.
 * Errors: none.
 *
 * @example readKeptBeds('rubbish') // { beds: [], unread: [{ what: 'all' }] }
 */
export function readKeptBeds(value: unknown): {
  beds: PlayBed[];
  open?: BedShape;
  unread: UnreadBeds[];
} {
  if (value === undefined) return { beds: [], unread: [] };
  const around: Fault[] = [];
  const fields = fieldsOf(value, 'beds', around, ['open', 'beds']);
  const rows = fields?.raw('beds');
  if (!fields || !Array.isArray(rows)) return { beds: [], unread: [{ what: 'all' }] };
  const open = fields.choice('open', BED_SHAPES);
  const shapes = new Set<BedShape>();
  const found = rows.map((row: unknown) => {
    const { bed, faults } = readBed(row);
    const named = bed?.shape ?? shapeOf(row);
    // a shape is the bed's only name: of two that bear it the first is it
    if (!bed || shapes.has(bed.shape)) return { bed: undefined, faults, named };
    shapes.add(bed.shape);
    return { bed, faults, named };
  });
  const unread = found.flatMap(({ bed, faults, named }): UnreadBeds[] => {
    if (!bed) return [{ what: 'bed', ...(named ? { shape: named } : {}) }];
    const touched = new Set(faults.map(partOf));
    const parts = BED_PARTS.filter((part) => touched.has(part));
    return parts.length ? [{ what: 'parts', shape: bed.shape, parts }] : [];
  });
  return {
    beds: found.flatMap(({ bed }) => (bed ? [bed] : [])),
    ...(open ? { open } : {}),
    unread: [...(around.length ? [{ what: 'around' as const }] : []), ...unread],
  };
}

const shapeOf = (row: unknown): BedShape | undefined =>
  BED_SHAPES.find((shape) => shape === (row as { shape?: unknown } | null | undefined)?.shape);
