// What a sign is called where no picture stands beside it, in every language.
import { describe, expect, it } from 'vitest';
import type { Because, Report } from '#domain/signs/types.ts';
import { assess } from '#domain/signs/assess.ts';
import { ALL_SIGN_IDS } from '#domain/signs/ids.ts';
import { instant } from '#domain/units.ts';
import { detailsOf, SIGN_ROWS } from '#content/signs.ts';
import { loadWords } from '#i18n/words.ts';
import { noteText } from '#ui/note-words.ts';
import { reasonSigns, reasonText, topReasons } from '#ui/reason-words.ts';
import { detailName, notedName, placedName, signName } from '#ui/sign-words.ts';
import { everyLanguage } from '../../helpers/locales.ts';
import { SETTINGS } from '../../helpers/ward-days.ts';

const LANGUAGES = everyLanguage.map(([language]) => language);
const wordsOf = (language: string) => loadWords(language, ['look', 'steps', 'signs', 'notes']);
const english = await wordsOf('en');

describe('a name that says nothing of its place', () => {
  it('stands with it', () => {
    expect(placedName(english, 'band-wet')).toBe('Leg bandage: Wet');
    expect(placedName(english, 'toes-cool')).toBe('Toes: Cooler than the other foot');
    expect(placedName(english, 'slid-down')).toBe('Slid down the bed');
  });

  it.each(LANGUAGES)(
    'in %s it is the name of the part, then that of the sign, and of no other sign',
    async (language) => {
      const words = await wordsOf(language);
      const names = ALL_SIGN_IDS.map((sign) => placedName(words, sign));
      expect(new Set(names).size).toBe(names.length);
      for (const sign of ALL_SIGN_IDS) {
        const [name, placed] = [signName(words, sign), placedName(words, sign)];
        if (name === placed) continue;
        expect(placed).toBe(`${words.t(`look:parts.${SIGN_ROWS[sign]!.part}`)}: ${name}`);
      }
      // what lies at the leg bandage cannot be told from its own name alone
      for (const sign of ['band-tight', 'band-moved', 'band-wet', 'band-stained'])
        expect(placedName(words, sign)).not.toBe(signName(words, sign));
    },
  );

  it('is left as it is where this version does not know the sign', () => {
    for (const sign of ['of-a-later-version', 'toString'])
      expect(placedName(english, sign)).toBe(signName(english, sign));
  });
});

describe('a sign as it was noted', () => {
  it.each(LANGUAGES)('names in %s every sub-answer that it is given, and the doubt', async (language) => {
    const words = await wordsOf(language);
    for (const sign of ALL_SIGN_IDS) {
      for (const detail of detailsOf(sign))
        expect(notedName(words, { sign, details: [`${sign}/${detail}`] })).toBe(
          `${placedName(words, sign)} – ${detailName(words, sign, detail)}`,
        );
      expect(notedName(words, { sign, notSure: true })).toBe(
        `${placedName(words, sign)} (${words.t('answer.not-sure')})`,
      );
    }
    expect(notedName(words, { sign: 'band-wet', details: ['band-wet/of-a-later-version'] })).toContain(
      words.t('steps:open.unknown'),
    );
  });

  it('is called alike in the list of notes', () => {
    const note = {
      ...{ id: 'a1b2c3-1', t: instant(0), off: 0 as never, kind: 'sign' as const },
      ...{ sign: 'toes-swollen', answer: 'different' as const, details: ['cannot-move'] },
    };
    expect(noteText(english, note, [])).toBe('Seen: Toes: Thicker than before – The toes also cannot move');
    expect(noteText(english, { ...note, answer: 'not-sure', details: [] }, [])).toBe(
      'Seen: Toes: Thicker than before (Not sure)',
    );
  });
});

describe('why it is so urgent', () => {
  const because = (answers: Report['answers']): readonly Because[] =>
    assess({ answers: answers! }, { ...SETTINGS, now: instant(29_000_000) }).because;

  it.each(LANGUAGES)('what nobody was sure of is never named in %s as seen', async (language) => {
    const words = await wordsOf(language);
    const reasons = because({ 'toes-cool': 'not-sure', 'band-tight': 'different' });
    const doubt = `${placedName(words, 'toes-cool')} (${words.t('answer.not-sure')})`;
    const told = reasons.filter(({ signs }) => signs.includes('toes-cool'));
    expect(told.map(({ rule }) => rule).sort()).toEqual(['R2', 'R5']);
    for (const reason of told) {
      expect(reasonSigns(words, reason, reasons)).toContain(doubt);
      expect(reasonText(words, reason)).not.toMatch(/[{}]|steps:/);
    }
    const sure = reasons.find(({ rule }) => rule === 'R1')!;
    expect(reasonSigns(words, sure, reasons)).toBe(placedName(words, 'band-tight'));
  });

  it('only the reasons that carry the class are told, the one of most signs first', () => {
    const top = topReasons(
      because({ 'toes-cool': 'not-sure', 'band-tight': 'different', 'very-upset': 'different' }),
    );
    expect(top.every(({ atLeast }) => atLeast === 'ring-now')).toBe(true);
    expect(top[0]!.signs).toHaveLength(3);
    expect(topReasons([])).toEqual([]);
  });

  it('that something cannot be named is no further doubt', () => {
    const reasons = because({ 'cannot-name-it': 'different' });
    expect(reasonSigns(english, reasons[0]!, reasons)).toBe(signName(english, 'cannot-name-it'));
  });
});
