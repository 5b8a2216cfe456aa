import type { Calibration } from "../model/calibration.ts";
import type { CalibrationRows, TableRow } from "../model/calibration-case.ts";
import { groupedBy } from "../model/grouped-by.ts";
import type { ProblemCode } from "../problems/catalogue.ts";
import type { Problem } from "../problems/problem.ts";
import type { Workbook } from "./build-workbook.ts";

/** One calibration with every row that its record needs, and the warnings that touch it. */
export type CalibrationCase = CalibrationRows & { warnings: readonly Problem[] };

/** Warnings about the run, not about what any record says. */
const runCodes: ReadonlySet<ProblemCode> = new Set(["tables/file-unknown", "tables/file-kind"]);

const ofNothing = "";

/**
 * The calibrations that no problem of severity stop touches, in the order of their table. A stop that belongs to
 * nothing in particular touches every calibration. The time taken grows with the number of rows, not faster.
 */
export function casesOf(workbook: Workbook, problems: readonly Problem[]): readonly CalibrationCase[] {
  const problemsByOwner = groupedBy(problems, ownerOf);
  const rows = indexed(workbook);
  const everyones = (problemsByOwner.get(ofNothing) ?? []).filter(({ code }) => !runCodes.has(code));
  if (everyones.some(isStop)) return [];
  return workbook.calibrations.flatMap((calibration) => {
    const own = owners(calibration.row).flatMap((owner) => problemsByOwner.get(owner) ?? []);
    return own.some(isStop) ? [] : [{ ...caseRows(calibration, rows), warnings: [...everyones, ...own] }];
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

function indexed(workbook: Workbook) {
  return {
    instrumentByTag: new Map(workbook.instruments.map((one) => [one.row.tag, one])),
    standardByName: new Map(workbook.standards.map((one) => [one.row.standard, one])),
    outputsByTag: groupedBy(workbook.outputs, ({ row }) => row.tag),
    readingsByCalibration: groupedBy(workbook.readings, ({ row }) => row.calibration),
    tripsByCalibration: groupedBy(workbook.trips, ({ row }) => row.calibration),
    loopChecksByCalibration: groupedBy(workbook.loopChecks, ({ row }) => row.calibration),
    controllerLimitsByTag: groupedBy(workbook.controllerLimits, ({ row }) => row.tag),
    candidatesOf: candidatesByTag(workbook.candidates),
    files: workbook.files,
  };
}

function caseRows(calibration: TableRow<Calibration>, rows: ReturnType<typeof indexed>) {
  const { calibration: id, tag, standards: names = [] } = calibration.row;
  const instrument = rows.instrumentByTag.get(tag);
  if (instrument === undefined) throw new TypeError(`casesOf: no instrument ${tag}, and no problem that says so`);
  const standards = names.flatMap((name) => rows.standardByName.get(name) ?? []);
  const outputs = rows.outputsByTag.get(tag) ?? [];
  const readings = rows.readingsByCalibration.get(id) ?? [];
  const trips = rows.tripsByCalibration.get(id) ?? [];
  const loopChecks = rows.loopChecksByCalibration.get(id) ?? [];
  const controllerLimits = rows.controllerLimitsByTag.get(tag) ?? [];
  const candidates = rows.candidatesOf(tag);
  const used = new Set<string>();
  for (const { file } of [calibration, instrument, ...standards, ...outputs, ...controllerLimits, ...candidates])
    used.add(file);
  for (const group of [readings, trips, loopChecks]) for (const { file } of group) used.add(file);
  const files = rows.files.filter(({ name }) => used.has(name));
  return {
    calibration,
    instrument,
    standards,
    outputs,
    readings,
    trips,
    loopChecks,
    controllerLimits,
    candidates,
    files,
  };
}

/** The candidates that are considered for a tag; those that name no tag are for all of them, in one list for all. */
function candidatesByTag(candidates: Workbook["candidates"]): (tag: string) => Workbook["candidates"] {
  const named = new Set(candidates.flatMap(({ row }) => row.tags ?? []));
  const forAll = candidates.filter(({ row }) => row.tags === undefined);
  const isFor = (tag: string, tags: readonly string[] | undefined) => tags === undefined || tags.includes(tag);
  return (tag) => (named.has(tag) ? candidates.filter(({ row }) => isFor(tag, row.tags)) : forAll);
}
