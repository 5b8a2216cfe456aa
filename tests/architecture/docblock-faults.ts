import { folderOf, type SourceFile } from "./source-files.ts";

const documented = ["numeric", "units", "analysis", "verdict", "record", "assembly", "proof"];
const exportedFunction = /^export (?:async )?function (\w+)/gmu;

/** Exported functions of the folders that compute whose docblock names no source or shows no worked example. */
export function docblockFaults(files: readonly SourceFile[]): readonly string[] {
  return files
    .filter(({ path }) => documented.includes(folderOf(path)))
    .flatMap(({ path, text }) =>
      [...text.matchAll(exportedFunction)].flatMap(({ 1: name, index }) => {
        const block = docblockBefore(text.slice(0, index));
        if (block === undefined) return [`${path}: ${name} has no docblock`];
        const missing = ["Source:", "@example"].filter((part) => !block.includes(part));
        return missing.map((part) => `${path}: the docblock of ${name} has no ${part}`);
      }),
    );
}

function docblockBefore(text: string): string | undefined {
  return text.endsWith("*/\n") ? text.slice(text.lastIndexOf("/**")) : undefined;
}
