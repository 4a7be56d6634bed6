/**
 * What "Why & how" explains: which topics there are, on which day of the stay they come first, and for whom.
 * The words lie in locales; the pictures in scene/topics. Source: our proposal, from common practice on a ward.
 */
export const READERS = ['grownUp', 'from1', 'from3', 'from6', 'from9', 'from13'] as const;
export type Reader = (typeof READERS)[number];

/** Before it goes on, the first day, later, the end. Later topics are found from the start, too. */
export const TOPIC_DAYS = ['before', 'first', 'later', 'end'] as const;
export type TopicDay = (typeof TOPIC_DAYS)[number];
/** The areas of words the topics are told in. */
export const TOPIC_AREAS = ['topics-start', 'topics-body', 'topics-life', 'topics-end'] as const;
export type TopicArea = (typeof TOPIC_AREAS)[number];

export const TOPIC_IDS = [
  ...(['why-pull', 'before-it-goes-on', 'my-set-up', 'first-hour', 'six-looks', 'calling'] as const),
  ...(['soreness', 'first-night', 'toilet-in-bed', 'eating-lying', 'toes-bare', 'your-hands-off'] as const),
  ...(['wash-bandage-day', 'sheets', 'bandage-wet', 'poo', 'wee-drink', 'skin-heel'] as const),
  ...(['move-the-rest', 'sleep', 'boredom', 'sad-angry', 'pain-of-care', 'brothers-sisters'] as const),
  ...(['visitors', 'school', 'x-ray-trip', 'doctors-round', 'your-own-body', 'parents-too'] as const),
  ...(['what-next', 'coming-out', 'going-home'] as const),
] as const;
export type TopicId = (typeof TOPIC_IDS)[number];

/** The five tiles of the first day; the rest is one tap behind. */
export const FIRST_TILES: readonly TopicId[] = [
  'calling',
  'six-looks',
  'why-pull',
  'soreness',
  'first-night',
];

const FIRST_OF: Readonly<Record<Exclude<TopicArea, 'topics-start'>, TopicId>> = {
  'topics-body': 'wash-bandage-day',
  'topics-life': 'sad-angry',
  'topics-end': 'what-next',
};

/** The area in which a topic is told. */
export function areaOf(topic: TopicId): TopicArea {
  const at = TOPIC_IDS.indexOf(topic);
  const begun = TOPIC_AREAS.filter(
    (area) => area === 'topics-start' || TOPIC_IDS.indexOf(FIRST_OF[area]) <= at,
  );
  return begun[begun.length - 1]!;
}

/** The day of the stay on which a topic comes first. */
export function dayOf(topic: TopicId): TopicDay {
  if (topic === 'before-it-goes-on') return 'before';
  const area = areaOf(topic);
  return area === 'topics-start' ? 'first' : area === 'topics-end' ? 'end' : 'later';
}

/** What is not for a reader: a topic that such a child has no use for, or that a grown-up tells in another one. */
const NOT_FOR: Readonly<Partial<Record<TopicId, readonly Reader[]>>> = {
  'bandage-wet': ['from1'],
  school: ['from1'],
  'doctors-round': ['from1'],
  'your-own-body': ['from1'],
  'parents-too': ['from1'],
};

/** Readers for whom a topic is told. */
export const readersOf = (topic: TopicId): readonly Reader[] =>
  READERS.filter((reader) => !NOT_FOR[topic]?.includes(reader));

/** The reader a child of that age is. */
export const readerAt = (years: number): Reader =>
  years < 3 ? 'from1' : years < 6 ? 'from3' : years < 9 ? 'from6' : years < 13 ? 'from9' : 'from13';
