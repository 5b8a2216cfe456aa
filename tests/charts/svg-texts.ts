/** The texts that an SVG draws, in their order, entities resolved. */
export function svgTexts(svg: string): string[] {
  return [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/gu)].map(([, text = ""]) =>
    text
      .replace(/&lt;/gu, "<")
      .replace(/&gt;/gu, ">")
      .replace(/&quot;/gu, '"')
      .replace(/&amp;/gu, "&"),
  );
}
