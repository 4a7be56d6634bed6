/**
 * In which order the ideas of a window are best done. The search chooses what stands in a window; the order matters only
 * for kinds that follow one another, for mess before an event and for what must be calm or over early, and is settled
 * here for the whole day at once.
 */
import { GRID } from './feasible.ts';
import { isMessy, type Model, type Stage } from './model.ts';
import { NEAR_MINUTES, SAME_KIND } from './objective.ts';

/** One placement whose place in the order is open. */
export interface Item {
  idea: number;
  units: number;
}
/** A way the day can stand when a stage is over: kind and end of the last placement, and the points lost so far. */
export interface Ending {
  kind: number;
  end: number;
  lost: number;
  /** The order that led here, and the ending before it. */
  order: readonly Item[];
  before: Ending | undefined;
}
export const START: readonly Ending[] = [{ kind: -1, end: -Infinity, lost: 0, order: [], before: undefined }];

export const leastLost = (endings: readonly Ending[]) => {
  let least = Infinity;
  for (const { lost } of endings) if (lost < least) least = lost;
  return least;
};

/** Whether the order in a stage is open; just after a hard moment the search itself says what comes first. */
export const isOrderOpen = (stage: Stage) => stage.open && stage.settleUntil < stage.from;

const ORDERS = [
  [],
  [[0]],
  [
    [0, 1],
    [1, 0],
  ],
  [
    [0, 1, 2],
    [0, 2, 1],
    [1, 0, 2],
    [1, 2, 0],
    [2, 0, 1],
    [2, 1, 0],
  ],
] as const;
const AS_GIVEN = [[], [[0]], [[0, 1]], [[0, 1, 2]]] as const;

/**
 * How the day can stand after a stage that holds these placements.
 *
 * Shape: endings before -> one ending for each last kind and time, with the fewest points lost; none where no order keeps
 * the rules.
 */
export function endingsAfter(
  model: Model,
  stage: Stage,
  items: readonly Item[],
  endings: readonly Ending[],
): readonly Ending[] {
  if (!items.length) return endings;
  const after: Ending[] = [];
  const gap = GRID * stage.gap;
  for (const order of (isOrderOpen(stage) ? ORDERS : AS_GIVEN)[items.length]!) {
    let at = stage.from;
    let lost = 0;
    let kind = -1;
    let end = at;
    let allowed = true;
    for (const n of order) {
      const { idea, units } = items[n]!;
      end = at + units * GRID;
      if (stage.open && end > model.latest[idea]!) allowed = false;
      if (model.terms.day) {
        if (kind === model.kind[idea]) lost += SAME_KIND;
        if (isMessy(model, idea, end)) lost += 1;
      }
      kind = model.kind[idea]!;
      at = end + gap;
    }
    if (!allowed) continue;
    const first = model.kind[items[order[0]!]!.idea]!;
    let least = Infinity;
    let before: Ending | undefined;
    for (const ending of endings) {
      const near = model.terms.day && ending.kind === first && stage.from - ending.end <= NEAR_MINUTES;
      const sum = ending.lost + (near ? SAME_KIND : 0);
      if (sum < least) {
        least = sum;
        before = ending;
      }
    }
    lost += least;
    const same = after.find((other) => other.kind === kind && other.end === end);
    if (same && same.lost <= lost) continue;
    const ending = { kind, end, lost, order: order.map((n) => items[n]!), before };
    if (same) after[after.indexOf(same)] = ending;
    else after.push(ending);
  }
  return after;
}
