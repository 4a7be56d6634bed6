/** The names of all fields that a type of the program can hold, so that what a device keeps can be listed whole. */
import path from 'node:path';
import ts from 'typescript';
import { root } from './locales.ts';

const config = ts.parseJsonConfigFileContent(
  ts.readConfigFile(path.join(root, 'tsconfig.json'), (file) => ts.sys.readFile(file)).config,
  ts.sys,
  root,
);

/**
 * Each `file › Type` with the names of its fields and of the fields inside them, in the order of the alphabet.
 * Errors: throws where there is no such type.
 */
export function fieldsOfTypes(types: readonly string[]): Record<string, string[]> {
  const files = types.map((one) => path.join(root, one.split(' › ')[0]!));
  const program = ts.createProgram(files, { ...config.options, noEmit: true });
  const checker = program.getTypeChecker();
  const ours = (symbol: ts.Symbol) =>
    symbol.declarations?.some((one) => !/node_modules/.test(one.getSourceFile().fileName)) ?? true;

  function walk(type: ts.Type, found: Set<string>, seen: Set<ts.Type>): void {
    if (seen.has(type)) return;
    seen.add(type);
    if (type.isUnion()) return type.types.forEach((one) => walk(one, found, seen));
    // a number with a mark of its unit, a word
    const plain = ts.TypeFlags.NumberLike | ts.TypeFlags.StringLike | ts.TypeFlags.BooleanLike;
    if (type.flags & plain || (type.isIntersection() && type.types.some((one) => one.flags & plain))) return;
    const inside = checker.getIndexInfosOfType(type).map((one) => one.type);
    inside.forEach((one) => walk(one, found, seen));
    if (checker.isArrayType(type) || checker.isTupleType(type)) return;
    for (const field of checker.getPropertiesOfType(type).filter(ours)) {
      found.add(field.name);
      walk(checker.getTypeOfSymbol(field), found, seen);
    }
  }

  return Object.fromEntries(
    types.map((one) => {
      const [file, name] = one.split(' › ') as [string, string];
      const source = program.getSourceFile(path.join(root, file));
      const declared = source?.statements.find(
        (each): each is ts.InterfaceDeclaration | ts.TypeAliasDeclaration =>
          (ts.isInterfaceDeclaration(each) || ts.isTypeAliasDeclaration(each)) && each.name.text === name,
      );
      if (!declared) throw new Error(`${one}: a type, saw none`);
      const found = new Set<string>();
      walk(checker.getTypeAtLocation(declared), found, new Set());
      return [one, [...found].sort()];
    }),
  );
}
