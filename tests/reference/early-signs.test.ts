/**
 * Sources: BOAST 10 (2014): pain out of proportion and on moving come first, pulse and refill do not help early.
 * Bae 2001 (J Pediatr Orthop 21:680–8): the need for more pain relief comes hours before changes of the vessels.
 * Noonan and McCarthy 2010 (J Pediatr Orthop 30:S96–101): anxiety, agitation, increasing analgesic requirement.
 * The classes themselves are the design's (2-signs.md, 3.2–3.3).
 */
import { describe, expect, test } from 'vitest';
import { SIGN_PICTURES } from '#content/sign-pictures.ts';
import { SIGNS } from '#content/signs.ts';
import { assess } from '#domain/signs/assess.ts';
import { ALL_SIGN_IDS, type SignId } from '#domain/signs/ids.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { instant } from '#domain/units.ts';
import { everyLanguage } from '../helpers/locales.ts';
import { at, context, different } from '../helpers/reports.ts';

const classOf = (sign: SignId, change = {}) => assess(different(sign), context(change)).urgency;
const TODDLER = { child: { under3: true, canTell: 'no' as const } };

describe('early signs are never below what the sources make of them', () => {
  test.each([
    ['pain in spite of medicine', 'sore-after-medicine'],
    ['numb', 'toes-numb'],
    ['does not move', 'toes-still'],
    ['cold', 'toes-cool'],
    ['another colour', 'toes-colour'],
  ] as const)('%s: ring now', (_, sign) => {
    expect(classOf(sign)).toBe('ring-now');
    expect(classOf(sign, TODDLER)).toBe('ring-now');
  });

  test.each([
    ['anxiety and agitation', 'very-upset'],
    ['more medicine wanted', 'sore-rising'],
  ] as const)('%s: at least tell the nurse', (_, sign) => {
    expect(rankOf(classOf(sign))).toBeGreaterThanOrEqual(2);
  });

  test('anxiety in a child who cannot say why: ring now', () => {
    expect(classOf('very-upset', TODDLER)).toBe('ring-now');
    expect(classOf('very-upset', { child: { under3: false, canTell: 'no' } })).toBe('ring-now');
    expect(classOf('very-upset', { child: { under3: true, canTell: 'yes' } })).toBe('ring-now');
    expect(classOf('very-upset', { child: { under3: false, canTell: 'partly' } })).toBe('ring-now');
  });

  test('two of the three A’s together: ring now', () => {
    expect(assess(different('very-upset', 'sore-rising'), context()).urgency).toBe('ring-now');
  });

  test('any of the three A’s with a change at the foot: ring now', () => {
    for (const early of ['very-upset', 'sore-rising'] as const)
      expect(assess(different(early, 'toes-swollen'), context()).urgency).toBe('ring-now');
  });

  test('pain that did not fall after medicine had its time is found from the notes alone', () => {
    const report = {
      medicineAt: [at('12:00')],
      soreness: [
        { at: at('11:50'), value: 5, scale: 'numbers' as const, when: 'rest' as const },
        { at: at('13:00'), value: 5, scale: 'numbers' as const, when: 'rest' as const },
      ],
    };
    expect(assess(report, context({ now: at('13:05') })).urgency).toBe('ring-now');
    expect(assess(report, context({ now: instant(at('12:00') + 44) })).urgency).toBe('none');
  });

  test('medicine wanted early twice is found from the notes alone', () => {
    expect(
      rankOf(assess({ askedEarlyAt: [at('12:00'), at('13:00')] }, context()).urgency),
    ).toBeGreaterThanOrEqual(2);
  });

  test('each of them names its source', () => {
    const sources = ['boast-10', 'bae-2001', 'noonan-2010'];
    for (const sign of ['sore-after-medicine', 'very-upset', 'sore-rising'] as const)
      expect(
        SIGNS[sign].basis.some((basis) => sources.includes(basis)),
        sign,
      ).toBe(true);
  });
});

test('pulse and refill are no signs, and no picture asks for them', () => {
  const names = [...ALL_SIGN_IDS, ...Object.keys(SIGN_PICTURES)];
  expect(names.filter((id) => /pulse|refill|blanch|capillary/.test(id))).toEqual([]);
});

test.each(everyLanguage)('%s: no sign’s words ask for a pulse', (_, texts) => {
  const pulse = /\bpulse\b|\bpulso\b|\btętn|\bpuls\b|نبض/i;
  // "Pulse el botón" is Spanish for pressing the button
  const asked = Object.entries(texts).filter(
    ([, text]) => pulse.test(text) && !/\bpulse(?:n)? (?:de nuevo|otra vez|ahora|el|primero)\b/i.test(text),
  );
  expect(asked).toEqual([]);
});
