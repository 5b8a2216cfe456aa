import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { hiddenCharacters, hostileTexts, isBlank } from "../jobs/hostile-texts.ts";
import { hostileWorkbook } from "../jobs/hostile-workbook.ts";
import { filesBelow, spanwright, temporaryFolder, written } from "./built-command.ts";

const names = hostileTexts.filter((hostile) => !isBlank(hostile));
const keys: ReadonlySet<string> = new Set(["tag", "calibration"]);

test("hostile tags and numbers leave the out folder on no disk, and no temporary file behind", () => {
  const root = temporaryFolder();
  const inside = join(root, "a/b/c");
  const book = written(
    join(inside, "book"),
    hostileWorkbook(names.length, (column, loop) => (keys.has(column.name) ? names[loop] : undefined)),
  );
  const before = filesBelow(root);
  const { exitCode, output, complaints } = spanwright("report", book, "--out", join(inside, "out"));
  expect(exitCode, complaints).toBe(0);
  expect(output + complaints).not.toMatch(hiddenCharacters);

  const made = filesBelow(root).filter((path) => !before.includes(path) && !path.endsWith("/index.html"));
  expect(made).toHaveLength(2 * names.length);
  for (const path of made) expect(path).toMatch(/^a\/b\/c\/out\/[\w.-]+\/[\w.-]+\.(?:html|json)$/u);
  const tags = made
    .filter((path) => path.endsWith(".json"))
    .map((path) => JSON.parse(readFileSync(join(root, path), "utf8")).inputs.rows.instruments[0].cells.tag);
  expect(new Set(tags).size).toBe(names.length);
});
