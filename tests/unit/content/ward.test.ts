import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SIGNS } from '#content/signs.ts';
import { SECOND_STEPS } from '#content/second-steps.ts';
import { readWard, WARD } from '#content/ward.ts';
import { assess } from '#domain/signs/assess.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { readJson } from '../../helpers/locales.ts';
import { anySign, context, different } from '../../helpers/reports.ts';

const ours = readJson('src/content/ward.json') as Record<string, unknown>;
const remarks = (change: Record<string, unknown>): string[] => {
  try {
    readWard({ ...ours, ...change });
    return [];
  } catch (error) {
    return (error as Error).message.split('\n');
  }
};

describe('the ward’s settings', () => {
  test('ours are read as they stand', () => {
    const { day, ...rest } = ours;
    expect(readWard(ours)).toEqual(rest);
    expect(WARD).toEqual(rest);
    expect(day).toBeTypeOf('object');
  });

  test('a key misspelt, or of another file, is named and not passed over', () => {
    for (const key of ['secondstep', 'lightsOut', 'constructor', 'remove'])
      expect(remarks({ [key]: {} })).toEqual([
        expect.stringMatching(`^content/ward.json › ${key}: one of .*, saw "${key}"$`),
      ]);
  });

  test('a language that is not there, or twice, is named by its place', () => {
    const built = ['en', 'es', 'pl', 'ar'];
    const wrong = (languages: string[]) => {
      try {
        readWard({ ...ours, languages }, built);
        return [];
      } catch (error) {
        return (error as Error).message.split('\n');
      }
    };
    expect(wrong(['ar', 'en'])).toEqual([]);
    expect(wrong(['en', 'fr'])).toEqual(['content/ward.json › languages › 1: one of en|es|pl|ar, saw "fr"']);
    expect(wrong(['en', 'pl', 'en'])).toEqual([
      'content/ward.json › languages › 2: each language once, saw "en"',
    ]);
  });

  test.each([
    ['languages', [], 'a list of at least one language'],
    ['languages', 'en', 'a list of at least one language'],
    ['languages', ['en', 7], 'a list of at least one language'],
    ['wardLanguage', 'xx', 'one of en|es|pl|ar'],
    ['wardLanguage', 3, 'one of en|es|pl|ar'],
    ['hideUnreviewed', 'no', 'true or false'],
    ['secondStep', 'wait', `one of ${SECOND_STEPS.join('|')}`],
    ['raise', 'all', 'signs with a higher class, or {}'],
    ['raise', [], 'signs with a higher class, or {}'],
  ])('a wrong %s is named with what is allowed and what was seen: %j', (key, seen, rule) => {
    expect(remarks({ [key]: seen })).toContain(
      `content/ward.json › ${key}: ${rule}, saw ${JSON.stringify(seen)}`,
    );
  });

  test.each([
    ['secondStepMinutes', 2, 10],
    ['tellAgainMinutes', 5, 15],
    ['visitAgainMinutes', 60, 240],
    ['medicineWaitMinutes', 30, 90],
  ] as const)('%s is whole minutes from %i to %i', (key, low, high) => {
    expect([low, high].flatMap((value) => remarks({ [key]: value }))).toEqual([]);
    for (const value of [low - 1, high + 1, low + 0.5, -low, 0, '5', null, Number.NaN, Infinity])
      expect(remarks({ [key]: value })).toEqual([
        `content/ward.json › ${key}: whole minutes from ${low} to ${high}, saw ${JSON.stringify(value)}`,
      ]);
  });

  test('a missing value is named, and several wrong ones are all named at once', () => {
    expect(remarks({ secondStep: undefined })).toEqual([
      expect.stringMatching(/secondStep: .*, saw undefined$/),
    ]);
    expect(remarks({ hideUnreviewed: 1, tellAgainMinutes: 99 })).toHaveLength(2);
  });

  test.each([null, undefined, 'x', 7, []])(
    'no settings at all are refused with every place named: %j',
    (input) => {
      expect(() => readWard(input)).toThrow(
        /languages[\s\S]*wardLanguage[\s\S]*secondStep[\s\S]*medicineWaitMinutes/,
      );
    },
  );
});

describe('a ward’s own words about its call button', () => {
  const bell = (words: unknown) => remarks({ bell: words });

  test('are taken as they stand, and none are needed', () => {
    const words = {
      en: { where: 'A red button on a white cable at the head of the bed.' },
      ar: { say: 'قولوا رقم السرير.' },
    };
    expect(readWard({ ...ours, bell: words }).bell).toEqual(words);
    expect(readWard({ ...ours, bell: undefined }).bell).toEqual({});
  });

  test.each<[string, unknown, string]>([
    ['bell', 'press', 'words by language, or {}'],
    ['bell › fr', { fr: { say: 'Lit.' } }, 'one of en|es|pl|ar'],
    ['bell › en', { en: 'the red one' }, 'words under where|say'],
    ['bell › en', { en: {} }, 'words under where|say'],
    ['bell › en › title', { en: { title: 'The button' } }, 'one of where|say'],
    ['bell › en › say', { en: { say: 7 } }, 'a sentence'],
    [
      'bell › en › say',
      { en: { say: 'Do not press.' } },
      'no word that says no, only, when, later or how bad it must be: "not"',
    ],
  ])('%s is named with its rule: %j', (place, words, rule) => {
    expect(bell(words)).toContainEqual(
      expect.stringMatching(`^content/ward.json › ${place}: ${rule.replace(/[|{}]/g, '\\$&')}.*, saw `),
    );
  });

  test('can neither take a sign away nor lower one: the file has no such place', () => {
    for (const change of [{ hide: ['toes-cool'] }, { signs: {} }, { lower: { 'toes-cool': 'next-visit' } }])
      expect(remarks(change)).toHaveLength(1);
    expect(remarks({ raise: { 'toes-cool': 'next-visit' } })).toHaveLength(1);
  });
});

describe('a ward’s raise', () => {
  test('to tell-nurse and ring-now is taken', () => {
    const raise = { 'itchy-under': 'tell-nurse', 'band-wet': 'ring-now' };
    expect(readWard({ ...ours, raise }).raise).toEqual(raise);
  });

  test.each(['next-visit', 'not-sure', 'none', 'urgent', 3, null])('to %j is refused by name', (urgency) => {
    expect(remarks({ raise: { 'toes-cool': urgency } })).toEqual([
      `content/ward.json › raise › toes-cool: one of tell-nurse|ring-now, saw ${JSON.stringify(urgency)}`,
    ]);
  });

  test('of a sign that is not ours is refused by name, names of the machine’s own too', () => {
    for (const id of ['toes-glow', 'constructor'])
      expect(remarks({ raise: { [id]: 'ring-now' } })).toEqual([
        `content/ward.json › raise › ${id}: a sign of content/signs, saw an unknown id`,
      ]);
    const proto = JSON.parse('{"__proto__":"ring-now"}') as Record<string, unknown>;
    expect(remarks({ raise: proto })).toHaveLength(1);
  });

  test('lifts a sign, and one that says less than ours changes nothing', () => {
    const classWith = (raise: Record<string, unknown>, sign: 'itchy-under' | 'toes-cool') =>
      assess(different(sign), context({ ward: readWard({ ...ours, raise }) })).urgency;
    expect(classWith({ 'itchy-under': 'ring-now' }, 'itchy-under')).toBe('ring-now');
    expect(classWith({ 'toes-cool': 'tell-nurse' }, 'toes-cool')).toBe('ring-now');
  });

  test('never lowers any sign, whatever the ward wrote', () => {
    const anyRaise = fc.dictionary(anySign, fc.constantFrom('tell-nurse', 'ring-now'), { maxKeys: 6 });
    fc.assert(
      fc.property(anyRaise, anySign, (raise, sign) => {
        const { urgency } = assess(different(sign), context({ ward: readWard({ ...ours, raise }) }));
        const asked = Math.max(
          rankOf(SIGNS[sign].urgency),
          sign in raise ? rankOf(raise[sign] as 'ring-now') : 0,
        );
        expect(rankOf(urgency)).toBe(asked);
      }),
      { numRuns: 500 },
    );
  });
});
