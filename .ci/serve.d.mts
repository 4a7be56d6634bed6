export function serve(
  folder: () => string,
  port?: number,
  packs?: boolean,
): Promise<{ port: number; close: () => Promise<void> }>;
