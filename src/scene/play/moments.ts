/** Small pictures for hard moments and for changes in the day. */
import type { Picture } from '../shapes.ts';
import { compose, type PlayScene } from './compose.ts';

// prettier-ignore
const SCENES = {
  'needle-coming': { hands: [['child', 'rest', 24, 66, 62, 0, -1]], front: [['plaster', 50, 62, 0.36, 80]] },
  'bandage-care': { hands: [['nurse', 'rest', 10, 84, 46, -14, -1], ['nurse', 'rest', 112, 88, 46, 194, 1]], front: [['roll', 60, 50, 0.62]] },
  'other-moment': { child: { at: 'left', eyes: 'right' }, bubbles: [['think', 90, 28, 56, 44, 62, 50]], front: [['hiding', 60, 65, 1], ['open', 90, 28, 0.34]] },
  xray: { things: [['film', 60, 60, 0.98]] },
  doctors: { things: [['coats', 62, 46, 0.82], ['blanketend', 60, 60, 1]] },
  visitor: { things: [['door', 36, 58, 0.9], ['caller', 86, 66, 0.86]] },
  asleep: { child: { eyes: 'shut', tilt: -10 }, things: [['moon', 104, 18, 0.24]] },
  sore: { things: [['curled', 60, 60, 1]] },
  early: { child: { at: 'chat', eyes: 'right', mouth: 'speaking' }, grown: { nurse: true, x: 96, y: 50, hand: [74, 88, 185, 'fist'] }, things: [['sooner', 34, 27, 0.46]], front: [['plaster', 66, 84, 0.24, 70]] },
  again: { things: [['round', 60, 60, 1]] },
  'not-again': { things: [['facedown', 60, 60, 1]] },
  sticker: { things: [['peeled', 60, 60, 1]] },
  'comfort-hold': { child: { at: 'leaning', eyes: 'shut', tilt: 24, right: [64, 96, 200] }, grown: { x: 76, y: 32, held: true, eyes: 'shut', hand: [44, 104, 200] } },
} as const satisfies Record<string, PlayScene>;

export type MomentPictureId = keyof typeof SCENES;
export const MOMENT_PICTURE_IDS = Object.keys(SCENES) as MomentPictureId[];

/**
 * The picture of a hard moment or of a change in the day. No needle and no leg is shown.
 *
 * Shape: 120 × 120 scene units.
 * @example drawMoment('asleep').width // 120
 */
export const drawMoment = (id: MomentPictureId): Picture => compose(SCENES[id], 5);
