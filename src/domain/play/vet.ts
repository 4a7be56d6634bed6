/** What of a problem can be used: whatever cannot is named with its place and left out, and the rest is kept. */
import {
  brokenIn,
  byTheClock,
  GRID,
  lateRules,
  latestEnd,
  minuteRange,
  MOST_WINDOWS,
  PLAY_FROM,
  PLAY_UNTIL,
  playSpan,
  screenLimit,
} from './feasible.ts';
import { fillingsOf, fillsWhole } from './model.ts';
import {
  KINDS,
  type DayProblem,
  type Fault,
  type HardMoment,
  type Idea,
  type Placement,
  type PlayWindow,
  type RuleId,
} from './types.ts';

export interface Vetted {
  problem: DayProblem;
  faults: Fault[];
  refused: { pin: Placement; rules: readonly RuleId[] }[];
}

const onGrid = (value: number) => Number.isInteger(value) && value % GRID === 0;
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

function vetPins(
  problem: DayProblem & Required<Pick<DayProblem, 'done'>>,
): Pick<Vetted, 'problem' | 'refused'> {
  const kept: Placement[] = [];
  const refused: Vetted['refused'] = [];
  const screenIn = ({ idea: name, window: at, minutes }: Placement) => {
    const isFilm = problem.ideas.some(({ id, screen: film }) => id === name && film === 'yes');
    return isFilm && problem.windows.some(({ id, kind }) => id === at && kind === 'ordinary') ? minutes : 0;
  };
  // a film that was seen is not unseen
  let screen = problem.done.reduce((sum, one) => sum + screenIn(one), 0);
  const inOrder = [...problem.pins].sort(byTheClock);
  for (const pin of inOrder) {
    const rules = pinBroken(problem, pin);
    const window = problem.windows.find(({ id }) => id === pin.window);
    if (!rules.length && window) {
      const standing = [...kept, ...problem.done];
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

/**
 * Leaves out what cannot be used and says so.
 *
 * Shape: any problem -> one whose windows are in order, apart and on the grid, whose ideas are whole and whose pins are
 * possible.
 * Errors: none; each fault names its place, its rule and what was seen.
 */
export function vetted(problem: DayProblem): Vetted {
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
  // what was done stays as long as its idea and window are known, whatever the rules say now
  const done = (problem.done ?? []).filter(
    ({ idea, window }) => seen.has(idea) && windows.some(({ id }) => id === window),
  );
  return { faults, ...vetPins({ ...problem, windows, ideas, done }) };
}

const tooMany = (windows: readonly PlayWindow[]): [string, unknown] | undefined =>
  windows.length >= MOST_WINDOWS ? [`at most ${MOST_WINDOWS} windows`, windows.length + 1] : undefined;
