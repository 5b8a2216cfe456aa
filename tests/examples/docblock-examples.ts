import { isCode, type SourceFile } from "../architecture/source-files.ts";

/** An example as it stands in a docblock: an expression, and what it gives. */
export type Example = { path: string; expression: string; gives: string; isInWords: boolean };

/** Folders whose docblocks show worked examples. */
export const shownFolders = ["numeric", "units", "analysis", "verdict", "record", "assembly", "proof"];

const docblock = /^ *\/\*\*[\s\S]*?\*\//gmu;
const exampleText = /@example ([\s\S]*?)(?=\n@|$)/gu;
const inWords = "in words: ";

/** Every example of some files; `in words: ` before it says that nothing is to be run. */
export function docblockExamples(files: readonly SourceFile[]): readonly Example[] {
  return files
    .filter(isCode)
    .flatMap(({ path, text }) =>
      [...text.matchAll(docblock)].flatMap(([block]) =>
        [...withoutStars(block).matchAll(exampleText)].map(([, example = ""]) => exampleOf(path, example)),
      ),
    );
}

function withoutStars(block: string): string {
  return block.replace(/^ *\/\*\*\s?|\s*\*\/$/gu, "").replace(/^ *\* ?/gmu, "");
}

function exampleOf(path: string, text: string): Example {
  const [expression = "", ...gives] = text
    .trim()
    .replace(/\s*\n\s*/gu, " ")
    .split(/ \/\/ (?=[^"]*(?:"[^"]*"[^"]*)*$)/u);
  return { path, expression, gives: gives.join(" // "), isInWords: text.startsWith(inWords) };
}
