// Where tests run, each imported name is read through a getter, at every use: a plan took twice as long. Nothing that these
// modules export changes after they have run, and no two import each other, so each may keep names of its own.
const OURS = /\/src\/(domain|scene|content|i18n)\/[^?]*\.ts$/;

/**
 * Gives every such module constants of its own for what it imports by name; lines stay where they are.
 * @returns {import('vite').Plugin}
 */
export function ownBindingsPlugin() {
  return {
    name: 'bare-toes-own-bindings',
    // tests are served; what is built stays as it is
    apply: 'serve',
    enforce: 'post',
    transform(code, id) {
      if (!process.env.VITEST || !OURS.test(id)) return undefined;
      let own = code;
      // the last first, so that what is still to come keeps its place
      for (const node of this.parse(code).body.reverse()) {
        if (node.type !== 'ImportDeclaration') continue;
        if (!node.specifiers.length || node.specifiers.some(({ type }) => type !== 'ImportSpecifier'))
          continue;
        const names = node.specifiers.map(({ imported, local }) => [imported.name, local.name]);
        const taken = names.map(([imported, local]) => `${imported} as its_${local}`).join(', ');
        const kept = names.map(([, local]) => `${local} = its_${local}`).join(', ');
        const lines = code.slice(node.start, node.end).replace(/[^\n]/g, '');
        const words = `import { ${taken} } from ${node.source.raw}; const ${kept};`;
        own = own.slice(0, node.start) + words + lines + own.slice(node.end);
      }
      return { code: own, map: null };
    },
  };
}
