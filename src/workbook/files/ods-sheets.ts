import { OdsSheet } from "./ods-sheet.ts";
import { packedParts, unpackedPart } from "./packed-parts.ts";
import type { SheetText } from "./sheet-text.ts";
import { type Attributes, readXml } from "./xml-reader.ts";

/** What stands in a cell or a sheet and is none of its text: notes, pictures, forms, what was there before a change. */
const besideCells: ReadonlySet<string> = new Set([
  ...["office:annotation", "table:shapes", "office:forms", "table:tracked-changes", "office:dde-source"],
  ...["draw:frame", "draw:custom-shape", "draw:g", "draw:control", "table:detective"],
]);

/**
 * The sheets of an .ods file, by the values that its cells hold and the texts that they show.
 *
 * Faults: `SyntaxError` where there is no content, or it is not well-formed; `RangeError` where a sheet spans too much.
 * Source: OASIS OpenDocument 1.3 part 3, 9.1 (tables), 19.385 (value types), 20.
 */
export function odsSheets(bytes: Uint8Array): readonly SheetText[] {
  const part = packedParts(bytes)?.find(({ name }) => name === "content.xml");
  const content = part && unpackedPart(bytes, part);
  if (content === undefined || content === "more") throw new SyntaxError("odsSheets: no content.xml");
  const sheets: OdsSheet[] = [];
  const hiddenStyles = new Set<string>();
  let style = "";
  let passing: string[] = [];
  readXml(new TextDecoder("utf-8", { fatal: true }).decode(content), {
    open(name: string, attributes: Attributes) {
      if (passing.length > 0 || besideCells.has(name)) passing.push(name);
      else if (name === "style:style") style = attributes("style:name");
      else if (name === "style:table-properties" && attributes("table:display") === "false") hiddenStyles.add(style);
      else if (name === "table:table") {
        sheets.push(new OdsSheet(attributes("table:name"), hiddenStyles.has(attributes("table:style-name"))));
      } else sheets.at(-1)?.open(name, attributes);
    },
    close(name: string) {
      if (passing.length > 0) passing = passing.slice(0, -1);
      else sheets.at(-1)?.close(name);
    },
    text(text: string) {
      if (passing.length === 0) sheets.at(-1)?.text(text);
    },
  });
  return sheets.map((sheet) => sheet.done());
}
