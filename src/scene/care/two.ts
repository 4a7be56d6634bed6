/** Two people for a nappy: one of the staff at the leg, one of the family at the head. */
import { writeTopic } from '../topics/markup.ts';
import { framed, ink } from '../topics/page.ts';
import { figure, lying } from '../topics/people.ts';

/** Somebody of the family and somebody of the ward at one bed, as SVG text: two for a change of nappies. */
export function twoForNappies(): string {
  const c = lying({ x: 200, y: 104, r: 34, bed: [106, 294], hem: 186, eyes: 'left', tilt: -4 });
  const family = figure({
    ...{ who: 'grown', x: 66, y: 92, r: 30, hem: 304, eyes: 'right', tilt: 4 },
    right: [140, 178, -20],
  });
  const staff = figure({
    ...{ who: 'staff', x: 334, y: 84, r: 30, hem: 304, eyes: 'left', tilt: -4 },
    left: [262, 206, 160],
    right: [300, 232, 150],
  });
  return writeTopic(
    framed([
      ...c.behind,
      ...c.arms,
      ...family.body,
      ...staff.body,
      // the nappy lies ready on the blanket
      ink.soft(
        [186, 214, 210, 208, 252, 208, 276, 214, 270, 236, 276, 258, 250, 262, 212, 262, 186, 258, 192, 236],
        'white',
        2.6,
        0.4,
      ),
      ink.strokes(
        [
          [204, 222, 231, 226, 258, 222],
          [204, 250, 231, 246, 258, 250],
        ],
        2,
        'soft',
      ),
      ...family.arms,
      ...staff.arms,
    ]),
    '',
  );
}
