export const PACKED: RegExp;
export function precompress(
  folder: string,
  kinds?: { brotli?: boolean },
): Promise<{ files: number; bytes: number; gz: number; br: number }>;
