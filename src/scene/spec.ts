/**
 * What one picture of the child, the leg and the pull shows. Every sign picture is the neutral spec with a
 * few values changed; nothing else in the project draws the set-up.
 */
import type { Degrees } from '#domain/units.ts';

const deg = (value: number) => value as Degrees;

/** `whole`: the bed from the side. `feet`: both bare feet from the foot end. `close`: one part, large. */
export type Camera = 'whole' | 'feet' | 'close';
/** What a `close` picture looks at; the other two cameras ignore it. */
export type Focus = 'foot' | 'bandage' | 'heel' | 'knee' | 'thigh' | 'bed-end' | 'child';
export type Side = 'left' | 'right';
export type DrawnAge = 2 | 5 | 9 | 14;
/** Six skin tones; order carries no meaning and none is shown with a number. */
export type SkinTone = 'shell' | 'sand' | 'honey' | 'clay' | 'chestnut' | 'umber';
export type Hair = 'short' | 'curls' | 'plait' | 'scarf';
export type Lamp = 'day' | 'night';
export type ToneShift = 'none' | 'paler' | 'blue-grey' | 'dusky-dark' | 'blotched';
export type CordState =
  'on-wheel' | 'off-wheel' | 'frayed' | 'knot-at-wheel' | 'under-blanket' | 'toy-on-cord' | 'caught';
export type LoadTouch = 'none' | 'floor' | 'bed-end' | 'other';
export type Face = 'calm' | 'sore' | 'crying' | 'scared' | 'flushed' | 'drowsy' | 'drained' | 'away';
export type Mark =
  | 'none'
  | 'numb-dots'
  | 'heel-rays'
  | 'skin-patch'
  | 'burn-rays'
  | 'itch-dots'
  | 'jump-zigzag'
  | 'shiver-arcs'
  | 'fit-arcs'
  | 'wild-arcs'
  | 'no-answer'
  | 'sweat-drops'
  | 'belly-rays'
  | 'head-rays'
  | 'other-leg';
/** A thing beside the child that tells part of the story. */
export type Prop =
  | 'none'
  | 'medicine-cup'
  | 'bottle-used'
  | 'bottle-empty-clock'
  | 'cup-sipped'
  | 'cup-full-clock'
  | 'bowl-clean'
  | 'bowl-used'
  | 'pan-today'
  | 'pan-three-days';
/** How soreness went since the last look: drawn as plain steps beside the child. */
export type SorenessSteps = 'none' | 'falling' | 'flat' | 'rising';

export interface SceneSpec {
  camera: Camera;
  focus: Focus;
  /** The child's own left or right leg is in traction. */
  side: Side;
  age: DrawnAge;
  skin: SkinTone;
  hair: Hair;
  lamp: Lamp;
  /** Colour of the toes of the pulled leg against the child's own tone. */
  toneShift: ToneShift;
  /** Hand-back mark on the toes: 2 is clearly colder than the other foot. */
  coolMark: 0 | 1 | 2;
  otherCoolMark: 0 | 1 | 2;
  /** Toe width ×1, ×1.15, ×1.3; skin lines vanish. */
  swell: 0 | 1 | 2;
  /** 0–1, how far the toes wave (drawn as motion arcs; at 0 the arcs are crossed out). */
  wiggle: number;
  /** −10…+45: 0 upright, positive droops away from the nose. */
  footPitch: Degrees;
  /** The child has been asked to pull the foot up: the arrow is full when it follows, empty when not. */
  lift: 'not-asked' | 'follows' | 'empty';
  /** −10…+45 outward; the kneecap mark follows. */
  legRoll: Degrees;
  /** 0–1, how far the top or foot edge of the leg bandage has slipped from its pen line. */
  bandTop: number;
  bandFoot: number;
  bandWrinkle: 0 | 1 | 2;
  bandGap: 0 | 1 | 2;
  bandTight: 0 | 1 | 2;
  /** 0–1, the wet field. */
  bandWet: number;
  bandStain: 'none' | 'red' | 'yellow-brown';
  smell: 0 | 1;
  /** −30…+30 degrees. */
  plateTilt: Degrees;
  /** 0–1, room between toes and foot plate. */
  plateGap: number;
  /** 0–1; 1 is a heel free over its thin pad. */
  heelGap: number;
  /** 0–1, how far the body has slid toward the foot end. */
  slide: number;
  /** 0–1; 1 is the foot end raised as staff set it. */
  bedRaise: number;
  /** 0–1, how far the head end is up. */
  headRaise: number;
  cord: CordState;
  /** 0–1 above the floor. The one length of the cord ties it to `slide`. */
  loadHeight: number;
  loadTouch: LoadTouch;
  loadSwing: 0 | 1;
  face: Face;
  breath: 0 | 1 | 2;
  belly: 0 | 1;
  thigh: 'usual' | 'thick' | 'bent' | 'stained';
  mark: Mark;
  prop: Prop;
  soreness: SorenessSteps;
  /** 0–1, the body off the line of the pull, climbing out. */
  offLine: number;
}

/** The changes that turn one picture into another. */
export type SceneChange = Partial<
  Omit<SceneSpec, 'camera' | 'focus' | 'side' | 'age' | 'skin' | 'hair' | 'lamp'>
>;
/** What belongs to this family's child and not to a sign. */
export type ChildLook = Pick<SceneSpec, 'side' | 'age' | 'skin' | 'hair'>;

export const SKIN_TONES: readonly SkinTone[] = ['shell', 'sand', 'honey', 'clay', 'chestnut', 'umber'];
export const DRAWN_AGES: readonly DrawnAge[] = [2, 5, 9, 14];
export const HAIRS: readonly Hair[] = ['short', 'curls', 'plait', 'scarf'];

export const NEUTRAL: SceneSpec = {
  camera: 'whole',
  focus: 'foot',
  side: 'left',
  age: 5,
  skin: 'honey',
  hair: 'short',
  lamp: 'day',
  toneShift: 'none',
  coolMark: 0,
  otherCoolMark: 0,
  swell: 0,
  wiggle: 1,
  footPitch: deg(5),
  lift: 'not-asked',
  legRoll: deg(0),
  bandTop: 0,
  bandFoot: 0,
  bandWrinkle: 0,
  bandGap: 0,
  bandTight: 0,
  bandWet: 0,
  bandStain: 'none',
  smell: 0,
  plateTilt: deg(0),
  plateGap: 1,
  heelGap: 1,
  slide: 0,
  bedRaise: 1,
  headRaise: 0,
  cord: 'on-wheel',
  loadHeight: 0.5,
  loadTouch: 'none',
  loadSwing: 0,
  face: 'calm',
  breath: 0,
  belly: 0,
  thigh: 'usual',
  mark: 'none',
  prop: 'none',
  soreness: 'none',
  offLine: 0,
};
