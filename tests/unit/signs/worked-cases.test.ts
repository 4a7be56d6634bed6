import { describe, expect, it } from 'vitest';
import { assess } from '#domain/signs/assess.ts';
import { SIGN_IDS, type SignId } from '#domain/signs/ids.ts';
import type { Answer, Report } from '#domain/signs/types.ts';
import { rankOf } from '#domain/signs/urgency.ts';
import { SIGNS } from '#content/signs.ts';
import { at, context, different } from '../../helpers/reports.ts';

const rank = (report: Report, change = {}) => rankOf(assess(report, context(change)).urgency);
const say = (answers: Record<string, Answer>): Report => ({ answers });

describe('worked cases of the ward', () => {
  it.each<[string, Report, number]>([
    ['thick toes alone: tell the nurse', different('toes-swollen'), 2],
    ['thick toes and more soreness: press now', different('toes-swollen', 'sore-rising'), 3],
    ['slid down alone: tell the nurse', different('slid-down'), 2],
    ['slid down and something on the cord: press now', different('slid-down', 'cord-touched'), 3],
    ['an itch can wait for the next visit', different('itchy-under'), 1],
    ['an itch and "I cannot say what": tell the nurse', different('itchy-under', 'cannot-name-it'), 2],
    ['not sure about the colour: tell the nurse', say({ 'toes-colour': 'not-sure' }), 2],
    [
      'not sure about colour and warmth: press now',
      say({ 'toes-colour': 'not-sure', 'toes-cool': 'not-sure' }),
      3,
    ],
    ['no poo can wait for the next visit', different('no-poo'), 1],
    ['no poo and throwing up: tell the nurse', different('no-poo', 'being-sick'), 2],
    ['hardly drinks and no wee: press now', different('not-drinking', 'no-wee'), 3],
    ['hot and a stained bandage: press now', different('hot-or-shivery', 'band-stained'), 3],
    ['headache and throwing up: press now', different('head-hurts', 'being-sick'), 3],
    ['three things that each want a nurse: press now', different('band-wet', 'no-wee', 'hot-or-shivery'), 3],
    [
      'knee, plate and sliding are one event of the pull, yet three signs',
      different('slid-down', 'leg-rolled'),
      2,
    ],
  ])('%s', (_name, report, expected) => {
    expect(rank(report)).toBe(expected);
  });

  it('a two-year-old who cannot be calmed: press now; at eight: tell the nurse', () => {
    expect(rank(different('very-upset'), { child: { under3: true, canTell: 'yes' } })).toBe(3);
    expect(rank(different('very-upset'), { child: { under3: false, canTell: 'partly' } })).toBe(3);
    expect(rank(different('very-upset'))).toBe(2);
  });

  it('a wet bandage at 14:00 that nobody looked at by 14:15: press now', () => {
    const report: Report = { sightings: [{ sign: 'band-wet', answer: 'different', at: at('14:00') }] };
    expect(rank(report, { now: at('14:14') })).toBe(2);
    const late = assess(report, context({ now: at('14:15') }));
    expect(late.urgency).toBe('ring-now');
    expect(late.because.map((b) => b.rule)).toContain('R14');
  });

  it('soreness 4, medicine at 13:00, still 4 at 13:50: press now', () => {
    const report: Report = {
      soreness: [
        { at: at('12:40'), value: 4, scale: 'numbers', when: 'rest' },
        { at: at('13:50'), value: 4, scale: 'numbers', when: 'rest' },
      ],
      medicineAt: [at('13:00')],
    };
    expect(rank(report, { now: at('13:44') })).toBe(0);
    const after = assess(report, context({ now: at('13:50') }));
    expect(after.urgency).toBe('ring-now');
    expect(after.because).toContainEqual({
      rule: 'R17',
      signs: ['sore-after-medicine'],
      atLeast: 'ring-now',
    });
  });

  it('soreness that only stays at the lowest step after medicine: tell the nurse', () => {
    const report: Report = {
      soreness: [
        { at: at('12:40'), value: 1, scale: 'steps', when: 'rest' },
        { at: at('13:50'), value: 1, scale: 'steps', when: 'rest' },
      ],
      medicineAt: [at('13:00')],
    };
    expect(assess(report, context({ now: at('13:50') })).because).toContainEqual({
      rule: 'R17',
      signs: ['sore-rising'],
      atLeast: 'tell-nurse',
    });
  });

  it('rest is compared with rest and moving with moving', () => {
    const line = (when: 'rest' | 'moving') =>
      rank({
        soreness: [
          { at: at('12:00'), value: 2, scale: 'numbers', when: 'rest' },
          { at: at('13:50'), value: 4, scale: 'numbers', when },
        ],
      });
    expect(line('rest')).toBe(2);
    expect(line('moving')).toBe(0);
  });

  it('medicine asked for early twice since the last mark counts as more soreness', () => {
    const asked = [at('13:10'), at('13:40')];
    expect(rank({ askedEarlyAt: asked })).toBe(2);
    expect(rank({ askedEarlyAt: asked, medicineAt: [at('13:20')] })).toBe(0);
  });

  it('a second jump of the leg within two hours, or one that wakes the child: tell the nurse', () => {
    const jump = (clock: string) => ({ sign: 'leg-jumps', answer: 'different' as const, at: at(clock) });
    expect(rank({ sightings: [jump('13:30')] })).toBe(1);
    expect(rank({ sightings: [jump('12:30'), jump('13:30')] })).toBe(2);
    expect(rank({ sightings: [jump('13:30')], details: ['leg-jumps/wakes-child'] })).toBe(2);
  });

  it('the same sign for the third time in a day, looked at in between, goes one class up', () => {
    const seen = (clock: string, looked?: string) => ({
      sign: 'heel-sore',
      answer: 'different' as const,
      at: at(clock),
      ...(looked ? { lookedAt: at(looked) } : {}),
    });
    expect(rank({ sightings: [seen('09:00', '09:10'), seen('13:55')] })).toBe(2);
    expect(rank({ sightings: [seen('08:00', '08:10'), seen('11:00', '11:10'), seen('13:55')] })).toBe(3);
    // wet, slid down and touched cords come back all the time
    const wet = [seen('08:00', '08:10'), seen('11:00', '11:10'), seen('13:55')].map((s) => ({
      ...s,
      sign: 'band-wet',
    }));
    expect(rank({ sightings: wet })).toBe(2);
  });

  it('what was to be said at the next visit, and was not for four hours of the day: tell the nurse', () => {
    const report = (told: boolean): Report => ({
      sightings: [
        {
          sign: 'itchy-under',
          answer: 'different',
          at: at('09:00'),
          ...(told ? { toldAt: at('10:00') } : {}),
        },
      ],
    });
    expect(rank(report(false), { now: at('12:59') })).toBe(1);
    expect(rank(report(false), { now: at('13:00') })).toBe(2);
    expect(rank(report(true), { now: at('13:00') })).toBe(1);
    const night: Report = { sightings: [{ sign: 'itchy-under', answer: 'different', at: at('21:00') }] };
    expect(rank(night, { now: at('08:59', 26) })).toBe(1);
    expect(rank(night, { now: at('09:00', 26) })).toBe(2);
  });

  it('cold toes at 03:10 and nobody by 03:15: the second step', () => {
    const report: Report = { sightings: [{ sign: 'toes-cool', answer: 'different', at: at('03:10') }] };
    expect(assess(report, context({ now: at('03:14') })).secondStep).toEqual({
      state: 'waiting',
      dueAt: at('03:15'),
    });
    const due = assess(report, context({ now: at('03:15') }));
    expect(due.secondStep).toEqual({ state: 'due', dueAt: at('03:15') });
    expect(due.because.map((b) => b.rule)).toContain('R16');
  });

  it('a clock set back since cold toes were noted: how long the wait was nobody knows, so it is over', () => {
    const report: Report = { sightings: [{ sign: 'toes-cool', answer: 'different', at: at('03:10', 26) }] };
    const back = assess(report, context({ now: at('03:12', 25) }));
    expect(back.secondStep?.state).toBe('due');
    expect(back.because.map((b) => b.rule)).toContain('R16');
    // whatever else was noted in the meantime
    const more: Report = {
      sightings: [...report.sightings!, { sign: 'toes-colour', answer: 'different', at: at('03:11', 25) }],
    };
    expect(assess(more, context({ now: at('03:12', 25) })).secondStep?.state).toBe('due');
    // another phone's clock that is some minutes ahead is no clock that went back
    expect(assess(report, context({ now: at('03:03', 26) })).secondStep?.state).toBe('waiting');
  });

  it.each(['breath-hard', 'hard-to-wake', 'shaking-fit'] as const)(
    '%s waits no minutes: call out at once',
    (sign) => {
      expect(assess(different(sign), context()).secondStep?.state).toBe('at-once');
    },
  );

  it('choking is hard breathing, and calls out at once', () => {
    const result = assess({ details: ['being-sick/choking'] }, context());
    expect(result.urgency).toBe('ring-now');
    expect(result.secondStep?.state).toBe('at-once');
  });

  it.each<[string]>([
    ['band-moved/right-off'],
    ['slid-down/plate-at-wheel'],
    ['band-stained/growing'],
    ['toes-swollen/cannot-move'],
    ['load-not-free/fallen'],
  ])('%s: press now', (detail) => {
    expect(assess({ details: [detail] }, context()).urgency).toBe('ring-now');
  });

  it('of the 561 pairs of the first 34 signs, 285 hold a sign that rings, 19 are lifted, 251 stay, 6 wait', () => {
    // Counted by hand from the table: R5 lifts 4 pairs (thick toes with each of four warnings), R6 3, R7 7 (cord
    // touched or bed changed with each of three movements, and with each other), R8 4, R9 1: 19 together.
    // So combinations do not swamp the ward.
    const later = [
      'thigh-changed',
      'pale-sweaty',
      'shaking-fit',
      'fell-or-climbing',
      'belly-hurts',
      'head-hurts',
    ];
    const signs = SIGN_IDS.filter((id) => !later.includes(id));
    const count = { ring: 0, lifted: 0, tell: 0, visit: 0 };
    signs.forEach((a, i) =>
      signs.slice(i + 1).forEach((b: SignId) => {
        const holdsRing = [a, b].some((id) => SIGNS[id].urgency === 'ring-now');
        const urgency = rank(different(a, b));
        if (holdsRing) count.ring++;
        else if (urgency === 3) count.lifted++;
        else if (urgency === 2) count.tell++;
        else count.visit++;
      }),
    );
    expect(signs).toHaveLength(34);
    expect(count).toEqual({ ring: 285, lifted: 4 + 3 + 7 + 4 + 1, tell: 251, visit: 6 });
  });
});
