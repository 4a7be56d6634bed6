/** The four doors of the first screen. */
import { at, oval, type Shape } from '../shapes.ts';
import { BOLD, FINE, pen } from './pen.ts';

/** Three doors in a row: now stands open, next and later are shut. */
export function tileToday(): Shape[] {
  const p = pen();
  const door = (x: number): Shape[] => [
    p.flat([x, 26, x + 30, 26, x + 30, 104, x, 104], 'plate'),
    p.flat([x + 6, 34, x + 24, 34, x + 24, 60, x + 6, 60], 'frame', FINE),
    p.flat([x + 6, 68, x + 24, 68, x + 24, 96, x + 6, 96], 'frame', FINE),
    { d: oval(at(x + 4.6, 66), 2, 2), fill: 'ink' },
  ];
  return [
    p.flat([1.5, 104, 118.5, 104, 118.5, 116, 1.5, 116], 'floor'),
    p.flat([8, 26, 38, 26, 38, 104, 8, 104], 'white'),
    p.flat([8, 104, 38, 104, 46, 116, 4, 116], 'white', 2.2),
    p.flat([8, 26, 22, 18, 22, 114, 8, 104], 'plate'),
    { d: oval(at(18.6, 66), 1.8, 2.4), fill: 'ink' },
    ...door(46),
    ...door(84),
  ];
}

/** A storybook and a hand puppet. */
export function tilePlay(): Shape[] {
  const p = pen();
  const sleeve = [
    53, 108, 56, 90, 50, 78, 38, 76, 35, 68, 42, 62, 56, 64, 64, 60, 84, 60, 92, 64, 106, 62, 113, 68, 110,
    76, 98, 78, 92, 90, 96, 108, 74, 111,
  ];
  return [
    p.soft([62, 118.5, 62, 98, 88, 98, 88, 118.5], 'skin', BOLD, 0.2),
    p.soft(sleeve, 'bag', BOLD, 0.8),
    p.strokes([[55, 101, 74, 104, 94, 101]], 2.4),
    // ears, then the head
    p.soft([58, 30, 52, 12, 58, 4, 66, 12, 69, 28], 'blanket'),
    p.soft([90, 30, 96, 12, 90, 4, 82, 12, 79, 28], 'blanket'),
    p.soft([74, 24, 90, 28, 98, 42, 92, 57, 74, 62, 56, 57, 50, 42, 58, 28], 'blanket'),
    p.soft([74, 44, 84, 48, 83, 56, 74, 59, 65, 56, 64, 48], 'sheet', FINE),
    { d: oval(at(65, 40), 2.8, 3.4) + oval(at(83, 40), 2.8, 3.4) + oval(at(74, 48), 3.4, 2.6), fill: 'ink' },
    p.strokes([[74, 50, 74, 54]], FINE),
    // the book leans in front
    p.flat([6, 56, 40, 64, 46, 116, 12, 110], 'wet'),
    p.flat([6, 56, 12, 52, 46, 60, 40, 64], 'sheet', 2.2),
    p.flat([40, 64, 46, 60, 52, 112, 46, 116], 'sheet', 2.2),
    p.soft([18, 74, 30, 72, 36, 82, 32, 94, 20, 94, 15, 84], 'sheet', 2.2),
    p.strokes([[20, 88, 25, 80, 28, 86, 32, 82]], FINE),
  ];
}

/** An open book with the leg in it. */
export function tileExplanations(): Shape[] {
  const p = pen();
  return [
    p.soft(
      [4, 100, 4, 28, 30, 22, 60, 32, 90, 22, 116, 28, 116, 100, 90, 96, 60, 106, 30, 96],
      'plate',
      BOLD,
      0.25,
    ),
    p.soft([9, 92, 9, 24, 32, 18, 60, 28, 60, 98, 32, 88], 'sheet', 2.6, 0.4),
    p.soft([111, 92, 111, 24, 88, 18, 60, 28, 60, 98, 88, 88], 'sheet', 2.6, 0.4),
    p.strokes(
      [
        [17, 36, 34, 32, 51, 38],
        [17, 48, 34, 44, 51, 50],
        [17, 60, 34, 56, 51, 62],
        [17, 72, 34, 68, 42, 71],
      ],
      2.4,
    ),
    // the leg, straight, with its bandage
    p.soft(
      [66, 58, 80, 54, 92, 57, 97, 52, 98, 44, 103, 43, 106, 50, 106, 66, 100, 70, 82, 71, 66, 74],
      'skin',
      2.4,
      0.8,
    ),
    p.flat([72, 55, 90, 55.5, 90, 71, 72, 73], 'band', 2.2),
    p.strokes(
      [
        [78, 55, 76, 73],
        [84, 55, 82, 72],
      ],
      1.4,
    ),
    p.strokes([[106, 58, 111, 58]], 2.2),
  ];
}

/** A written sheet and a pencil. */
export function tileNotes(): Shape[] {
  const p = pen();
  const written = (y: number, to: number) =>
    Array.from({ length: Math.floor((to - 26) / 6) }, (_, i) => [
      26 + i * 6,
      y + (i % 2 === 0 ? 2 : -2),
    ]).flat();
  return [
    p.flat([14, 8, 78, 8, 92, 22, 92, 112, 14, 112], 'sheet'),
    p.flat([78, 8, 92, 22, 78, 22], 'pad', 2.4),
    p.strokes([written(34, 80), written(50, 84), written(66, 78), written(82, 56)], 2.4),
    p.flat([102, 30, 114, 37, 80, 95, 68, 102, 68, 88], 'blanket'),
    p.flat([68, 88, 80, 95, 68, 102], 'sheet', 2.4),
    p.flat([68, 95.5, 72, 99.6, 68, 102], 'ink', 1.4),
    p.strokes([[97, 39, 109, 46]], 2.4),
    p.strokes([[106, 39, 78, 87]], 1.4),
  ];
}
