/**
 * The whole model of a day (design 4-play, 5.4) written out for a general solver, in the text form that solvers read.
 * What may stand where is asked of the checker, not of the planner; pins are left out.
 */
import { checkPlan } from '#domain/play/check.ts';
import {
  FAMILIES,
  KINDS,
  type DayProblem,
  type Idea,
  type Placement,
  type PlayWindow,
} from '#domain/play/types.ts';

interface Put {
  name: string;
  idea: Idea;
  minutes: number;
}
type Row = [number, string][];

export const EMPTY = 1000;

/** Rules about one placement alone; the rest are rows below. */
const ALONE = /^(barred|H1|H3|H4|H5|H6|H7|H8|H9|H10|H12|H13)$/;

function mayStand(problem: DayProblem, idea: Idea, window: PlayWindow): boolean {
  const placement: Placement = { idea: idea.id, window: window.id, from: window.from, minutes: 5 };
  const bare = { ...problem, lightsOut: 10_000, ideas: [idea] };
  const broken = checkPlan(bare, { placements: [placement] }).map(({ rule }) => rule);
  return !broken.some((rule) => ALONE.test(rule)) && !(idea.screen === 'yes' && problem.child.ageMonths < 24);
}

function base(problem: DayProblem, idea: Idea, window: PlayWindow): number {
  const { likes, dislikes } = problem.child;
  const like = dislikes.includes(idea.id)
    ? -3
    : likes.includes(idea.id)
      ? 3
      : dislikes.includes(idea.kind)
        ? -3
        : likes.includes(idea.kind)
          ? 3
          : 0;
  const { yesterday, lastThreeDays } = problem.history;
  const novelty = yesterday.includes(idea.id) ? -2 : lastThreeDays.includes(idea.id) ? 0 : 1;
  const wish =
    window.kind === 'hard' && (idea.suits as readonly string[]).includes(window.wish ?? '') ? 2 : 0;
  return like + 2 * (2 - Math.abs(idea.energy - window.energy)) + novelty + wish;
}

const lengthsOf = ({ minutes: [least, most] }: Idea) => {
  const low = Math.ceil(least / 5) * 5;
  const all = [];
  for (let m = low; m <= Math.max(low, Math.floor(most / 5) * 5); m += 5) all.push(m);
  return all;
};
const lateOf = (problem: DayProblem, idea: Idea) =>
  idea.screen === 'yes' || idea.cautions.includes('cord') ? problem.lightsOut - 60 : problem.lightsOut;
const needsAdult = (problem: DayProblem, idea: Idea) => {
  const { ageMonths } = problem.child;
  return (
    ageMonths < 36 ||
    idea.who === 'adult' ||
    (ageMonths < 72 && (idea.cautions.includes('small-parts') || idea.cautions.includes('cord'))) ||
    idea.cautions.includes('not-in-mouth') ||
    idea.cautions.includes('scissors')
  );
};

/**
 * The model as text: maximise integer points. `every` length, or (smaller, the same best) only full tens. With points that
 * are `kept` it asks for the fewest minutes of a grown-up among plans worth as much; with `grownUp`, minutes that a plan may
 * ask of one at most, for the fewest different things among those.
 */
export function dayAsLp(problem: DayProblem, every = true, kept?: number, grownUp?: number): string {
  const objective: Row = [];
  const rows: string[] = [];
  const binary = new Set<string>();
  const general: string[] = [];
  const bin = (name: string) => {
    binary.add(name);
    return name;
  };
  const add = (row: Row, relation: string, right: number) => {
    if (row.length) rows.push(`r${rows.length}: ${text(row)} ${relation} ${right}`);
  };
  const once = new Map<string, Row>();
  const families = new Map<string, Row>();
  const adult: Row = [];
  const minutes: Row = [];
  const screen: Row = [];
  const free = { true: [] as Row, false: [] as Row };
  const wanted = { true: false, false: false };
  const push = <K>(map: Map<K, Row>, key: K, term: [number, string]) =>
    map.set(key, [...(map.get(key) ?? []), term]);

  const hard = problem.windows.filter(({ kind }) => kind === 'hard');
  const starts = [...problem.events, ...hard.map(({ from }) => from)];
  const messy = (idea: Idea, end: number) => idea.mess > 0 && starts.some((s) => s >= end && s - end < 20);
  /** Per window: first placements and last placements by kind; last ones with the terms that say when they end. */
  const firsts: Map<string, Row>[] = [];
  const lasts: { kind: Map<string, Row>; ends: [number, string][]; spare: number }[][] = [];
  const usedAt: Row[] = [];

  problem.windows.forEach((window, w) => {
    const able = problem.ideas.filter((idea) => mayStand(problem, idea, window));
    if (window.kind === 'hard') {
      const row: Row = [];
      const first = new Map<string, Row>();
      const last = new Map<string, Row>();
      const weight = window.weight === 3 ? 3 : 2;
      const end = window.from + window.minutes;
      const fill = (name: string, parts: [Idea, number][], worth: number) => {
        bin(name);
        row.push([1, name]);
        let at = window.from;
        let points = worth;
        parts.forEach(([idea, length], n) => {
          at += length;
          push(once, idea.id, [1, name]);
          push(families, FAMILIES[idea.kind], [1, name]);
          if (needsAdult(problem, idea)) adult.push([length, name]);
          if (messy(idea, at)) points -= 1;
          if (n && parts[0]![0].kind === idea.kind) points -= 2;
        });
        objective.push([points, name]);
        push(first, parts[0]![0].kind, [1, name]);
        push(last, parts[parts.length - 1]![0].kind, [1, name]);
      };
      able.forEach((a, i) => {
        const lengths = lengthsOf(a);
        if (lengths.includes(window.minutes) && end <= lateOf(problem, a))
          fill(`h${w}_${i}`, [[a, window.minutes]], weight * base(problem, a, window));
        able.forEach((b, j) => {
          if (i === j || end > lateOf(problem, b)) return;
          const splits = lengths.filter(
            (m) => lengthsOf(b).includes(window.minutes - m) && window.from + m <= lateOf(problem, a),
          );
          const worth = weight * Math.floor((base(problem, a, window) + base(problem, b, window)) / 2) - 2;
          // splits differ at most in the grown-up's minutes
          const m = !needsAdult(problem, a) && needsAdult(problem, b) ? splits[splits.length - 1] : splits[0];
          if (m !== undefined)
            fill(
              `h${w}_${i}_${j}`,
              [
                [a, m],
                [b, window.minutes - m],
              ],
              worth,
            );
        });
      });
      if (row.length) {
        const none = bin(`h${w}_none`);
        objective.push([-EMPTY, none]);
        add([...row, [1, none]], '=', 1);
      }
      firsts.push(first);
      lasts.push([{ kind: last, ends: [[end, '']], spare: 0 }]);
      usedAt.push(row);
      return;
    }
    const end = window.minutes;
    const since = hard.map((moment) => window.from - moment.from - moment.minutes).filter((gap) => gap >= 0);
    const settle = since.length ? 10 - Math.min(...since) : -1;
    const morning = window.from < 720;
    if (end >= 30) wanted[`${morning}`] = true;
    // places in the window: so many placements, the next may start then; arcs between them are placements
    let nodes = new Map<number, Row>([[0, []]]);
    const closing: Row = [];
    const kinds: Map<string, Row>[] = [];
    const ends: [number, string][][] = [];
    for (let p = 0; p <= 3; p++) {
      const next = new Map<number, Row>();
      const puts: Put[] = [];
      const byLength = new Map<number, Row>();
      const kind = new Map<string, Row>();
      if (p < 3)
        able.forEach((idea, i) => {
          const all = lengthsOf(idea).filter((m) => m <= end);
          const lengths = every ? all : all.filter((m, n) => n === 0 || m % 10 === 0);
          for (const m of lengths) {
            const name = bin(`x${w}_${p}_${i}_${m}`);
            puts.push({ name, idea, minutes: m });
            push(byLength, m, [1, name]);
            push(kind, idea.kind, [1, name]);
            push(once, idea.id, [1, name]);
            push(families, FAMILIES[idea.kind], [1, name]);
            objective.push([base(problem, idea, window) + Math.floor(m / 10) - (p ? 2 : 0), name]);
            minutes.push([m, name]);
            if (needsAdult(problem, idea)) adult.push([m, name]);
            if (idea.screen === 'yes') screen.push([m, name]);
          }
        });
      const arcs = new Map<number, Row>();
      ends.push([]);
      for (const [t, into] of nodes) {
        const out: Row = [];
        const over = t ? t - 5 : 0;
        const f = bin(`f${w}_${p}_${t}`);
        out.push([1, f]);
        closing.push([1, f]);
        ends[p]!.push([window.from + over, f]);
        if (end - over >= 30 && (!morning || window.from + over < 720)) free[`${morning}`].push([1, f]);
        if (p === 0 && problem.bored && end > 45) objective.push([-3, f]);
        for (const m of byLength.keys()) {
          if (t + m > end) continue;
          const y = bin(`y${w}_${p}_${t}_${m}`);
          out.push([1, y]);
          push(arcs, m, [-1, y]);
          push(next, t + m + 5, [-1, y]);
          const calm = puts.filter((put) => put.minutes === m && put.idea.energy === 1);
          if (t <= settle) add([...calm.map(({ name }): [number, string] => [1, name]), [-1, y]], '>=', 0);
          for (const put of puts) {
            if (put.minutes !== m) continue;
            if (window.from + t + m > lateOf(problem, put.idea))
              add(
                [
                  [1, put.name],
                  [1, y],
                ],
                '<=',
                1,
              );
            if (messy(put.idea, window.from + t + m)) {
              const z = bin(`z${put.name}_${t}`);
              objective.push([-1, z]);
              add(
                [
                  [1, put.name],
                  [1, y],
                  [-1, z],
                ],
                '<=',
                1,
              );
            }
          }
        }
        if (p === 0) add(out, '=', 1);
        else add([...out, ...into], '=', 0);
      }
      for (const [m, row] of byLength) add([...row, ...(arcs.get(m) ?? [])], '=', 0);
      kinds.push(kind);
      if (p > 0)
        for (const [k, row] of kind) {
          const before = kinds[p - 1]!.get(k);
          if (before) follow([...before, ...row], 1);
        }
      nodes = next;
    }
    firsts.push(kinds[0]!);
    lasts.push([1, 2, 3].map((p) => ({ kind: kinds[p - 1]!, ends: ends[p]!, spare: 1 })));
    usedAt.push([...kinds[0]!.values()].flat());
  });

  function follow(row: Row, right: number) {
    const q = bin(`q${general.length}_${binary.size}`);
    objective.push([-2, q]);
    add([...row, [-1, q]], '<=', right);
  }
  // the last of one window and the first of a later one, with nothing between
  problem.windows.forEach((_, w) => {
    for (let v = w + 1; v < problem.windows.length; v++) {
      const threshold = problem.windows[v]!.from - 60;
      const between: Row = usedAt
        .slice(w + 1, v)
        .flat()
        .map(([n, name]) => [-n, name]);
      for (const last of lasts[w]!)
        for (const kind of KINDS) {
          const [a, b] = [last.kind.get(kind), firsts[v]!.get(kind)];
          const near = last.ends.filter(([end]) => end >= threshold);
          if (!a || !b || !near.length) continue;
          const when: Row = last.spare ? near.map(([, name]) => [1, name]) : [];
          follow([...a, ...b, ...when, ...between], 1 + last.spare);
        }
    }
  });

  for (const row of once.values()) add(row, '<=', 1);
  const things = new Map<string, string>();
  if (grownUp !== undefined) {
    add(adult, '<=', grownUp);
    for (const { id, things: needed } of problem.ideas)
      for (const thing of once.has(id) ? needed : []) {
        things.set(thing, bin(`thing${[...new Set([...things.keys(), thing])].indexOf(thing)}`));
        add([...once.get(id)!, [-1, things.get(thing)!]], '<=', 0);
      }
  }
  const least =
    grownUp === undefined ? adult : [...things.values()].map((name): [number, string] => [1, name]);
  [...families].forEach(([, row], n) => {
    const met = bin(`met${n}`);
    objective.push([2, met]);
    add([[1, met], ...row.map(([c, name]): [number, string] => [-c, name])], '<=', 0);
  });
  const { ageMonths } = problem.child;
  const total = problem.windows.reduce((sum, { kind, minutes: m }) => sum + (kind === 'ordinary' ? m : 0), 0);
  add(minutes, '<=', Math.floor((total * (ageMonths < 72 ? 0.5 : 0.6)) / 5 + 1e-9) * 5);
  const limit = ageMonths < 60 ? Math.min(60, problem.limits.screenMinutes) : problem.limits.screenMinutes;
  add(screen, '<=', limit);
  if (wanted.true) add(free.true, '>=', 1);
  if (wanted.false) add(free.false, '>=', 1);
  if (adult.length) {
    general.push('steps');
    objective.push([-1, 'steps']);
    add([...adult, [-15, 'steps']], '<=', problem.limits.grownUpMinutes + 14);
  }
  return [
    ...(kept === undefined
      ? ['Maximize', ` obj: ${text(objective)}`, 'Subject To']
      : ['Minimize', ` obj: ${text(least)}`, 'Subject To', ` kept: ${text(objective)} >= ${kept - 0.5}`]),
    ...rows.map((row) => ` ${row}`),
    ...(general.length ? ['General', ` ${general.join(' ')}`] : []),
    'Binary',
    ...[...binary].map((name) => ` ${name}`),
    'End',
  ].join('\n');
}

/** Terms joined by name, a few to a line, because readers limit the length of lines. */
function text(row: Row): string {
  const sums = new Map<string, number>();
  for (const [n, name] of row) sums.set(name, (sums.get(name) ?? 0) + n);
  const terms = [...sums].map(([name, n]) => `${n < 0 ? '-' : '+'} ${Math.abs(n)} ${name}`);
  const lines: string[] = [];
  for (let n = 0; n < terms.length; n += 8) lines.push(terms.slice(n, n + 8).join(' '));
  return lines.join('\n   ');
}
