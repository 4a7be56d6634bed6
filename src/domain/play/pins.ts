/** Which pins are possible: by themselves, beside what was done, and beside one another. */
import {
  brokenIn,
  byTheClock,
  GRID,
  lateRules,
  latestEnd,
  minuteRange,
  onGrid,
  screenLimit,
} from './feasible.ts';
import { fillingsOf, fillsWhole } from './model.ts';
import type { DayProblem, HardMoment, Idea, Placement, RuleId } from './types.ts';

export interface Pinned {
  problem: DayProblem;
  refused: { pin: Placement; rules: readonly RuleId[] }[];
}

/** The rules one pin breaks by itself. */
export function pinBroken(problem: DayProblem, pin: Placement): RuleId[] {
  const idea = problem.ideas.find(({ id }) => id === pin.idea);
  const window = problem.windows.find(({ id }) => id === pin.window);
  if (!idea || !window) return ['unknown'];
  const broken = brokenIn(problem, idea, window);
  const [low, high] = minuteRange(idea);
  const end = pin.from + pin.minutes;
  if (
    !onGrid(pin.from) ||
    !onGrid(pin.minutes) ||
    pin.minutes < low ||
    pin.minutes > high ||
    pin.from < window.from ||
    end > window.from + window.minutes
  )
    broken.push('H2');
  if (end > latestEnd(problem, idea)) broken.push(...lateRules(idea));
  return [...new Set(broken)];
}

/** Whether a moment with these in it can be filled, with nothing that stands elsewhere. */
function canBeFilled(problem: DayProblem, window: HardMoment, standing: readonly Placement[]): boolean {
  const here = standing.filter((one) => one.window === window.id);
  const isIn = (list: readonly Placement[], { id }: Idea) => list.some(({ idea }) => idea === id);
  const free = problem.ideas.filter((idea) => isIn(here, idea) || !isIn(standing, idea));
  return fillsWhole(window, here) || fillingsOf(problem, free, window, here).length > 0;
}

/** What was done of a sound problem, and those of its pins that are possible; the rest is in `refused`, with its reasons. */
export function withPins(sound: DayProblem): Pinned {
  // what was done stays as long as its idea and window are known, whatever the rules say now
  const done = (sound.done ?? []).filter(
    ({ idea, window }) =>
      sound.ideas.some(({ id }) => id === idea) && sound.windows.some(({ id }) => id === window),
  );
  const problem = { ...sound, done };
  const kept: Placement[] = [];
  const refused: Pinned['refused'] = [];
  const screenIn = ({ idea: name, window: at, minutes }: Placement) => {
    const isFilm = problem.ideas.some(({ id, screen: film }) => id === name && film === 'yes');
    return isFilm && problem.windows.some(({ id, kind }) => id === at && kind === 'ordinary') ? minutes : 0;
  };
  // a film that was seen is not unseen
  let screen = done.reduce((sum, one) => sum + screenIn(one), 0);
  const inOrder = [...problem.pins].sort(byTheClock);
  for (const pin of inOrder) {
    const rules = pinBroken(problem, pin);
    const window = problem.windows.find(({ id }) => id === pin.window);
    if (!rules.length && window) {
      const standing = [...kept, ...done];
      const here = standing.filter((other) => other.window === pin.window);
      const gap = window.kind === 'hard' ? 0 : GRID;
      const meets = here.some(({ from, minutes }) => from + minutes + gap > pin.from);
      const tooMany = window.kind === 'ordinary' && here.length >= (problem.perWindow ?? 3);
      const pinned = new Set([...kept, pin].map((one) => one.window));
      const fills = problem.windows.every(
        (one) =>
          one.kind === 'ordinary' || !pinned.has(one.id) || canBeFilled(problem, one, [...standing, pin]),
      );
      if (meets || tooMany || !fills) rules.push('H2');
      const counted = screenIn(pin);
      if (counted && screen + counted > screenLimit(problem)) rules.push('H11');
      if (!rules.length) screen += counted;
    }
    if (rules.length) refused.push({ pin, rules });
    else kept.push(pin);
  }
  return { problem: { ...problem, pins: kept }, refused };
}
