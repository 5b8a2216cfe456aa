import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { howMany } from "../how-many.ts";
import { spanwright, temporaryFolder } from "./built-command.ts";

function filesOf(folder: string): ReadonlyMap<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = files.map(({ parentPath, name }) => join(parentPath, name)).sort();
  return new Map(paths.map((path) => [path.slice(folder.length), readFileSync(path, "utf8")]));
}

test("threads change neither a byte of any file nor the order of what is said", () => {
  const folder = temporaryFolder();
  const runs = ["1", "3", "2"].slice(0, howMany(2, 3)).map((workers) => {
    const out = join(folder, workers, "out");
    const { exitCode, output, complaints } = spanwright("report", "data-demo", "--workers", workers, "--out", out);
    return {
      exitCode,
      output: output.replaceAll(out, "out"),
      complaints: complaints.replaceAll(out, "out"),
      files: filesOf(out),
    };
  });
  expect(runs[0]?.exitCode).toBe(0);
  expect(runs[0]?.files.size).toBeGreaterThan(20);
  for (const run of runs.slice(1)) expect(run).toEqual(runs[0]);
});
