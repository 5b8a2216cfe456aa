import { importsOf } from "./import-faults.ts";
import type { SourceFile } from "./source-files.ts";

/** Files that import each other in a circle, types too: a sentence for each circle, with one way round. */
export function circleFaults(files: readonly SourceFile[]): readonly string[] {
  const imports = new Map(files.map((file) => [file.path, importedBy(file)]));
  const done = new Set<string>();
  return files.flatMap(({ path }) => circlesFrom(path, { imports, done, way: [] }));
}

type Walk = {
  imports: ReadonlyMap<string, readonly string[]>;
  /** Files whose imports were followed to the end. */
  done: Set<string>;
  way: readonly string[];
};

/** Depth first: a file that stands on the way to itself closes a circle. */
function circlesFrom(path: string, { imports, done, way }: Walk): readonly string[] {
  const begins = way.indexOf(path);
  if (begins >= 0) return [[...way.slice(begins), path].join(" → ")];
  if (done.has(path)) return [];
  const found = (imports.get(path) ?? []).flatMap((next) => circlesFrom(next, { imports, done, way: [...way, path] }));
  done.add(path);
  return found;
}

function importedBy({ path, text }: SourceFile): readonly string[] {
  return importsOf(text)
    .filter(({ specifier }) => specifier.startsWith("."))
    .map(({ specifier }) => new URL(specifier, `file:///${path}`).pathname.slice(1));
}
