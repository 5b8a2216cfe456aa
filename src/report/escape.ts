const entities: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

/** Text as HTML text; the page's own parts are escaped by the renderer, this serves what stands around them. */
export function escapedText(text: string): string {
  return text.replace(/[&<>"']/gu, (character) => entities[character] ?? character);
}

/** Text within an element as the renderer writes it: it leaves apostrophes and what closes a tag as they are. */
export function textAsRendered(text: string): string {
  return text.replace(/[&<"]/gu, (character) => entities[character] ?? character);
}

/** Text as a CSS string: everything but letters, digits, space and a few harmless signs becomes a code point. */
export function styleString(text: string): string {
  const shortened = [...text].slice(0, 120).join("");
  return `"${shortened.replace(/[^A-Za-z0-9 .,_-]/gu, (character) => `\\${character.codePointAt(0)?.toString(16)} `)}"`;
}
