import { catalogue, type ProblemCode } from "./catalogue.ts";
import type { Belonging, Place, Problem } from "./problem.ts";

type Particulars = { read?: string | undefined; values?: Problem["values"]; belongsTo?: Belonging | undefined };

/** Collects problems while the work goes on, so that one run shows all of them. */
export class ProblemList {
  readonly #problems: Problem[] = [];

  /** Notes one problem; its severity is the catalogue's. */
  add(code: ProblemCode, place: Place, { read, values = {}, belongsTo }: Particulars = {}): void {
    this.#problems.push({
      code,
      severity: catalogue[code].severity,
      place,
      values,
      ...(read !== undefined && { read }),
      ...(belongsTo !== undefined && { belongsTo }),
    });
  }

  get all(): readonly Problem[] {
    return this.#problems;
  }

  get hasStop(): boolean {
    return this.#problems.some((problem) => problem.severity === "stop");
  }
}
