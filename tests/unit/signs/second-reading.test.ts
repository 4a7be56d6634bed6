/**
 * A second reading of the decision table (the design's 2-signs.md, 3.2 and 3.4), written out here from its rows: it
 * shares nothing with domain/signs or content/signs, and must give the same reasons for every report.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assess } from '#domain/signs/assess.ts';
import { ALL_SIGN_IDS } from '#domain/signs/ids.ts';
import { classOf } from '#domain/signs/rules.ts';
import type { Answer, Because, Report, Sighting, UrgencyClass } from '#domain/signs/types.ts';
import { highest, moreUrgent, oneHigher, rankOf } from '#domain/signs/urgency.ts';
import { anyContext, at, context } from '../../helpers/reports.ts';

/** The table of 3.2, in its order: the sign, its class (3 ring now, 2 tell the nurse, 1 next visit), its group. */
const TABLE = `
  toes-cool 3 A | both-feet-cool 2 | toes-colour 3 A | toes-swollen 2 A | toes-numb 3 A | toes-still 3 A
  foot-droops 3 A | thigh-changed 3 A | sore-after-medicine 3 A | sore-rising 2 | band-tight 2 B | band-moved 2 B
  band-wet 2 B | band-stained 2 B | heel-sore 2 B | skin-mark 2 B | burning-spot 2 B | load-not-free 3 C
  cord-trouble 3 C | cord-touched 2 C | slid-down 2 C | plate-crooked 2 C | leg-rolled 2 C | bed-changed 2 C
  leg-jumps 1 | itchy-under 1 | hot-or-shivery 2 | breath-hard 3 | hard-to-wake 3 | very-upset 2 | no-wee 2
  no-poo 1 | not-drinking 1 | being-sick 2 | other-leg 2 | pale-sweaty 3 | shaking-fit 3 | fell-or-climbing 3
  belly-hurts 2 | head-hurts 2 | cannot-name-it 2 | worried 2 | very-worried 3`
  .trim()
  .split(/\s*[|\n]\s*/)
  .map((row) => row.split(' ') as [id: string, rank: string, group?: string]);
const RANK = new Map(TABLE.map(([id, rank]) => [id, Number(rank)]));
const GROUP = new Map(TABLE.map(([id, , group]) => [id, group]));
const CLASS = { 1: 'next-visit', 2: 'tell-nurse', 3: 'ring-now' } as Record<number, UrgencyClass>;

/** 3.4, "Sub-answers that raise", and R20's "wakes the child": the sub-answer, its class, what else it says. */
const SUB_ANSWERS: Record<string, [rank: number, also?: string]> = {
  'band-moved/right-off': [3],
  'slid-down/plate-at-wheel': [3],
  'band-stained/growing': [3],
  'being-sick/choking': [3, 'breath-hard'],
  'toes-swollen/cannot-move': [3, 'toes-still'],
  'load-not-free/fallen': [3],
  'leg-jumps/wakes-child': [2],
};

interface Told {
  answers: Record<string, Answer>;
  details: readonly string[];
  cannotTell: boolean;
  raise: Readonly<Record<string, UrgencyClass>>;
}

/** R1–R12, sub-answers and raises of the ward, each as "rule class: its signs in alphabetical order". */
function readAgain({ answers, details, cannotTell, raise }: Told): string[] {
  const found: string[] = [];
  const say = (rule: string, rank: number, signs: Iterable<string>, word = CLASS[rank]!) =>
    found.push(`${rule} ${word}: ${[...signs].sort().join(' ')}`);
  const sure = new Set<string>();
  const doubt = new Set<string>();
  for (const [id, answer] of Object.entries(answers)) {
    if (answer === 'different') sure.add(id);
    if (answer === 'not-sure') {
      if (RANK.get(id) === 1) sure.add('cannot-name-it');
      else doubt.add(id);
    }
  }
  for (const key of details) {
    const sign = key.slice(0, key.indexOf('/'));
    const [rank, also] = SUB_ANSWERS[key]!;
    sure.add(sign);
    if (also) sure.add(also);
    say(sign === 'leg-jumps' ? 'R20' : 'detail', rank, [sign]);
  }
  const present = new Set([...sure, ...doubt]);
  const raised = (id: string) =>
    Math.max(
      RANK.get(id)!,
      { 'next-visit': 1, 'not-sure': 2, 'tell-nurse': 2, 'ring-now': 3 }[raise[id] ?? 'next-visit'],
    );
  for (const id of present) {
    if (id === 'worried' || id === 'very-worried') say('R3', raised(id), [id]);
    else if (id === 'cannot-name-it' || !sure.has(id)) {
      say('R2', 2, [id], 'not-sure');
      if (id === 'cannot-name-it' && raised(id) === 3) say('ward', 3, [id]);
    } else {
      say('R1', RANK.get(id)!, [id]);
      if (raised(id) > RANK.get(id)!) say('ward', raised(id), [id]);
    }
  }
  const here = (...ids: string[]) => ids.filter((id) => present.has(id));
  const group = (letter: string) => [...present].filter((id) => GROUP.get(id) === letter);
  const leg = group('A');
  if (leg.length > 1) say('R4', 3, leg);
  const early = here('sore-rising', 'very-upset', 'band-tight', 'leg-rolled');
  if (leg.length > 0 && early.length > 0) say('R5', 3, [...leg, ...early]);
  const restless = here('sore-rising', 'very-upset', 'band-tight');
  if (restless.length > 1) say('R6', 3, restless);
  const pull = group('C');
  const moved = here('slid-down', 'leg-rolled', 'plate-crooked').length;
  if (pull.length - moved + Math.min(moved, 1) > 1) say('R7', 3, pull);
  const skin = here('band-stained', 'skin-mark', 'burning-spot', 'heel-sore');
  if (present.has('hot-or-shivery') && skin.length > 0) say('R8', 3, ['hot-or-shivery', ...skin]);
  if (here('not-drinking', 'no-wee').length > 1) say('R9', 3, ['not-drinking', 'no-wee']);
  const head = here('being-sick', 'very-upset');
  if (present.has('head-hurts') && head.length > 0) say('R10', 3, ['head-hurts', ...head]);
  const serious = [...present].filter((id) => raised(id) > 1);
  if (serious.length > 2) say('R11', 3, serious);
  if (cannotTell && present.has('very-upset')) say('R12', 3, ['very-upset']);
  return found.sort();
}

/** Reasons without those that look at a clock. */
const standing = (because: readonly Because[]) =>
  because
    .filter(({ rule }) => !/^R1[3-9]$/.test(rule))
    .map(({ rule, atLeast, signs }) => `${rule} ${atLeast}: ${[...signs].sort().join(' ')}`)
    .sort();

const NOW = at('14:00');
const anyAnswer = fc.constantFrom<Answer>('different', 'different', 'not-sure', 'like-usual', 'not-looked');
/** Few of the groups and pairs of the table come together by chance, so signs come from one of its rules, too. */
const anySigns = fc.oneof(
  fc.uniqueArray(fc.constantFrom(...TABLE.map(([id]) => id)), { maxLength: 5 }),
  fc.uniqueArray(
    fc.constantFrom(
      ...['toes-swollen', 'toes-cool', 'sore-rising', 'very-upset', 'band-tight', 'leg-rolled'],
      ...['slid-down', 'plate-crooked', 'bed-changed', 'cannot-name-it', 'worried', 'itchy-under'],
    ),
    { maxLength: 4 },
  ),
  fc.uniqueArray(
    fc.constantFrom(
      ...['hot-or-shivery', 'band-stained', 'skin-mark', 'burning-spot', 'heel-sore', 'not-drinking'],
      ...['no-wee', 'head-hurts', 'being-sick', 'very-upset', 'leg-jumps', 'very-worried'],
    ),
    { maxLength: 4 },
  ),
  // the pair that chance seldom draws
  fc.constant(['not-drinking', 'no-wee']),
);

describe('the second reading of the table', () => {
  test('knows the same signs: none came, went or got another name', () => {
    expect([...ALL_SIGN_IDS].sort()).toEqual(TABLE.map(([id]) => id).sort());
  });

  test('gives the same reasons as the first, for answers given now and for what is still open', () => {
    const held = new Set<string>();
    fc.assert(
      fc.property(
        anySigns.chain((signs) =>
          fc.tuple(...signs.map((id) => fc.tuple(fc.constant(id), anyAnswer, fc.boolean()))),
        ),
        fc.uniqueArray(fc.constantFrom(...Object.keys(SUB_ANSWERS)), { maxLength: 1 }),
        anyContext(NOW),
        (rows, details, given) => {
          const answers = Object.fromEntries(rows);
          const sightings: Sighting[] = rows
            .filter(([, , seen]) => seen)
            .map(([sign, answer]) => ({ sign, answer, at: NOW }));
          const report: Report = {
            answers: Object.fromEntries(rows.filter(([, , seen]) => !seen)),
            details,
            sightings,
          };
          const cannotTell = given.child.under3 || given.child.canTell !== 'yes';
          const expected = readAgain({ answers, details, cannotTell, raise: given.ward.raise });
          for (const reason of expected) held.add(reason.slice(0, reason.indexOf(' ')));
          expect(standing(assess(report, given).because)).toEqual(expected);
        },
      ),
      // never fewer: it names below every rule that was drawn
      { numRuns: 1000 },
    );
    expect([...held].sort()).toEqual(
      [...'123456789']
        .map((n) => `R${n}`)
        .concat('R10', 'R11', 'R12', 'R20', 'detail', 'ward')
        .sort(),
    );
  });
});

describe('a sign that this version does not know', () => {
  const unknown = (report: Report) => assess(report, context());

  test('is told the nurse, and named once however often it was seen', () => {
    const sighting = { sign: 'toes-glow', answer: 'different', at: NOW } as const;
    const result = unknown({ answers: { 'toes-glow': 'not-sure' }, sightings: [sighting, sighting] });
    expect(result.because).toEqual([{ rule: 'unknown', signs: ['toes-glow'], atLeast: 'tell-nurse' }]);
    expect(result.unknown).toEqual(['toes-glow']);
    // a sub-answer without its part of the name is told as its sign, and once
    expect(unknown({ details: ['toes-glow'] }).unknown).toEqual(['toes-glow']);
    expect(unknown({ details: ['toes-glow/green'] }).unknown).toEqual(['toes-glow/green', 'toes-glow']);
  });

  test.each([
    'constructor',
    'toString',
    'band-wet/constructor',
    'band-moved/constructor',
    'band-moved/right-off/x',
  ])('%s is none that we know', (name) => {
    const report: Report = name.includes('/') ? { details: [name] } : { answers: { [name]: 'different' } };
    expect(unknown(report).unknown).toEqual([name]);
    expect(unknown(report).urgency).toBe('tell-nurse');
  });

  test('counts among the three that each want a nurse', () => {
    const two = { 'band-wet': 'different', 'no-wee': 'different' } as const;
    expect(unknown({ answers: two }).urgency).toBe('tell-nurse');
    expect(unknown({ answers: { ...two, 'toes-glow': 'different' } }).urgency).toBe('ring-now');
  });
});

describe('the class of a sign', () => {
  test('is lifted by the ward and never lowered', () => {
    const raisedTo = (id: string, urgency: UrgencyClass) =>
      classOf(id, context({ ward: { ...context().ward, raise: { [id]: urgency } } }));
    expect(raisedTo('itchy-under', 'tell-nurse')).toBe('tell-nurse');
    expect(raisedTo('band-wet', 'ring-now')).toBe('ring-now');
    expect(raisedTo('toes-cool', 'next-visit')).toBe('ring-now');
    expect(raisedTo('band-wet', 'not-sure')).toBe('tell-nurse');
    expect(raisedTo('toes-glow', 'ring-now')).toBe('ring-now');
    expect(classOf('toString', context())).toBe('tell-nurse');
  });

  test('stands in this order; a word that nobody knows stands with tell-nurse', () => {
    expect(
      ['none', 'next-visit', 'not-sure', 'tell-nurse', 'ring-now'].map((word) => rankOf(word as 'none')),
    ).toEqual([0, 1, 2, 2, 3]);
    expect(rankOf('someday' as 'none')).toBe(2);
  });

  test('of two, the more urgent stays; of two alike, the one that does not only rest on doubt', () => {
    expect(moreUrgent('not-sure', 'tell-nurse')).toBe('tell-nurse');
    expect(moreUrgent('tell-nurse', 'not-sure')).toBe('tell-nurse');
    expect(moreUrgent('not-sure', 'not-sure')).toBe('not-sure');
    expect(moreUrgent('ring-now', 'ring-now')).toBe('ring-now');
    expect(moreUrgent('next-visit', 'ring-now')).toBe('ring-now');
    expect(moreUrgent('ring-now', 'next-visit')).toBe('ring-now');
    expect(highest([])).toBe('none');
    expect(highest(['next-visit', 'not-sure'])).toBe('not-sure');
  });

  test('one higher is at least tell-nurse, and at most ring-now', () => {
    expect((['next-visit', 'not-sure', 'tell-nurse', 'ring-now'] as const).map(oneHigher)).toEqual([
      'tell-nurse',
      'ring-now',
      'ring-now',
      'ring-now',
    ]);
  });
});

describe('what was said twice about one sign', () => {
  const seen = (answer: Answer): Sighting => ({ sign: 'band-wet', answer, at: NOW });

  test('counts by the surer answer, whichever came first', () => {
    for (const report of [
      { answers: { 'band-wet': 'not-sure' }, sightings: [seen('different')] },
      { answers: { 'band-wet': 'different' }, sightings: [seen('not-sure')] },
    ] satisfies Report[])
      expect(assess(report, context()).because).toEqual([
        { rule: 'R1', signs: ['band-wet'], atLeast: 'tell-nurse' },
      ]);
  });

  test('like usual takes nothing back: only a nurse who looks does', () => {
    const open: Report = { answers: { 'band-wet': 'like-usual' }, sightings: [seen('different')] };
    expect(assess(open, context()).urgency).toBe('tell-nurse');
    const looked: Report = { sightings: [{ ...seen('different'), lookedAt: NOW }] };
    expect(assess(looked, context()).urgency).toBe('none');
  });
});

test('what was looked at is told from what was not', () => {
  const usual = assess({ answers: { 'toes-cool': 'like-usual', 'band-wet': 'not-looked' } }, context());
  expect(usual.nothingLooked).toBe(false);
  expect(usual.notLooked).toHaveLength(39);
  // what is open was looked at, although nobody answered it now
  const open = assess({ sightings: [{ sign: 'band-wet', answer: 'not-sure', at: NOW }] }, context());
  expect(open.nothingLooked).toBe(false);
  expect(open.notLooked).not.toContain('band-wet');
  expect(open.notLooked).toHaveLength(39);
  const nothing = assess({ sightings: [{ sign: 'band-wet', answer: 'like-usual', at: NOW }] }, context());
  expect(nothing.nothingLooked).toBe(true);
  expect(nothing.notLooked).toHaveLength(40);
});

test('reasons stand in the order of their signs, in whatever order those were answered', () => {
  const ids = ['toes-still', 'band-wet', 'toes-cool'];
  const because = (order: readonly string[]) =>
    assess({ answers: Object.fromEntries(order.map((id) => [id, 'different'])) }, context()).because;
  expect(because(ids)).toEqual(because([...ids].reverse()));
  expect(because(ids).map(({ rule, signs }) => `${rule} ${signs.join(' ')}`)).toEqual([
    'R1 band-wet',
    'R1 toes-cool',
    'R1 toes-still',
    'R4 toes-cool toes-still',
    'R11 band-wet toes-cool toes-still',
  ]);
});
