import { type Scene, sceneSvg } from "./scene-svg.ts";

/** What a reader is told of a picture that cannot be seen, and what the page styles it by. */
export type SvgRoot = { idPrefix: string; className: string; title: string; description: string };

/**
 * A scene as an SVG with a role, a name and a description; CSS sets its size. Its ids begin with the prefix and are
 * numbered by appearance, so that they are the only ones of their name on the page.
 */
export function svgOf(scene: Scene, { idPrefix, className, title, description }: SvgRoot): string {
  const { content, font } = sceneSvg(scene, idPrefix);
  const described = `${idPrefix}-description`;
  const { width, height } = scene.size;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" class="${escaped(className)}" viewBox="0 0 ${width} ${height}" role="img"` +
    ` aria-label="${escaped(title)}" aria-describedby="${described}" fill="none"${font}>` +
    `<desc id="${described}">${escaped(description)}</desc>${content}</svg>`
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
