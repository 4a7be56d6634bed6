/**
 * A bed without a call button: no page on which a family acts may ask for one. What stands in for a text stands under
 * the key it stands in for, in all languages, with the same gaps.
 */
import { describe, expect, it } from 'vitest';
import { calledTexts } from '#i18n/called.ts';
import { loadWords, standIn, translate } from '#i18n/words.ts';
import { english, everyLanguage } from '../helpers/locales.ts';

const WAYS = ['desk', 'other'] as const;
const gaps = (text: string) => (text.match(/\{\{\w+\}\}/g) ?? []).sort();
const standsFor = (key: string) => key.replace(/^called:\w+[.]([\w-]+)[.]/, '$1:');

/** Where a family is told what to do. Explanations may speak of a button: the bar above them says how to call here. */
const ACTED_ON = /^(?:common|look|steps|day|day-adult|pass|notes):/;
const ASKS_FOR_A_BUTTON = /call button|\bpress (?:again|any time|now|whenever)|you press/i;
/** These name a page, or a way that has a button or a cord of its own. */
const MAY_NAME_IT = new Set([
  'common:needsScript',
  'notes:strikeSure',
  'steps:secondStep.second-button',
  'steps:secondStep.emergency-pull',
]);

describe('at a bed without a call button', () => {
  it.each(everyLanguage)('%s: each text stands in for one that is there, with its gaps', (_, texts) => {
    const own = Object.keys(texts).filter((key) => key.startsWith('called:'));
    expect(own.length).toBeGreaterThan(30);
    for (const key of own) {
      expect(texts, key).toHaveProperty([standsFor(key)]);
      expect([key, gaps(texts[key]!)]).toEqual([key, gaps(texts[standsFor(key)]!)]);
    }
  });

  it.each(everyLanguage)('%s: nothing to act on is left that asks for the button', async (language) => {
    const of = await calledTexts();
    const asking = Object.keys(english).filter(
      (key) => ACTED_ON.test(key) && ASKS_FOR_A_BUTTON.test(english[key]!) && !MAY_NAME_IT.has(key),
    );
    expect(asking.length).toBeGreaterThan(20);
    for (const way of WAYS)
      for (const key of asking)
        expect([way, key, of(way, language, key)]).toEqual([way, key, expect.any(String)]);
  });

  it('a translator says it with the time filled in, and its own words again where there is a button', async () => {
    const of = await calledTexts();
    const words = await loadWords('en', ['steps']);
    let way: (typeof WAYS)[number] | undefined = 'desk';
    standIn.of = (locale, key) => way && of(way, locale, key);
    try {
      const t = translate(words);
      expect(t('bar.worried')).toBe('Worried? Get a nurse from the desk now.');
      expect(t('steps:result.pressedAt', { time: '03:11' })).toBe('Nurse called at 03:11');
      // no words of its own: the page's
      expect(t('steps:result.minutesSince', { count: 2 })).toBe('2 minutes ago');
      way = undefined;
      expect(t('bar.worried')).toBe('Worried? Press the call button now.');
    } finally {
      delete standIn.of;
    }
  });
});
