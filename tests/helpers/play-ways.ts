/**
 * Every way through a small day as the model has it, listed one by one, and what each is worth by the words of the
 * objective: what the parts of the search are held against.
 */
import { POINT } from '#domain/play/board.ts';
import { GRID, LONG_FREE, NOON } from '#domain/play/feasible.ts';
import { modelOf, type Model } from '#domain/play/model.ts';
import {
  FAMILY,
  grownUpCost,
  NEAR_MINUTES,
  NOT_FIRST,
  SAME_KIND,
  shortlyBefore,
} from '#domain/play/objective.ts';
import { planDay } from '#domain/play/plan.ts';
import type { DayProblem, Idea, Placement, PlayWindow } from '#domain/play/types.ts';
import { vetted } from '#domain/play/vet.ts';
import { draws, madeUpDay, madeUpIdeas } from './play-days.ts';

/** Windows late in the morning and after noon, five or six ideas of few kinds; some of it may be pinned or over. */
function fewWindows(seed: number, count = 3): DayProblem {
  const { below, maybe, oneOf } = draws(seed * 29 + 11);
  const ideas = madeUpIdeas(5, seed).map((idea, n): Idea => {
    const kind = oneOf(['screen', 'read', 'listen', 'talk'] as const);
    return {
      ...idea,
      ...{
        kind,
        screen: kind === 'screen' ? 'yes' : 'no',
        ages: [1, 17],
        things: [],
        wipe: 'yes',
        needs: [],
      },
      ...{ id: `idea-${n}`, moments: idea.tray ? [] : ['needle', 'bandage'], position: 'both' },
      minutes: [idea.minutes[0], idea.minutes[0] + oneOf([0, 0, 10])],
    };
  });
  // one that does as well as another in every way
  if (maybe(0.3)) ideas.push({ ...ideas[0]!, id: 'idea-0-too' });
  const day = madeUpDay(seed, { windows: count, hard: 1, ideas });
  let at = oneOf([540, 600, 660, 690, 705, 710]);
  const windows = day.windows.map((window): PlayWindow => {
    const minutes = window.kind === 'hard' ? oneOf([5, 10, 15]) : oneOf([15, 20, 30, 35, 50]);
    const moved = { ...window, from: at, minutes, grownUp: maybe(0.9), quiet: false };
    at += minutes + oneOf([0, 5, 15, 60, 75]);
    return moved;
  });
  const problem: DayProblem = {
    ...{ ...day, windows, bored: maybe(0.5), perWindow: oneOf([1, 2, 2, 3] as const) },
    child: { ...day.child, never: [], lacks: [] },
    events: windows.flatMap(({ from }) => (maybe(0.5) ? [from + 5 * below(3)] : [])),
    lightsOut: at + oneOf([0, 60, 300]),
    limits: { screenMinutes: oneOf([0, 10, 30]), grownUpMinutes: oneOf([0, 5, 15, 20, 60]) },
    terms: { novelty: true, wish: true, minutes: maybe(0.7), day: maybe(0.85) },
  };
  const planned = planDay(problem);
  const { placements } = planned.kind === 'plan' ? planned : planned.rest;
  const now = maybe(0.2) ? windows[0]!.from + below(60) : 0;
  const done = placements.filter(({ from }) => from < now);
  const pins: Placement[] = placements
    .filter(({ from }) => from >= now && maybe(0.2))
    .map((pin) => (maybe(0.4) ? { ...pin, from: pin.from + 5 } : pin));
  const whole = { ...problem, done, notBefore: now };
  const usable = vetted({ ...whole, pins });
  return usable.refused.length ? vetted(whole).problem : usable.problem;
}

/** The model of such a day, some of whose ideas would rather stay where they were. */
export function fewStages(seed: number, count?: number): Model {
  const { maybe, oneOf } = draws(seed * 3 + 1);
  const problem = fewWindows(seed, count);
  const stay = problem.ideas.flatMap(({ id }): Placement[] =>
    maybe(0.2) ? [{ idea: id, window: oneOf(problem.windows).id, from: 0, minutes: 5 }] : [],
  );
  return modelOf(problem, stay);
}

/** A way to fill one stage: which of its fillings stand there, in order, each as early as can be. */
export interface Way {
  fillings: number[];
  /** The next place after them. */
  place: number;
  end: number;
  free: boolean;
  /** Grains, whatever is priced left out. */
  worth: number;
}

/** All ways to fill one stage, the empty one first; within a stage an idea may stand twice. */
export function waysOf(model: Model, s: number): Way[] {
  const stage = model.stages[s]!;
  const isFree = (from: number) => stage.freeEnd - from >= LONG_FREE && (!stage.morning || from < NOON);
  const kindOf = (idea: number) => model.kind[idea]!;
  const ways: Way[] = [
    {
      ...{ fillings: [], place: 0, end: 0, free: isFree(stage.freeFrom) },
      worth: -POINT * stage.emptyCost,
    },
  ];
  const extend = ({ fillings, place, worth }: Way) => {
    if (fillings.length === stage.most) return;
    stage.fillings.forEach(({ ideas, units, worth: points }, f) => {
      const total = units.reduce((sum, each) => sum + each);
      const from = stage.from + GRID * place;
      const end = from + GRID * total;
      if (place + total > stage.room) return;
      const [one] = ideas as [number];
      let more = POINT * points;
      ideas.forEach((idea, n) => {
        if (model.grownUp[idea]) more -= units[n]!;
      });
      if (stage.open) {
        const { energy, mess } = model.ideas[one]!;
        if (end > model.latest[one]! || (from <= stage.settleUntil && energy > 1)) return;
        if (mess > 0 && shortlyBefore(model.starts, end)) more -= POINT;
      }
      more -= POINT * (fillings.length ? NOT_FIRST : stage.firstCost);
      const before = stage.fillings[fillings[fillings.length - 1]!]?.ideas.at(-1);
      if (model.terms.day && before !== undefined && kindOf(before) === kindOf(one))
        more -= POINT * SAME_KIND;
      const way = {
        ...{ fillings: [...fillings, f], place: place + total + 1, end, free: isFree(end) },
        worth: (fillings.length ? worth : 0) + more,
      };
      ways.push(way);
      extend(way);
    });
  };
  extend(ways[0]!);
  return ways;
}

/** What a day uses up. */
export interface Uses {
  ideas: number[];
  play: number;
  screen: number;
  grownUp: number;
}
export function usesOf(model: Model, day: readonly Way[]): Uses {
  const uses: Uses = { ideas: model.ideas.map(() => 0), play: 0, screen: 0, grownUp: 0 };
  day.forEach(({ fillings }, s) => {
    const { open, fillings: all } = model.stages[s]!;
    for (const f of fillings)
      all[f]!.ideas.forEach((idea, n) => {
        const units = all[f]!.units[n]!;
        uses.ideas[idea]!++;
        if (model.grownUp[idea]) uses.grownUp += units;
        if (open) uses.play += units;
        if (open && model.screen[idea]) uses.screen += units;
      });
  });
  return uses;
}

/** Days of these ways that keep half an hour free where it is wanted, each with its worth, whatever is priced left out. */
export function everyDay(
  model: Model,
  ways: readonly (readonly Way[])[],
  each: (day: readonly Way[], worth: number) => void,
): void {
  const { stages, freeWanted, terms } = model;
  const day: Way[] = [];
  const wanted = (morning: boolean) =>
    stages.some((stage) => stage.morning === morning) &&
    (morning ? freeWanted.morning : freeWanted.afternoon) &&
    !stages.some((stage, s) => stage.morning === morning && day[s]!.free);
  const go = (s: number, worth: number, kind: number, end: number) => {
    const stage = stages[s];
    if (!stage) {
      if (!wanted(true) && !wanted(false)) each(day, worth);
      return;
    }
    for (const way of ways[s]!) {
      day[s] = way;
      const { fillings } = way;
      if (!fillings.length) {
        go(s + 1, worth + way.worth, kind, end);
        continue;
      }
      const first = model.kind[stage.fillings[fillings[0]!]!.ideas[0]!]!;
      const last = model.kind[stage.fillings[fillings.at(-1)!]!.ideas.at(-1)!]!;
      const again = terms.day && first === kind && stage.from - end <= NEAR_MINUTES;
      go(s + 1, worth + way.worth - (again ? POINT * SAME_KIND : 0), last, way.end);
    }
  };
  go(0, 0, -1, 0);
}

/** What a day is worth to the search, or nothing where it breaks a rule of the whole day. */
export function worthOf(model: Model, day: readonly Way[], worth: number): number | undefined {
  const { ideas, play, screen, grownUp } = usesOf(model, day);
  if (ideas.some((times) => times > 1) || play > model.cap || screen > model.screenCap) return undefined;
  const placed = model.left.map(() => 0);
  day.forEach(({ fillings }, s) => {
    const { open, window } = model.stages[s]!;
    if (open) placed[window]! += fillings.length;
  });
  if (placed.some((count, w) => count > model.left[w]!)) return undefined;
  if (!model.terms.day) return worth;
  const families = new Set(ideas.flatMap((times, idea) => (times ? [model.family[idea]!] : [])));
  return worth + POINT * (FAMILY * families.size - grownUpCost(GRID * grownUp, model.budget));
}
