import type { Doubt } from "../record/doubt.ts";
import { ledgerName } from "./ledger.ts";
import type { DecidedLine, FiledLine, LedgerLine, WithdrawnLine } from "./ledger-line.ts";

type LineOfPage = FiledLine | DecidedLine | WithdrawnLine;

/** Clocks of two computers that file into one folder may differ by that: own choice. */
export const clocksApart = 600_000;

/** Doubts about what the lines of a ledger say together, however well they are chained. */
export function checkLines(lines: readonly LedgerLine[]): readonly Doubt[] {
  const ofPages = lines.filter((line): line is LineOfPage => line.action !== "indexed");
  return [...checkOnce(ofPages), ...checkAbout(ofPages), ...checkTimes(lines)];
}

/** A revision is filed once, unless it was withdrawn; a path is used once and never again. */
function checkOnce(lines: readonly LineOfPage[]): readonly Doubt[] {
  const revisions = new Set<string>();
  const paths = new Set<string>();
  return lines.flatMap((line) => {
    const { action, tag, calibration, revision, number, path } = line;
    const identity = JSON.stringify([tag, calibration, revision]);
    if (action === "withdrawn") revisions.delete(identity);
    if (action !== "filed") return [];
    const isTwice = revisions.has(identity) || paths.has(path);
    revisions.add(identity);
    paths.add(path);
    return isTwice
      ? [doubt(`line ${number} files revision ${revision} of ${calibration} of ${tag} a second time`)]
      : [];
  });
}

/** A decision, and a withdrawal, names the page that it is about. */
function checkAbout(lines: readonly LineOfPage[]): readonly Doubt[] {
  const key = ({ path, fileSha256, sealSha256, tag, calibration, revision }: LineOfPage) =>
    JSON.stringify([path, fileSha256, sealSha256, tag, calibration, revision]);
  const filed = new Set<string>();
  return lines.flatMap((line) => {
    if (line.action === "filed") filed.add(key(line));
    else if (!filed.has(key(line))) {
      const does = line.action === "decided" ? "decides about" : "withdraws";
      return [doubt(`line ${line.number} ${does} a page that no line before it files`)];
    }
    if (line.action === "withdrawn") filed.delete(key(line));
    return [];
  });
}

/** Lines are entered one after the other, so that their times rise; a clock may be a little behind. */
function checkTimes(lines: readonly LedgerLine[]): readonly Doubt[] {
  let latest: LedgerLine | undefined;
  return lines.flatMap((line) => {
    const before = latest;
    if (before === undefined || Date.parse(line.at) >= Date.parse(before.at)) latest = line;
    if (before === undefined || Date.parse(before.at) - Date.parse(line.at) <= clocksApart) return [];
    return [
      doubt(
        `line ${line.number} says ${line.at}, and line ${before.number} before it ${before.at}: a clock was wrong, or the time was written by hand`,
      ),
    ];
  });
}

function doubt(says: string): Doubt {
  return { about: "ledger", place: ledgerName, says };
}
