/** Brows, eyes, nose and mouth of the drawn child; numbers are in half face heights (see head.ts). */
import type { Face } from '../spec.ts';
import { oval, smooth, straight, type Point, type Shape } from '../shapes.ts';
import type { HeadFrame, HeadLook } from './head.ts';

type Rest = Omit<Shape, 'd'>;

/** Points from a flat list of numbers, measured from a place of the face. */
function place(
  { p }: HeadFrame,
  x: number,
  y: number,
  flat: readonly number[],
  scale = 1,
  half = 1,
): Point[] {
  return Array.from({ length: flat.length / 2 }, (_, i) =>
    p(half * (x + flat[2 * i]! * scale), y + flat[2 * i + 1]! * scale),
  );
}

/** A line at both eyes, measured from the eye in eye heights; positive x runs outward. */
function eyeLine(head: HeadFrame, flat: readonly number[], weight: number): Shape {
  const { spread, eyes, eye } = head.form;
  const on = (half: number) => smooth(place(head, spread, eyes, flat, eye, half));
  return { d: on(1) + on(-1), line: 'ink', weight: weight * head.weight };
}

function eyeField(head: HeadFrame, flat: readonly number[], rest: Rest): Shape {
  const { spread, eyes, eye } = head.form;
  const on = (half: number) => smooth(place(head, spread, eyes, flat, eye, half), true);
  return { d: on(1) + on(-1), ...rest };
}

/** An oval at both eyes. `side` moves both the same way, as a look to one side does. */
function eyeOval(head: HeadFrame, y: number, rx: number, ry: number, rest: Rest, side = 0): Shape {
  const { spread, eyes, eye } = head.form;
  const k = eye * head.radius;
  const on = (half: number) =>
    oval(head.p(half * spread + side * eye, eyes + y * eye), rx * k, ry * k, head.angle);
  return { d: on(1) + on(-1), ...rest };
}

/** From the outer to the inner end, measured from the eye in half face heights. */
const BROWS: Record<Face, readonly number[]> = {
  calm: [0.17, -0.24, 0, -0.3, -0.15, -0.27],
  // drawn together: the inner ends rise and knit
  sore: [0.22, -0.14, 0.02, -0.27, -0.17, -0.35, -0.27, -0.27],
  crying: [0.22, -0.17, 0, -0.31, -0.2, -0.44],
  scared: [0.2, -0.37, 0, -0.48, -0.19, -0.54],
  flushed: [0.19, -0.21, 0, -0.29, -0.17, -0.33],
  drowsy: [0.2, -0.22, 0, -0.27, -0.16, -0.25],
  drained: [0.2, -0.2, 0, -0.3, -0.17, -0.36],
  away: [0.19, -0.36, 0, -0.41, -0.18, -0.38],
};

function brows(head: HeadFrame, face: Face): Shape {
  const { spread, eyes } = head.form;
  const on = (half: number) => smooth(place(head, spread, eyes, BROWS[face], 1, half));
  return { d: on(1) + on(-1), line: 'ink', weight: head.weight * (face === 'sore' ? 1.38 : 1.15) };
}

/** A lid that has sunk over the eye: a filled dome with a bold lower edge. */
function lids(head: HeadFrame, depth: number, fill: string): Shape[] {
  const low = 2 * depth - 1;
  const edge = [-1.32, low - 0.08, 0, low + 0.3];
  return [
    eyeField(head, [-1.32, low - 0.08, -0.8, -1.25, 0.66, -1.28, 1.32, low, 0, low + 0.3], {
      fill,
      line: 'ink',
      weight: Math.max(1.2, head.weight * 0.5),
    }),
    eyeLine(head, [...edge, 1.45, low], 1.1),
  ];
}

function eyes(head: HeadFrame, face: Face): Shape[] {
  // one lamp, so the glint sits on the same side of both eyes
  const glint = (y: number) =>
    head.radius > 45 ? [eyeOval(head, y, 0.26, 0.26, { fill: 'white' }, 0.24)] : [];
  const white: Rest = { fill: 'white', line: 'ink', weight: 1.4 };
  const wide: Rest = { fill: 'white', line: 'ink', weight: head.weight * 0.85 };
  switch (face) {
    case 'calm':
      return [
        eyeOval(head, 0, 0.72, 1, { fill: 'ink' }),
        ...glint(-0.38),
        eyeLine(head, [-0.95, -0.75, 0, -1.18, 1.25, -0.6], 0.8),
      ];
    case 'flushed':
      return [
        eyeOval(head, 0, 1.25, 0.95, white),
        eyeOval(head, 0, 0.68, 0.9, { fill: 'ink' }),
        ...glint(0.2),
        ...lids(head, 0.36, 'skin'),
        eyeLine(head, [-1, 1.35, 0, 1.6, 1, 1.3], 0.6),
      ];
    case 'sore':
      return [
        eyeLine(head, [-1.4, 0.1, -0.2, 0.42, 1.3, -0.1], 1.35),
        eyeLine(head, [1.3, -0.1, 1.9, -0.6], 0.8),
        eyeLine(head, [1.3, 0.1, 2, 0.35], 0.8),
        eyeLine(head, [-1.2, 1.1, 0, 1.35, 0.9, 1], 0.6),
      ];
    case 'crying':
      return [eyeLine(head, [-1.5, -0.3, -0.2, 0.3, 1.4, 0.3], 1.35), eyeLine(head, [1.4, 0.3, 2, 0.1], 0.8)];
    case 'scared':
      return [eyeOval(head, -0.15, 1.5, 1.72, wide), eyeOval(head, -0.15, 0.6, 0.66, { fill: 'ink' })];
    case 'drowsy':
      // quite shut: the lid's edge hangs with its lashes, the crease above is smooth
      return [
        eyeLine(head, [-1.4, 0.1, -0.6, 0.62, 0.5, 0.66, 1.4, 0.1], 1.4),
        eyeLine(head, [-0.7, 0.7, -0.85, 1.15], 0.7),
        eyeLine(head, [0.05, 0.8, 0.05, 1.3], 0.7),
        eyeLine(head, [0.8, 0.6, 1, 1.05], 0.7),
        eyeLine(head, [-1.1, -0.62, 0, -0.85, 1.1, -0.6], 0.45),
      ];
    case 'drained':
      return [
        eyeOval(head, 0, 1.25, 0.9, white),
        eyeOval(head, 0.1, 0.62, 0.78, { fill: 'soft', line: 'ink', weight: 1.4 }),
        ...lids(head, 0.48, 'drained'),
        eyeLine(head, [-1.3, 1.2, -0.2, 1.95, 1.1, 1.5], 0.75),
      ];
    case 'away':
      return [
        eyeOval(head, 0, 1.45, 1.2, wide),
        eyeOval(head, -0.95, 0.56, 0.56, { fill: 'ink' }, 0.5),
        eyeField(head, [-1.5, -0.55, 0, -1, 1.5, -0.55, 1.1, -1.55, 0, -1.8, -1.1, -1.55], { fill: 'skin' }),
        eyeLine(head, [-1.5, -0.5, 0, -1, 1.5, -0.5], 1.1),
      ];
  }
}

const OPEN_MOUTHS = {
  gasping: [0, -0.12, 0.16, -0.06, 0.19, 0.06, 0.1, 0.2, -0.1, 0.2, -0.19, 0.06, -0.16, -0.06],
  sick: [0, -0.08, 0.2, -0.03, 0.22, 0.1, 0, 0.18, -0.22, 0.1, -0.2, -0.03],
  crying: [0, -0.14, 0.2, -0.1, 0.31, 0.1, 0.26, 0.2, 0, 0.17, -0.26, 0.2, -0.31, 0.1, -0.2, -0.1],
  scared: [0, -0.06, 0.13, -0.01, 0.16, 0.09, 0.06, 0.14, -0.06, 0.14, -0.16, 0.09, -0.13, -0.01],
  flushed: [-0.15, 0.01, 0, -0.02, 0.15, 0.01, 0.07, 0.08, -0.07, 0.08],
  drowsy: [-0.17, 0.01, 0, -0.015, 0.16, 0.05, 0.08, 0.085, -0.06, 0.06],
} as const;

function mouth(head: HeadFrame, look: HeadLook): Shape[] {
  const { weight, form } = head;
  const at = (flat: readonly number[]) => place(head, 0, form.mouth, flat);
  const line = (flat: readonly number[], bold: number): Shape => ({
    d: smooth(at(flat)),
    line: 'ink',
    weight: Math.max(1.2, bold * weight),
  });
  const open = (kind: keyof typeof OPEN_MOUTHS): Shape => ({
    d: smooth(at(OPEN_MOUTHS[kind]), true),
    fill: 'mouth',
    line: 'ink',
    weight,
  });
  if (look.mouth) return [open(look.mouth)];
  switch (look.worried ? 'drained' : look.face) {
    case 'calm':
      return [
        line([-0.18, -0.015, -0.08, 0.025, 0.08, 0.025, 0.18, -0.015], 1),
        line([-0.07, 0.13, 0.07, 0.13], 0.45),
      ];
    case 'sore':
      return [
        line([-0.29, 0.1, -0.2, 0, -0.07, -0.02, 0.07, 0.01, 0.2, -0.01, 0.29, 0.09], 1.3),
        line([-0.14, 0.15, 0, 0.13, 0.14, 0.15], 0.7),
      ];
    case 'crying': {
      const tongue = [-0.15, 0.14, -0.1, 0.06, 0.1, 0.06, 0.15, 0.14, 0, 0.15];
      return [open('crying'), { d: smooth(at(tongue), true), fill: 'blanket' }];
    }
    case 'scared':
    case 'flushed':
    case 'drowsy':
      return [open(look.face as 'scared' | 'flushed' | 'drowsy')];
    case 'drained':
      return [line([-0.17, 0.06, -0.06, 0, 0.07, 0, 0.17, 0.07], 1)];
    case 'away': {
      // stiff: the teeth are on each other
      const lips = [-0.22, 0, -0.18, -0.075, 0.18, -0.075, 0.22, 0, 0.18, 0.075, -0.18, 0.075];
      return [
        { d: smooth(at(lips), true), fill: 'white', line: 'ink', weight },
        { d: straight(at([-0.22, 0, 0.22, 0])), line: 'ink', weight: 1.4 },
      ];
    }
  }
}

function nose(head: HeadFrame, face: Face): Shape {
  const wings = smooth(
    place(head, 0, head.form.nose, [-0.07, -0.01, -0.02, 0.045, 0.05, 0.03, 0.075, -0.02]),
  );
  const { eyes } = head.form;
  const furrow = [1, -1].map((half) => straight(place(head, 0, eyes, [0.045, -0.3, 0.06, -0.12], 1, half)));
  return {
    d: face === 'sore' ? wings + furrow.join('') : wings,
    line: 'ink',
    weight: Math.max(1.3, head.weight * 0.68),
  };
}

/** Tears, shine: what lies on the skin. */
function onTheSkin(head: HeadFrame, face: Face): Shape[] {
  const { eyes: e, spread: s, eye: k, cheek, jaw } = head.form;
  const thin = Math.max(1.2, head.weight * 0.55);
  if (face === 'crying') {
    const middle = (s + cheek) / 2 + 0.1;
    const run = [
      s + 0.02,
      e + k * 0.55,
      s + 0.16,
      e + k * 0.6,
      middle,
      e + 0.3,
      jaw * 0.84,
      0.66,
      jaw * 0.66,
      0.68,
    ];
    run.push(s + 0.1, e + 0.34);
    const drop = [0, -0.19, 0.07, -0.05, 0.08, 0.04, 0, 0.11, -0.08, 0.04, -0.07, -0.05];
    const both = (x: number, y: number, flat: readonly number[]) =>
      [1, -1].map((half) => smooth(place(head, x, y, flat, 1, half), true)).join('');
    return [{ d: both(0, 0, run) + both(jaw + 0.06, 0.8, drop), fill: 'tear', line: 'ink', weight: thin }];
  }
  if (face === 'flushed' && head.radius > 45)
    return [
      {
        d:
          smooth(place(head, 0, e, [-0.36, -0.46, -0.2, -0.52, -0.04, -0.53])) +
          straight(place(head, 0, e, [0.08, -0.53, 0.14, -0.525])),
        line: 'white',
        weight: head.weight * 1.5,
      },
    ];
  return [];
}

/** Everything a face shows, back to front. */
export function features(head: HeadFrame, look: HeadLook): Shape[] {
  const { face } = look;
  return [
    ...eyes(head, face),
    brows(head, look.worried ? 'drained' : face),
    nose(head, face),
    ...onTheSkin(head, face),
    ...mouth(head, look),
  ];
}
