import type { Command } from "commander";

/** One line that does something sensible, by the command's name. */
const examples: Readonly<Record<string, string>> = {
  new: "spanwright new my-loops --example",
  check: "spanwright check my-loops",
  report: "spanwright report my-loops --out records",
  "loop-checks": "spanwright loop-checks my-loops --tag LT-310",
  rows: "spanwright rows my-loops --tag LT-310 --points 5 --cycles 3",
  sheet: "spanwright sheet my-loops --tag LT-310 --out sheets",
  collect: "spanwright collect sheets/*.zip --into my-loops",
  file: 'spanwright file records/LT-310/C-2026-015.html --into filed --by "Ada Specimen"',
  extract: "spanwright extract records/LT-310/C-2026-015.html --out tables",
  workbook: "spanwright workbook records/LT-310/C-2026-015.html --out spreadsheets",
  amend:
    'spanwright amend filed/LT-310/2026-03-17_C-2026-015_r1.html --with put-right --reason "a slip" --by "Ada Specimen" --out records',
  decide: 'spanwright decide filed LT-310 C-2026-015 --decision "no impact, because …" --by "Ada Specimen"',
  withdraw:
    'spanwright withdraw filed LT-310 C-2026-015 --revision 1 --reason "the page of another loop" --by "Ada Specimen"',
  restore: 'spanwright restore filed LT-310 C-2026-015 --revision 1 --reason "it was right" --by "Ada Specimen"',
  retire: 'spanwright retire filed LT-310 --reason "the tank was taken down" --by "Ada Specimen"',
  rename: 'spanwright rename filed LT-310 LT-1310 --reason "tags of four digits" --by "Ada Specimen"',
  move: 'spanwright move filed LT-310 --to "hall 4" --reason "the line was moved" --by "Ada Specimen"',
  dispose: 'spanwright dispose filed --before 2016-01-01 --reason "kept for ten years" --by "Ada Specimen"',
  register: "spanwright register filed",
  due: "spanwright due filed --within 6w --calendar due.ics",
  history: "spanwright history filed --tag LT-310 --out LT-310.html",
  "where-used": "spanwright where-used filed --standard METER-3",
  trail: "spanwright trail filed --tag LT-310",
  explain: "spanwright explain U",
  "keys new": 'spanwright keys new --name "Ada Specimen" --role "quality manager" --out ada.pem',
  "keys passphrase": "spanwright keys passphrase --key ada.pem",
  sign: "spanwright sign records/LT-310/C-2026-015.html --as performed --key ines.pem",
  verify: "spanwright verify filed --signers signers.csv",
  label: "spanwright label records --out labels.html",
  pdf: "spanwright pdf records --paper A4",
  "self-test": "spanwright self-test",
  completion: "spanwright completion bash",
};

const done = "0 done, whatever the verdict";
const wrong = "2 the tables or the command line are wrong, a page cannot be read, or nothing could be written";

const ofOwn: Readonly<Record<string, readonly string[]>> = {
  verify: ["0 no doubt", "1 any doubt", wrong],
  "self-test": ["0 every example as published", "1 any that is off, or a file of the program that was changed"],
};

/** What stands after the help of a command: an example, and what it ends with. */
export function helpAfter(command: Command): string {
  const name = command.parent?.name() === "keys" ? `keys ${command.name()}` : command.name();
  const example = examples[name];
  const codes = ofOwn[name] ?? [done, wrong];
  return `${example === undefined ? "" : `\nExample:\n  ${example}\n`}\nEnds with:\n${codes.map((code) => `  ${code}`).join("\n")}`;
}

/** Adds that to each command that does something. */
export function addHelpAfter(command: Command): void {
  for (const one of command.commands) addHelpAfter(one);
  if (command.commands.length === 0) command.addHelpText("after", () => helpAfter(command));
}
