import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** A file by its path from the root, with slashes: "src/units/convert.ts". */
export type SourceFile = { readonly path: string; readonly text: string };

const root = new URL("../../", import.meta.url);

/** Every file below a folder of the project, in the order of its path. */
export function filesBelow(folder: string): readonly SourceFile[] {
  return readdirSync(fileURLToPath(new URL(folder, root)), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`.slice(fileURLToPath(root).length).replaceAll("\\", "/"))
    .sort()
    .map((path) => ({ path, text: readFileSync(new URL(path, root), "utf8") }));
}

export function isThere(path: string): boolean {
  return existsSync(new URL(path, root));
}

export function isCode({ path }: SourceFile): boolean {
  return /\.tsx?$/u.test(path);
}

/** "units" of "src/units/convert.ts". */
export function folderOf(path: string): string {
  return path.split("/")[1] ?? "";
}
