/** How the record of understandability is read and counted, as functions from the record to faults. */
import { TOPIC_IDS, areaOf, type TopicId } from '#content/topics.ts';
import { sourceHash, type Texts } from '../../.ci/locales.mjs';
import { told } from './topic-faults.ts';

/** Agree, disagree, or the tool says that the item does not apply. */
export type Answer = 1 | 0 | 'n/a';
interface Scored {
  /** A role, never a name. */
  readonly by: string;
  readonly on: string;
  /** Fingerprint of the English texts that were scored. */
  readonly of: string;
  readonly answers: Readonly<Record<string, Answer>>;
  /** Why an item has no point. */
  readonly because: Readonly<Record<string, string>>;
}
export interface Understandability {
  readonly tool: string;
  readonly source: string;
  /** What each item asks, in our words. */
  readonly items: Readonly<Record<string, string>>;
  /** Items that no text can win: which change of the page would give the point. */
  readonly wanted: Readonly<Record<string, string>>;
  readonly topics: Readonly<Record<string, Scored>>;
}

const range = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, at) => String(from + at));

/**
 * PEMAT-P: 17 items of understandability, 7 of actionability; 13 and 14 are for film and sound alone.
 * Source: AHRQ Publication No. 14-0002-EF (2013); numbers and wording seen in its reprint, PMC5839932, table 1.
 */
export const DOMAINS = {
  understandability: [...range(1, 12), ...range(15, 19)],
  actionability: range(20, 26),
} as const;
export type Domain = keyof typeof DOMAINS;
const ITEMS: readonly string[] = [...DOMAINS.understandability, ...DOMAINS.actionability];

/**
 * Where print may answer "not applicable". 6 to 19: PMC8990380, table 2, and PMC11033604, table 2;
 * 24 and 25 from memory of the tool.
 */
const MAY_NOT_APPLY: ReadonlySet<string> = new Set('6 8 9 11 16 17 18 19 24 25'.split(' '));

/** The line that every topic has to reach. The tool's authors call 70 % enough. */
const LINE = 0.9;

/** Points by applicable items, the published rule. Errors: where no item applies there is no score. */
export function scoreOf(answers: readonly Answer[]): { points: number; applicable: number; share: number } {
  const counted = answers.filter((answer) => answer !== 'n/a');
  const points = counted.filter((answer) => answer === 1).length;
  if (!counted.length) throw new Error(`understandability: no item applies, saw ${answers.length} items`);
  return { points, applicable: counted.length, share: points / counted.length };
}

export const answersIn = (scored: Scored, domain: Domain): Answer[] =>
  DOMAINS[domain].map((item) => scored.answers[item]!);

/** All that a grown-up reads in a topic. */
export function scoredText(texts: Texts, topic: TopicId): string {
  const part = (name: string) => told(texts, topic, name);
  return [...part('grownUp'), ...part('cautions'), ...part('canAsk')].join('\n');
}

/** The English that a score was given for: the texts, the title and what the picture is said to show. */
export const fingerprint = (texts: Texts, topic: TopicId): string =>
  sourceHash(
    [
      texts[`why:topic.${topic}.title`],
      texts[`${areaOf(topic)}:${topic}.shows`],
      scoredText(texts, topic),
    ].join('\n'),
  );

/** Items, answers and reasons that are missing, too many, or not as the tool allows. */
export function recordFaults(record: Understandability): string[] {
  const differ = (where: string, seen: object, due: readonly string[]) => [
    ...due.filter((one) => !(one in seen)).map((one) => `${where}: no ${one}`),
    ...Object.keys(seen)
      .filter((one) => !due.includes(one))
      .map((one) => `${where}: ${one} is not known`),
  ];
  return [
    ...differ('items', record.items, ITEMS),
    ...differ('topics', record.topics, TOPIC_IDS),
    ...Object.entries(record.topics).flatMap(([topic, { answers, because, by, on }]) => {
      const zeros = Object.keys(answers).filter((item) => answers[item] === 0);
      return [
        ...differ(`${topic} › answers`, answers, ITEMS),
        ...differ(`${topic} › because`, because, zeros),
        ...Object.entries(because)
          .filter(([, reason]) => reason.trim() === '')
          .map(([item]) => `${topic} › because › ${item}: empty`),
        ...Object.entries(answers)
          .filter(([, answer]) => answer !== 0 && answer !== 1 && answer !== 'n/a')
          .map(([item, answer]) => `${topic} › ${item}: one of 1|0|"n/a", saw ${JSON.stringify(answer)}`),
        ...Object.entries(answers)
          .filter(([item, answer]) => answer === 'n/a' && !MAY_NOT_APPLY.has(item))
          .map(([item]) => `${topic} › ${item}: the tool allows no "n/a" here`),
        ...(by.trim() ? [] : [`${topic} › by: who scored?`]),
        ...(/^\d{4}-\d{2}-\d{2}$/.test(on) ? [] : [`${topic} › on: a date, saw "${on}"`]),
      ];
    }),
  ];
}

/** Scores under the line, unless the page itself lacks what would lift them and the record names it. */
export function lineFaults(record: Understandability): string[] {
  return Object.entries(record.topics).flatMap(([topic, { answers }]) =>
    (Object.keys(DOMAINS) as Domain[]).flatMap((domain) => {
      const withPage = DOMAINS[domain].map((item) =>
        item in record.wanted && answers[item] === 0 ? 1 : answers[item]!,
      );
      const { points, applicable, share } = scoreOf(withPage);
      return share >= LINE ? [] : [`${topic} › ${domain}: ${points} of ${applicable}`];
    }),
  );
}
