// Reads what the two test runners report: how many passed, how many failed, and each failure's message.

const MESSAGE_LINES = 30;
const shorten = (text) => text.split('\n').slice(0, MESSAGE_LINES).join('\n');
// eslint-disable-next-line no-control-regex -- the runners colour their messages
const plain = (text) => text.replace(/\u001b\[[0-9;]*m/g, '');

/** Vitest's JSON report. A file that could not be loaded counts as one failure. */
export function unitFailures(report) {
  const counted = { passed: 0, failed: 0, messages: [] };
  for (const file of report.testResults) {
    for (const test of file.assertionResults) {
      if (test.status === 'passed') counted.passed += 1;
      if (test.status !== 'failed') continue;
      counted.failed += 1;
      counted.messages.push(
        `${file.name} › ${test.fullName}\n${shorten(plain(test.failureMessages.join('\n')))}`,
      );
    }
    if (file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed')) {
      counted.failed += 1;
      counted.messages.push(`${file.name} could not be run\n${shorten(plain(file.message ?? ''))}`);
    }
  }
  return counted;
}

/** Playwright's JSON report. A test that passed only when tried again counts as failed. */
export function browserFailures(report) {
  const counted = { passed: 0, failed: 0, messages: [] };
  const read = (suite, names) => {
    for (const spec of suite.specs ?? [])
      for (const test of spec.tests) {
        if (test.status === 'skipped') continue;
        if (test.status === 'expected') {
          counted.passed += 1;
          continue;
        }
        counted.failed += 1;
        const errors = test.results
          .flatMap((result) => result.errors ?? [])
          .map((error) => error.message ?? '');
        counted.messages.push(`${[...names, spec.title].join(' › ')}\n${shorten(plain(errors.join('\n')))}`);
      }
    for (const inner of suite.suites ?? []) read(inner, [...names, inner.title]);
  };
  for (const suite of report.suites) read(suite, [suite.title]);
  for (const error of report.errors ?? []) {
    counted.failed += 1;
    counted.messages.push(shorten(plain(error.message ?? '')));
  }
  return counted;
}
