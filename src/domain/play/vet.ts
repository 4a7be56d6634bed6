/** What of a problem can be used: whatever cannot is named with its place and left out, and the rest is kept. */
import { byTheClock, MOST_WINDOWS, onGrid, PLAY_FROM, PLAY_UNTIL, playSpan } from './feasible.ts';
import { withPins, type Pinned } from './pins.ts';
import { KINDS, type DayProblem, type Fault, type Idea, type PlayWindow } from './types.ts';

export interface Sound {
  problem: DayProblem;
  faults: Fault[];
}

const DAY = 24 * 60;

const hours = (minutes: number) => `${minutes / 60}`.padStart(2, '0') + ':00';

function windowFault(
  window: PlayWindow,
  earlier: readonly PlayWindow[],
  { lightsOut, child }: DayProblem,
): [string, unknown] | undefined {
  const before = earlier[earlier.length - 1];
  const end = window.from + window.minutes;
  const span = playSpan(child.ageMonths);
  if (!onGrid(window.from) || window.from < 0) return ['from: a multiple of 5', window.from];
  if (!onGrid(window.minutes) || window.minutes <= 0)
    return ['minutes: a multiple of 5 above 0', window.minutes];
  if (end > lightsOut) return ['from: over by lights-out', window.from];
  if (window.from < PLAY_FROM || end > PLAY_UNTIL)
    return [`from: between ${hours(PLAY_FROM)} and ${hours(PLAY_UNTIL)}`, window.from];
  if (before && before.from + before.minutes > window.from)
    return [`from: after "${before.id}" is over`, window.from];
  // when a hard moment comes is not ours to say; play is
  if (window.kind === 'ordinary' && end > (earlier[0] ?? window).from + span)
    return [`from: over ${span / 60} hours after the first window, for the sake of sleep`, window.from];
  if (earlier.some(({ id }) => id === window.id)) return ['id: used once', window.id];
  return undefined;
}

function ideaFault(idea: Idea): [string, unknown] | undefined {
  const [least, most] = idea.minutes ?? [];
  if (!(least! > 0 && most! >= least! && most! <= DAY)) return ['minutes: least and most', idea.minutes];
  if (!(idea.ages?.[0] >= 0 && idea.ages[1] >= idea.ages[0])) return ['ages: from and to', idea.ages];
  if (!KINDS.includes(idea.kind)) return ['kind: one of the kinds', idea.kind];
  for (const field of ['hands', 'energy', 'mess', 'noise'] as const)
    if (![0, 1, 2, 3].includes(idea[field])) return [`${field}: a whole number`, idea[field]];
  for (const field of ['things', 'moments', 'suits', 'needs', 'cautions'] as const)
    if (!Array.isArray(idea[field])) return [`${field}: a list`, idea[field]];
  for (const field of ['position', 'who', 'wipe', 'screen'] as const)
    if (typeof idea[field] !== 'string') return [`${field}: chosen`, idea[field]];
  return undefined;
}

const tooMany = (windows: readonly PlayWindow[]): [string, unknown] | undefined =>
  windows.length >= MOST_WINDOWS ? [`at most ${MOST_WINDOWS} windows`, windows.length + 1] : undefined;

/**
 * Leaves out what cannot be used and says so.
 *
 * Shape: any problem -> one whose windows are in order, apart and on the grid, and whose ideas are whole.
 * Errors: none; each fault names its place, its rule and what was seen.
 */
export function soundOf(problem: DayProblem): Sound {
  const faults: Fault[] = [];
  const windows: PlayWindow[] = [];
  for (const window of [...problem.windows].sort(byTheClock)) {
    const fault = windowFault(window, windows, problem) ?? tooMany(windows);
    if (fault) faults.push({ where: `windows › ${window.id}`, rule: fault[0], seen: fault[1] });
    else windows.push(window);
  }
  const ideas: Idea[] = [];
  const seen = new Set<string>();
  for (const idea of problem.ideas) {
    const fault: [string, unknown] | undefined = seen.has(idea.id)
      ? ['id: used once', idea.id]
      : ideaFault(idea);
    if (fault) faults.push({ where: `ideas › ${idea.id}`, rule: fault[0], seen: fault[1] });
    else {
      ideas.push(idea);
      seen.add(idea.id);
    }
  }
  return { problem: { ...problem, windows, ideas }, faults };
}

/** The same, with its pins looked at as well: those that are not possible are in `refused`. */
export function vetted(problem: DayProblem): Sound & Pinned {
  const { problem: sound, faults } = soundOf(problem);
  return { faults, ...withPins(sound) };
}
