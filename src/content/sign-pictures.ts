/**
 * Each sign as two pictures: how it usually looks and what is different. The second is the first with exactly
 * the values of `different` changed.
 */
import type { BodySignId } from '#domain/signs/ids.ts';
import type { Camera, Focus, SceneChange } from '#scene/spec.ts';
import { degrees } from '#domain/units.ts';

export interface SignPicture {
  camera: Camera;
  focus: Focus;
  /** What the usual picture sets against the neutral scene. */
  usual: SceneChange;
  different: SceneChange;
}

const feet = { camera: 'feet', focus: 'foot' } as const;
const whole = { camera: 'whole', focus: 'foot' } as const;
const close = (focus: Focus) => ({ camera: 'close', focus }) as const;

export const SIGN_PICTURES = {
  'toes-cool': { ...feet, usual: {}, different: { coolMark: 2 } },
  'both-feet-cool': { ...feet, usual: {}, different: { coolMark: 1, otherCoolMark: 1 } },
  'toes-colour': { ...feet, usual: {}, different: { toneShift: 'blue-grey' } },
  'toes-swollen': { ...feet, usual: {}, different: { swell: 2 } },
  'toes-numb': { ...feet, usual: {}, different: { mark: 'numb-dots' } },
  'toes-still': { ...feet, usual: {}, different: { wiggle: 0 } },
  'foot-droops': {
    ...close('foot'),
    usual: { lift: 'follows', footPitch: degrees(-5) },
    different: { lift: 'empty', footPitch: degrees(38) },
  },
  'thigh-changed': { ...close('thigh'), usual: {}, different: { thigh: 'thick' } },
  'sore-after-medicine': {
    ...close('child'),
    usual: { prop: 'medicine-cup', soreness: 'falling' },
    different: { face: 'sore', soreness: 'flat' },
  },
  'sore-rising': {
    ...close('child'),
    usual: { soreness: 'falling' },
    different: { face: 'sore', soreness: 'rising' },
  },
  'band-tight': { ...close('bandage'), usual: {}, different: { bandTight: 2 } },
  'band-moved': { ...close('bandage'), usual: {}, different: { bandTop: 0.6, bandWrinkle: 2 } },
  'band-wet': { ...close('bandage'), usual: {}, different: { bandWet: 1 } },
  'band-stained': { ...close('bandage'), usual: {}, different: { bandStain: 'red', smell: 1 } },
  'heel-sore': { ...close('heel'), usual: {}, different: { heelGap: 0, mark: 'heel-rays' } },
  'skin-mark': { ...close('heel'), usual: {}, different: { mark: 'skin-patch' } },
  'burning-spot': { ...close('bandage'), usual: {}, different: { mark: 'burn-rays' } },
  'load-not-free': { ...close('bed-end'), usual: {}, different: { loadHeight: 0, loadTouch: 'floor' } },
  'cord-trouble': { ...close('bed-end'), usual: {}, different: { cord: 'off-wheel' } },
  'cord-touched': { ...close('bed-end'), usual: {}, different: { cord: 'toy-on-cord', loadSwing: 1 } },
  'slid-down': { ...whole, usual: {}, different: { slide: 0.9 } },
  'plate-crooked': { ...close('foot'), usual: {}, different: { plateTilt: degrees(20), plateGap: 0 } },
  'leg-rolled': { ...close('knee'), usual: {}, different: { legRoll: degrees(38) } },
  'bed-changed': { ...whole, usual: {}, different: { bedRaise: 0 } },
  'leg-jumps': { ...close('thigh'), usual: {}, different: { mark: 'jump-zigzag' } },
  'itchy-under': { ...close('bandage'), usual: {}, different: { mark: 'itch-dots' } },
  'hot-or-shivery': { ...close('child'), usual: {}, different: { face: 'flushed', mark: 'shiver-arcs' } },
  'breath-hard': { ...close('child'), usual: {}, different: { breath: 2, face: 'scared' } },
  'hard-to-wake': { ...close('child'), usual: {}, different: { face: 'drowsy', mark: 'no-answer' } },
  'very-upset': { ...close('child'), usual: {}, different: { face: 'crying', mark: 'wild-arcs' } },
  'no-wee': {
    ...close('child'),
    usual: { prop: 'bottle-used' },
    different: { prop: 'bottle-empty-clock', face: 'sore' },
  },
  'no-poo': {
    ...close('child'),
    usual: { prop: 'pan-today' },
    different: { prop: 'pan-three-days', belly: 1, face: 'sore' },
  },
  'not-drinking': {
    ...close('child'),
    usual: { prop: 'cup-sipped' },
    different: { prop: 'cup-full-clock', face: 'sore' },
  },
  'being-sick': {
    ...close('child'),
    usual: { prop: 'bowl-clean' },
    different: { prop: 'bowl-used', face: 'sore' },
  },
  'other-leg': { ...feet, usual: {}, different: { mark: 'other-leg' } },
  'pale-sweaty': { ...close('child'), usual: {}, different: { face: 'drained', mark: 'sweat-drops' } },
  'shaking-fit': { ...close('child'), usual: {}, different: { face: 'away', mark: 'fit-arcs' } },
  'fell-or-climbing': { ...whole, usual: {}, different: { offLine: 1, face: 'sore' } },
  'belly-hurts': { ...close('child'), usual: {}, different: { face: 'sore', belly: 1, mark: 'belly-rays' } },
  'head-hurts': { ...close('child'), usual: {}, different: { face: 'sore', mark: 'head-rays' } },
} as const satisfies Record<BodySignId, SignPicture>;
