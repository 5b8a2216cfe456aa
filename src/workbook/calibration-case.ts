import type { Calibration } from "../model/calibration.ts";
import type { CalibrationRows } from "../model/calibration-case.ts";
import { groupedBy } from "../model/grouped-by.ts";
import type { ProblemCode } from "../problems/catalogue.ts";
import type { Problem } from "../problems/problem.ts";
import type { Workbook } from "./build-workbook.ts";

/** One calibration with every row that its record needs, and the warnings that touch it. */
export type CalibrationCase = CalibrationRows & { warnings: readonly Problem[] };

/** A calibration that nothing stops: by its names, and with all of its rows as often as they are asked for. */
export type HeldCase = { calibration: string; tag: string; read: () => CalibrationCase };

/** Warnings about the run, not about what any record says. */
const runCodes: ReadonlySet<ProblemCode> = new Set(["tables/file-unknown", "tables/file-kind"]);

const ofNothing = "";

/**
 * The calibrations that no problem of severity stop touches, in the order of their table. A stop that belongs to
 * nothing in particular touches every calibration. The time taken grows with the number of rows, not faster.
 */
export function casesOf(workbook: Workbook, problems: readonly Problem[]): readonly HeldCase[] {
  const problemsByOwner = groupedBy(problems, ownerOf);
  const everyones = (problemsByOwner.get(ofNothing) ?? []).filter(({ code }) => !runCodes.has(code));
  if (everyones.some(isStop)) return [];
  const readRows = rowsReader(workbook);
  return Array.from(workbook.calibrations, ({ row }) => row).flatMap((row): readonly HeldCase[] => {
    const own = owners(row).flatMap((owner) => problemsByOwner.get(owner) ?? []);
    if (own.some(isStop)) return [];
    const { calibration, tag } = row;
    return [{ calibration, tag, read: () => ({ ...readRows(calibration), warnings: [...everyones, ...own] }) }];
  });
}

function isStop({ severity }: Problem): boolean {
  return severity === "stop";
}

function ownerOf({ belongsTo }: Problem): string {
  return belongsTo === undefined ? ofNothing : Object.entries(belongsTo).flat().join(" ");
}

function owners({ calibration, tag, standards = [] }: Calibration): readonly string[] {
  return [`calibration ${calibration}`, `tag ${tag}`, ...standards.map((standard) => `standard ${standard}`)];
}

/** Standards and candidates are few and serve many calibrations: they are held. */
function rowsReader(workbook: Workbook): (calibration: string) => CalibrationRows {
  const standardByName = new Map(Array.from(workbook.standards, (one) => [one.row.standard, one] as const));
  const candidatesOf = candidatesByTag([...workbook.candidates]);
  return (name) => {
    const [calibration] = workbook.calibrations.of(name);
    if (calibration === undefined) throw new TypeError(`casesOf: no calibration ${name}`);
    const { tag, standards: names = [] } = calibration.row;
    const [instrument] = workbook.instruments.of(tag);
    if (instrument === undefined) throw new TypeError(`casesOf: no instrument ${tag}, and no problem that says so`);
    const rows = {
      calibration,
      instrument,
      standards: names.flatMap((one) => standardByName.get(one) ?? []),
      outputs: workbook.outputs.of(tag),
      readings: workbook.readings.of(name),
      trips: workbook.trips.of(name),
      loopChecks: workbook.loopChecks.of(name),
      controllerLimits: workbook.controllerLimits.of(tag),
      candidates: candidatesOf(tag),
    };
    return { ...rows, files: filesOf(rows, workbook.files) };
  };
}

/** Those that any of the rows comes from. */
function filesOf({ calibration, instrument, ...rows }: Omit<CalibrationRows, "files">, files: Workbook["files"]) {
  const used = new Set([calibration.file, instrument.file]);
  for (const group of Object.values(rows)) for (const { file } of group) used.add(file);
  return files.filter(({ name }) => used.has(name));
}

type Candidates = CalibrationRows["candidates"];

/** The candidates that are considered for a tag; those that name no tag are for all of them, in one list for all. */
function candidatesByTag(candidates: Candidates): (tag: string) => Candidates {
  const named = new Set(candidates.flatMap(({ row }) => row.tags ?? []));
  const forAll = candidates.filter(({ row }) => row.tags === undefined);
  const isFor = (tag: string, tags: readonly string[] | undefined) => tags === undefined || tags.includes(tag);
  return (tag) => (named.has(tag) ? candidates.filter(({ row }) => isFor(tag, row.tags)) : forAll);
}
