/** What a topic's texts must keep, as functions from texts to faults. */
import { TOPIC_IDS, areaOf, readersOf, type Reader, type TopicId } from '#content/topics.ts';
import { sentencesOf, wordsOf } from '#domain/text/counts.ts';
import { readable, type Texts } from '../../.ci/locales.mjs';

/** Design 3-topics.md: words in one text, sentences in one text, words in one sentence; where none is given, none. */
const LIMITS: Readonly<Record<Reader, { words: number; sentences?: number; sentence: number }>> = {
  grownUp: { words: 120, sentence: 12 },
  from1: { words: 60, sentence: 12 },
  from3: { words: 42, sentences: 6, sentence: 7 },
  from6: { words: 80, sentence: 12 },
  from9: { words: 120, sentence: 12 },
  from13: { words: 150, sentence: 12 },
};

/** What is told to one reader, in its order. */
export function told(texts: Texts, topic: TopicId, reader: string): string[] {
  const prefix = `${areaOf(topic)}:${topic}.${reader}.`;
  return Object.entries(texts)
    .filter(([key]) => key.startsWith(prefix))
    .map(([, text]) => readable(text));
}

/** Cells that are empty though a reader has them, and texts for a reader who has none. */
export function cellFaults(texts: Texts): string[] {
  return TOPIC_IDS.flatMap((topic) => {
    const readers = readersOf(topic);
    return [
      ...(Object.keys(LIMITS) as Reader[]).flatMap((reader) =>
        told(texts, topic, reader).length > 0 === readers.includes(reader) ? [] : [`${topic} × ${reader}`],
      ),
      ...['cautions', 'canAsk']
        .filter((part) => !told(texts, topic, part).length)
        .map((part) => `${topic}: no ${part}`),
      ...['title', 'question', 'words'].flatMap((part) =>
        texts[`why:topic.${topic}.${part}`] ? [] : [`${topic}: no ${part}`],
      ),
    ];
  });
}

/** Texts that are longer than their reader reads; a language may need a share more words than English. */
export function lengthFaults(texts: Texts, share = 1): string[] {
  return TOPIC_IDS.flatMap((topic) =>
    (Object.keys(LIMITS) as Reader[]).flatMap((reader) => {
      const { words, sentences, sentence } = LIMITS[reader];
      const pool = told(texts, topic, reader).join(' ');
      const all = sentencesOf(pool);
      const long = all.filter((one) => wordsOf(one).length > Math.round(sentence * share));
      return [
        ...(wordsOf(pool).length > words * share
          ? [`${topic} × ${reader}: ${wordsOf(pool).length} words`]
          : []),
        ...(sentences && all.length > sentences ? [`${topic} × ${reader}: ${all.length} sentences`] : []),
        ...long.map((one) => `${topic} × ${reader}: ${wordsOf(one).length} words: "${one}"`),
      ];
    }),
  );
}

/** All that one reader is told, as pages for the readability measures: by topic, or as one. */
export function pagesFor(texts: Texts, reader: Reader, byTopic: boolean): { name: string; pool: string }[] {
  const pages = TOPIC_IDS.map((topic) => ({
    name: `${topic} × ${reader}`,
    pool: told(texts, topic, reader).join(' '),
  })).filter(({ pool }) => pool !== '');
  return byTopic ? pages : [{ name: reader, pool: pages.map(({ pool }) => pool).join(' ') }];
}
