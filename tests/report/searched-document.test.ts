import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { searchedDocument } from "../../src/report/searched-document.ts";

test("its policy lets its own script run, by its digest, and no other", () => {
  const page = searchedDocument({ title: "t", style: "", body: "<main></main>" });
  const [, script = ""] = /<script>(.*)<\/script>/su.exec(page) ?? [];
  expect(page).toContain(`script-src 'sha256-${createHash("sha256").update(script).digest("base64")}'`);
});
