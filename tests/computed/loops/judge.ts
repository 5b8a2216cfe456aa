import type { CalibrationRecord, Statement } from "../../../src/record/record-schema.ts";
import { type Answer, answersOf, wordOf } from "./answers-of.ts";
import type { Advice } from "./kinds/kind.ts";
import { kindOf } from "./kinds/kinds.ts";
import { type MadeLoop, makeLoop } from "./make-loop.ts";
import { calledOf, type Finding, findingsIn, isLeftOpen, isNamed } from "./named-as.ts";
import { type Fault, scatterKinds, type Truth } from "./truth.ts";

/** How far a fault was found by its name. */
export type Naming = "named" | "as one that it cannot be told from" | "only as not excluded" | "another" | "none";

/** What was asked of one loop, and what came of it. */
export type Judged = {
  made: MadeLoop;
  isRefused: boolean;
  broke: string | null;
  codes: readonly string[];
  word: Statement | null;
  wordAsLeft: Statement | null;
  advice: Advice | null;
  /** The advice and what is to come after it. */
  steps: readonly Advice[];
  titles: readonly string[];
  titlesAsLeft: readonly string[];
  /** One for each fault that has to be named. */
  naming: readonly { fault: Fault; naming: Naming }[];
  /** Titles of findings that no fault of the loop bears out. */
  strange: readonly string[];
  isAdviceRight: boolean;
  isFalseReplace: boolean;
  isFalsePass: boolean;
  isFalsePassAsLeft: boolean;
  isFalseFail: boolean;
  record: CalibrationRecord | null;
};

export const nameOf = ({ seed }: MadeLoop): string => `L${seed}`;

/** Makes the loops of some seeds, asks the program about them, and compares with what is so. */
export async function judge(seeds: readonly number[]): Promise<readonly Judged[]> {
  const made = seeds.map(makeLoop);
  const answers = await answersOf(
    made.map((loop) => ({ name: nameOf(loop), asFound: loop.asFound, asLeft: loop.asLeft })),
  );
  return made.map((loop) => judged(loop, answers.get(nameOf(loop)) ?? { record: null, broke: null, codes: [] }));
}

function judged(made: MadeLoop, answer: Answer): Judged {
  const { record, codes, broke } = answer;
  const recommended = record?.recommendation?.asFound;
  const advice = recommended?.action ?? null;
  const steps = recommended ? [recommended.action, ...recommended.also.map(({ action }) => action)] : [];
  const word = wordOf(answer, "asFound");
  const wordAsLeft = made.asLeft === null ? null : wordOf(answer, "asLeft");
  const isRefused = record === null && broke === null;
  const findings = findingsIn(record, "asFound");
  return {
    made,
    isRefused,
    broke,
    codes,
    word,
    wordAsLeft,
    advice,
    steps,
    titles: findings.map(calledOf),
    titlesAsLeft: findingsIn(record, "asLeft").map(calledOf),
    naming: namingOf(made, record),
    strange: findings.filter((finding) => !isBorneOut(made, finding)).map(calledOf),
    isAdviceRight: isRefused ? made.mayBeRefused : advice !== null && isRight(made, advice, findings),
    isFalseReplace: made.family !== "doubtful" && advice === "replace" && !made.advice.includes("replace"),
    isFalsePass: word === "pass" && isClearlyOut(made.asFound.truth),
    isFalsePassAsLeft: wordAsLeft === "pass" && made.asLeft !== null && isClearlyOut(made.asLeft.truth),
    isFalseFail: made.family === "healthy" && word !== "pass",
    record,
  };
}

/**
 * Right is what an engineer would let stand; also what is right for another fault that the same readings fit, where
 * the record names that one and leaves the true one open. 'Leave' is no such advice.
 */
function isRight({ advice: right, faults }: MadeLoop, advice: Advice, findings: readonly Finding[]): boolean {
  if (right.includes(advice)) return true;
  return faults.some(({ kind: { id, alike = [] } }) =>
    alike.some(
      (other) =>
        kindOf(other).advice.includes(advice) &&
        findings.some((finding) => isNamed(other, finding) && isLeftOpen(id, finding)),
    ),
  );
}

function isBorneOut({ faults }: MadeLoop, finding: Finding): boolean {
  return faults.some(({ kind: { id, alike = [] } }) => [id, ...alike].some((kind) => isNamed(kind, finding)));
}

/** Outside by more than the expanded uncertainty of a test point. */
export function isClearlyOut({ worst, uncertainty, output }: Truth): boolean {
  return worst > 1 + uncertainty || output === "out";
}

/** A fault has to be named where it puts the loop out, whatever else is there, and where the readings can tell it. */
function namingOf(made: MadeLoop, record: CalibrationRecord | null): Judged["naming"] {
  if (record === null) return [];
  const { truth } = made.asFound;
  const findings = record.causes?.asFound?.findings ?? [];
  const isOut = truth.worstOfStages > 1 + truth.uncertainty || truth.output === "out";
  const asked = made.faults.filter(
    ({ kind, size }) =>
      made.family !== "doubtful" &&
      !kind.isNameless &&
      (isOut || kind.isAlwaysMended || kind.miswrite || (scatterKinds.has(kind.id) && truth.scatter > 1)) &&
      (size === null || size >= 1),
  );
  return asked.map((fault) => {
    const { id, alike = [] } = fault.kind;
    const others = findings.filter((finding) => !made.faults.some(({ kind }) => isNamed(kind.id, finding)));
    const naming = findings.some((finding) => isNamed(id, finding))
      ? "named"
      : others.some((finding) => alike.some((other) => isNamed(other, finding)))
        ? "as one that it cannot be told from"
        : findings.some((finding) => isLeftOpen(id, finding))
          ? "only as not excluded"
          : others.length > 0
            ? "another"
            : "none";
    return { fault, naming };
  });
}

export const isFound = ({ naming }: { naming: Naming }): boolean =>
  naming === "named" || naming === "as one that it cannot be told from";
