import { DuckDBInstance } from "@duckdb/node-api";

/** Answers of DuckDB to several statements, one after the other; paths are from `folder` on. */
export async function askedOfDuckDb(
  folder: string,
  statements: readonly string[],
): Promise<readonly (readonly Record<string, unknown>[])[]> {
  const engine = await DuckDBInstance.create(":memory:", { threads: "2" });
  const connection = await engine.connect();
  try {
    await connection.run(`SET file_search_path = '${folder.replaceAll("'", "''")}'`);
    const answers = [];
    for (const statement of statements) {
      answers.push((await connection.runAndReadAll(statement)).getRowObjectsJson());
    }
    return answers;
  } finally {
    connection.closeSync();
    engine.closeSync();
  }
}
