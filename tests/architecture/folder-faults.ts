import { folderOf, type SourceFile } from "./source-files.ts";

const namesWithoutSubject = /^(?:utils?|helpers?|common|misc)$/u;
const mostLinesOfReadme = 25;

/** Folders of src without a short README, and folders whose name says nothing. */
export function folderFaults(files: readonly SourceFile[]): readonly string[] {
  const folders = [
    ...new Set(files.filter(({ path }) => path.split("/").length > 2).map(({ path }) => folderOf(path))),
  ];
  return [...folders.flatMap((folder) => readmeFault(folder, files) ?? []), ...nameFaults(files)];
}

export function nameFaults(files: readonly SourceFile[]): readonly string[] {
  return files
    .filter(({ path }) =>
      path
        .split("/")
        .slice(0, -1)
        .some((name) => namesWithoutSubject.test(name)),
    )
    .map(({ path }) => `${path}: a folder needs a name that says what lives there`);
}

function readmeFault(folder: string, files: readonly SourceFile[]): string | undefined {
  const path = `src/${folder}/README.md`;
  const readme = files.find((file) => file.path === path);
  if (readme === undefined) return `${path} is missing`;
  const lines = readme.text.replace(/\n$/u, "").split("\n").length;
  return lines > mostLinesOfReadme ? `${path}: ${lines} lines, at most ${mostLinesOfReadme}` : undefined;
}
