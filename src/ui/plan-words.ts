/** How a play plan that leaves its tablet is written out: its day, what is liked, the pictures that stand for it. */
import type { PlayBed } from '#domain/play-bed/bed.ts';
import { sayingOf } from '#domain/play-bed/moment-at-bed.ts';
import type { MomentAge, Step, StepId } from '#domain/play-bed/moments.ts';
import { KINDS, type Kind, type Procedure } from '#domain/play/types.ts';
import { instant, minutes } from '#domain/units.ts';
import type { IdeaId } from '#content/ideas.ts';
import { day, list } from '#i18n/format.ts';
import type { Words } from '#i18n/words.ts';
import { ideaName } from './play-words.ts';

/** A day of the calendar such as 2026-01-31, as the language writes it. */
export const dayText = (locale: string, date: string): string =>
  day(locale, instant(Date.parse(`${date}T00:00Z`) / 60_000), minutes(0));

const kindOf = (word: string): Kind | undefined => KINDS.find((kind) => kind === word);

/** What is liked or never wanted: a kind of play, or one idea. */
export function likeName(words: Words, word: string, own?: PlayBed['own']): string {
  const kind = kindOf(word);
  return kind ? words.t(`play:kind.${kind}`) : ideaName(words, word, own);
}

/** Kinds have no picture of their own: the idea that shows each most plainly. */
const KIND_PICTURES: Record<Kind, IdeaId> = {
  make: 'torn-paper-picture',
  draw: 'dictate-draw',
  talk: 'which-would-you',
  pretend: 'finger-folk',
  imagine: 'cloud-window',
  listen: 'listen-book',
  read: 'voice-story',
  music: 'song-swap',
  puzzle: 'find-it-sheet',
  world: 'bird-tally',
  screen: 'short-film',
  calm: 'hand-massage',
  body: 'arm-birds',
  sense: 'warm-cloth-hands',
};
/** The idea whose picture stands for what is liked or never wanted. */
export function likePicture(word: string): { idea: string } {
  const kind = kindOf(word);
  return { idea: kind ? KIND_PICTURES[kind] : word };
}

/** A step of the card as it is said at a bed: where that bars some of what its words name, the rest stands there by name. */
export function stepText(words: Words, step: Step & { possible?: readonly string[] }): string {
  const { t, locale } = words;
  return sayingOf(step) === 'by-name'
    ? t('plans:moment.startOne', {
        ideas: list(
          locale,
          (step.possible ?? []).map((idea) => ideaName(words, idea)),
        ),
      })
    : t(`plans:step.${step.id as StepId}`);
}

/** The picture that stands for a hard moment. */
export const MOMENT_PICTURES: Record<Procedure, { moment: string }> = {
  needle: { moment: 'needle-coming' },
  bandage: { moment: 'bandage-care' },
  other: { moment: 'other-moment' },
};
/** What comes after it, at each age. */
const AFTER_PICTURES: Record<MomentAge, { moment: string } | { idea: IdeaId }> = {
  first: { moment: 'comfort-hold' },
  three: { moment: 'sticker' },
  six: { idea: 'dictate-draw' },
  nine: { moment: 'again' },
  thirteen: { idea: 'calm-sounds' },
};
/** The same at a bed: an idea that is not among the allowed gives way to a picture of the moment, and so does a sticker. */
export function afterPicture(
  age: MomentAge,
  mouths: boolean,
  allowed: readonly string[],
): { moment: string } | { idea: string } {
  const picture = AFTER_PICTURES[age];
  if ('idea' in picture && !allowed.includes(picture.idea)) return { moment: 'again' };
  return mouths && age === 'three' ? { moment: 'comfort-hold' } : picture;
}
