// The router takes the whole of svelte by one name, so that nothing of it can be left out: 0.6 KiB of every first load.
const WHOLE = /^import \* as svelte from 'svelte';$/m;
const USED = ['fork', 'onMount', 'settled', 'tick', 'untrack'];
/** The same with each name apart; the file has names of its own that are spelled like these. */
const APART = [
  `import { ${USED.map((name) => `${name} as its_${name}`).join(', ')} } from 'svelte';`,
  `const svelte = { ${USED.map((name) => `${name}: its_${name}`).join(', ')} };`,
].join(' ');

/**
 * Lets go what the router does not use of svelte. Where a newer router names it in another way, nothing is changed and
 * the build says so.
 * @returns {import('vite').Plugin}
 */
export function namedImportsPlugin() {
  return {
    name: 'bare-toes-named-imports',
    apply: 'build',
    transform(code, id) {
      if (!id.endsWith('/runtime/client/client.js')) return undefined;
      const names = [...code.matchAll(/(?<![\w.'/-])svelte\.(\w+)/g)].map(([, name]) => name);
      if (WHOLE.test(code) && names.every((name) => USED.includes(name)))
        return { code: code.replace(WHOLE, APART), map: null };
      this.warn(`the router names svelte in another way now, nothing is left out: ${names.join(', ')}`);
      return undefined;
    },
  };
}
