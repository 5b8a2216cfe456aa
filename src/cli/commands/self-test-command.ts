import { version } from "../../../package.json";
import { counted } from "../../units/counted.ts";
import type { AddCommand } from "../command.ts";
import type { Console } from "../console.ts";
import { alignedTable } from "../print-table.ts";
import { programFaults, type TestedProgram, testedProgram } from "../tested-program.ts";

/** `spanwright self-test`: published examples, computed by the installed program. */
export async function selfTestCommand(
  console: Console,
  program: Promise<TestedProgram> = testedProgram(),
): Promise<0 | 1> {
  const { results, digest } = await program;
  const rows = results.map(({ name, source, figures, isPassed, worst, gap }) => [
    ...[isPassed ? "as published" : "OFF", name, source, figures, worst, gap],
  ]);
  console.print(
    alignedTable([["", "example", "source", "figures", "worst of them", "gap, of what is allowed"], ...rows]),
  );
  console.print(programLine(digest));
  const faults = programFaults({ results, digest });
  for (const fault of faults) console.complain(`wrong  self-test  ${fault}`);
  const passed = results.filter(({ isPassed }) => isPassed).length;
  console.print(`${passed} of ${counted(results.length, "example")} as published`);
  return faults.length === 0 ? 0 : 1;
}

function programLine(digest: TestedProgram["digest"]): string {
  if (digest === undefined) return `spanwright ${version}; no list of its files lies beside it, so it has no digest`;
  const state = digest.changed.length === 0 ? "its files are as they were built" : "NOT as it was built";
  return `spanwright ${version}, SHA-256 of the list of its files ${digest.sha256}; ${state}`;
}

export const addSelfTestCommand: AddCommand = (program, console, settle) => {
  program
    .command("self-test")
    .description("compute published examples with this very program, and say how far off each is")
    .action(async () => {
      settle(await selfTestCommand(console));
    });
};
