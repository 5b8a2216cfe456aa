// A process that files pages until it has filed all of them or is ended: filing-process.mjs <folder> <list of pages>
// The list is a JSON file of paths. It says "ready" before the first page.
import { readFileSync } from "node:fs";
import { nodeFilingDisk } from "../../src/cli/node-filing-disk.ts";
import { filePage } from "../../src/filing/file-page.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";

const [, , folder, list] = process.argv;
const filing = filingFolder(
  nodeFilingDisk(() => undefined),
  folder,
);
const pages = JSON.parse(readFileSync(list, "utf8")).map((path) => {
  const bytes = readFileSync(path);
  const [, json] = /id="record">([^<]*)</u.exec(bytes.toString("utf8"));
  return { bytes, record: JSON.parse(json) };
});
process.stdout.write("ready\n");
for (const page of pages) await filePage(filing, page, { paper: "binder 7" });
