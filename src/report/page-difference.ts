import { withPlainRecord } from "../record/record-element.ts";

/** Where two texts of one page part for the first time, and what stands there in each. */
export type PageDifference = { place: string; expected: string; found: string };

const heading = /<h[1-6][^>]*>(?<words>.*?)<\/h[1-6]>/gsu;
const data = '<script type="application/json" id="record">';
const before = 30;
const after = 60;

/**
 * The first difference between a page as it should be and as it is; nothing where they are the same. Of the record
 * packed inside, what it unpacks to is compared: another machine may pack the same otherwise.
 */
export function pageDifference(expected: string, found: string): PageDifference | undefined {
  return expected === found ? undefined : plainDifference(withPlainRecord(expected), withPlainRecord(found));
}

function plainDifference(expected: string, found: string): PageDifference | undefined {
  if (expected === found) return undefined;
  if (found.includes("\r\n") && found.replaceAll("\r\n", "\n") === expected) {
    return { place: "every line", expected: "line feed", found: "carriage return and line feed" };
  }
  const index = firstDifference(expected, found);
  return { place: placeOf(expected, index), expected: partAt(expected, index), found: partAt(found, index) };
}

/** The first place at which two texts differ, as an index into both. */
export function firstDifference(one: string, other: string): number {
  const shorter = Math.min(one.length, other.length);
  for (let index = 0; index < shorter; index += 1) {
    if (one.charCodeAt(index) !== other.charCodeAt(index)) return index;
  }
  return shorter;
}

function placeOf(page: string, index: number): string {
  if (index < page.indexOf("<body>")) return "head of the page";
  const start = page.indexOf(data);
  if (start !== -1 && index >= start) {
    return index < page.indexOf("</script>", start) ? "data inside the page" : "end of the page";
  }
  const above = [...page.slice(0, index).matchAll(heading)].at(-1)?.groups?.words;
  return above === undefined ? "top of the page" : `under "${withoutMarkup(above)}"`;
}

/** The text around a place, as far as the element that it stands in; inside a tag, the tag. */
function partAt(page: string, index: number): string {
  const closed = page.lastIndexOf(">", index - 1);
  const opened = page.lastIndexOf("<", index - 1);
  const isInTag = opened > closed || (page[index] === "<" && closed === index - 1);
  const start = Math.max(isInTag ? Math.max(opened, closed + 1) : closed + 1, index - before);
  const end = page.indexOf(isInTag ? ">" : "<", index);
  const part = page.slice(start, Math.min(end === -1 ? page.length : end + (isInTag ? 1 : 0), index + after));
  return part.trim() === "" ? "(nothing)" : part.replace(/\s+/gu, " ");
}

function withoutMarkup(html: string): string {
  return html.replace(/<[^>]*>/gu, "").trim();
}
