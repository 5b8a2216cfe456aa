import { encode } from "uqr";

/** Modules of white around a code that a reader needs (ISO/IEC 18004, 5.3.8: four). */
const quietZone = 4;

/** A text as a QR code (ISO/IEC 18004), drawn by its edges so that it is sharp in any size. */
export function QrCode({ text, label }: { text: string; label: string }) {
  const { data, size } = encode(text, { ecc: "M", border: quietZone });
  const path = data.flatMap((row, y) => runsOf(row).map(({ from, length }) => `M${from} ${y}h${length}v1h-${length}z`));
  return (
    <svg class="qr" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shape-rendering="crispEdges">
      <path d={path.join("")} fill="#000" />
    </svg>
  );
}

/** Dark modules side by side. */
function runsOf(row: readonly boolean[]): readonly { from: number; length: number }[] {
  const runs: { from: number; length: number }[] = [];
  for (const [place, isDark] of row.entries()) {
    if (!isDark) continue;
    const last = runs.at(-1);
    if (last !== undefined && last.from + last.length === place) last.length += 1;
    else runs.push({ from: place, length: 1 });
  }
  return runs;
}
