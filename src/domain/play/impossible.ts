/** Nothing fits a hard moment: which one thing, if it were different, would open most. */
import { brokenIn, latestEnd, minuteRange } from './feasible.ts';
import type { DayProblem, Impossible, Plan, PlayWindow, Relaxation } from './types.ts';

/** Ideas that could fill the moment by themselves. */
function opened(problem: DayProblem, window: PlayWindow): string[] {
  return problem.ideas.flatMap((idea) => {
    const [low, high] = minuteRange(idea);
    const fits =
      low <= window.minutes &&
      window.minutes <= high &&
      window.from + window.minutes <= latestEnd(problem, idea) &&
      !brokenIn(problem, idea, window).length;
    return fits ? [idea.id] : [];
  });
}

type Change = Omit<Relaxation, 'opens'> & { problem: DayProblem; window: PlayWindow };

function changesOf(problem: DayProblem, window: PlayWindow): Change[] {
  const { room, child } = problem;
  const changes: Change[] = [];
  const add = (
    change: Relaxation['change'],
    next: Partial<DayProblem>,
    there: Partial<PlayWindow>,
    what?: string,
  ) =>
    changes.push({
      change,
      ...(what === undefined ? {} : { what }),
      problem: { ...problem, ...next },
      window: { ...window, ...there } as PlayWindow,
    });
  if (!window.grownUp) add('grown-up', {}, { grownUp: true });
  if (!window.propped) add('head-up', {}, { propped: true });
  if (window.kind === 'hard' && window.freeHands < 2) {
    const freeHands = (window.freeHands + 1) as 1 | 2;
    const hands = Math.max(problem.freeHands, freeHands) as 1 | 2;
    add('hand-free', { freeHands: hands }, { freeHands });
  }
  if (!problem.eating) add('eating', { eating: true }, {});
  const missing = new Set(
    problem.ideas.flatMap(({ things }) => things).filter((thing) => !room.things.includes(thing)),
  );
  for (const thing of [...missing].sort())
    add('fetch', { room: { ...room, things: [...room.things, thing] } }, {}, thing);
  for (const word of child.never)
    add('never', { child: { ...child, never: child.never.filter((other) => other !== word) } }, {}, word);
  return changes;
}

/**
 * The single changes that would let something fit a hard moment, the one that opens most first.
 *
 * Shape: a vetted problem and one of its windows -> changes, each with the ideas it would open; those that open nothing
 * are left out. Isolation, age, small parts and cords are never among them.
 * Not: it changes nothing and promises nothing; whether the head may go up is the nurse's to say.
 */
export function relaxationsFor(problem: DayProblem, window: PlayWindow): Relaxation[] {
  const now = new Set(opened(problem, window));
  return changesOf(problem, window)
    .map(({ problem: changed, window: there, ...change }): Relaxation => {
      const opens = opened(changed, there).filter((id) => !now.has(id));
      return { ...change, opens };
    })
    .filter(({ opens }) => opens.length > 0)
    .sort((a, b) => b.opens.length - a.opens.length);
}

/** What the planner found, with what would open each moment for which nothing fits. */
export function explained(problem: DayProblem, found: Plan | Impossible): Plan | Impossible {
  if (found.kind === 'plan') return found;
  const moments = found.moments.map(({ window: id }) => {
    const window = problem.windows.find((one) => one.id === id)!;
    return { window: id, relaxations: relaxationsFor(problem, window) };
  });
  return { ...found, moments };
}
