import type { FilingDisk } from "../../filing/filing-disk.ts";

/** As the parts of a page are called; nothing else that lies in their folder is touched. */
const isPart = /^(?:loops|due|open|late|records)-\d{3,}\.html$/u;

/** Removes the parts of a longer page that was written there before: they say what is so no more. */
export async function removeOtherParts(
  disk: Pick<FilingDisk, "namesIn" | "remove">,
  folder: string,
  written: readonly { path: string }[],
): Promise<void> {
  const paths = new Set(written.map(({ path }) => path));
  const names = ((await disk.namesIn(folder)) ?? []).filter((name) => isPart.test(name));
  const others = names.map((name) => `${folder}/${name}`).filter((path) => !paths.has(path));
  await Promise.all(others.map((path) => disk.remove(path)));
}
