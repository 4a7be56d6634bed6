/** Plans a day of play off the page, so that a tap is never answered late. */
import { planSound } from '#domain/play/plan.ts';
import { WARM_UP } from '#domain/play/solve.ts';
import type { DayProblem, Impossible, Placement, Plan } from '#domain/play/types.ts';

export interface PlanQuestion {
  number: number;
  problem: DayProblem;
  stay: readonly Placement[];
  /** Nobody waits for an answer. */
  warmUp?: true;
}
export interface PlanAnswer {
  number: number;
  result: Plan | Impossible;
  /** A good plan, while the best is still looked for. */
  early?: true;
}

/** The worker's own side of the channel; the page's types know only its own. */
const channel = self as unknown as {
  onmessage: ((event: MessageEvent<PlanQuestion>) => void) | null;
  postMessage(answer: PlanAnswer): void;
};
channel.onmessage = ({ data: { number, problem, stay, warmUp } }) => {
  if (warmUp) {
    planSound(problem, stay, WARM_UP, () => undefined);
    return;
  }
  const early = (result: Plan | Impossible) => channel.postMessage({ number, result, early: true });
  channel.postMessage({ number, result: planSound(problem, stay, undefined, early) });
};
