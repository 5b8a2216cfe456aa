import { type FiledLine, type LedgerLine, ledgerText, lineHash, noLine } from "../../src/filing/ledger-line.ts";

/** Lines of so many pages of LT-1, each holding on to the one before. */
export function sampleLines(count: number): readonly FiledLine[] {
  const lines: FiledLine[] = [];
  let previous = noLine;
  for (let number = 1; number <= count; number += 1) {
    const line: FiledLine = {
      number,
      at: "2026-11-25T10:00:00.000+01:00",
      action: "filed",
      path: `LT-1/2026-03-04_C-${number}_r1.html`,
      fileSha256: lineHash(`file ${number}`),
      sealSha256: lineHash(`seal ${number}`),
      tag: "LT-1",
      calibration: `C-${number}`,
      revision: 1,
      previous,
    };
    previous = lineHash(ledgerText(line));
    lines.push(line);
  }
  return lines;
}

export function textOfLines(lines: readonly LedgerLine[]): string {
  return lines.map((line) => `${ledgerText(line)}\n`).join("");
}
