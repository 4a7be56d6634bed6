// What of the three engines is plain arithmetic: the hour a browser is given, and the table that is printed.

/** The hour of day at which every walk takes place: the child wakes and eats, and both can be pushed through the door. */
const WALK_HOUR = 7;

/** A time zone in which it is about seven in the morning, as TZ names it: there, a minus stands for east. */
export function zoneAt(utcHour) {
  // from twelve hours west to eleven east: each hour of the day is there once
  const east = ((WALK_HOUR - utcHour + 36) % 24) - 12;
  return `Etc/GMT${east > 0 ? '-' : '+'}${Math.abs(east)}`;
}

/** A result as one word of the table. */
const wordOf = (result) => (result ? result.state : 'not walked');

/** engine × language in columns, a journey in each row; below it what failed or is not there, with its reason. */
export function tableOf(journeys, columns, results) {
  const find = (journey, { engine, language }) =>
    results.find((one) => one.journey === journey && one.engine === engine && one.language === language);
  const head = ['journey', ...columns.map(({ engine, language }) => `${engine} ${language}`)];
  const rows = journeys.map((journey) => [
    journey,
    ...columns.map((column) => wordOf(find(journey, column))),
  ]);
  const widths = head.map((_, at) => Math.max(...[head, ...rows].map((row) => row[at].length)));
  const line = (row) =>
    row
      .map((cell, at) => cell.padEnd(widths[at]))
      .join('  ')
      .trimEnd();
  const reasons = results
    .filter((one) => one.reason)
    .map((one) => `${one.engine} ${one.language} › ${one.journey}: ${one.state}, ${one.reason}`);
  return [line(head), ...rows.map(line), ...(reasons.length ? ['', ...reasons] : [])].join('\n');
}

/** A run is good only where something was walked and nothing failed. */
export const exitCodeOf = (results) =>
  results.some((one) => one.state === 'passed') && results.every((one) => one.state !== 'failed') ? 0 : 1;
