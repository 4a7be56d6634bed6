/** The pictures of the child's day, by what they stand for: each draws the right leg's, if the pulled leg is seen. */
import { lightSquare } from '../lighter.ts';
import { mirrored } from '../parts/points.ts';
import type { Shape } from '../shapes.ts';
import type { Side } from '../spec.ts';
import { SQUARE } from '../things/pen.ts';
import * as body from './body.ts';
import * as cards from './cards.ts';
import * as care from './care.ts';
import * as company from './company.ts';
import { DAYS } from './days.ts';
import * as food from './food.ts';
import { writeDay } from './markup.ts';
import * as rest from './rest.ts';

const DRAWN = {
  wake: rest.wake,
  'medicine-visit': care.medicineVisit,
  'toes-hello': body.toesHello,
  wash: body.wash,
  teeth: body.teeth,
  'bandage-care': care.bandageCare,
  needle: care.needle,
  sheets: care.sheets,
  breakfast: food.breakfast,
  lunch: food.lunch,
  supper: food.supper,
  snack: food.snack,
  drink: food.drink,
  toilet: body.toilet,
  round: care.round,
  'x-ray': care.xRay,
  physio: care.physio,
  'nurse-look': care.nurseLook,
  'play-visit': company.playVisit,
  play: company.play,
  school: company.school,
  'quiet-hour': rest.quietHour,
  nap: rest.nap,
  visitor: company.visitor,
  'call-home': company.callHome,
  screen: company.screen,
  choice: company.choice,
  story: rest.storyTime,
  song: rest.song,
  'curtain-time': rest.curtainTime,
  goodnight: rest.goodnight,
  surprise: care.surprise,
  'operation-day': care.operationDay,
  'coming-out': care.comingOut,
  'free-time': rest.freeTime,
  night: rest.night,
  'feel-curled-up': body.curledUp,
  'feel-fists': body.fists,
  'feel-hiding': body.hiding,
  'feel-loose': body.loose,
  'feel-wide-awake': body.wideAwake,
  'toes-feel-funny': body.toesFeelFunny,
  'it-hurts': body.itHurts,
  'need-toilet': body.needToilet,
  thirsty: food.thirsty,
  ...DAYS,
  'job-toe-reporter': company.toeReporter,
  'job-weather-reporter': company.weatherReporter,
  'job-question-keeper': company.questionKeeper,
  'job-time-keeper': company.timeKeeper,
  'job-day-writer': company.dayWriter,
  'card-without-visitors': cards.withoutVisitors,
  'card-woman-nurse': care.womanNurse,
  'card-man-nurse': care.manNurse,
  'card-period': cards.period,
  'card-toilet-alone': cards.toiletAlone,
  'card-wash-alone': cards.washAlone,
  'card-curtain-closed': cards.curtainClosed,
  'card-talk-alone': company.talkAlone,
  'card-explain-to-me': care.explainToMe,
  'card-not-now': cards.notNow,
  'card-sad': body.sad,
  'card-it-hurts': body.cardItHurts,
  'choose-watch': care.watch,
  'choose-look-away': care.lookAway,
  'choose-left-hand': company.leftHand,
  'choose-right-hand': company.rightHand,
  'choose-child-counts': company.childCounts,
  'choose-grown-up-counts': company.grownUpCounts,
  'door-closed': rest.doorClosed,
  'door-open': rest.doorOpen,
  sun: rest.sun,
  moon: rest.moon,
  'resting-child': rest.restingChild,
  'bedtime-story': rest.bedtimeStory,
  'call-button': rest.callButtonInHand,
} as const satisfies Record<string, () => Shape[]>;

export type DayPictureId = keyof typeof DRAWN;
export const DAY_PICTURE_IDS = Object.keys(DRAWN) as DayPictureId[];

/** The pulled leg is seen, and so which of the two it is; all else is one picture for both. */
const WITH_LEG: ReadonlySet<DayPictureId> = new Set([
  'bandage-care',
  'x-ray',
  'feel-curled-up',
  'feel-fists',
  'feel-hiding',
  'feel-loose',
  'feel-wide-awake',
  'card-explain-to-me',
] as const);

/**
 * A picture of the day as shapes from back to front, for the leg that is pulled where it is seen.
 *
 * Shape: 120 × 120 scene units, every point inside.
 * @example drawDay('wash').length > 1 // true
 */
export function drawDay(id: DayPictureId, side: Side = 'left'): Shape[] {
  const shapes = lightSquare(DRAWN[id]());
  return side === 'right' || !WITH_LEG.has(id) ? shapes : mirrored(shapes, SQUARE);
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
