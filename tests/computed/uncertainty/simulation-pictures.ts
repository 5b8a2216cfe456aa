import type { Coverage } from "./coverage.ts";
import type { RiskBin } from "./stated-risk.ts";

const [width, rowHeight, left, top] = [760, 18, 230, 40];
const [least, most] = [0.8, 1];

/** Coverages as a picture: a row a design, a mark a figure, the band that is asked for. */
export function coveragePicture(found: readonly Coverage[]): string {
  const height = top + found.length * rowHeight + 30;
  const at = (part: number) => left + ((Math.max(least, part) - least) / (most - least)) * (width - left - 20);
  const rows = found.flatMap((one, index) => {
    const y = top + index * rowHeight + rowHeight / 2;
    const { disturbance, cycles, points } = one.design;
    return [
      `<text x="${left - 10}" y="${y + 4}" text-anchor="end">${disturbance}, ${cycles} × ${points}</text>`,
      `<circle cx="${at(one.points.share).toFixed(1)}" cy="${y}" r="4" fill="#1f4e79"/>`,
      `<path d="M${(at(one.zero.share) - 4).toFixed(1)} ${y - 4}h8v8h-8z" fill="none" stroke="#8a4b08" stroke-width="1.5"/>`,
      `<path d="M${at(one.span.share).toFixed(1)} ${y - 5}l5 9h-10z" fill="none" stroke="#2e6b34" stroke-width="1.5"/>`,
    ];
  });
  const ticks = [0.8, 0.85, 0.9, 0.95, 1].map(
    (part) =>
      `<text x="${at(part)}" y="${height - 8}" text-anchor="middle">${part === least ? "≤ " : ""}${100 * part} %</text>`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="12">`,
    "<title>Coverage of U in simulated calibrations</title>",
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    `<rect x="${at(0.94)}" y="${top}" width="${at(0.97) - at(0.94)}" height="${found.length * rowHeight}" fill="#dfe8f0"/>`,
    `<text x="${left}" y="20">dot: U at the test points; square: zero ± 2u; triangle: span ± 2u; band: asked for</text>`,
    ...rows,
    ...ticks,
    "</svg>\n",
  ].join("\n");
}

const [side, edge] = [420, 50];
const inkOf = { out: "#1f4e79", both: "#8a4b08" } as const;

/** Stated risks against what is so: a mark a bin, its interval upright, the diagonal where both are the same. */
export function riskPicture(risks: Readonly<Record<"out" | "both", readonly RiskBin[]>>): string {
  const across = (part: number) => (edge + part * (side - 2 * edge)).toFixed(1);
  const up = (part: number) => (side - edge - part * (side - 2 * edge)).toFixed(1);
  const marks = (["both", "out"] as const).flatMap((directions) =>
    risks[directions].flatMap(({ stated, outside }) => [
      `<path d="M${across(stated)} ${up(outside.low)}V${up(outside.high)}" stroke="${inkOf[directions]}" stroke-width="1.5"/>`,
      directions === "out"
        ? `<circle cx="${across(stated)}" cy="${up(outside.share)}" r="4" fill="${inkOf.out}"/>`
        : `<path d="M${across(stated)} ${up(outside.share)}m-4 -4h8v8h-8z" fill="#fff" stroke="${inkOf.both}" stroke-width="1.5"/>`,
    ]),
  );
  const ticks = [0, 0.25, 0.5, 0.75, 1].flatMap((part) => [
    `<text x="${across(part)}" y="${side - edge + 18}" text-anchor="middle">${100 * part} %</text>`,
    `<text x="${edge - 8}" y="${up(part)}" dy="4" text-anchor="end">${100 * part} %</text>`,
  ]);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" font-family="sans-serif" font-size="12">`,
    "<title>Stated risk of a test point, and how often it is outside the tolerance</title>",
    `<rect width="${side}" height="${side}" fill="#fff"/>`,
    `<path d="M${across(0)} ${up(0)}H${across(1)}V${up(1)}H${across(0)}z" fill="none" stroke="#bbb"/>`,
    `<path d="M${across(0)} ${up(0)}L${across(1)} ${up(1)}" stroke="#777" stroke-dasharray="4 3"/>`,
    `<text x="${edge}" y="20">dot: outwards only; square: out and back</text>`,
    `<text x="${edge}" y="38">upwards: outside the tolerance; across: stated risk</text>`,
    ...marks,
    ...ticks,
    "</svg>\n",
  ].join("\n");
}
