/** What a reader is told of a picture that cannot be seen, and what the page styles it by. */
export type SvgRoot = { idPrefix: string; className: string; title: string; description: string };

const root = /^<svg [^>]*?width="([\d.]+)" height="([\d.]+)"[^>]*>/u;
const text = />[^<]*/u;
/** A picture is one thing to a screen reader; what vega says of its parts would be said of nothing. */
const partRole = / (?:role="graphics-\w+"|aria-roledescription="[^"]*"|aria-hidden="true")/u;
const identifier = /( id="|url\(#)([^")]+)/u;
const translation = /translate\(([-\d.e]+),([-\d.e]+)\)/u;
/** Text stands first, so that whatever it says is passed over. */
const partOfBody = new RegExp([text, partRole, identifier, translation].map(({ source }) => source).join("|"), "gu");

/**
 * Gives vega's SVG a role, a name and a description, lets CSS set its size, and makes its ids unique on the page:
 * they are numbered by appearance, so that charts drawn at the same time do not see each other's.
 */
export function withRoot(svg: string, { idPrefix, className, title, description }: SvgRoot): string {
  const match = root.exec(svg);
  if (match === null) throw new Error(`withRoot: no svg element in ${svg.slice(0, 80)}`);
  const [element, width, height] = match;
  const numbers = new Map<string, number>();
  const numbered = (id: string) => {
    if (!numbers.has(id)) numbers.set(id, numbers.size + 1);
    return `${idPrefix}-${numbers.get(id)}`;
  };
  const body = svg.slice(element.length).replace(partOfBody, (part, before, id, x, y) => {
    if (id !== undefined) return `${before}${numbered(id)}`;
    if (x !== undefined) return `translate(${rounded(x)},${rounded(y)})`;
    return part.startsWith(">") ? part : "";
  });
  const described = `${idPrefix}-description`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" class="${escaped(className)}" viewBox="0 0 ${width} ${height}" role="img"` +
    ` aria-label="${escaped(title)}" aria-describedby="${described}">` +
    `<desc id="${described}">${escaped(description)}</desc>${body}`
  );
}

/** A thousandth of a pixel is as fine as vega's own paths. */
function rounded(number: string): number {
  return Number(Number(number).toFixed(3));
}

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/gu, (sign) => entities[sign] ?? sign);
}
