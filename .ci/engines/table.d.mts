export interface Walked {
  engine: string;
  language: string;
  journey: string;
  state: 'passed' | 'failed' | 'not there';
  reason?: string | undefined;
}
export function zoneAt(utcHour: number): string;
export function tableOf(
  journeys: readonly string[],
  columns: readonly Pick<Walked, 'engine' | 'language'>[],
  results: readonly Walked[],
): string;
export function exitCodeOf(results: readonly Walked[]): 0 | 1;
