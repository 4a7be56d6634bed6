/** Topics are found by what a family types, in every language, with slips. */
import { describe, expect, it } from 'vitest';
import { TOPIC_IDS, type TopicId } from '#content/topics.ts';
import { finder } from '#i18n/find.ts';
import { everyLanguage } from '../../helpers/locales.ts';

const finders = new Map(
  everyLanguage.map(([lang, texts]) => {
    const text = (id: TopicId, part: string) => texts[`why:topic.${id}.${part}`]!;
    const all = TOPIC_IDS.map((id) => ({
      id,
      title: text(id, 'title'),
      question: text(id, 'question'),
      words: text(id, 'words'),
    }));
    return [lang, { find: finder(all), all }];
  }),
);

describe.each([...finders])('%s', (_, { find, all }) => {
  it('finds every topic first by its own title, and among three by its question', () => {
    for (const { id, title, question } of all) {
      expect(find(title)[0], title).toBe(id);
      expect(find(question).slice(0, 3), question).toContain(id);
    }
  });
  it('finds nothing for nothing', () => {
    expect(find('')).toEqual([]);
    expect(find(' ?! ')).toEqual([]);
  });
});

it.each([
  ['en', 'why no sock?', 'toes-bare'],
  ['en', 'when can she eat?', 'eating-lying'],
  ['en', 'operaton', 'what-next'],
  ['es', 'radiografia', 'x-ray-trip'],
  ['es', 'hermanos', 'brothers-sisters'],
  ['pl', 'rodzenstwo', 'brothers-sisters'],
  ['pl', 'szkola', 'school'],
  ['ar', 'المدرسه', 'school'],
  ['ar', 'الاشعه', 'x-ray-trip'],
])('%s: "%s" leads to %s', (lang, typed, topic) => {
  expect(finders.get(lang)!.find(typed).slice(0, 3)).toContain(topic);
});
