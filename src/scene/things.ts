/** Small pictures for the interface, each in a square of its own, drawn by the same hand as the scene. */
import { heldInside } from './parts/points.ts';
import type { Picture, Shape } from './shapes.ts';
import { cleanHands, fallBreath, handsInLap, smallLamp } from './things/care.ts';
import {
  callButton,
  callButtonNextVisit,
  callButtonNotSure,
  callButtonRingNow,
  callButtonTellNurse,
} from './things/handset.ts';
import { icon } from './things/icon.ts';
import { SQUARE } from './things/pen.ts';
import { callOut, cannotNameIt, whoChild, whoGrownUp, whoStaff, worried } from './things/people.ts';
import { tileExplanations, tileNotes, tilePlay, tileToday } from './things/tiles.ts';

const THINGS = {
  'call-button': callButton,
  'call-button-ring-now': callButtonRingNow,
  'call-button-tell-nurse': callButtonTellNurse,
  'call-button-next-visit': callButtonNextVisit,
  'call-button-not-sure': callButtonNotSure,
  'call-out': callOut,
  'hands-in-lap': handsInLap,
  'who-grown-up': whoGrownUp,
  'who-child': whoChild,
  'who-staff': whoStaff,
  'tile-today': tileToday,
  'tile-play': tilePlay,
  'tile-explanations': tileExplanations,
  'tile-notes': tileNotes,
  'small-lamp': smallLamp,
  'clean-hands': cleanHands,
  'fall-breath': fallBreath,
  worried,
  'cannot-name-it': cannotNameIt,
  icon,
} as const satisfies Record<string, () => Shape[]>;

export type ThingId = keyof typeof THINGS;
export const THING_IDS = Object.keys(THINGS) as ThingId[];

/** A small picture as shapes from back to front. */
export function drawThing(id: ThingId): Picture {
  return { width: SQUARE, height: SQUARE, shapes: heldInside(THINGS[id](), SQUARE, SQUARE) };
}
