/** The pen of the play pictures: the small pictures' pen, with round dots, rings and ruled lines. */
import { oval, straight, tenth, type Point, type Shape } from '../shapes.ts';
import { pen, type Placement } from '../things/pen.ts';

/** Round fields drawn as dots of a line with round ends: a tenth of the text that an outline would take. */
export const dots = (places: readonly Point[], size: number, line = 'ink'): Shape => ({
  d: places.map((p) => straight([p, p])).join(''),
  line,
  weight: tenth(size),
});

/** A pen for one drawing in the square that is placed, scaled and turned as a whole. */
export function brush(where: Partial<Placement> = {}) {
  const p = pen(where);
  const thin = Math.max(0.62, Math.min(1, p.scale * 1.1));
  const ovals = (flat: readonly number[]) => {
    let d = '';
    for (let i = 0; i + 3 < flat.length; i += 4) {
      const [x, y, rx, ry] = flat.slice(i, i + 4) as [number, number, number, number];
      d += oval(p.put([x, y])[0]!, rx * p.scale, ry * p.scale, p.turned);
    }
    return d;
  };
  return {
    ...p,
    /** Ovals as middle and half widths: x, y, rx, ry, … */
    ring: (flat: readonly number[], fill: string, weight = 3): Shape => ({
      d: ovals(flat),
      fill,
      line: 'ink',
      weight: weight * thin,
    }),
    /** Round spots of one size, without an outline. */
    dots: (flat: readonly number[], size: number, line = 'ink'): Shape =>
      dots(p.put(flat), size * p.scale, line),
    /** Ruled lines, each through its own points. */
    rule: (lines: readonly (readonly number[])[], weight = 2.2, line = 'ink'): Shape => ({
      d: lines.map((flat) => straight(p.put(flat))).join(''),
      line,
      weight: weight * thin,
    }),
    /** A line of small dashes, for what is not there yet or not any more. */
    dashed: (flat: readonly number[], weight = 2.6, line = 'ink'): Shape => ({
      ...p.stroke(flat, weight, line),
      dash: '4 5',
    }),
    /** Several fields of one colour with straight edges. */
    flats: (fields: readonly (readonly number[])[], fill: string, weight = 2.4): Shape => ({
      d: fields.map((flat) => straight(p.put(flat), true)).join(''),
      fill,
      line: 'ink',
      weight: weight * thin,
    }),
  };
}

export type Brush = ReturnType<typeof brush>;
/** A drawing in a square of its own. */
export type Drawing = (p: Brush) => Shape[];

/** A drawing by its id, where its middle lies, its scale, and by how many degrees it is turned. */
export type Placed<Id extends string> = readonly [
  id: Id,
  x: number,
  y: number,
  scale: number,
  turned?: number,
];

/** The corners of an upright box. */
export const box = (left: number, top: number, right: number, bottom: number) => [
  ...[left, top, right, top],
  ...[right, bottom, left, bottom],
];
