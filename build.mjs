import { createHash } from "node:crypto";
import { copyFileSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { build } from "esbuild";
import { buildCommand } from "./command-parts.mjs";
import { program } from "./packed-program.mjs";
import { recordTypes } from "./record-types.mjs";
import { thirdPartyText } from "./third-party.mjs";

const schema = "src/record/record.schema.json";

const command = await buildCommand();

// The form of a record, for programs that read records: nothing of the command, and nothing of Node.
const form = await build({
  bundle: true,
  format: "esm",
  platform: "neutral",
  target: "es2022",
  entryPoints: ["src/record/published.ts"],
  outfile: "dist/record.mjs",
  metafile: true,
  logLevel: "warning",
});
writeFileSync("dist/record.d.ts", recordTypes(JSON.parse(readFileSync(schema, "utf8"))));
copyFileSync(schema, "dist/record.schema.json");

const outputs = { ...command.metafile.outputs, ...form.metafile.outputs };
const { metafile: sheet } = await program(resolve("src/sheet/main.browser.tsx"));
writeFileSync("THIRD-PARTY.md", thirdPartyText({ outputs: { ...outputs, ...sheet.outputs } }));

const files = [...command.files, "dist/record.mjs", "dist/record.d.ts", "dist/record.schema.json"].sort();

// As sha256sum lists and checks them; the digest of this list is that of the program.
const digestOf = (file) => createHash("sha256").update(readFileSync(file)).digest("hex");
const listed = files.map((file) => `${digestOf(file)}  ${file.slice("dist/".length)}\n`);
writeFileSync("dist/program.sha256", listed.join(""));

// Parts of an earlier build go last: a build that fails leaves a whole command behind.
const written = [...files, "dist/program.sha256"];
for (const name of readdirSync("dist")) {
  if (!written.includes(`dist/${name}`)) rmSync(`dist/${name}`, { recursive: true });
}
