export function namedImportsPlugin(): import('vite').Plugin;
