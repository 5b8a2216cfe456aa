import type { Doubt } from "../record/doubt.ts";
import { isOfPage } from "./filed-lines.ts";
import { ledgerName } from "./ledger.ts";
import type { LedgerLine, PageLine } from "./ledger-line.ts";

/** Clocks of two computers that file into one folder may differ by that: own choice. */
export const clocksApart = 600_000;

/** Doubts about what the lines of a ledger say together, however well they are chained. */
export function checkLines(lines: readonly LedgerLine[]): readonly Doubt[] {
  const ofPages = lines.filter(isOfPage);
  return [...checkOnce(ofPages), ...checkAbout(ofPages), ...checkTags(lines), ...checkTimes(lines)];
}

/** A revision is filed once, unless it was withdrawn; a path is used once and never again. */
function checkOnce(lines: readonly PageLine[]): readonly Doubt[] {
  const revisions = new Set<string>();
  const paths = new Set<string>();
  return lines.flatMap((line) => {
    const { action, tag, calibration, revision, number, path } = line;
    const identity = JSON.stringify([tag, calibration, revision]);
    if (action === "withdrawn") revisions.delete(identity);
    if (action !== "filed" && action !== "restored") return [];
    const isTwice = revisions.has(identity) || (action === "filed" && paths.has(path));
    revisions.add(identity);
    paths.add(path);
    return isTwice
      ? [doubt(`line ${number} files revision ${revision} of ${calibration} of ${tag} a second time`)]
      : [];
  });
}

const does: Readonly<Record<Exclude<PageLine["action"], "filed">, string>> = {
  decided: "decides about a page that no line before it files",
  withdrawn: "withdraws a page that no line before it files",
  restored: "restores a page that no line before it withdraws",
  disposed: "disposes of a page that no line before it files",
};

/** A decision, a withdrawal and what comes after it name the page that they are about, and that is there to be named. */
function checkAbout(lines: readonly PageLine[]): readonly Doubt[] {
  const key = ({ path, fileSha256, sealSha256, tag, calibration, revision }: PageLine) =>
    JSON.stringify([path, fileSha256, sealSha256, tag, calibration, revision]);
  const filed = new Set<string>();
  const withdrawn = new Set<string>();
  return lines.flatMap((line) => {
    const { action, number } = line;
    const page = key(line);
    const isThere =
      action === "filed" ||
      (action === "restored" ? withdrawn : filed).has(page) ||
      (action === "disposed" && withdrawn.has(page));
    if (action === "filed" || action === "restored") filed.add(page);
    if (action === "withdrawn" || action === "disposed") filed.delete(page);
    if (action === "restored" || action === "disposed") withdrawn.delete(page);
    if (action === "withdrawn") withdrawn.add(page);
    return isThere ? [] : [doubt(`line ${number} ${does[action]}`)];
  });
}

/** What is said of a tag is said of one that has pages, under this or an earlier name. */
function checkTags(lines: readonly LedgerLine[]): readonly Doubt[] {
  const known = new Set<string>();
  return lines.flatMap((line) => {
    if (line.action === "filed") known.add(line.tag);
    if (line.action === "indexed" || isOfPage(line)) return [];
    const isKnown = known.has(line.tag);
    if (line.action === "renamed") known.add(line.to);
    return isKnown ? [] : [doubt(`line ${line.number} is about ${line.tag}, of which no line before it files a page`)];
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
