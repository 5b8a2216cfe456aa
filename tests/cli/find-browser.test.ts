import { chmodSync, mkdirSync, writeFileSync } from "node:fs";
import { delimiter, join } from "node:path";
import { expect, test } from "vitest";
import { findBrowser } from "../../src/cli/find-browser.ts";
import { temporaryFolder } from "./built-command.ts";

function withProgram(name: string, mode = 0o755): string {
  const folder = temporaryFolder();
  writeFileSync(join(folder, name), "");
  chmodSync(join(folder, name), mode);
  return folder;
}

test("the first folder of the search path that has one wins; a browser that may not run is none", async () => {
  const [first, second] = [withProgram("chrome"), withProgram("chromium")];
  expect(await findBrowser([first, second].join(delimiter))).toBe(join(first, "chrome"));
  expect(await findBrowser([withProgram("chromium", 0o644), second].join(delimiter))).toBe(join(second, "chromium"));
});

test("an empty part of the path is not the folder of the moment", async () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "empty"));
  expect(await findBrowser(`${delimiter}${join(folder, "empty")}`)).not.toBe("chromium");
});
