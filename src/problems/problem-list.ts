import { catalogue, type ProblemCode } from "./catalogue.ts";
import type { Belonging, Place, Problem } from "./problem.ts";

type Particulars = { read?: string | undefined; values?: Problem["values"]; belongsTo?: Belonging | undefined };

/** Collects problems while the work goes on, so that one run shows all of them. */
export class ProblemList {
  readonly #problems: Problem[] = [];
  readonly #pathByFile = new Map<string, string>();

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

  /** Takes over what was noted elsewhere, as it is. */
  append(problems: readonly Problem[]): void {
    for (const problem of problems) this.#problems.push(problem);
  }

  get all(): readonly Problem[] {
    return this.#problems;
  }

  /** Says where a file of the workbook lies: problems know it by its name alone, whoever mends them by its path. */
  locate(file: string, path: string): void {
    this.#pathByFile.set(file, path);
  }

  /** All of them, with the path in the place of the name of each file that was located. */
  get located(): readonly Problem[] {
    return this.#problems.map((problem) => {
      const file = this.#pathByFile.get(problem.place.file) ?? problem.place.file;
      return { ...problem, place: { ...problem.place, file } };
    });
  }

  get hasStop(): boolean {
    return this.#problems.some((problem) => problem.severity === "stop");
  }
}
