export function ownBindingsPlugin(): import('vite').Plugin;
