// What the planner reads off the windows of a day.
import { describe, expect, it } from 'vitest';
import { inMorning, playCap, sinceMoment } from '#domain/play/feasible.ts';
import type { HardMoment, OrdinaryWindow } from '#domain/play/types.ts';

const open = (id: string, from: number, minutes: number): OrdinaryWindow => ({
  ...{ kind: 'ordinary', id, from, minutes, energy: 3, propped: true, quiet: false, grownUp: true },
});
const hard = (id: string, from: number, minutes: number): HardMoment => ({
  ...{ ...open(id, from, minutes), kind: 'hard', procedure: 'needle', weight: 1, freeHands: 1 },
});
const WINDOWS = [
  open('a', 540, 60),
  hard('m', 600, 10),
  open('b', 610, 50),
  open('c', 700, 60),
  hard('n', 800, 10),
];

describe('what the planner reads off a day', () => {
  it('how long it is since the last moment was over', () => {
    expect([540, 600, 605, 610, 615, 700, 810, 815].map((from) => sinceMoment(WINDOWS, from))).toEqual([
      ...[Infinity, Infinity, Infinity, 0, 5, 90, 0, 5],
    ]);
  });

  it('of the open stretches six tenths are play, half under six, down to five minutes', () => {
    expect([71, 72].map((months) => playCap(WINDOWS, months))).toEqual([85, 100]);
    expect([71, 72].map((months) => playCap([open('a', 540, 65), hard('m', 605, 60)], months))).toEqual([
      30, 35,
    ]);
  });

  it('the morning is over at noon', () => {
    expect([715, 720].map((from) => inMorning({ from }))).toEqual([true, false]);
  });
});
