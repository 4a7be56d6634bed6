/** The planner beside the page; where the browser gives no worker, in the page itself. */
import type { DayProblem, Impossible, Placement, Plan } from '#domain/play/types.ts';
import type { PlanAnswer, PlanQuestion } from './plan-worker.ts';

/** `early` is given a good plan where the best takes longer than a blink. */
export type Planner = (
  problem: DayProblem,
  stay: readonly Placement[],
  early?: (plan: Plan | Impossible) => void,
) => Promise<Plan | Impossible>;

/** Within so many milliseconds the best plan is simply there: nobody has to see one change into the other. */
const BLINK = 100;

/** A planner for as long as the page stands; only the last question is answered, earlier ones never are. */
export function browserPlanner(): Planner {
  let worker: Worker | undefined;
  let number = 0;
  const inPage: Planner = async (problem, stay) =>
    (await import('#domain/play/plan.ts')).planWith(problem, stay);

  return (problem, stay, early) => {
    number += 1;
    const own = number;
    // a proxy of the page's state cannot cross over
    const plain = JSON.parse(JSON.stringify({ problem, stay })) as Omit<PlanQuestion, 'number'>;
    try {
      worker ??= new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
    } catch {
      return inPage(problem, stay);
    }
    const asked = worker;
    const since = performance.now();
    return new Promise((resolve) => {
      let waiting: ReturnType<typeof setTimeout> | undefined;
      const listen = ({ data }: MessageEvent<PlanAnswer>) => {
        if (data.number !== own) return;
        clearTimeout(waiting);
        if (data.early) {
          waiting = setTimeout(() => early?.(data.result), BLINK - (performance.now() - since));
          return;
        }
        asked.removeEventListener('message', listen);
        resolve(data.result);
      };
      asked.addEventListener('message', listen);
      asked.addEventListener(
        'error',
        () => {
          asked.removeEventListener('message', listen);
          void inPage(plain.problem, plain.stay).then(resolve);
        },
        { once: true },
      );
      asked.postMessage({ number: own, ...plain } satisfies PlanQuestion);
    });
  };
}
