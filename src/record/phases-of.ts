import { type PhaseName, phaseNames, phaseTitles } from "./phase-name.ts";

/** Something that may have been looked at in each phase: a loop, a switched output. */
export type InPhases<Phase> = { phases: { [Name in PhaseName]?: Phase | undefined } };

/** One phase with its name, and its title for whoever prints it. */
export type NamedPhase<Phase> = { name: PhaseName; title: string; phase: Phase };

/**
 * The phases that a record, or a switched output of it, has.
 *
 * @param of record or switched output
 * @returns phases in the order of the work; those that were not looked at are not there
 * Source: own choice.
 * @example phasesOf({ phases: { asLeft: 2 } }) // [{ name: "asLeft", title: "As left", phase: 2 }]
 */
export function phasesOf<Phase>({ phases }: InPhases<Phase>): readonly NamedPhase<Phase>[] {
  return phaseNames.flatMap((name) => {
    const phase = phases[name];
    return phase === undefined ? [] : [{ name, title: phaseTitles[name], phase }];
  });
}

/**
 * The name of the phase that tells how the loop stands now.
 *
 * @param of record or switched output
 * @returns "asLeft", or "asFound" where it was not read again
 * Source: own choice.
 * @example lastPhaseName({ phases: {} }) // "asFound"
 */
export function lastPhaseName({ phases }: InPhases<unknown>): PhaseName {
  return phases.asLeft === undefined ? "asFound" : "asLeft";
}

/**
 * The phase that tells how the loop stands now: as left, or as found where it was not read again.
 *
 * @param of record or switched output
 * @returns the last phase; undefined where none was looked at
 * Source: own choice.
 * @example lastPhaseOf({ phases: { asFound: 1 } })?.name // "asFound"
 */
export function lastPhaseOf<Phase>(of: InPhases<Phase>): NamedPhase<Phase> | undefined {
  return phasesOf(of).at(-1);
}
