import { gunzipSync } from "node:zlib";

/** What a page of many rows keeps as data, as any program unpacks it. */
export function dataOf(html: string): readonly (readonly (string | number)[])[] {
  const packed = html.matchAll(/<script type="application\/gzip" data-encoding="base64">(?<base64>[^<]*)<\/script>/gu);
  return [...packed].flatMap(({ groups }) =>
    JSON.parse(gunzipSync(Buffer.from(groups?.base64 ?? "", "base64")).toString("utf8")),
  );
}

/** How many rows stand in its table. */
export function drawnIn(html: string): number {
  return (html.match(/<tr data-state=/gu) ?? []).length;
}
