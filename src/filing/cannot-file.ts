import type { ProblemCode } from "../problems/catalogue.ts";
import type { Problem } from "../problems/problem.ts";

/** A page cannot be filed, or the folder not written to: a problem of the user's, thrown through the lock. */
export class CannotFile extends Error {
  readonly code: ProblemCode;
  readonly values: Problem["values"];

  constructor(code: ProblemCode, values: Problem["values"] = {}) {
    super(code);
    this.code = code;
    this.values = values;
  }
}
