import type { Agent, IncomingHttpHeaders } from 'node:http';

export interface Answer {
  status: number;
  headers: IncomingHttpHeaders;
  body: Buffer;
}
export function ask(
  address: string,
  options?: { headers?: Record<string, string>; method?: string; agent?: Agent },
): Promise<Answer>;
export function openConnections(origin: string, most: number): Agent;
export function load(
  addresses: readonly string[],
  options: { requests: number; atOnce?: number; seconds?: number; headers?: Record<string, string> },
): Promise<{ answered: number; failed: string[]; seconds: number; bytes: number }>;
