/** What the leg lies on: sheet, mattress and the thin pad under the calf. */
import { at, smooth, straight, type Point, type Shape } from '../shapes.ts';
import { along, inked, quiet, type Profile } from './strokes.ts';

/** The bed across the whole page; `top` is the line of the sheet, with its dents. */
export function drawBed(top: Profile, width: number, height: number): Shape[] {
  const dented = along(top, 0, width, 20);
  const line = dented.every((p) => p.y === dented[0]!.y) ? [dented[0]!, dented[dented.length - 1]!] : dented;
  const hem: Point[] = [
    at(width, height - 26),
    at(width * 0.66, height - 31),
    at(width * 0.33, height - 25),
    at(0, height - 30),
  ];
  return [
    {
      d: straight([at(0, height - 34), at(width, height - 34), at(width, height), at(0, height)], true),
      fill: 'mattress',
    },
    { d: smooth(line) + smooth(hem).replace(/^M/, 'L') + 'Z', fill: 'sheet' },
    quiet(smooth(hem), 'soft', 1.6),
    quiet(
      smooth([at(width * 0.06, height - 44), at(width * 0.2, height - 50), at(width * 0.36, height - 46)]) +
        smooth([at(width * 0.7, height - 43), at(width * 0.84, height - 48), at(width * 0.95, height - 45)]),
    ),
    inked(smooth(line)),
  ];
}

/** The thin pad, soft under the weight of the calf. */
export function drawPad(from: number, to: number, above: Profile, sheet: Profile): Shape[] {
  const top = along((x) => Math.min(above(x), sheet(x) - 5), from + 8, to - 8, 20);
  const side = (x: number, y: number) => at(x, (y + sheet(x)) / 2);
  const field = [
    ...top,
    side(to, top[top.length - 1]!.y),
    at(to - 6, sheet(to)),
    at(from + 6, sheet(from)),
    side(from, top[0]!.y),
  ];
  return [
    inked(smooth(field, true, 0.7), 'pad'),
    quiet(smooth(along((x) => (above(x) + sheet(x) * 1.4) / 2.4, from + 16, to - 16, 30)), 'soft', 1.4),
  ];
}
