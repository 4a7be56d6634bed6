/** What a bed asks for beyond the planner's own rules: what frightens the child, words nobody shares, how loud it may be. */
import type { Idea } from '../play/types.ts';
import type { Fear, PlayBed } from './bed.ts';

/** Why an idea is left out at a bed: one of the child's fears, no shared language, or too loud all day. */
export type Clash = Fear | 'language' | 'loud';

/**
 * Ideas that touch a fear though no field of theirs says so. Play about doctors and needles is for a play specialist to
 * begin, not for a plan.
 *
 * Source: our proposal, read from each idea's own steps.
 */
export const FRIGHTENING = {
  masks: ['peek-cloth', 'doctor-me'],
  noise: ['rain-orchestra', 'clap-echo'],
  // what asks for closed eyes; torches stand among the things
  dark: ['sound-hunt', 'safe-place-trip', 'cool-glove', 'tray-memory', 'line-on-back', 'smell-jars'],
  water: ['cool-glove', 'bed-is-a-boat'],
  strangers: ['wave-hello', 'joke-of-the-bed', 'word-teach', 'ward-reporter'],
  needles: ['doctor-me', 'mini-hospital', 'bandaged-bear'],
} as const satisfies Record<Fear, readonly string[]>;

const MARKED: Record<Fear, (idea: Idea) => boolean> = {
  masks: () => false,
  noise: ({ noise }) => noise > 1,
  dark: ({ things }) => things.includes('torch'),
  water: ({ cautions }) => cautions.includes('water'),
  strangers: () => false,
  needles: () => false,
};
const frightens = (idea: Idea, fear: Fear) =>
  MARKED[fear](idea) || (FRIGHTENING[fear] as readonly string[]).includes(idea.id);

/**
 * Ideas that live from a language nobody shares: teaching one's own words and speaking with home.
 *
 * Source: our proposal.
 */
const OWN_LANGUAGE: readonly string[] = ['word-teach', 'call-home'];

/** Songs and rhythms go without words; a story of a grown-up does not. */
function needsSharedWords({ id, kind, who, needs }: Idea): boolean {
  if (OWN_LANGUAGE.includes(id)) return false;
  return (
    kind === 'talk' ||
    (who !== 'alone' && needs.includes('speech')) ||
    (who === 'adult' && kind !== 'music' && needs.includes('hearing'))
  );
}

/**
 * Why this idea does not suit what was ticked about the child and the bed; an empty list says that nothing speaks against it.
 *
 * Shape: fears in the order they were ticked, then `language`, then `loud`.
 * Not: the planner's own rules; see `brokenIn`.
 * Source: design 4-play, 5.1 (our proposal).
 *
 * @example clashesOf({ fears: ['water'] }, bubbles) // ['water']
 */
export function clashesOf(bed: Pick<PlayBed, 'fears' | 'wordless' | 'loudest'>, idea: Idea): Clash[] {
  return [
    ...(bed.fears ?? []).filter((fear) => frightens(idea, fear)),
    ...(bed.wordless && needsSharedWords(idea) ? ['language' as const] : []),
    ...(idea.noise > (bed.loudest ?? 2) ? ['loud' as const] : []),
  ];
}

/**
 * The hard moments as the child takes them: for a child who fears needles a needle weighs the most, so that the best idea
 * is kept for it.
 *
 * Source: our proposal.
 */
export const momentsHeeded = ({
  sketch,
  fears = [],
}: Pick<PlayBed, 'sketch' | 'fears'>): PlayBed['sketch']['moments'] =>
  fears.includes('needles')
    ? sketch.moments.map((moment) =>
        moment.procedure === 'needle' ? { ...moment, weight: 3 as const } : moment,
      )
    : sketch.moments;
