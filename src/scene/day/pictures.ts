/** The pictures of the child's day, by what they stand for. */
import { mirrored } from '../parts/points.ts';
import { box, brush } from '../play/brush.ts';
import type { Shape } from '../shapes.ts';
import type { Side } from '../spec.ts';
import { writeDay } from './markup.ts';
import { DAY_SIZE, framed } from './page.ts';

/** A first sketch: a card with as many dots as tell it apart. */
const plain = (n: number): Shape[] => {
  const p = brush();
  const places = Array.from({ length: 7 }, (_, i) => i).filter((i) => ((n + 1) >> i) & 1);
  return [
    p.flat(box(14, 14, 106, 106), 'band'),
    p.dots(
      places.flatMap((i) => [30 + (i % 3) * 30, 34 + Math.floor(i / 3) * 26]),
      16,
    ),
  ];
};

const DRAWN = {
  wake: () => plain(0),
  'medicine-visit': () => plain(1),
  'toes-hello': () => plain(2),
  wash: () => plain(3),
  teeth: () => plain(4),
  'bandage-care': () => plain(5),
  needle: () => plain(6),
  sheets: () => plain(7),
  breakfast: () => plain(8),
  lunch: () => plain(9),
  supper: () => plain(10),
  snack: () => plain(11),
  drink: () => plain(12),
  toilet: () => plain(13),
  round: () => plain(14),
  'x-ray': () => plain(15),
  physio: () => plain(16),
  'nurse-look': () => plain(17),
  'play-visit': () => plain(18),
  play: () => plain(19),
  school: () => plain(20),
  'quiet-hour': () => plain(21),
  nap: () => plain(22),
  visitor: () => plain(23),
  'call-home': () => plain(24),
  screen: () => plain(25),
  choice: () => plain(26),
  story: () => plain(27),
  song: () => plain(28),
  'curtain-time': () => plain(29),
  goodnight: () => plain(30),
  surprise: () => plain(31),
  'operation-day': () => plain(32),
  'coming-out': () => plain(33),
  'free-time': () => plain(34),
  night: () => plain(35),
  'feel-curled-up': () => plain(36),
  'feel-fists': () => plain(37),
  'feel-hiding': () => plain(38),
  'feel-loose': () => plain(39),
  'feel-wide-awake': () => plain(40),
  'toes-feel-funny': () => plain(41),
  'it-hurts': () => plain(42),
  'need-toilet': () => plain(43),
  thirsty: () => plain(44),
  'day-1': () => plain(45),
  'day-2': () => plain(46),
  'day-3': () => plain(47),
  'day-4': () => plain(48),
  'day-5': () => plain(49),
  'day-6': () => plain(50),
  'day-7': () => plain(51),
  'day-8': () => plain(52),
  'day-9': () => plain(53),
  'day-10': () => plain(54),
  'day-11': () => plain(55),
  'day-12': () => plain(56),
  'job-toe-reporter': () => plain(57),
  'job-weather-reporter': () => plain(58),
  'job-question-keeper': () => plain(59),
  'job-time-keeper': () => plain(60),
  'job-day-writer': () => plain(61),
  'card-without-visitors': () => plain(62),
  'card-woman-nurse': () => plain(63),
  'card-man-nurse': () => plain(64),
  'card-period': () => plain(65),
  'card-toilet-alone': () => plain(66),
  'card-wash-alone': () => plain(67),
  'card-curtain-closed': () => plain(68),
  'card-talk-alone': () => plain(69),
  'card-explain-to-me': () => plain(70),
  'card-not-now': () => plain(71),
  'card-sad': () => plain(72),
  'card-it-hurts': () => plain(73),
  'choose-watch': () => plain(74),
  'choose-look-away': () => plain(75),
  'choose-left-hand': () => plain(76),
  'choose-right-hand': () => plain(77),
  'choose-child-counts': () => plain(78),
  'choose-grown-up-counts': () => plain(79),
  'door-closed': () => plain(80),
  'door-open': () => plain(81),
  sun: () => plain(82),
  moon: () => plain(83),
  'resting-child': () => plain(84),
  'bedtime-story': () => plain(85),
  'call-button': () => plain(86),
} as const satisfies Record<string, (side: Side) => Shape[]>;

export type DayPictureId = keyof typeof DRAWN;
export const DAY_PICTURE_IDS = Object.keys(DRAWN) as DayPictureId[];

/**
 * A picture of the day as shapes from back to front, for the leg that is pulled where it is seen.
 *
 * Shape: 120 × 120 scene units, every point inside.
 * @example drawDay('wash').length > 1 // true
 */
export function drawDay(id: DayPictureId, side: Side = 'left'): Shape[] {
  const draw: (side: Side) => Shape[] = DRAWN[id];
  const shapes = framed(draw(side));
  return side === 'right' ? shapes : mirrored(shapes, DAY_SIZE);
}

/**
 * A picture of the day as SVG text, told to those who cannot see it by its label; without a label it is decoration.
 *
 * Shape: one `svg` of class `scene`, so that the drawing's style sheet colours it; skin is the family's tone.
 * Not: words, numbers or reading direction; only the side of the pulled leg mirrors anything.
 * @example dayMarkup('wash', 'Wash') // '<svg class="scene" … aria-label="Wash" …>'
 */
export const dayMarkup = (id: DayPictureId, label = '', side: Side = 'left'): string =>
  writeDay(drawDay(id, side), label);
