import { zipOfParts } from "./zip-of.ts";

const kind = "application/vnd.oasis.opendocument.spreadsheet";

/** The bytes of an .ods file with this inside its spreadsheet, and with these automatic styles. */
export function odsOf(spreadsheet: string, styles = ""): Uint8Array {
  const body = `<office:body><office:spreadsheet>${spreadsheet}</office:spreadsheet></office:body>`;
  const content = `<?xml version="1.0"?><office:document-content><office:automatic-styles>${styles}</office:automatic-styles>${body}</office:document-content>`;
  return zipOfParts({ mimetype: kind, "content.xml": content });
}

/** A row of cells that hold texts. */
export function odsRow(...texts: readonly string[]): string {
  const cells = texts.map(
    (text) => `<table:table-cell office:value-type="string"><text:p>${text}</text:p></table:table-cell>`,
  );
  return `<table:table-row>${cells.join("")}</table:table-row>`;
}
