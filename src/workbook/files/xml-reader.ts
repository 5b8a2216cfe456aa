/** What is told of a document as it is read from its beginning to its end. */
export type XmlListener = {
  open(name: string, attributes: Attributes): void;
  close(name: string): void;
  text(text: string): void;
};

/** The value of an attribute by its name, "" where it is not there. */
export type Attributes = (name: string) => string;

/** An element, a remark, a section of plain text, an instruction, or the text up to the next of them. */
const token =
  /<!--[\s\S]*?-->|<!\[CDATA\[([\s\S]*?)\]\]>|<\?[\s\S]*?\?>|<\/\s*([^\s>]+)\s*>|<([^\s/>!?]+)(?=[\s/>])((?:[^>"']|"[^"]*"|'[^']*')*?)(\/?)>|([^<]+)/uy;

const attribute = /([^\s=]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/gu;

const named: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** Elements inside each other: a spreadsheet has a dozen or two. */
const deepest = 200;

/**
 * Reads a well-formed document and tells its listener what stands in it. Only the five entities that XML itself names are
 * known, so that nothing is fetched and nothing grows.
 *
 * Faults: `SyntaxError` where it is not well-formed, or deeper than any spreadsheet.
 */
export function readXml(xml: string, listener: XmlListener): void {
  const open: string[] = [];
  token.lastIndex = 0;
  let at = xml.charCodeAt(0) === 0xfeff ? 1 : 0;
  while (at < xml.length) {
    token.lastIndex = at;
    const match = token.exec(xml);
    if (match === null) throw new SyntaxError(`readXml: not well-formed at character ${at}`);
    at = token.lastIndex;
    const [, plain, closed, opened, attributes = "", empty, text] = match;
    if (text !== undefined) listener.text(withEntities(text));
    else if (plain !== undefined) listener.text(plain);
    else if (opened !== undefined) {
      listener.open(opened, (name) => attributeNamed(name, attributes));
      if (empty === "/") listener.close(opened);
      else if (open.push(opened) > deepest) throw new SyntaxError(`readXml: ${deepest} elements inside each other`);
    } else if (closed !== undefined) {
      if (open.pop() !== closed) throw new SyntaxError(`readXml: ${closed} closes and is not open`);
      listener.close(closed);
    }
  }
  if (open.length > 0) throw new SyntaxError(`readXml: ${open.at(-1)} is not closed`);
}

function attributeNamed(name: string, attributes: string): string {
  if (!attributes.includes(name)) return "";
  for (const [, found, double, single] of attributes.matchAll(attribute)) {
    if (found === name) return withEntities(double ?? single ?? "");
  }
  return "";
}

function withEntities(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(/&(?:#x([\da-f]{1,6})|#(\d{1,7})|(\w+));/giu, (whole, hex, decimal, name) => {
    if (name !== undefined) return named[name] ?? whole;
    const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}
