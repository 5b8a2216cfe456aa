import { CannotFile } from "./cannot-file.ts";
import { changeFolder, type FilingFolder } from "./filing-folder.ts";
import type { TagLine } from "./ledger-line.ts";
import { presentTag, tagLinesOf } from "./tag-lives.ts";

/** What became of a loop, without what every line has. */
export type TagChange =
  | { action: "retired" }
  | { action: "renamed"; to: string }
  | { action: "relocated"; place: string }
  | { action: "transferred"; to: string };
type Said = { tag: string; by: string; reason: string };

/**
 * Enters what became of a loop: it is out of use, called otherwise, at another place, or its sensor was put on another
 * loop. No page is touched; registers, histories and due lists go by it from now on.
 *
 * @throws CannotFile for a tag without pages, and for a name that the loop has already
 */
export async function changeTag(folder: FilingFolder, { tag, by, reason }: Said, change: TagChange): Promise<TagLine> {
  return changeFolder(folder, async (enter) => {
    const known = presentTags(folder);
    if (!known.has(tag)) throw new CannotFile("filing/tag-unknown", { tag });
    if ("to" in change) checkOther(folder, { tag, known }, change);
    return enter<TagLine>({ ...change, tag, by, reason } as TagLine);
  });
}

function checkOther(
  { ledger }: FilingFolder,
  { tag, known }: { tag: string; known: ReadonlySet<string> },
  { action, to }: { action: string; to: string },
): void {
  if (to === tag) throw new CannotFile("filing/tag-the-same", { tag });
  if (action === "transferred" && !known.has(to)) throw new CannotFile("filing/tag-unknown", { tag: to });
  const like = ledger.tagLike(to);
  if (like !== undefined && like !== tag) throw new CannotFile("filing/tag-like-another", { tag: to, like });
}

/** Tags of pages, by the names that their loops have now. */
function presentTags({ ledger }: FilingFolder): ReadonlySet<string> {
  const tagLines = tagLinesOf(ledger.lines);
  const filed = ledger.lines.filter((line) => line.action === "filed");
  return new Set(filed.map((line) => presentTag({ ...line, performedOn: null }, tagLines)));
}
