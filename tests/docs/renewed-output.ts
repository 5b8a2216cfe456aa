import { isAsDocumented } from "./console-blocks.ts";

const isGap = (line: string) => line.trim() === "…";
const firstWord = (line: string) => line.trim().split(" ")[0];

/**
 * What a page would say of a command that prints something else now: its lines replaced where they are wrong, its gaps
 * (`…` alone on a line) kept. Lines after a gap are found by their first words.
 */
export function renewedOutput(expected: readonly string[], printed: string): readonly string[] {
  const lines = printed.trimEnd() === "" ? [] : printed.trimEnd().split("\n");
  if (!expected.some(isGap)) return lines.map((line, index) => kept(expected[index], line));
  const renewed: string[] = [];
  let from = 0;
  for (const run of runsOf(expected)) {
    if (isGap(run[0] ?? "")) {
      renewed.push("…");
      continue;
    }
    const isFirst = renewed.length === 0;
    const place = isFirst ? 0 : placeOf(run, lines, from, run.at(-1) === expected.at(-1));
    const found = lines.slice(place, place + run.length);
    renewed.push(...found.map((line, index) => kept(run[index], line)));
    from = place + run.length;
  }
  return renewed;
}

/** A line that is right stays as it stands, with what it leaves out. */
function kept(documented: string | undefined, line: string): string {
  return documented !== undefined && isAsDocumented([documented], line) ? documented : line.trimEnd();
}

function runsOf(expected: readonly string[]): readonly (readonly string[])[] {
  const runs: string[][] = [];
  for (const line of expected) {
    const last = runs.at(-1);
    if (last === undefined || isGap(line) || isGap(last[0] ?? "")) runs.push([line]);
    else last.push(line);
  }
  return runs;
}

function placeOf(run: readonly string[], lines: readonly string[], from: number, isLast: boolean): number {
  const end = Math.max(from, lines.length - run.length);
  if (isLast) return end;
  const alike = (place: number) =>
    run.filter((line, at) => firstWord(line) === firstWord(lines[place + at] ?? "")).length;
  const places = Array.from({ length: end - from + 1 }, (_, index) => from + index);
  return places.reduce((best, place) => (alike(place) > alike(best) ? place : best), from);
}
