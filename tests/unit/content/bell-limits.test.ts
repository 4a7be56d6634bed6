// What a ward adds about its call button: a place and a name may stand, nothing that could hold a hand back.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bellFaults } from '#content/bell-limits.ts';
import { languages } from '../../../.ci/locales.mjs';
import { everyLanguage, root } from '../../helpers/locales.ts';

const LANGUAGES = languages(root);

/** As wards say it; whoever adds a language adds to both. */
const MAY_STAND: Readonly<Record<string, readonly string[]>> = {
  en: [
    'A red button on a white cable at the head of the bed.',
    'The button is on the wall, left of the bed. It glows at the edge.',
    'Say the name of the bed, and what is different.',
    'Press at any time. Press again.',
  ],
  es: [
    'Un botón rojo con cable blanco, en la cabecera de la cama.',
    'Está en la pared, a la izquierda de la cama.',
    'Diga el nombre de la cama y qué ha cambiado.',
  ],
  pl: [
    'Czerwony przycisk na białym kablu, przy wezgłowiu łóżka.',
    'Wisi na ścianie, po lewej stronie łóżka.',
    'Proszę powiedzieć nazwę łóżka i co jest inaczej.',
  ],
  ar: [
    'زر أحمر على سلك أبيض عند رأس السرير.',
    'الزر على الجدار إلى يسار السرير.',
    'قولوا رقم السرير والشيء المختلف.',
  ],
};
const HOLDS_BACK: Readonly<Record<string, readonly string[]>> = {
  en: [
    'Do not press the button.',
    'Don’t press it.',
    'Please press only once.',
    'Press in an emergency.',
    'Wait for the nurse.',
    'Use it sparingly.',
    'Press unless somebody is near.',
    'Before you press, ask a neighbour.',
    'Try to find a nurse.',
    'It disturbs the children who sleep.',
    'Press when it is serious.',
    'Never press at night',
    'NO PRESSING',
    'All is fine here.',
    'Loosen the leg bandage and press.',
    'Ask for a tablet.',
    'Press from 8 to 20.',
    'Is it really urgent?',
  ],
  es: [
    'No pulse el botón.',
    'Pulse sólo en una emergencia.',
    'Espere a la enfermera.',
    'Pulse únicamente de día.',
    'Si es grave, pulse.',
    'Todo está bien.',
    'Afloje la venda.',
    'Evite llamar.',
  ],
  pl: [
    'Proszę nie naciskać.',
    'Naciskać tylko w nagłych przypadkach.',
    'Proszę zaczekać na pielęgniarkę.',
    'Jeśli to poważne, proszę nacisnąć.',
    'Zabrania się naciskania.',
    'Wszystko w porządku.',
    'Proszę poluzować bandaż.',
    'W nocy cicho.',
  ],
  ar: [
    'لا تضغطوا على الزر.',
    'اضغطوا فقط عند الضرورة.',
    'انتظروا الممرضة.',
    'ممنوع الضغط.',
    'اضغطوا في الطوارئ.',
    'إذا كان الأمر خطيراً فاضغطوا.',
    'كل شيء بخير.',
    'فكّوا الضماد.',
  ],
};

describe.each(LANGUAGES)('in %s', (language) => {
  it('a place, a look and a name may stand', () => {
    expect(MAY_STAND[language]?.length).toBeGreaterThan(2);
    for (const text of MAY_STAND[language]!) expect([text, bellFaults(language, text)]).toEqual([text, []]);
  });

  it('what says no, only, later, or how bad it must be, what reassures and what leads elsewhere may not', () => {
    expect(HOLDS_BACK[language]?.length).toBeGreaterThan(7);
    for (const text of HOLDS_BACK[language]!)
      expect([text, bellFaults(language, text).length]).not.toEqual([text, 0]);
  });

  it('and stays barred in capitals, with other words around it, with stretched or missing marks', () => {
    const barred = HOLDS_BACK[language]!.filter((text) => /^[\p{L}\p{M}\p{Zs}’.,]+$/u.test(text));
    const around = fc.constantFrom(...MAY_STAND[language]!);
    fc.assert(
      fc.property(
        fc.constantFrom(...barred),
        around,
        fc.constantFrom('NFC', 'NFD'),
        fc.nat(3),
        (text, more, form, way) => {
          const said = [
            text,
            text.toLocaleUpperCase(language),
            `${more} ${text}`,
            text.replaceAll(' ', '  '),
          ][way]!;
          expect(bellFaults(language, said.normalize(form))).not.toEqual([]);
        },
      ),
    );
  });

  it('nothing of the leg, the load, the bandage or medicine that our own texts forbid to touch can be said there', () => {
    const [, texts] = everyLanguage.find(([code]) => code === language)!;
    const doNots = Object.entries(texts).filter(
      ([key]) => key.startsWith('signs:') && key.endsWith('.doNot'),
    );
    expect(doNots.length).toBeGreaterThan(10);
    for (const [key, text] of doNots) expect([key, bellFaults(language, text).length]).not.toEqual([key, 0]);
  });
});

describe('whatever is written', () => {
  it('a text with a number, a mark of another script, a line break or markup does not pass', () => {
    const bad = ['7', '٧', '½', '<b>', '\n', '\u200b', '{{', '🔔', '?', '؟', 'Я', '€', '\u202e'];
    fc.assert(
      fc.property(fc.constantFrom(...LANGUAGES), fc.constantFrom(...bad), (language, sign) => {
        const [first = '', ...rest] = MAY_STAND[language]![0]!.split(' ');
        expect(bellFaults(language, [first, sign, ...rest].join(' '))).not.toEqual([]);
        expect(bellFaults(language, `${first}${sign}${rest.join(' ')}`)).not.toEqual([]);
      }),
    );
  });

  it('a word that a letter or a dash was put into is not one that may stand', () => {
    // letters that only look like ours belong to another script
    expect(bellFaults('en', 'Do nоt press it.')).toContain('letters of its own language');
  });

  it('more than a sentence or two is too long, and nothing is too short', () => {
    expect(bellFaults('en', `A ${'red '.repeat(30)}button.`)).toHaveLength(1);
    for (const text of ['', ' ', 'a', ' red button ']) expect(bellFaults('en', text)).toHaveLength(1);
  });

  it('a language without a list of words has none, names of the machine’s own too', () => {
    for (const language of ['fr', 'constructor', '__proto__', ''])
      expect(bellFaults(language, 'bouton rouge')).toEqual([expect.stringContaining('bell-limits.ts')]);
  });
});
