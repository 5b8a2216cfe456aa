import { writeFileSync } from "node:fs";
import { type Kind, kinds, type Outcome, type Tried, tryDamage } from "./try-damage.ts";

/** Damages so many files of each kind, and writes what came of them. `--each 200` for fewer. */
const [option, value] = process.argv.slice(2);
const each = option === "--each" ? Number(value) : 2000;
const outcomes: readonly Outcome[] = ["told", "the same", "read as it stands", "silent", "fault"];

const found = new Map<Kind, readonly Tried[]>();
for (const kind of kinds) {
  const tried: Tried[] = [];
  for (let seed = 1; seed <= each; seed += 1) tried.push(await tryDamage(kind, seed));
  found.set(kind, tried);
  process.stdout.write(`${kind}: ${outcomes.map((outcome) => `${outcome} ${countOf(tried, outcome)}`).join(", ")}\n`);
  for (const one of tried.filter(({ outcome }) => outcome === "silent" || outcome === "fault"))
    process.stdout.write(`  seed ${one.seed}, ${one.how}: ${one.outcome} ${one.why}\n`);
}

function countOf(tried: readonly Tried[], wanted: Outcome): number {
  return tried.filter(({ outcome }) => outcome === wanted).length;
}

const rows = [...found].map(([kind, tried]) => {
  const longest = Math.max(...tried.map(({ milliseconds }) => milliseconds));
  const counts = outcomes.map((outcome) => countOf(tried, outcome));
  return `| ${[kind, tried.length, ...counts, `${(longest / 1000).toFixed(1)} s`].join(" | ")} |`;
});
const day = new Date().toISOString().slice(0, 10);
writeFileSync(
  "docs/damage-tried.md",
  `# Damaged files, tried

Made by \`npm run damage\` on ${day}; do not edit. Seeds 1 to ${each} of each kind.

A file is damaged as disks, transfers, editors and people do it: a byte or a digit exchanged, a part cut out, doubled or
zeroed, the end cut off, lines exchanged, a hostile text put in. It is **told** where a problem or a doubt names it; it
reads **the same** where the damage changed nothing that counts; **as it stands** where only somebody who knows the
right number could tell, as of a table that nobody has signed. **Silent** would be a record, a ledger or a spreadsheet
taken for what it is not, and a **fault** an end without a message.

| file | tried | told | the same | as it stands | silent | fault | longest |
| --- | --- | --- | --- | --- | --- | --- | --- |
${rows.join("\n")}
`,
);
