// Lengths of time beside an idea, a moment, an event: as each language shortens minutes.
import { expect, it } from 'vitest';
import { LOCALES } from '#i18n/locales.ts';
import { lengthOf, minutesMoved } from '#ui/play-words.ts';

it.each(LOCALES.map(({ code }) => code))(
  '%s: a number of minutes and its unit stay on one line, set apart from what is around them',
  (locale) => {
    for (const minutes of [1, 2, 5, 15, 45, 120])
      for (const [written, signDisplay] of [
        [lengthOf(locale, minutes), 'auto'],
        [minutesMoved(locale, minutes), 'always'],
        [minutesMoved(locale, -minutes), 'always'],
      ] as const) {
        expect(written).not.toMatch(/[ \t\n]/);
        const value = written.includes('-') || written.includes('−') ? -minutes : minutes;
        const usual = new Intl.NumberFormat(locale, { style: 'unit', unit: 'minute', signDisplay }).format(
          value,
        );
        expect(written.replaceAll('\u00a0', ' ')).toBe(`\u2068${usual}\u2069`.replaceAll('\u00a0', ' '));
      }
  },
);
