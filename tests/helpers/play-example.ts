/** The example of the design (4-play, 5.5) that can be worked out by hand: a boy of seven, one free hand. */
import type { DayProblem, Idea, OrdinaryWindow } from '#domain/play/types.ts';

const PLAIN: Omit<Idea, 'id' | 'kind' | 'minutes' | 'energy'> = {
  ages: [2, 17],
  position: 'both',
  hands: 1,
  mess: 0,
  noise: 1,
  who: 'alone',
  things: [],
  wipe: 'leave',
  moments: [],
  suits: [],
  tray: false,
  screen: 'no',
  dark: true,
  needs: [],
  cautions: [],
  absorbs: 2,
};
const idea = (
  id: string,
  kind: Idea['kind'],
  minutes: Idea['minutes'],
  energy: Idea['energy'],
  more: Partial<Idea> = {},
): Idea => ({
  ...PLAIN,
  id,
  kind,
  minutes,
  energy,
  ...more,
});
const open = (
  id: string,
  from: number,
  minutes: number,
  energy: 1 | 2 | 3,
  grownUp: boolean,
): OrdinaryWindow => ({
  kind: 'ordinary',
  id,
  from,
  minutes,
  energy,
  propped: true,
  quiet: false,
  grownUp,
});

/**
 * The design's example leaves out the free half-hours (H16): two long quiet windows, for which every idea here is too
 * loud, hold them. Its quiet W2 is one that only the missing grown-up limits.
 */
const quiet = (id: string, from: number): OrdinaryWindow => ({
  ...open(id, from, 60, 1, false),
  quiet: true,
});

export const EXAMPLE: DayProblem = {
  ideas: [
    idea('sticker-street', 'make', [10, 20], 3),
    idea('listen-story', 'listen', [10, 20], 1, { moments: ['bandage'] }),
    idea('short-film', 'screen', [10, 20], 1, { moments: ['bandage'], screen: 'yes', cautions: ['screen'] }),
    idea('which-would-you', 'talk', [5, 15], 2, { moments: ['bandage'], who: 'adult' }),
    idea('ceiling-map', 'imagine', [5, 25], 2, { who: 'adult' }),
    idea('paper-weave', 'make', [20, 40], 3, { hands: 2 }),
  ],
  child: {
    ageMonths: 7 * 12,
    mouths: false,
    likes: ['sticker-street', 'short-film', 'ceiling-map', 'paper-weave'],
    dislikes: [],
    never: [],
    lacks: [],
  },
  freeHands: 1,
  room: { shared: false, isolation: 'contact', things: [], usedElsewhere: [] },
  eating: true,
  permissions: [],
  lightsOut: 20 * 60,
  windows: [
    quiet('w0', 8 * 60),
    open('w1', 10 * 60, 30, 3, true),
    open('w2', 13 * 60, 20, 1, false),
    {
      kind: 'hard',
      id: 'w3',
      from: 15 * 60,
      minutes: 15,
      energy: 1,
      propped: true,
      quiet: false,
      grownUp: true,
      procedure: 'bandage',
      weight: 2,
      freeHands: 1,
    },
    open('w4', 17 * 60, 30, 2, true),
    quiet('w5', 18 * 60),
  ],
  events: [],
  limits: { screenMinutes: 20, grownUpMinutes: 240 },
  history: { yesterday: [], lastThreeDays: [] },
  bored: false,
  pins: [],
  terms: { novelty: false, wish: false, minutes: false, day: false },
  perWindow: 1,
};
