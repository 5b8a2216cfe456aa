/** What a reader is told of a picture that cannot be seen, and what the page styles it by. */
export type SvgRoot = { idPrefix: string; className: string; title: string; description: string };

const root = /^<svg [^>]*?width="([\d.]+)" height="([\d.]+)"[^>]*>/u;
const identifier = /(?<= id="|url\(#)[^")]+/gu;

/**
 * Gives vega's SVG a role, a name and a description, lets CSS set its size, and makes its ids unique on the page:
 * they are numbered by appearance, so that charts drawn at the same time do not see each other's.
 */
export function withRoot(svg: string, { idPrefix, className, title, description }: SvgRoot): string {
  const match = root.exec(svg);
  if (match === null) throw new Error(`withRoot: no svg element in ${svg.slice(0, 80)}`);
  const [element, width, height] = match;
  const numbers = new Map<string, number>();
  const body = svg.slice(element.length).replace(identifier, (id) => {
    if (!numbers.has(id)) numbers.set(id, numbers.size + 1);
    return `${idPrefix}-${numbers.get(id)}`;
  });
  const described = `${idPrefix}-description`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" class="${escaped(className)}" viewBox="0 0 ${width} ${height}" role="img"` +
    ` aria-label="${escaped(title)}" aria-describedby="${described}">` +
    `<desc id="${described}">${escaped(description)}</desc>${body}`
  );
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
