import type { ExampleResult } from "../jobs/self-test/run-self-test.ts";
import { counted } from "../units/counted.ts";
import type { Console } from "./console.ts";
import { type ProgramDigest, programDigest } from "./program-digest.ts";

/** How the program that runs did on published examples, and which program it is. */
export type TestedProgram = { results: readonly ExampleResult[]; digest: ProgramDigest | undefined };

/** Tests the program that runs. */
export async function testedProgram(): Promise<TestedProgram> {
  const digest = programDigest(new URL(".", import.meta.url));
  const { runSelfTest } = await import("../jobs/self-test/run-self-test.ts");
  return { results: runSelfTest(), digest: await digest };
}

/** What keeps the program from being believed, a line each; empty where nothing does. */
export function programFaults({ results, digest }: TestedProgram): readonly string[] {
  const changed = digest?.changed ?? [];
  return [
    ...results
      .filter(({ isPassed }) => !isPassed)
      .map(({ name, source, worst, gap }) => `${name} (${source}): ${worst} is off by ${gap}`),
    ...(changed.length > 0 ? [`changed since the program was built: ${changed.join(", ")}`] : []),
  ];
}

/** What a record says of the program; nothing, and a complaint, where the program is not to be believed. */
export async function programForRecord(console: Console, tested: Promise<TestedProgram> = testedProgram()) {
  const program = await tested;
  const faults = programFaults(program);
  for (const fault of faults) console.complain(`wrong  self-test  ${fault}`);
  if (faults.length > 0) {
    console.complain(
      `the program fails ${counted(faults.length, "part")} of its self-test, and wrote nothing; install it anew`,
    );
    return undefined;
  }
  const { results, digest } = program;
  return { ...(digest && { sha256: digest.sha256 }), selfTest: { passed: results.length, of: results.length } };
}
