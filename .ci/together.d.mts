export const TOGETHER: Readonly<Record<string, readonly string[]>>;
export const groups: { name: string; test: RegExp | ((id: string) => boolean); priority: number }[];
