import type { Plugin } from 'vite';

export function wardValues(): unknown;
export function checkedWard(values?: unknown): Promise<{ WARD: unknown; WARD_DAY: unknown }>;
export function wardPlugin(): Plugin;
