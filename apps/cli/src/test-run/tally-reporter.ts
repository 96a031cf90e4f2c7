import { writeFileSync } from 'node:fs';
import type { Reporter, TestCase, TestModule } from 'vitest/node';

/** What the reporter writes for us to read: results by project, and what broke outside of any test. */
export type Report = {
  readonly projects: Readonly<Record<string, { passed: number; failed: number; skipped: number }>>;
  readonly skips: readonly { readonly name: string; readonly why: string }[];
  readonly brokenOutside: number;
};

/** A vitest reporter that keeps why a test was skipped, which the JSON reporter drops. */
export default class TallyReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const projects: Record<string, { passed: number; failed: number; skipped: number }> = {};
    const skips: { name: string; why: string }[] = [];
    let brokenOutside = unhandled.length;
    for (const module of modules) {
      const counts = projects[module.project.name] ?? { passed: 0, failed: 0, skipped: 0 };
      projects[module.project.name] = counts;
      brokenOutside += module.errors().length;
      for (const suite of module.children.allSuites()) brokenOutside += suite.errors().length;
      for (const test of module.children.allTests()) {
        const result = test.result();
        // A test that never came to an end (its worker died, the run was cut) has not passed.
        counts[result.state === 'pending' ? 'failed' : result.state] += 1;
        if (result.state === 'skipped') skips.push({ name: test.fullName, why: reasonOf(test, result.note) });
      }
    }
    const file = process.env.BALLFIRST_TALLY_FILE;
    if (file) writeFileSync(file, JSON.stringify({ projects, skips, brokenOutside } satisfies Report));
  }
}

function reasonOf(test: TestCase, note: string | undefined): string {
  if (note) return note;
  return test.options.mode === 'todo' ? 'not written yet' : 'skipped without a reason';
}
