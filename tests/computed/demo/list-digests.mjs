/**
 * Writes reports/digests.txt: the SHA-256 and the path of every file of the demonstration, so that a change of one byte
 * is seen though git keeps a handful of the pages only.
 *
 *   node tests/computed/demo/list-digests.mjs
 */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { digestsOf } from "./digests-of.mjs";

const reports = fileURLToPath(new URL("../../../reports", import.meta.url));
writeFileSync(join(reports, "digests.txt"), digestsOf(reports));
