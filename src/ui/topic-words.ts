/** What a topic says, and to whom. */
import { WARD } from '#content/ward.ts';
import { TOPIC_IDS, areaOf, type Reader, type TopicId } from '#content/topics.ts';
import { translate, type Words } from '#i18n/words.ts';

/** The topic's name. Needs the area `why`. */
export const topicTitle = (words: Words, topic: TopicId): string =>
  translate(words)(`why:topic.${topic}.title`);

/** What one wants to know who opens the topic, in the grown-up's words. Needs the area `why`. */
export const topicQuestion = (words: Words, topic: TopicId): string =>
  translate(words)(`why:topic.${topic}.question`);

/** An empty text would be taken for a missing one, and its key returned. */
const MISSING = '\u0000';
/** More thoughts than this in one text would be too many. */
const MOST = 16;
/** The texts under a key that are counted from 1, in their order. */
function counted(words: Words, key: string, values: Record<string, unknown> = {}): string[] {
  const parts = Array.from({ length: MOST }, (_, at) => String(at + 1));
  return parts
    .map((part) => translate(words)(`${key}.${part}`, { ...values, defaultValue: MISSING }))
    .filter((text) => text !== MISSING);
}

/** What is told to one reader, a thought at a time. Needs the topic's area. */
export const toldTo = (words: Words, topic: TopicId, reader: Reader): string[] =>
  counted(words, `${areaOf(topic)}:${topic}.${reader}`);
/** Why it works, where a reader is told that, too. */
export function whyItWorks(words: Words, topic: TopicId, reader: Reader): string | undefined {
  const text = translate(words)(`${areaOf(topic)}:${topic}.${reader}.why`, { defaultValue: MISSING });
  return text === MISSING ? undefined : text;
}
/** What matters at it, for everybody. Needs the topic's area. */
export const cautionsOf = (words: Words, topic: TopicId): string[] =>
  counted(words, `${areaOf(topic)}:${topic}.cautions`);
/** What one can ask about it. Needs the topic's area. */
export const canAsk = (words: Words, topic: TopicId): string[] =>
  counted(words, `${areaOf(topic)}:${topic}.canAsk`);
/** What its picture shows. Needs the topic's area. */
export const topicShows = (words: Words, topic: TopicId): string =>
  translate(words)(`${areaOf(topic)}:${topic}.shows`);

/** The cards for the hour of a care itself. */
export const CARE_CARDS = ['putting-on', 'skin-day', 'sheets', 'toilet', 'going-home'] as const;
export type CareCard = (typeof CARE_CARDS)[number];
/** One half of a care card, for the family or, as a reminder, for staff. Needs the area `care`. */
export const careTexts = (words: Words, card: CareCard, half: 'family' | 'staff'): string[] =>
  counted(words, `care:${card}.${half}`, { minutes: WARD.medicineWaitMinutes });

/** What a search over topics looks through. Needs the area `why`. */
export const findable = (words: Words) =>
  TOPIC_IDS.map((id) => ({
    id,
    title: topicTitle(words, id),
    question: topicQuestion(words, id),
    words: translate(words)(`why:topic.${id}.words`),
  }));
