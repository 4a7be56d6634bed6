/** Every kind of note and the words it may hold, as ids. Ids never change once shipped; new ones are added at the end. */

/** Who noted it: a role, never a name. */
export const WRITERS = ['grown-up-a', 'grown-up-b', 'other', 'child-shown', 'nurse-shown'] as const;
export type Writer = (typeof WRITERS)[number];

/**
 * Kinds whose whole content is a few chosen words. For each field, the ids it may hold; the order is the order of
 * the packed form, so it only ever grows at the end.
 */
export const CHOICES = {
  drink: { amount: ['sip', 'quarter', 'half', 'full'], what: ['water', 'milk', 'other'] },
  food: { amount: ['none', 'some', 'most'] },
  wee: {
    into: ['bottle', 'pan', 'nappy', 'bed'],
    amount: ['small', 'usual', 'large', 'not-seen'],
  },
  poo: { what: ['none-today', 'hard', 'soft', 'loose'] },
  sleep: { what: ['fell-asleep', 'woke', 'nap'] },
  mood: { picture: ['curled-up', 'fists', 'hiding', 'loose', 'wide-awake'] },
  care: { what: ['bandage', 'sheets', 'wash', 'x-ray', 'physio', 'round', 'explained'] },
  visit: { who: ['family', 'friends', 'school', 'play-specialist', 'other'] },
  answer: { what: ['yes', 'no', 'later', 'ask-again', 'doctor-will-say', 'see-leaflet'] },
  'bed-note': {
    what: [
      'next-medicine-asked',
      'x-ray-planned',
      'round-asked',
      'sleeps-badly',
      'eats-little',
      'needs-calm',
    ],
  },
} as const;
export type ChoiceKind = keyof typeof CHOICES;

/** In place of a word that nobody chose, in notes of two words that were left after the first. It is no choice. */
export const NOT_SAID = 'not-said';
/** Kinds that may be left after the first of two words. */
export type TwoWordKind = 'drink' | 'wee';
/** Whether one word of such a note is worth writing down alone. */
export const isTwoWordKind = (kind: string): kind is TwoWordKind => kind === 'drink' || kind === 'wee';

/** The twenty-four fixed questions for the round. */
export const QUESTIONS = [
  'how-long-in-pull',
  'what-after-pull',
  'when-x-ray',
  'how-bone-heals',
  'medicine-how-often',
  'medicine-before-care',
  'what-if-pain-grows',
  'may-sit-up',
  'may-turn',
  'what-may-eat',
  'poo-what-helps',
  'itch-what-helps',
  'skin-how-is-it',
  'heel-how-is-it',
  'sleep-what-helps',
  'night-who-looks',
  'may-family-stay',
  'may-friends-visit',
  'school-who-helps',
  'play-what-is-allowed',
  'walk-when',
  'home-what-needed',
  'home-whom-to-call',
  'interpreter-when',
] as const;
export type QuestionId = (typeof QUESTIONS)[number];

/** Kinds with no content of their own. */
export const MARKS = [
  'bell',
  'told',
  'nurse-came',
  'nurse-looked',
  'medicine-told',
  'asked-for-medicine',
] as const;
export type MarkKind = (typeof MARKS)[number];
