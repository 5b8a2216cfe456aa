import { type FigureKey, figureDefinitions } from "./figure-definitions.ts";
import { phaseNames } from "./phase-name.ts";

/** Figures whose meaning or method is another from a version of the program on: one figure, or a whole part of a record. */
export type ChangedFigure = { since: string; why: string } & ({ key: FigureKey } | { below: string });

const budgeted =
  "one cycle's scatter, differences between cycles, measured or assumed, and the scatter of a point count in a budget";
const keysOfBudgets: readonly FigureKey[] = [
  ...(["divisor", "sensitivity", "standardUncertainty", "degreesOfFreedom", "shareOfVariance"] as const),
  ...([
    "combinedUncertainty",
    "effectiveDegreesOfFreedom",
    "coverageFactor",
    "expandedUncertainty",
    "monteCarlo",
  ] as const),
  ...(["guardBand", "acceptanceLimit", "testUncertaintyRatio", "specificRisk"] as const),
];
const judged = "for the rule as it is applied to all results, with measuring taken out of the found rate";
const keysOfRisks: readonly FigureKey[] = ["globalFalseAccept", "globalFalseReject"];
const placesOfLines: readonly string[] = phaseNames.flatMap((phase) =>
  ["uncertainLine", "zeroError.combinedStandardUncertainty", "spanError.combinedStandardUncertainty"].map(
    (place) => `phases.${phase}.${place}`,
  ),
);

/**
 * Every figure that a later version computes otherwise, with the version from which on: records written before it are
 * not held against what today's program computes of their rows.
 */
export const changedFigures: readonly ChangedFigure[] = Object.freeze([
  {
    below: "overTheYears",
    since: "0.2.0",
    why: "a history ends at another serial number and another part of the loop",
  },
  {
    below: "overTheYears",
    since: "0.3.0",
    why: "the scatter is pooled over the test points, a change leaves out the same certificates, a longer interval asks for two results",
  },
  ...keysOfBudgets.map((key) => ({ key, since: "0.3.0", why: budgeted })),
  ...keysOfRisks.map((key) => ({ key, since: "0.3.0", why: judged })),
  ...placesOfLines.map((below) => ({
    below,
    since: "0.3.0",
    why: "steps, cycles, their slopes, the form of a certificate and, in the tests of the line and of the slopes, a scatter that grows count",
  })),
  ...["causes", "reteach", "recommendation"].map((below) => ({
    below,
    since: "0.3.0",
    why: "railed, wild, exchanged and mistyped readings are set aside, and what the stated air explains is taken off first",
  })),
  ...phaseNames.map((phase) => ({
    below: `switching[].phases.${phase}.shares`,
    since: "0.3.0",
    why: "the uncertainty of the analog value at the set point comes from its budget",
  })),
  ...["loopChecks.notLookedAt", "loopChecks.items[].number"].map((below) => ({
    below,
    since: "0.3.0",
    why: "the list of checks is longer, and counted for each loop",
  })),
  { below: "loopChecks.burden", since: "0.3.0", why: "the burden is reckoned with the highest current of the loop" },
  { below: "impact.rows[]", since: "0.2.0", why: "an outermost test point stands for places a little beyond it" },
]);

/**
 * What changed for one record: the list above and, where today's program leaves out readings that stand at an end of the
 * signal, the phase that holds them and what follows from it.
 *
 * @param phases of the record as today's program makes it of the same rows
 * @returns every change that counts for it
 * Source: own choice: a phase without such a reading is held to its figures as before.
 * @example changedFor({}).length === changedFigures.length // true
 */
export function changedFor(phases: Readonly<Record<string, unknown>>): readonly ChangedFigure[] {
  const railed = Object.entries(phases).filter(([, phase]) => railedIn(phase));
  const places = railed.map(([name]) => `phases.${name}`);
  const why = "readings that stand at an end of the signal are in no figure";
  return [
    ...changedFigures,
    ...[...places, ...(places.length > 0 ? ["impact"] : [])].map((below) => ({ below, since: "0.3.0", why })),
  ];
}

function railedIn(phase: unknown): boolean {
  const { readings = [] } = (phase ?? {}) as { readings?: readonly { railed?: unknown }[] };
  return readings.some(({ railed }) => railed !== undefined);
}

const fieldsByKey = figureDefinitions.flatMap(({ key, fields }) => fields.map((field) => ({ key, field })));

/**
 * The figure that stands at a place of a record.
 *
 * @param path names from the top of the record, `[]` for any element of a list
 * @returns key of the definition whose longest field ends the path; undefined where no figure stands there
 * Source: own choice.
 * @example figureAt("phases.asFound.points[].specificRisk") // "specificRisk"
 */
export function figureAt(path: string): FigureKey | undefined {
  if (!keyByPath.has(path)) keyByPath.set(path, longestFitting(path));
  return keyByPath.get(path);
}

/** Paths repeat from record to record. */
const keyByPath = new Map<string, FigureKey | undefined>();

function longestFitting(path: string): FigureKey | undefined {
  const fitting = fieldsByKey.filter(({ field }) => path === field || path.endsWith(`.${field}`));
  return fitting.toSorted((one, other) => partsOf(other.field) - partsOf(one.field))[0]?.key;
}

function partsOf(field: string): number {
  return field.split(".").length;
}

/**
 * Whether what stands at a place of a record means today what it meant when a version of the program wrote it.
 *
 * @param path names from the top of the record, `[]` for any element of a list
 * @param version of the program that wrote it; a later one than today's is taken to mean the same
 * @param changes what changed, by default all that did
 * @returns false where its meaning or method changed since
 * Source: own choice.
 * @example isSameFigure("overTheYears.places[].drift.perYear", "0.1.0") // false
 */
export function isSameFigure(
  path: string,
  version: string,
  changes: readonly ChangedFigure[] = changedFigures,
): boolean {
  return changes.every((change) => !isAbout(change, path) || !isBefore(version, change.since));
}

function isAbout(change: ChangedFigure, path: string): boolean {
  if ("key" in change) return figureAt(path) === change.key;
  const rest = path.startsWith(change.below) ? path.slice(change.below.length) : "x";
  return rest === "" || rest.startsWith(".") || rest.startsWith("[");
}

function isBefore(version: string, since: string): boolean {
  const [one, other] = [version, since].map((text) => text.split(".").map((part) => Number.parseInt(part, 10) || 0));
  for (const [index, part] of (other ?? []).entries()) {
    const mine = one?.[index] ?? 0;
    if (mine !== part) return mine < part;
  }
  return false;
}
