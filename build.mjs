import { createHash } from "node:crypto";
import { copyFileSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { build } from "esbuild";
import { bundleSettings } from "./bundle-settings.mjs";
import { program } from "./packed-program.mjs";
import { recordTypes } from "./record-types.mjs";
import { thirdPartyText } from "./third-party.mjs";

const schema = "src/record/record.schema.json";

// Split, so that each part loads only when a command needs it.
const command = await build({
  ...bundleSettings,
  entryPoints: {
    cli: "src/cli/cli.ts",
    "report-worker": "src/cli/report-worker.ts",
    "verify-worker": "src/cli/verify-worker.ts",
  },
  outdir: "dist",
  splitting: true,
  metafile: true,
});

// The form of a record, for programs that read records: nothing of the command, and nothing of Node.
const form = await build({
  bundle: true,
  format: "esm",
  platform: "neutral",
  target: "es2022",
  entryPoints: { record: "src/record/published.ts" },
  outdir: "dist",
  metafile: true,
  logLevel: "warning",
});
writeFileSync("dist/record.d.ts", recordTypes(JSON.parse(readFileSync(schema, "utf8"))));
copyFileSync(schema, "dist/record.schema.json");

const outputs = { ...command.metafile.outputs, ...form.metafile.outputs };
const { metafile: sheet } = await program(resolve("src/sheet/main.browser.tsx"));
writeFileSync("THIRD-PARTY.md", thirdPartyText({ outputs: { ...outputs, ...sheet.outputs } }));

const files = [...Object.keys(outputs), "dist/record.d.ts", "dist/record.schema.json"].sort();

// As sha256sum lists and checks them; the digest of this list is that of the program.
const digestOf = (file) => createHash("sha256").update(readFileSync(file)).digest("hex");
const listed = files.map((file) => `${digestOf(file)}  ${file.slice("dist/".length)}\n`);
writeFileSync("dist/program.sha256", listed.join(""));

// Parts of an earlier build go last: a build that fails leaves a whole command behind.
const written = [...files, "dist/program.sha256"];
for (const name of readdirSync("dist")) {
  if (!written.includes(`dist/${name}`)) rmSync(`dist/${name}`, { recursive: true });
}
