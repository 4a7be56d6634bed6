/** The bed with its pull from the side, built from the scene's own numbers and drawn lightly enough to have company. */
import { at, between, oval, plus, smooth, straight, turn, type Point, type Shape, VIEW } from '../shapes.ts';
import { NEUTRAL, type SceneChange, type SceneSpec } from '../spec.ts';
import { arm, type Reach } from '../play/arms.ts';
import type { ChildLook } from '../play/child.ts';
import { drawBedBehind } from '../whole/bed.ts';
import { FLOOR, layoutWhole, WHEEL_RADIUS, type WholeGeometry } from '../whole/layout.ts';
import { BAND, legFrame, stretch } from '../whole/leg.ts';
import { coloursOf, head } from './people.ts';
import { moved, type SetUpPart, type TopicShape } from './page.ts';
import { weight } from './things.ts';

export interface BedLook {
  /** Where the scene's own corner lies on the page, and its size against the scene's. */
  x?: number;
  y?: number;
  scale?: number;
  change?: SceneChange;
  /** No cord, wheel, plate and weight. */
  unpulled?: true;
  /** Nobody lies in it. */
  empty?: true;
  eyes?: ChildLook['eyes'];
  mouth?: ChildLook['mouth'];
  /** How far the face is turned to us from looking up, in degrees. */
  tilt?: number;
  /** The near hand, on the page; it rests on the blanket where left out. */
  near?: Reach;
  far?: Reach;
  /** The bandage is off. */
  bare?: true;
  /** The room's floor is drawn already. */
  inRoom?: true;
}

const part = (name: SetUpPart, shapes: readonly Shape[]): TopicShape[] =>
  shapes.map((s) => ({ ...s, part: name }));

/** Round things as dots with a rim: less to send than their outlines. */
const discs = (places: readonly Point[], radius: number, fill: string): Shape[] =>
  [
    { size: 2 * radius + 3, line: 'ink' },
    { size: 2 * radius - 3, line: fill },
  ].map(({ size, line }) => ({ d: places.map((p) => straight([p, p])).join(''), line, weight: size }));

/** The wheel on its arm at the bed's end. */
function wheel(g: WholeGeometry): Shape[] {
  const arm = straight([g.flat(408, -14, 28), g.flat(424, -12, 28), g.wheel]);
  return [
    { d: arm, line: 'ink', weight: 9 },
    { d: arm, line: 'metal', weight: 4.6 },
    ...discs([g.wheel], WHEEL_RADIUS, 'metal'),
    { d: straight([g.wheel, g.wheel]), line: 'ink', weight: 6 },
  ];
}

/** The cord from the plate round the wheel and down to the weight; it keeps the length the scene gave it. */
function cord(g: WholeGeometry): Shape[] {
  const r = WHEEL_RADIUS + 0.4;
  const from = Math.atan2(g.overWheel.y - g.wheel.y, g.overWheel.x - g.wheel.x);
  const round = [1, 0.66, 0.33, 0].map((t) =>
    at(g.wheel.x + r * Math.cos(from * t), g.wheel.y + r * Math.sin(from * t)),
  );
  return [
    { d: straight([g.plate.tie, g.overWheel]) + smooth(round), line: 'cord' },
    { d: straight([g.drop, plus(g.bag, at(0, 4))]), line: 'cord' },
    { d: straight([g.plate.tie, g.plate.tie]), line: 'cord', weight: 7 },
  ];
}

/** The shadow on the floor shows the room below the weight. */
const shadow = (g: WholeGeometry): Shape => ({
  d: oval(at(g.bag.x, FLOOR + 2), 18, 4),
  fill: 'band-shade',
});

/** The plate across the sole, with the side that is turned to us. */
function plate(g: WholeGeometry): Shape[] {
  const k = g.build.foot;
  const on = (up: number, out: number, deep: number) =>
    plus(plus(g.plate.center, turn(at(out, -up * k), at(0, 0), g.plate.angle)), at(5.5 * deep, -15 * deep));
  return [
    {
      d: straight(
        [
          on(-17, 3.5, 0),
          on(-17, -3.5, 0),
          on(22, -3.5, 0),
          on(22, -3.5, 1),
          on(22, 3.5, 1),
          on(-17, 3.5, 1),
        ],
        true,
      ),
      fill: 'plate',
      line: 'ink',
    },
    {
      d:
        straight([on(22, -3.5, 0), on(22, 3.5, 0), on(-17, 3.5, 0)]) +
        straight([on(22, 3.5, 0), on(22, 3.5, 1)]),
      line: 'ink',
      weight: 1.8,
    },
  ];
}

/** The two near posts at the ends of the bed. */
const posts = (g: WholeGeometry): Shape[] => [
  {
    d: [
      [4, 10, 34],
      [402, 11, 24],
    ]
      .map(([u, thick, high]) =>
        straight(
          [
            g.flat(u!, -34, 0),
            g.flat(u!, high!, 0),
            g.flat(u! + thick!, high!, 0),
            g.flat(u! + thick!, -34, 0),
          ],
          true,
        ),
      )
      .join(''),
    fill: 'frame',
    line: 'ink',
  },
];

/** The bed itself; its small wheels are dots here. */
function bedstead(spec: SceneSpec, g: WholeGeometry): Shape[] {
  const raised = spec.bedRaise > 0.1 ? 15 * spec.bedRaise : 0;
  const rolls = [
    [66, 0],
    [352, raised],
  ].flatMap(([u, up]) => [-14, 14].map((dx) => at(g.flat(u!, -28, 30).x + dx, FLOOR - 5 - up!)));
  return [
    ...drawBedBehind(spec, g).filter((s) => !(s.fill === 'metal' && s.weight === 1.8)),
    ...discs(rolls, 5, 'metal'),
  ];
}

/** A foot from the side; the leg comes along x, the toes point up. Numbers from the ankle. */
const FOOT = [
  -8, -10, 0, -19, 3, -36, 6, -50, 12, -54, 19, -49, 19, -38, 17, -24, 16, -10, 21, 2, 18, 12, 6, 14, -6, 11,
];
const TOE_LINES = [
  [7, -46, 13, -44],
  [16, -50, 18, -45],
];

function footFromSide(ankle: Point, size: number, angle: number): Shape[] {
  const put = (flat: readonly number[]) =>
    Array.from({ length: flat.length / 2 }, (_, i) =>
      plus(ankle, turn(at(flat[2 * i]! * size, flat[2 * i + 1]! * size), at(0, 0), angle)),
    );
  return [
    { d: smooth(put(FOOT), false, 0.8), fill: 'skin', line: 'ink' },
    { d: TOE_LINES.map((line) => straight(put(line))).join(''), line: 'ink', weight: 1.4 },
  ];
}

/** The pulled leg, with its pad, straps and bandage, from the frame of the scene's leg. */
function pulledLeg(spec: SceneSpec, g: WholeGeometry, look: BedLook): TopicShape[] {
  const frame = legFrame(spec, g);
  const line = (Math.atan2(g.ankle.y - g.hipNear.y, g.ankle.x - g.hipNear.x) * 180) / Math.PI;
  const pad = [0.7, 0.93].map((s) => frame.lower(s, 1));
  const bed = [0.93, 0.68].map((s) => frame.lower(s, 12));
  const turns = [0.65, 0.72, 0.79, 0.86].map((s) =>
    smooth([frame.upper(s - 0.02), frame.line(s + 0.02, 0), frame.lower(s + 0.02)]),
  );
  const strap = [
    frame.line(0.9, 4),
    plus(g.plate.center, at(0, -4)),
    plus(g.plate.center, at(0, 4)),
    frame.line(0.9, -4),
  ];
  return [
    ...part('heel-pad', [{ d: straight([...pad, ...bed], true), fill: 'pad', line: 'ink' }]),
    { d: smooth(stretch(spec, g, 0.1, 1, 0, 4), true, 0.8), fill: 'skin', line: 'ink' },
    ...footFromSide(g.ankle, g.build.foot * 0.95, line + spec.footPitch),
    ...(look.unpulled
      ? []
      : part('bandage', [{ d: straight(strap, true), fill: 'band', line: 'ink', weight: 1.8 }])),
    ...(look.bare
      ? []
      : part('bandage', [
          { d: smooth(stretch(spec, g, BAND.top, BAND.foot, 1.8, 2), true, 0.3), fill: 'band', line: 'ink' },
          { d: turns.join(''), line: 'band-shade', weight: 2.4 },
        ])),
    {
      d: smooth([frame.upper(0.45, -3), frame.upper(0.47, -8), frame.upper(0.52, -8)]),
      line: 'ink',
      weight: 1.6,
    },
  ];
}

/** The gown, the free leg and its bare foot, and the blanket over that leg. */
function covers(g: WholeGeometry): Shape[] {
  const spine = Math.atan2(g.hip.y - g.neck.y, g.hip.x - g.neck.x);
  const along = (t: number, n: number) =>
    plus(between(g.neck, g.hip, t), at(n * Math.sin(spine), -n * Math.cos(spine)));
  const hip = g.hinge + 10;
  const gown = [
    along(0, 9),
    along(0.12, 26),
    along(0.6, 28),
    along(1.2, 26),
    along(1.2, -28),
    along(0.6, -29),
    along(0.12, -26),
    along(0, -9),
  ];
  const shin = [g.flat(hip + 96, 34, 74), g.flat(hip + 128, 16, 70)];
  const ankle = g.flat(hip + 134, 16, 70);
  const blanket = [
    along(0.66, 29),
    g.flat(hip + 8, 40, 82),
    g.flat(hip + 50, 58, 78),
    g.flat(hip + 72, 58, 76),
    g.flat(hip + 106, 44, 76),
    g.flat(hip + 112, 20, 70),
    g.flat(hip + 104, 4, 46),
    g.flat(hip + 40, 6, 20),
    along(0.8, -30),
    along(0.62, 0),
  ];
  return [
    { d: smooth(gown, true, 0.8), fill: 'gown', line: 'ink' },
    ...[20, 15.4].map((weight, i): Shape => ({
      d: straight(shin),
      line: i === 0 ? 'ink' : 'skin',
      weight: weight + 3,
    })),
    ...footFromSide(ankle, g.build.foot * 0.9, -2),
    { d: smooth(blanket, true, 0.6), fill: 'blanket', line: 'ink' },
    {
      d: smooth([g.flat(hip + 94, 54, 78), g.flat(hip + 100, 26, 72), g.flat(hip + 92, 6, 46)]),
      line: 'ink',
      weight: 1.6,
    },
  ];
}

/** The blanket's near corner over the hips: the pulled leg comes out from under it. */
function corner(g: WholeGeometry): Shape[] {
  const hip = g.hinge + 10;
  const cloth = [
    g.flat(hip - 14, 40, 52),
    g.flat(hip + 18, 44, 46),
    g.flat(hip + 26, 38, 24),
    g.flat(hip + 24, 8, 6),
    g.flat(hip + 14, -2, 0),
    g.flat(hip - 36, -1, 0),
    g.bed(hip - 46, 12, 4),
    g.bed(hip - 40, 34, 24),
  ];
  return [
    { d: smooth(cloth, true, 0.6), fill: 'blanket' },
    { d: smooth(cloth.slice(1), false, 0.6), line: 'ink' },
  ];
}

/** A bed on the page, back to front, and the way from the scene's points to the page's. */
export function bedFromSide(look: BedLook = {}) {
  const { x = 0, y = 10, scale = 5 / 6 } = look;
  const spec: SceneSpec = {
    ...NEUTRAL,
    side: 'right',
    wiggle: 0,
    ...(look.unpulled ? { bedRaise: 0 } : {}),
    ...look.change,
  };
  const g = layoutWhole(spec, VIEW);
  const put = (p: Point): Point => at(p.x * scale + x, p.y * scale + y);
  const onPage = (shapes: readonly TopicShape[]) =>
    // the quiet lines of the large scene would be specks here
    moved(
      shapes.filter((s) => s.fill || !(s.line === 'soft' || (scale < 0.75 && (s.weight ?? 2.4) < 1.7))),
      scale,
      x,
      y,
    );
  const p = (u: number, h: number, d: number) => put(g.bed(u, h, d));
  const spine = (Math.atan2(g.neck.y - g.hip.y, g.neck.x - g.hip.x) * 180) / Math.PI;
  const way = turn(at(1, 0), at(0, 0), spine);
  const r = g.build.head * scale;
  const skull = put(plus(g.neck, at(way.x * g.build.head * 0.95, way.y * g.build.head * 0.95)));
  const shoulder = (n: number) => put(plus(between(g.neck, g.hip, 0.2), at(-way.y * n, way.x * n)));
  const rest = between(put(g.neck), put(g.hip), 0.86);
  const child = coloursOf('child');
  const width = 12 * scale + 2;
  const reachNear: Reach = look.near ?? [rest.x, rest.y + 12, 12];
  const reachFar: Reach | undefined = look.far;
  return {
    geometry: g,
    put,
    p,
    head: skull,
    shoulder,
    bed: onPage([
      ...bedstead(spec, g).slice(look.inRoom ? 1 : 0),
      ...(look.unpulled ? [] : [...part('load', [shadow(g)]), ...part('wheel', wheel(g))]),
    ]),
    /** Plate, leg, gown and blanket. */
    body: look.empty
      ? []
      : [
          ...(reachFar ? arm(shoulder(22), reachFar, -1, width, child) : []),
          ...head('child', {
            x: skull.x,
            y: skull.y,
            r,
            tilt: spine + 90 + (look.tilt ?? 6),
            ...(look.eyes ? { eyes: look.eyes } : {}),
            ...(look.mouth ? { mouth: look.mouth } : {}),
          }),
          ...onPage([
            ...covers(g),
            ...(look.unpulled ? [] : part('foot-plate', plate(g))),
            ...pulledLeg(spec, g, look),
            ...corner(g),
          ]),
        ],
    front: [
      ...onPage(part('foot-end', posts(g))),
      ...(look.empty ? [] : arm(shoulder(-20), reachNear, 1, width, child)),
      ...(look.unpulled
        ? []
        : onPage([...part('cord', cord(g)), ...part('load', weight(g.bag.x, g.bag.y, 1))])),
    ],
  };
}

/** A bed with whoever lies in it, from back to front. */
export const whole = (b: ReturnType<typeof bedFromSide>): TopicShape[] => [...b.bed, ...b.body, ...b.front];
