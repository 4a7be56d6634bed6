/** The picture of each topic, by its id. */
import { framed, type TopicShape } from './page.ts';
import { writeTopic } from './markup.ts';
import * as care from './care-pictures.ts';
import * as company from './company-pictures.ts';
import * as pull from './pull-pictures.ts';

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
  'toes-bare': pull.toesBare,
  'your-hands-off': pull.yourHandsOff,
  'wash-bandage-day': care.washBandageDay,
  sheets: care.sheets,
  'bandage-wet': pull.bandageWet,
  poo: care.poo,
  'wee-drink': care.weeDrink,
  'skin-heel': pull.skinHeel,
  'move-the-rest': company.moveTheRest,
  sleep: company.sleep,
  boredom: company.boredom,
  'sad-angry': company.sadAngry,
  'pain-of-care': care.painOfCare,
  'brothers-sisters': company.brothersSisters,
  visitors: company.visitors,
  school: company.school,
  'x-ray-trip': care.xRayTrip,
  'doctors-round': company.doctorsRound,
  'your-own-body': company.yourOwnBody,
  'parents-too': company.parentsToo,
  'what-next': company.whatNext,
  'coming-out': pull.comingOut,
  'going-home': company.goingHome,
} as const satisfies Record<string, () => TopicShape[]>;
export type TopicPictureId = keyof typeof DRAWN;
export const TOPIC_PICTURE_IDS = Object.keys(DRAWN) as TopicPictureId[];
export const drawTopic = (id: TopicPictureId): TopicShape[] => framed(DRAWN[id]());
export const topicMarkup = (id: TopicPictureId, label: string): string => writeTopic(drawTopic(id), label);
