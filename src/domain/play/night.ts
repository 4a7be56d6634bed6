/** What a child who lies awake can do in the dark without waking the others. */
import { brokenIn, needsGrownUp } from './feasible.ts';
import { likeOf } from './objective.ts';
import type { Caution, DayProblem, Idea, OrdinaryWindow } from './types.ts';

/** One idea for the dark hours. */
export interface NightIdea {
  idea: Idea;
  /** A grown-up has to be awake beside the bed for it. */
  grownUp: boolean;
}

/** What gets lost in a dark bed, tangles, cuts, stirs up or has to be watched closely. */
const NOT_BY_NIGHT: readonly Caution[] = [
  'cord',
  'small-parts',
  'scissors',
  'bits',
  'shaking',
  'throwing',
  'not-in-mouth',
  'water',
  'screen',
];

const NIGHT: OrdinaryWindow = {
  kind: 'ordinary',
  id: 'night',
  from: 0,
  minutes: 60,
  energy: 1,
  propped: false,
  quiet: true,
  grownUp: true,
};

/**
 * The ideas for the dark hours, the most fitting first: lying flat, without a sound, a screen, a cord or anything small.
 *
 * Shape: the day's problem, whatever its windows -> ideas that suit the child, the bed and the room by night: liked ones
 * first, then those for which nobody has to stay awake, then those that take up the mind least, then by id.
 * Not: it plans no times; whoever lies awake chooses, and sleep goes before everything here.
 * Source: design 4-play, 5.4 and 5.6 (our proposal).
 */
export function nightIdeas(problem: DayProblem): NightIdea[] {
  const { child, ideas } = problem;
  const able = ideas.filter(
    (idea) =>
      idea.dark &&
      idea.energy === 1 &&
      idea.mess === 0 &&
      idea.screen === 'no' &&
      !idea.cautions.some((code) => NOT_BY_NIGHT.includes(code)) &&
      !brokenIn(problem, idea, NIGHT).length,
  );
  return able
    .map((idea): NightIdea => ({ idea, grownUp: needsGrownUp(idea, child.ageMonths) }))
    .sort(
      (a, b) =>
        likeOf(child, b.idea) - likeOf(child, a.idea) ||
        Number(a.grownUp) - Number(b.grownUp) ||
        a.idea.absorbs - b.idea.absorbs ||
        (a.idea.id < b.idea.id ? -1 : 1),
    );
}
