// What the card and the sheet say at a bed: no word of theirs names an idea that this bed bars.
import { describe, expect, it } from 'vitest';
import { IDEAS } from '#content/ideas.ts';
import { FEARS, type PlayBed } from '#domain/play-bed/bed.ts';
import { cardAtBed, momentAtBed, saidSteps, type StepAtBed } from '#domain/play-bed/moment-at-bed.ts';
import { momentAge, momentCard } from '#domain/play-bed/moments.ts';
import { problemOf } from '#domain/play-bed/problem.ts';
import { daySheet } from '#domain/play-bed/sheet.ts';
import { brokenIn } from '#domain/play/feasible.ts';
import type { DayProblem, PlayWindow } from '#domain/play/types.ts';
import { loadWords } from '#i18n/words.ts';
import { afterPicture, stepText } from '#ui/plan-words.ts';
import { TYPICAL } from '../../helpers/play-beds.ts';

const english = await loadWords('en', ['play', 'plans', 'ideas']);
const name = (id: string) => (english.t as (key: string) => string)(`ideas:${id}.name`);

/** Words of the English cards, and the ideas any one of which makes them true. */
const NAMED: [RegExp, ...string[]][] = [
  [/the rhyme/, 'hand-walk-rhyme'],
  [/the song/, 'same-song'],
  [/one song/, 'same-song', 'name-song'],
  [/bubbles/, 'slow-bubbles'],
  [/slow pats/, 'quiet-pat'],
  [/a hand to hold/, 'hand-in-hand'],
  [/in the picture/, 'find-it-sheet'],
  [/finger candles/, 'candle-fingers'],
  [/Count the windows/, 'counting-cards'],
  [/yes and no/, 'twenty-asks'],
  [/as a story/, 'three-word-tale'],
  [/what to draw/, 'dictate-draw'],
  [/the dial/, 'dial-the-ouch'],
  [/the film/, 'short-film'],
  [/hear the story/, 'speaker-story'],
  [/your own music/, 'calm-sounds'],
  [/around the card/, 'box-breath'],
  [/question game/, 'twenty-asks', 'which-would-you'],
];
const BY_NAME = IDEAS.map(({ id }): [string, string] => [name(id), id]);
/** By name they stand in a list of their own, after the sentence that begins it. */
const [BEGIN] = english.t('plans:moment.startOne', { ideas: '|' }).split('|');
function namedIn(text: string): string[][] {
  if (!text.startsWith(BEGIN!)) return NAMED.filter(([word]) => word.test(text)).map(([, ...ideas]) => ideas);
  return BY_NAME.filter(([said]) => text.includes(said)).map(([, id]) => [id]);
}

const AGES = [14, 20, 40, 60, 80, 100, 120, 200];
const EVERYTHING = [...new Set(IDEAS.flatMap(({ things }) => things))];
function* beds(): Generator<PlayBed> {
  for (const ageMonths of AGES)
    for (const isolation of ['none', 'contact', 'breath'] as const)
      for (const mouths of [false, true])
        for (const hands of [0, 1, 2] as const)
          for (const fears of [[], ['water'], ['dark'], ['noise'], FEARS] as const)
            for (const things of [TYPICAL.room.things, EVERYTHING])
              yield {
                ...TYPICAL,
                child: { ...TYPICAL.child, ageMonths, mouths, never: [] },
                room: { ...TYPICAL.room, isolation, things, usedElsewhere: [] },
                freeHands: hands,
                sketch: {
                  ...TYPICAL.sketch,
                  moments: TYPICAL.sketch.moments.map((moment) => ({ ...moment, freeHands: hands })),
                },
                ...{ fears, plan: [], pins: [], done: [] },
              };
}

/** Texts that name only what this bed bars there. */
function wrong(problem: DayProblem, window: PlayWindow, steps: readonly StepAtBed[]): string[] {
  const may = (id: string) =>
    !brokenIn(
      problem,
      problem.ideas.find((idea) => idea.id === id)!,
      { ...window, grownUp: true },
    ).length;
  const barred = steps
    .map((step) => stepText(english, step))
    .filter((text) => namedIn(text).some((ideas) => !ideas.some(may)));
  const small = steps.map(({ id }) => id).filter((id) => problem.child.mouths && id.includes('sticker'));
  return [...barred, ...small];
}
const around = ({ from, propped, quiet, energy }: PlayWindow): PlayWindow => ({
  ...{ kind: 'ordinary', id: 'around', from, minutes: 30, propped, quiet, energy, grownUp: true },
});

describe('the words for a hard moment', () => {
  it('can be read by this test: every step that has ideas names something it knows', () => {
    for (const month of AGES) {
      const { before, during, after } = momentCard(month);
      for (const step of [...before, ...during, ...after].filter(({ ideas }) => ideas.length)) {
        expect(new Set(namedIn(stepText(english, step)).flat()), step.id).toEqual(new Set(step.ideas));
        const [first, ...rest] = step.ideas;
        const some = stepText(english, { ...step, possible: [first!] });
        if (rest.length && !step.anyOfThem) expect(namedIn(some), step.id).toEqual([[first]]);
      }
    }
  });

  it('name, on the card and on the sheet of every bed, nothing that the bed bars', () => {
    let said = 0;
    for (const bed of beds()) {
      const { problem } = problemOf(bed, IDEAS);
      const where = JSON.stringify([bed.child.ageMonths, bed.room.isolation, bed.freeHands, bed.fears]);
      const { plan: _, ...unplanned } = bed;
      const sheet = daySheet(unplanned, IDEAS);
      for (const { id } of bed.sketch.moments) {
        const window = problem.windows.find((one) => one.id === id)!;
        const card = momentAtBed(problem, [], id)!;
        const truth = sheet.moments.find(({ moment }) => moment.id === id)!;
        for (const [there, steps] of [
          [around(window), [...saidSteps(card.before), ...saidSteps(card.after)]],
          [window, saidSteps(card.during)],
          [around(window), [...sheet.card.before, ...sheet.card.after]],
          [window, [...sheet.card.during, ...truth.steps]],
        ] as const) {
          said += steps.length;
          expect(wrong(problem, there, steps), where).toEqual([]);
        }
      }
      const { before, during, after } = cardAtBed(problem);
      const any = around({ ...problem.windows[0]!, propped: false, quiet: false });
      expect(wrong(problem, any, saidSteps([...before, ...during, ...after])), where).toEqual([]);
    }
    expect(said).toBeGreaterThan(10_000);
  });

  it('of a child of twenty months who may not blow and fears water, speak of no bubbles, and still of what is left', () => {
    const bed: PlayBed = {
      ...TYPICAL,
      child: { ...TYPICAL.child, ageMonths: 20, mouths: true, never: [] },
      room: { ...TYPICAL.room, isolation: 'breath' },
      ...{ fears: ['water'], plan: [], pins: [], done: [] },
    };
    const [needle] = daySheet(bed, IDEAS).moments;
    expect(needle!.steps.map((step) => stepText(english, step))).toEqual([
      english.t('plans:moment.startOne', { ideas: `${name('hand-walk-rhyme')} and ${name('same-song')}` }),
    ]);
  });

  it('show after it a picture of what the bed allows, and no sticker to a child who puts things into the mouth', () => {
    for (const month of AGES)
      for (const mouths of [false, true])
        for (const allowed of [[], IDEAS.map(({ id }) => id)]) {
          const picture = afterPicture(momentAge(month), mouths, allowed);
          if ('idea' in picture) expect(allowed).toContain(picture.idea);
          else expect(picture.moment === 'sticker').toBe(month >= 36 && month < 72 && !mouths);
        }
  });
});
