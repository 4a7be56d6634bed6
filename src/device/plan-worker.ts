/** Plans a day of play off the page, so that a tap is never answered late. */
import { planWith } from '#domain/play/plan.ts';
import type { DayProblem, Impossible, Placement, Plan } from '#domain/play/types.ts';

export interface PlanQuestion {
  number: number;
  problem: DayProblem;
  stay: readonly Placement[];
}
export interface PlanAnswer {
  number: number;
  result: Plan | Impossible;
}

/** The worker's own side of the channel; the page's types know only its own. */
const channel = self as unknown as {
  onmessage: ((event: MessageEvent<PlanQuestion>) => void) | null;
  postMessage(answer: PlanAnswer): void;
};
channel.onmessage = ({ data: { number, problem, stay } }) =>
  channel.postMessage({ number, result: planWith(problem, stay) });
