/** Made-up ideas and days of play, from a seed: the same seed gives the same day everywhere. */
import {
  CAUTIONS,
  KINDS,
  type DayProblem,
  type Idea,
  type OrdinaryWindow,
  type HardMoment,
  type PlayWindow,
} from '#domain/play/types.ts';
import { chance } from './fortnight.ts';

/** Draws as if by chance, each the same for the same seed; any seed will do. */
export function draws(seed: number) {
  const next = chance((seed * 2654435761 + 12345) >>> 0);
  const below = (n: number) => Math.floor(next() * n);
  const oneOf = <T>(list: readonly T[]): T => list[below(list.length)]!;
  const maybe = (share: number) => next() < share;
  return { below, oneOf, maybe };
}

const THINGS = [
  'paper',
  'pen',
  'cards',
  'book',
  'player',
  'torch',
  'phone',
  'cups',
  'print',
  'bear',
] as const;

function madeUpIdea(n: number, seed: number): Idea {
  const { below, oneOf, maybe } = draws(seed * 1009 + n);
  const kind = oneOf(KINDS);
  const least = oneOf([1, 2, 3, 5, 5, 5, 10, 10, 15, 20]);
  const from = oneOf([1, 1, 2, 3, 3, 4, 5, 6, 8, 9]);
  const position = oneOf(['both', 'both', 'propped', 'flat'] as const);
  const moments = (['needle', 'bandage'] as const).filter(() => position !== 'propped' && maybe(0.45));
  return {
    id: `idea-${String(n).padStart(3, '0')}`,
    kind,
    minutes: [least, least + oneOf([0, 5, 5, 10, 10, 15, 20, 30])],
    ages: [from, from + oneOf([3, 6, 8, 10, 14])],
    position,
    hands: oneOf([0, 0, 1, 1, 1, 2] as const),
    energy: oneOf([1, 1, 2, 2, 2, 3] as const),
    mess: oneOf([0, 0, 0, 0, 1, 2] as const),
    noise: oneOf([0, 0, 0, 1, 1, 2] as const),
    who: oneOf(['alone', 'adult', 'either', 'either'] as const),
    things: THINGS.filter(() => maybe(0.08)),
    wipe: oneOf(['yes', 'yes', 'leave', 'no'] as const),
    moments,
    suits: moments.length ? (['watch', 'look-away'] as const).filter(() => maybe(0.5)) : [],
    tray: position === 'propped',
    screen: kind === 'screen' ? 'yes' : maybe(0.03) ? 'call' : 'no',
    dark: maybe(0.1),
    needs: (['sight', 'hearing', 'speech', 'learning'] as const).filter(() => maybe(0.1)),
    cautions: CAUTIONS.filter((code) => (code === 'screen' ? kind === 'screen' : maybe(0.04))),
    absorbs: (1 + below(3)) as 1 | 2 | 3,
  };
}

export const madeUpIdeas = (count: number, seed: number): Idea[] =>
  Array.from({ length: count }, (_, n) => madeUpIdea(n, seed));

function windowsOf(seed: number, count: number, hard: number): PlayWindow[] {
  const { below, oneOf, maybe } = draws(seed * 31 + 7);
  const windows: PlayWindow[] = [];
  const hardAt = new Set<number>();
  while (hardAt.size < Math.min(hard, count)) hardAt.add(below(count));
  // the day reaches from seven to eight in the evening; what is no window is a fixed event
  let at = 7 * 60 + 5 * below(6);
  for (let n = 0; n < count; n++) {
    const common = {
      id: `w${n + 1}`,
      from: at,
      energy: oneOf([1, 2, 2, 3] as const),
      propped: maybe(0.5),
      quiet: maybe(0.2),
      grownUp: maybe(0.75),
    };
    const window: OrdinaryWindow | HardMoment = hardAt.has(n)
      ? {
          kind: 'hard',
          ...common,
          minutes: oneOf([5, 10, 15, 20]),
          procedure: oneOf(['needle', 'bandage', 'other'] as const),
          weight: oneOf([1, 2, 3] as const),
          freeHands: oneOf([0, 1, 1] as const),
          ...(maybe(0.7) ? { wish: oneOf(['watch', 'look-away', 'choose-then'] as const) } : {}),
        }
      : { kind: 'ordinary', ...common, minutes: oneOf([20, 25, 30, 40, 45, 50, 60, 75]) };
    windows.push(window);
    at += window.minutes + oneOf([0, 5, 15, 20, 30]);
  }
  return windows;
}

/** A whole day: twelve windows, three of them hard moments, the library or as many made-up ideas. */
export function madeUpDay(
  seed: number,
  shape: { windows?: number; hard?: number; ideas?: readonly Idea[]; count?: number } = {},
): DayProblem {
  const { below, oneOf, maybe } = draws(seed * 17 + 3);
  const ideas = shape.ideas ?? madeUpIdeas(shape.count ?? 136, seed);
  const ids = ideas.map(({ id }) => id);
  const years = 1 + below(17);
  const all = windowsOf(seed, shape.windows ?? 12, shape.hard ?? 3);
  // the rare day that is longer than a child of that age may be kept awake loses its end
  const span = years < 3 ? 780 : years < 6 ? 840 : 900;
  const windows = all.filter(({ from, minutes }) => from + minutes <= Math.min(1320, all[0]!.from + span));
  const last = windows[windows.length - 1]!;
  const things = [...new Set(ideas.flatMap((idea) => idea.things))].sort().filter(() => maybe(0.8));
  const someIds = (share: number) => ids.filter(() => maybe(share));
  return {
    ideas,
    child: {
      ageMonths: years * 12 + below(12),
      mouths: years < 4 && maybe(0.5),
      likes: [...KINDS.filter(() => maybe(0.2)), ...someIds(0.03)],
      dislikes: [...KINDS.filter(() => maybe(0.1)), ...someIds(0.02)],
      never: someIds(0.02),
      lacks: maybe(0.1) ? [oneOf(['sight', 'hearing', 'speech', 'learning'] as const)] : [],
    },
    freeHands: oneOf([1, 1, 2] as const),
    room: {
      shared: maybe(0.6),
      isolation: oneOf(['none', 'none', 'none', 'contact', 'breath'] as const),
      things,
      usedElsewhere: [],
    },
    eating: maybe(0.8),
    permissions: [],
    lightsOut: Math.max(20 * 60, last.from + last.minutes + 15),
    windows,
    events: windows.slice(1).flatMap(({ from }) => (maybe(0.6) ? [from] : [])),
    limits: { screenMinutes: oneOf([0, 30, 45, 60, 90]), grownUpMinutes: oneOf([30, 60, 90, 120, 240]) },
    history: { yesterday: someIds(0.05), lastThreeDays: someIds(0.15) },
    bored: maybe(0.3),
    pins: [],
  };
}
