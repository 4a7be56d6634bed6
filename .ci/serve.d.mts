export function serve(
  folder: () => string,
  port?: number,
): Promise<{ port: number; close: () => Promise<void> }>;
