import { gunzipSync } from "node:zlib";

/** What a page of many rows keeps as data, as any program unpacks it: of each its HTML, its state, its keys. */
export function dataOf(html: string): readonly (readonly (string | number)[])[] {
  const packed = html.matchAll(/<script type="application\/gzip" data-encoding="base64">(?<base64>[^<]*)<\/script>/gu);
  return [...packed].flatMap(({ groups }) => {
    const text = gunzipSync(Buffer.from(groups?.base64 ?? "", "base64")).toString("utf8");
    const [keys = "", ...rows] = text.split("\n");
    const ofRows = JSON.parse(keys) as (string | number)[][];
    if (ofRows.length !== rows.length) throw new Error(`${rows.length} rows have the keys of ${ofRows.length}`);
    return ofRows.map((ofRow, index) => [rows[index] ?? "", ...ofRow]);
  });
}

/** How many rows stand in its table. */
export function drawnIn(html: string): number {
  return (html.match(/<tr data-state=/gu) ?? []).length;
}
