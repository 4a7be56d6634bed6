/**
 * The foot end of the bed from the side: end board, small wheel on its holder, and the hanging weight. The
 * cord has one length: what the foot plate comes nearer to the wheel, the weight sinks.
 */
import type { SceneSpec } from '../spec.ts';
import { at, mix, smooth, straight, type Picture, type Shape, type View } from '../shapes.ts';
import { drawSideFoot, FOOT_BUILD, SHANK, sideFoot } from '../parts/foot.ts';
import { drawCordState } from './cord.ts';
import { drawPlate, drawTape, layoutPlate } from './foot.ts';
import { along, inked, profile, quiet, round } from './strokes.ts';
import { drawBag, drawStool, drawSwing, layoutBag, BOARD_FACE, FLOOR } from './weight.ts';

const RADIUS = 36;
const SCALE = 0.9;
const BOARD = { from: 214, to: BOARD_FACE } as const;
/** How far the body can slide, and so how far the weight can sink. */
const SLIDE = 112;

/** Where foot, plate, wheel and bag stand in the picture of the bed's end. */
export function layoutBedEnd(spec: SceneSpec) {
  const { full } = FOOT_BUILD[spec.age];
  const low = (1 - spec.bedRaise) * 30;
  const axle = at(312, 150 + low);
  const pull = axle.y - RADIUS;
  const tilt = spec.bedRaise * 16;
  const sheet = profile([at(0, 156 + low + tilt), at(107, 156 + low + tilt / 2), at(214, 156 + low)]);
  const ankle = at(40 + spec.slide * SLIDE, pull - 9 * SCALE + (1 - spec.heelGap) * (sheet(60) - pull - 17));
  const foot = sideFoot({ ankle, scale: SCALE, look: spec, floor: sheet(ankle.x) + 2 });
  const legEnd = ankle.x - 24 * SCALE;
  const leg = (out: number) =>
    along((x) => mix(pull - 9 * SCALE + 6, ankle.y, x / ankle.x) + out * SCALE * full, 0, legEnd, 10);
  const onWheel = spec.cord !== 'off-wheel';
  const plate = layoutPlate(spec, foot.outline.slice(8), at(ankle.x, ankle.y + 9 * SCALE), SCALE);
  return {
    low,
    axle,
    radius: RADIUS,
    foot,
    front: leg(-SHANK.front),
    back: leg(SHANK.back),
    bandEdge: at(legEnd - 6 - spec.bandFoot * 8, ankle.y),
    ...plate,
    sheet: along(sheet, 0, BOARD.from, 50),
    boardTop: at(227, 152 + low),
    /** Where the cord leaves the wheel to hang down. */
    leaves: onWheel ? at(axle.x + RADIUS, axle.y) : at(axle.x + 5, axle.y + 4),
    bag: layoutBag(spec, onWheel ? axle.x + RADIUS : axle.x + 5, axle.y, SLIDE),
  };
}
export type BedEndGeometry = ReturnType<typeof layoutBedEnd>;

/** The bed's end close by: foot, plate, cord over the wheel, bag. */
export function drawBedEnd(spec: SceneSpec, g: BedEndGeometry, view: View): Picture {
  const shapes: Shape[] = [
    {
      d: straight(
        [at(0, FLOOR), at(view.width, FLOOR), at(view.width, view.height), at(0, view.height)],
        true,
      ),
      fill: 'floor',
    },
    quiet(straight([at(0, FLOOR), at(view.width, FLOOR)]), 'soft', 1.6),
    { d: round(at(g.bag.shadow.x, FLOOR + 11), 40, 6), fill: 'pad' },
    ...drawFrame(g),
    ...drawLegOnBed(spec, g),
    ...drawBoard(g),
    ...drawWheel(g),
  ];
  if (spec.loadTouch === 'other') shapes.push(...drawStool(g.bag));
  shapes.push(...drawCordState(spec, g), ...drawBag(spec, g.bag));
  if (spec.loadSwing === 1) shapes.push(...drawSwing(g.bag));
  return { ...view, shapes };
}

function drawFrame({ sheet, low }: BedEndGeometry): Shape[] {
  const bottom = 214 + low;
  const blockTop = FLOOR - 2 - (30 - low);
  const mattress = straight(
    [...sheet, at(BOARD.from, bottom), at(0, bottom + (sheet[0]!.y - sheet[sheet.length - 1]!.y))],
    true,
  );
  const drape = [
    ...sheet,
    at(BOARD.from, 176 + low),
    at(160, 182 + low),
    at(104, 178 + low),
    at(48, 190 + low),
    at(0, 188 + low),
  ];
  const block = [at(176, blockTop), at(224, blockTop), at(228, FLOOR - 1), at(172, FLOOR - 1)];
  return [
    inked(
      straight(
        [at(192, 210 + low), at(208, 210 + low), at(206, blockTop - 10), at(194, blockTop - 10)],
        true,
      ),
      'frame',
    ),
    inked(round(at(200, blockTop - 9), 9, 9), 'metal'),
    ...(30 - low > 2
      ? [
          inked(straight(block, true), 'plate'),
          quiet(
            straight([
              at(184, blockTop + (FLOOR - blockTop) / 2),
              at(214, blockTop + (FLOOR - blockTop) / 2),
            ]),
            'ink',
            1,
          ),
        ]
      : []),
    inked(
      straight(
        [at(0, bottom + 16), at(BOARD.from, bottom), at(BOARD.from, bottom + 15), at(0, bottom + 31)],
        true,
      ),
      'frame',
    ),
    inked(mattress, 'mattress'),
    { d: straight(drape, true), fill: 'sheet' },
    quiet(smooth(drape.slice(sheet.length)), 'soft', 1.6),
    inked(straight(sheet)),
  ];
}

function drawLegOnBed(spec: SceneSpec, g: BedEndGeometry): Shape[] {
  const [upper, lower] = [profile(g.front), profile(g.back)];
  const top = along((x) => upper(x) - 3, 0, g.bandEdge.x, 8);
  const bottom = along((x) => lower(x) + 3, 0, g.bandEdge.x, 8);
  return [
    ...drawSideFoot(g.foot, g.front, g.back, spec),
    ...drawTape(at(g.bandEdge.x - 2, g.bandEdge.y + 7 * SCALE), g.plateMiddle, 6.5),
    inked(straight([...top, ...bottom.reverse()], true), 'band'),
    ...drawPlate(g, SCALE),
  ];
}

function drawBoard({ boardTop: t, low }: BedEndGeometry): Shape[] {
  const bottom = 262 + low;
  const board = [
    at(BOARD.from, bottom),
    at(BOARD.from, t.y + 8),
    at(BOARD.from + 3, t.y + 1),
    at(t.x, t.y),
    at(BOARD.to - 3, t.y + 1),
    at(BOARD.to, t.y + 8),
    at(BOARD.to, bottom),
  ];
  return [
    inked(
      straight(
        [at(t.x - 5, t.y + 4), at(t.x - 4, t.y - 18), at(t.x + 4, t.y - 18), at(t.x + 5, t.y + 4)],
        true,
      ),
      'frame',
    ),
    inked(round(at(t.x, t.y - 23), 8.5, 7.5), 'frame'),
    inked(straight(board, true), 'frame'),
    quiet(
      straight([at(BOARD.from + 9, t.y + 20), at(BOARD.from + 9, bottom - 12)]) +
        straight([at(BOARD.from + 17, t.y + 34), at(BOARD.from + 17, bottom - 24)]),
      'ink',
      1,
    ),
  ];
}

/** The small wheel with its groove, on a holder screwed to the end board. */
function drawWheel({ axle, radius, boardTop }: BedEndGeometry): Shape[] {
  const foot = boardTop.y + 16;
  const arm = [
    at(BOARD.to, foot),
    at(axle.x - 6, axle.y - 8),
    at(axle.x + 7, axle.y + 7),
    at(BOARD.to, foot + 34),
  ];
  const hollow = [at(BOARD.to + 9, foot + 6), at(axle.x - 20, axle.y + 6), at(BOARD.to + 9, foot + 18)];
  return [
    inked(straight(arm, true), 'metal'),
    inked(straight(hollow, true), 'ground', 1.8),
    inked(
      straight(
        [
          at(BOARD.to, foot - 6),
          at(BOARD.to + 9, foot - 6),
          at(BOARD.to + 9, foot + 42),
          at(BOARD.to, foot + 42),
        ],
        true,
      ),
      'metal',
    ),
    inked(round(at(BOARD.to + 4.5, foot + 2), 2, 2) + round(at(BOARD.to + 4.5, foot + 34), 2, 2), 'ink', 1),
    inked(round(axle, radius, radius), 'metal'),
    inked(round(axle, radius - 8, radius - 8), 'sheet', 2),
    quiet(round(axle, radius - 14, radius - 14), 'soft', 1.6),
    inked(round(axle, 8, 8), 'metal', 2),
    inked(round(axle, 2.6, 2.6), 'ink', 1),
  ];
}
