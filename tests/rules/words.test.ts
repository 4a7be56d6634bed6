import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { english, everyLanguage, readJson, root } from '../helpers/locales.ts';
import {
  type Forbidden,
  forbiddenFaults,
  glyphFaults,
  listFaults,
  medicineFaults,
  oneWordFaults,
} from './word-faults.ts';

const forbidden = (lang: string) => readJson(`tests/rules/forbidden/${lang}.json`) as Forbidden;

/**
 * Sentences that must be caught, and near to each a sentence that must pass. Pulse and refill: BOAST 10 (2014)
 * and Fleming 2015 (Arch Dis Child 100:239–49), neither gives early warning, so no family is sent to look.
 * Loosen, tighten, lift, remove: WHO, Surgical Care at the District Hospital (2003), 17.1.
 */
const PLANTED: Readonly<Record<string, { caught: readonly string[]; passed: readonly string[] }>> = {
  en: {
    caught: [
      'The foot is fine.',
      'This is normal.',
      'Your child is safe.',
      'That looks OK.',
      'Nothing to worry about.',
      'Be brave.',
      'The hospital is a punishment.',
      'It was your fault.',
      'Loosen the leg bandage.',
      'Wait a while, then gently lift the hanging weight.',
      'You can take the leg bandage off.',
      'Pull the cord back on the wheel.',
      'Please tighten it.',
      'Is it wet? Remove the leg bandage.',
      'Pull your child up.',
      'Raise the foot end.',
      'Push a ruler under the leg bandage.',
      'Feel the pulse at the foot.',
      'The colour comes back in 2 seconds.',
    ],
    passed: [
      'Do not loosen the leg bandage.',
      'Do not touch, press or straighten the thigh.',
      'Never lift the hanging weight.',
      'Only staff open the leg bandage.',
      'Ask a nurse to lift the leg.',
      'Pull the emergency cord on the wall.',
      'The hospital is not a punishment.',
      'It is not your fault.',
      'Find the second call button.',
      'Push nothing under the leg bandage.',
      'You did nothing wrong.',
      'Look at the foot and tell the nurse.',
    ],
  },
  es: {
    caught: [
      'Es normal.',
      'Todo está bien.',
      'Su hijo está seguro.',
      'No se preocupe.',
      'Sea valiente.',
      'Afloje la venda de la pierna.',
      'Levante la pesa colgante.',
      'Quite la venda.',
      'Mire el pulso del pie.',
      'El color vuelve en 2 segundos.',
    ],
    passed: [
      'No afloje la venda de la pierna.',
      'No levante la pesa colgante.',
      'Pulse el botón de llamada.',
    ],
  },
  pl: {
    caught: [
      'Stopa jest w porządku.',
      'To jest normalne.',
      'Dziecko jest bezpieczne.',
      'Proszę się nie martwić.',
      'Bądź dzielny.',
      'Proszę poluzować bandaż na nodze.',
      'Podnieść wiszący ciężarek.',
      'Zdjąć bandaż.',
      'Proszę sprawdzić tętno.',
      'Kolor wraca po 2 sekundach.',
    ],
    passed: [
      'Nie luzować bandaża na nodze.',
      'Nie podnosić wiszącego ciężarka.',
      'Proszę zawołać pielęgniarkę.',
    ],
  },
  ar: {
    caught: [
      'القدم طبيعية.',
      'طفلكم بخير.',
      'القدم في أمان.',
      'لا داعي للقلق.',
      'كن شجاعاً.',
      'فكوا ضمادة الساق.',
      'ارفعوا الثقل المعلق.',
      'انزعوا الضمادة.',
      'تحققوا من النبض.',
      'يعود اللون خلال ثوانٍ.',
    ],
    passed: ['لا تفكوا ضمادة الساق.', 'لا ترفعوا الثقل المعلق.', 'اضغطوا زر النداء.'],
  },
};

describe.each(everyLanguage)('%s', (lang, texts) => {
  it('has a list of forbidden words that can hit', () => {
    expect(listFaults(forbidden(lang))).toEqual([]);
  });

  it('calms nobody, lets nobody handle the pull, asks for no pulse and no seconds', () => {
    expect(forbiddenFaults(forbidden(lang), texts)).toEqual([]);
  });

  it('names no medicine and no dose', () => {
    expect(medicineFaults(texts)).toEqual([]);
  });

  it('has no tick, no thumb, no emoji', () => {
    expect(Object.entries(texts).flatMap(([key, text]) => glyphFaults(key, text))).toEqual([]);
  });

  it('has planted sentences here', () => {
    expect(Object.keys(PLANTED)).toContain(lang);
  });

  it.each(PLANTED[lang]?.caught ?? [])('catches "%s"', (text) => {
    expect(forbiddenFaults(forbidden(lang), { 'a:b': text })).not.toEqual([]);
  });

  it.each(PLANTED[lang]?.passed ?? [])('lets "%s" pass', (text) => {
    expect(forbiddenFaults(forbidden(lang), { 'a:b': text })).toEqual([]);
  });
});

it('English calls each thing by one word', () => {
  expect(oneWordFaults(english)).toEqual([]);
  const bad = [
    'The weight is low.',
    'Leave the rope.',
    'The bandage is wet.',
    'Ring the bell.',
    'Mind the load.',
  ];
  expect(bad.filter((text) => oneWordFaults({ 'a:b': text }).length === 0)).toEqual([]);
});

it.each([
  'Give paracetamol.',
  'Podać ibuprofen.',
  'Dele paracetamol.',
  'أعطوا باراسيتامول.',
  '5 ml every four hours',
  '{{amount}} mg',
  '٥ مل',
])('a planted medicine or dose is caught: "%s"', (text) => {
  expect(medicineFaults({ 'a:b': text })).toHaveLength(1);
});

it.each(['✓', '✔', '☑', '✅', '👍', '👍🏽', '❤', '★', '🦶', '🇬🇧', '🛡', '☺️', '✗'])(
  'a planted glyph is caught: %s',
  (glyph) => {
    expect(glyphFaults('a:b', `Done ${glyph}`)).toHaveLength(1);
  },
);

it('a plain character passes', () => {
  expect(glyphFaults('a:b', '© 2031 – “Look” → next … 3 × 4 °C ½ √ #')).toEqual([]);
});

it('a list that is empty, hits all or is written in capitals is caught', () => {
  const none: Forbidden = { reassurance: [], handling: ['x*'], observations: ['Pulse', ''] };
  expect(listFaults(none)).toHaveLength(4);
});

describe('source files', () => {
  // a page's folder may be named like a file
  const files = readdirSync(path.join(root, 'src'), { recursive: true, encoding: 'utf8' }).filter(
    (file) => /\.(?:svelte|ts|css|html)$/.test(file) && statSync(path.join(root, 'src', file)).isFile(),
  );

  it('are found', () => {
    expect(files.length).toBeGreaterThan(20);
  });

  it('hold no tick, no thumb, no emoji', () => {
    const faults = files.flatMap((file) =>
      glyphFaults(file, readFileSync(path.join(root, 'src', file), 'utf8')),
    );
    expect(faults).toEqual([]);
  });
});
