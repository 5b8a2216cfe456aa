import regular from "@fontsource/inter/files/inter-latin-400-normal.woff2";
import semibold from "@fontsource/inter/files/inter-latin-600-normal.woff2";

/** The page's font, embedded, so that a page looks and measures the same on every machine (Inter, OFL 1.1). */
export function fontFaces(): string {
  return face(400, regular) + face(600, semibold);
}

function face(weight: number, base64: string): string {
  return (
    `@font-face{font-family:Inter;font-weight:${weight};font-style:normal;font-display:block;` +
    `src:url(data:font/woff2;base64,${base64}) format("woff2")}`
  );
}
