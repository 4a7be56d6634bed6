/** What axe says against a page. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';

const SOURCE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Rule {
  id: string;
  nodes: { target: string[]; any: { data: { messageKey?: string } | null }[] }[];
}
interface Axe {
  run(place: Document | string, options: object): Promise<{ violations: Rule[]; incomplete: Rule[] }>;
}

/**
 * Everything axe finds, as "rule: place" lines, as the page stands once every change of colour is over.
 *
 * Words that are no lighter or darker than what is behind them count, too: axe calls them undecided, since they might be
 * hidden on purpose.
 */
export async function findings(page: Page, only?: readonly string[]): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(SOURCE);
  return page.evaluate(
    async (rules) => {
      for (const change of document.getAnimations()) change.finish();
      const { violations, incomplete } = await (globalThis as unknown as { axe: Axe }).axe.run(document, {
        resultTypes: ['violations', 'incomplete'],
        // the styles need not be fetched a second time: no rule about turning a phone is looked at
        preload: false,
        // left out unless it is asked for: whoever says what is read on a button must be understood (2.5.3)
        ...(rules ? { runOnly: rules } : { rules: { 'label-content-name-mismatch': { enabled: true } } }),
      });
      const lines = (found: Rule[]) =>
        found.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}`));
      const unseen = incomplete.map((rule) => ({
        ...rule,
        nodes: rule.nodes.filter(({ any }) => any.some(({ data }) => data?.messageKey === 'equalRatio')),
      }));
      return [...lines(violations), ...lines(unseen)];
    },
    only && [...only],
  );
}
