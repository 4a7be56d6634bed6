/** Body pictures a child presses for how it feels today. They are no notes and no look; they can only open one. */
import { CHOICES } from '../notes/kinds.ts';
import type { Instant } from '../units.ts';

/** Curled up, fists, hiding, loose, wide awake: the same as a grown-up may note. */
export const FEELINGS = CHOICES.mood.picture;
export type Feeling = (typeof FEELINGS)[number];

export interface FeelingPressed {
  picture: Feeling;
  at: Instant;
}

/** How a child may show that something is wrong without saying so. Source: design 5-day. */
const WITHDRAWN: readonly Feeling[] = ['fists', 'hiding'];
const OFTEN = 2;

/**
 * Whether the grown-up is led to a look at the leg: fists or hiding twice today, or once with "it hurts".
 *
 * Shape: pressed today, in any order. More pressed never takes it back.
 * Not: what is wrong. Nothing pressed here says that a look is not needed.
 * Source: design 5-day.
 */
export function leadsToLook(pressed: readonly FeelingPressed[], hurtsPressed: boolean): boolean {
  const times = pressed.filter(({ picture }) => WITHDRAWN.includes(picture)).length;
  return times >= OFTEN || (times > 0 && hurtsPressed);
}
