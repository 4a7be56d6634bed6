/** A page as the browser tells it to a reader who hears it: roles, names and groups, from the browser's own tree. */
import type { CDPSession } from '@playwright/test';

export interface Told {
  role: string;
  name: string;
  /** Where a link leads, without the part behind `#` that only names a place on the same page. */
  url?: string;
  /** Names of what stands around it, from the outside in. */
  groups: readonly string[];
}

interface TreeNode {
  nodeId: string;
  parentId?: string;
  ignored: boolean;
  role?: { value: string };
  name?: { value?: string };
  properties?: { name: string; value: { value?: unknown } }[];
}

/** Roles whose name is said before what stands in them. Source: WAI-ARIA 1.2, 5.2.8.4 and the roles' own sections. */
const GROUPS = new Set(['group', 'radiogroup', 'region', 'navigation', 'article', 'list', 'table', 'dialog']);
const clean = (name: string | undefined) =>
  (name ?? '')
    .replace(/[\u2066-\u2069]/g, '')
    .replace(/\s+/g, ' ')
    .trim();

/** Everything that the browser tells of this page, in its order; Chromium alone. */
export async function toldOf(session: CDPSession): Promise<Told[]> {
  const { nodes } = (await session.send('Accessibility.getFullAXTree')) as { nodes: TreeNode[] };
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const groupsOf = (node: TreeNode): string[] => {
    const above = node.parentId === undefined ? undefined : byId.get(node.parentId);
    if (!above) return [];
    const name = clean(above.name?.value);
    return [...groupsOf(above), ...(!above.ignored && GROUPS.has(above.role!.value) && name ? [name] : [])];
  };
  /** The parts of a field for a time bear the browser's own names. */
  const isPart = (node: TreeNode): boolean => {
    const above = node.parentId === undefined ? undefined : byId.get(node.parentId);
    return above !== undefined && (/^(InputTime|Date)$/.test(above.role?.value ?? '') || isPart(above));
  };
  return nodes
    .filter((node) => !node.ignored && !isPart(node))
    .map((node) => {
      const url = node.properties?.find(({ name }) => name === 'url')?.value.value;
      return {
        role: node.role!.value,
        name: clean(node.name?.value),
        ...(typeof url === 'string' && { url }),
        groups: groupsOf(node),
      };
    });
}
