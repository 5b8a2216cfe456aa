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

/** The texts of one role, such as "axis-label". */
export function svgTextsOf(svg: string, role: string): string[] {
  const groups = svg.split('<g class="').filter((part) => part.includes(`role-${role}`));
  return groups.flatMap(svgTexts);
}
