import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";

/** Not of the demonstration: what tells of it. */
const around = new Set(["digests.txt", "README.md"]);

/** A line a file below a folder, in the order of its path: SHA-256, two blanks, path, as sha256sum writes it. */
export function digestsOf(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => relative(folder, join(parentPath, name)).replaceAll("\\", "/"))
    .filter((path) => !around.has(path))
    .sort()
    .map(
      (path) =>
        `${createHash("sha256")
          .update(readFileSync(join(folder, path)))
          .digest("hex")}  ${path}\n`,
    )
    .join("");
}
