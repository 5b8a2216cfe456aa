import { join } from "node:path";
import { expect, test } from "vitest";
import { checkFolder } from "../../src/filing/check-folder.ts";
import { ledgerHead } from "../../src/filing/ledger-head.ts";
import { readIndex } from "../../src/filing/read-index.ts";
import { filesBelow } from "../cli/built-command.ts";
import { howMany } from "../how-many.ts";
import { builtFilingProcess, filingProcess, pagesOnDisk } from "./process-of-pages.ts";
import { diskWith, temporaryFolder } from "./sample-pages.ts";

const processes = 8;
/** Each waits for the seven others at each page: 160 meetings show what happens in one of forty. */
const pagesEach = howMany(20, 200);

test(`${processes} processes file ${pagesEach} pages each into one folder: all are there, and the chain is whole`, async () => {
  const root = temporaryFolder();
  const program = await builtFilingProcess(root);
  const folder = join(root, "filed");
  const lots = Array.from({ length: processes }, (_, index) =>
    pagesOnDisk(join(root, `pages-${index}`), pagesEach, `P${index}`),
  );
  const runs = lots.map((pages) => filingProcess(program, folder, pages).ended);
  for (const { signal, complaints } of await Promise.all(runs)) {
    expect({ signal, complaints }).toEqual({ signal: null, complaints: "" });
  }
  expect((await ledgerHead(diskWith(), folder)).lines).toBe(processes * pagesEach);
  expect(await checkFolder(diskWith(), folder)).toEqual([]);
  expect((await readIndex(diskWith(), folder)).entries).toHaveLength(processes * pagesEach);
  expect(filesBelow(folder)).toHaveLength(processes * pagesEach + 2);
});
