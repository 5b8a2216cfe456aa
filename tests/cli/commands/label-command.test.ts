import { cpSync, existsSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { madeDemo } from "../../made-demo.ts";
import { spanwright, temporaryFolder } from "../built-command.ts";

test("labels of a record are one page; a place that no sheet has is refused and writes nothing", () => {
  const folder = temporaryFolder();
  cpSync(join(madeDemo(), "LT-640"), join(folder, "LT-640"), { recursive: true });
  const [record, out] = [join(folder, "LT-640/C-2026-047.json"), join(folder, "labels.html")];
  const refused = spanwright("label", record, "--out", out, "--skip", "24");
  expect(refused).toMatchObject({ exitCode: 2, output: "" });
  expect(refused.complaints).toMatch(
    /the option --skip cannot be read; read "24"; accepted: --skip with a whole number/u,
  );
  expect(existsSync(out)).toBe(false);
  expect(spanwright("label", record, "--out", out)).toEqual({
    exitCode: 0,
    output: `1 label: ${out}\n`,
    complaints: "",
  });
  expect(existsSync(out)).toBe(true);
});

test("a folder and a quoted pattern mean the records in them", () => {
  const folder = temporaryFolder();
  for (const name of ["LT-640", "ZT-520"]) cpSync(join(madeDemo(), name), join(folder, name), { recursive: true });
  const out = join(folder, "labels.html");
  expect(spanwright("label", folder, "--out", out).output).toBe(`2 labels: ${out}\n`);
  // The page of labels lies there now, and is no record.
  const again = spanwright("label", join(folder, "*"), "--out", out);
  expect(again.output).toBe(`2 labels: ${out}\n`);
  expect(again.complaints).toMatch(/labels\.html: this is no record, and it was passed over/u);
});
