import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { describe, it } from "vitest";

/**
 * Where a program lies that is no npm package, such as Rscript or chromium; undefined where it is not installed.
 * `path` is a list of folders, as the shell searches it.
 */
export function programPath(name: string, path = process.env.PATH ?? ""): string | undefined {
  return path
    .split(delimiter)
    .filter((folder) => folder !== "")
    .map((folder) => join(folder, name))
    .find(isExecutable);
}

/**
 * A group of tests that need such a program. Where it is missing they are skipped with a line that says so; under CI,
 * where a check that did not run must not look like one that passed, they fail.
 */
export function describeWithProgram(name: string, title: string, tests: (path: string) => void): void {
  const path = programPath(name);
  if (path !== undefined) describe(title, () => tests(path));
  else if (isRequired(process.env.CI)) describe(title, () => it(`needs ${name}`, () => failWithout(name)));
  else {
    process.stderr.write(`NOT CHECKED, ${name} is not installed: ${title}\n`);
    describe.skip(`${title} (NOT CHECKED: ${name} is not installed)`, () => it(`needs ${name}`, () => {}));
  }
}

/** Whether the environment variable CI asks that nothing be skipped. */
export function isRequired(ci: string | undefined): boolean {
  return ci !== undefined && ci !== "" && ci !== "0" && ci !== "false";
}

function failWithout(name: string): never {
  throw new Error(`${name} is not installed, and under CI nothing may be skipped`);
}

function isExecutable(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
