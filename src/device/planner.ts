/** The planner beside the page; where the browser gives no worker, in the page itself. */
import type { DayProblem, Impossible, Placement, Plan } from '#domain/play/types.ts';
import type { PlanAnswer, PlanQuestion } from './plan-worker.ts';

export interface Planner {
  /** `early` is given a good plan where the best takes longer than a blink. */
  plan(
    problem: DayProblem,
    stay: readonly Placement[],
    early?: (plan: Plan | Impossible) => void,
  ): Promise<Plan | Impossible>;
  /** Gets ready while nobody waits yet, with any day: the first one would take several times as long. */
  warmUp(problem: DayProblem): void;
}

/** Within so many milliseconds the best plan is simply there: nobody has to see one change into the other. */
const BLINK = 100;

/** A planner for as long as the page stands. Every question is answered; one that cannot be, since nothing plans here, rejects. */
export function browserPlanner(): Planner {
  let worker: Worker | undefined;
  let number = 0;
  const inPage: Planner['plan'] = async (problem, stay) =>
    (await import('#domain/play/plan.ts')).planSound(problem, stay);
  /** Whether it failed, maybe while nobody waited for it. */
  let failed = false;
  const started = () => {
    try {
      if (!worker) {
        worker = new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
        worker.addEventListener('error', () => (failed = true));
      }
    } catch {
      failed = true;
    }
    return failed ? undefined : worker;
  };
  // a proxy of the page's state cannot cross over
  const plainly = (problem: DayProblem, stay: readonly Placement[]) =>
    JSON.parse(JSON.stringify({ problem, stay })) as Omit<PlanQuestion, 'number'>;

  const warmUp: Planner['warmUp'] = (problem) =>
    started()?.postMessage({ number: 0, ...plainly(problem, []), warmUp: true } satisfies PlanQuestion);
  const plan: Planner['plan'] = (problem, stay, early) => {
    number += 1;
    const own = number;
    const plain = plainly(problem, stay);
    const asked = started();
    if (!asked) return inPage(problem, stay);
    const since = performance.now();
    return new Promise((resolve, reject) => {
      let waiting: ReturnType<typeof setTimeout> | undefined;
      const over = () => {
        clearTimeout(waiting);
        asked.removeEventListener('message', listen);
        asked.removeEventListener('error', broken);
      };
      const listen = ({ data }: MessageEvent<PlanAnswer>) => {
        if (data.number !== own) return;
        if (data.early) {
          waiting = setTimeout(() => early?.(data.result), BLINK - (performance.now() - since));
          return;
        }
        over();
        resolve(data.result);
      };
      const broken = () => {
        over();
        inPage(plain.problem, plain.stay).then(resolve, reject);
      };
      asked.addEventListener('message', listen);
      asked.addEventListener('error', broken);
      asked.postMessage({ number: own, ...plain } satisfies PlanQuestion);
    });
  };
  return { plan, warmUp };
}
