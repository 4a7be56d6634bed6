// A reporter for the mutation tool: each fault is written down as soon as it was tried, so that a run that is stopped
// still gives its figures, and one that no test noticed is named at once.
import { appendFileSync } from 'node:fs';
import path from 'node:path';

class Log {
  onMutantTested({ fileName, location, replacement, status }) {
    const file = path.relative('.', fileName).replaceAll(path.sep, '/');
    const { start, end } = location;
    // asked about a fault again, the tool counts lines from 1 and columns from 0; here it counts both from 1
    const range = `${file}:${start.line}:${start.column - 1}-${end.line}:${end.column - 1}`;
    appendFileSync(process.env.MUTATE_LOG, `${JSON.stringify({ range, replacement, status })}\n`);
    if (status === 'Survived' || status === 'NoCoverage')
      console.log(`not noticed: ${range}  ->  ${replacement.replaceAll(/\s+/g, ' ').slice(0, 160)}`);
  }
}

export const strykerPlugins = [{ kind: 'Reporter', name: 'log', injectableClass: Log }];
