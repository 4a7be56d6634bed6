/** The picture of each topic of "Why & how", by the topic's id. */
import { mirrored } from '../parts/points.ts';
import type { Side } from '../spec.ts';
import * as care from './care-pictures.ts';
import * as company from './company-pictures.ts';
import * as home from './home-pictures.ts';
import * as legs from './leg-pictures.ts';
import { writeTopic } from './markup.ts';
import { framed, TOPIC_VIEW, type TopicShape } from './page.ts';
import * as pull from './pull-pictures.ts';

/** Each draws the right leg's picture; the left leg's is mirrored in numbers, if the pulled leg is seen at all. */
const DRAWN = {
  'why-pull': pull.whyPull,
  'before-it-goes-on': pull.beforeItGoesOn,
  'my-set-up': pull.mySetUp,
  'first-hour': pull.firstHour,
  'six-looks': pull.sixLooks,
  calling: pull.calling,
  soreness: care.soreness,
  'first-night': care.firstNight,
  'toilet-in-bed': care.toiletInBed,
  'eating-lying': care.eatingLying,
  'toes-bare': legs.toesBare,
  'your-hands-off': legs.yourHandsOff,
  'wash-bandage-day': care.washBandageDay,
  sheets: care.sheets,
  'bandage-wet': legs.bandageWet,
  poo: care.poo,
  'wee-drink': care.weeDrink,
  'skin-heel': legs.skinHeel,
  'move-the-rest': company.moveTheRest,
  sleep: company.sleep,
  boredom: company.boredom,
  'sad-angry': company.sadAngry,
  'pain-of-care': care.painOfCare,
  'brothers-sisters': company.brothersSisters,
  visitors: company.visitors,
  school: company.school,
  'x-ray-trip': care.xRayTrip,
  'doctors-round': home.doctorsRound,
  'your-own-body': home.yourOwnBody,
  'parents-too': home.parentsToo,
  'what-next': home.whatNext,
  'coming-out': legs.comingOut,
  'going-home': home.goingHome,
} as const satisfies Record<string, (side: Side) => TopicShape[]>;

export type TopicPictureId = keyof typeof DRAWN;
export const TOPIC_PICTURE_IDS = Object.keys(DRAWN) as TopicPictureId[];

/** No pulled leg is seen in these, or the drawing knows about sides itself. */
const SAME_FOR_BOTH: ReadonlySet<TopicPictureId> = new Set([
  'first-hour',
  'six-looks',
  'calling',
  'soreness',
  'toilet-in-bed',
  'poo',
  'wee-drink',
  'sleep',
  'boredom',
  'sad-angry',
  'pain-of-care',
  'visitors',
  'school',
  'doctors-round',
  'your-own-body',
  'parents-too',
] as const);

/**
 * A topic's picture as shapes from back to front, for the leg that is pulled.
 *
 * Shape: 400 × 300 scene units, every point inside.
 * @example drawTopic('my-set-up', 'left').some((shape) => shape.part === 'cord') // true
 */
export function drawTopic(id: TopicPictureId, side: Side): TopicShape[] {
  const shapes = framed(DRAWN[id](side));
  if (side === 'right' || SAME_FOR_BOTH.has(id)) return shapes;
  const other = mirrored(shapes, TOPIC_VIEW.width);
  return shapes.map((shape, i) => ({ ...shape, d: other[i]!.d }));
}

/**
 * A topic's picture as SVG text, told to those who cannot see it by its label; without a label it is decoration.
 *
 * Shape: one `svg` of class `scene`; skin is the family's tone by the style sheet. In `my-set-up` each part stands
 * in groups with `data-part-name`.
 * Not: words, numbers or reading direction; only the side of the pulled leg mirrors anything.
 * @example topicMarkup('toes-bare', 'Toes stay bare') // '<svg class="scene" … aria-label="Toes stay bare" …>'
 */
export const topicMarkup = (id: TopicPictureId, label: string, side: Side = 'left'): string =>
  writeTopic(drawTopic(id, side), label);
