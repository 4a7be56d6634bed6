/**
 * The four care cards step by step: what each step shows. One row for each text of `locales/<language>/care.json`, in
 * its order. A ward that changes a step there changes its picture here; `tests/rules/care.test.ts` names what is
 * missing, and what a step names but its picture does not show.
 */
import { degrees } from '#domain/units.ts';
import type { CareMark, CarePicture, CareScene } from '#scene/care/spec.ts';
import type { Focus, SceneChange } from '#scene/spec.ts';

/** The cards for the hour of a care itself. */
export const STEP_CARDS = ['putting-on', 'skin-day', 'sheets', 'toilet'] as const;
export type StepCard = (typeof STEP_CARDS)[number];
export const CARE_HALVES = ['family', 'staff'] as const;
export type CareHalf = (typeof CARE_HALVES)[number];

const close = (focus: Focus, points?: CareMark, shows: SceneChange = {}): CareScene => ({
  camera: 'close',
  focus,
  shows,
  ...(points ? { points } : {}),
});
const whole = (points?: CareMark, shows: SceneChange = {}): CareScene => ({
  camera: 'whole',
  focus: 'foot',
  shows,
  ...(points ? { points } : {}),
});

const medicine = close('child', undefined, { prop: 'medicine-cup' });
const atTheHead = { topic: 'before-it-goes-on' } as const;
const itMayHurt = { topic: 'soreness' } as const;
const onlyStaff = { topic: 'your-hands-off' } as const;
const chosen = { topic: 'pain-of-care' } as const;
const washed = { topic: 'wash-bandage-day' } as const;
const checks = { topic: 'first-hour' } as const;
const button = { topic: 'calling' } as const;
const wet = close('bandage', undefined, { bandWet: 1 });
const kneecap = close('knee', 'kneecap', { legRoll: degrees(0) });
const straight = close('knee', 'line', { legRoll: degrees(0) });
const heelFree = close('heel', 'heel-free', { heelGap: 1 });
/** The bandage is wound from the ankle: its upper edge has come this far. */
const wound = (bandTop: number, points: CareMark): CareScene => ({
  ...close('bandage', points, { bandTop }),
  unmarked: true,
});

export const CARE_PICTURES = {
  'putting-on': {
    family: [atTheHead, medicine, itMayHurt, chosen, { topic: 'boredom' }, onlyStaff],
    staff: [
      medicine,
      atTheHead,
      washed,
      close('foot', 'room-for-foot', { lift: 'not-asked', plateGap: 1 }),
      kneecap,
      wound(1.15, 'winding'),
      wound(0.3, 'half-overlap'),
      close('bandage', 'knee-gap'),
      close('bed-end', 'load-lowered', { loadHeight: 0.75 }),
      close('bed-end', 'cord-on-wheel', { cord: 'on-wheel' }),
      whole('foot-end', { bedRaise: 1 }),
      heelFree,
      checks,
    ],
  },
  'skin-day': {
    family: [
      medicine,
      washed,
      chosen,
      itMayHurt,
      close('bandage', undefined, { mark: 'burn-rays' }),
      onlyStaff,
    ],
    staff: [
      medicine,
      close('bed-end', 'pull-held'),
      washed,
      close('heel', 'skin-spot', { mark: 'skin-patch' }),
      wound(1.15, 'winding'),
      close('foot', 'straps'),
      checks,
    ],
  },
  sheets: {
    family: [
      atTheHead,
      { topic: 'sheets' },
      whole('small-lift'),
      itMayHurt,
      whole(undefined, { slide: 0.9 }),
      onlyStaff,
    ],
    staff: [
      { topic: 'sheets' },
      whole('half-minute'),
      whole('small-lift'),
      straight,
      heelFree,
      whole('foot-end-and-load', { bedRaise: 1 }),
      button,
    ],
  },
  toilet: {
    family: [button, { topic: 'toilet-in-bed' }, { own: 'two-for-nappies' }, wet, onlyStaff],
    staff: [
      { topic: 'your-own-body' },
      { topic: 'toilet-in-bed' },
      close('thigh', 'leg-held'),
      whole('hips'),
      wet,
      close('bed-end', 'load-free', { loadHeight: 0.5 }),
      { thing: 'clean-hands' },
      button,
    ],
  },
} as const satisfies Record<StepCard, Record<CareHalf, readonly CarePicture[]>>;
