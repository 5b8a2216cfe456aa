import { renderToString } from "preact-render-to-string";
import type { Drawing } from "../charts/drawing/draw.ts";
import type { Register, RegisterRow } from "../record/register-form.ts";
import { counted } from "../units/counted.ts";
import { registerColumns } from "./columns/register-columns.tsx";
import { FoundTable, type PartLink, PartLinks, partsWords } from "./parts/found-table.tsx";
import { Picture } from "./parts/pictures.tsx";
import { LateCalibrations, OpenFindings, RegisterAnswer, RegisterStandards } from "./parts/register-lists.tsx";
import { footOf, type RegisterParts, registerParts } from "./register-parts.tsx";
import { mostInOnePage, type PagesInParts, packedRows, shownAtOnce } from "./rows-in-parts.tsx";
import { searchedDocument } from "./searched-document.ts";
import { dueStates } from "./texts/register-texts.ts";

/** Rows of its other lists that stand in a page which has parts. */
const shownOfLists = 30;

/**
 * What a folder of records says, as a page that reads without its script and is searched and sorted with it.
 *
 * @param name of the register, without the ending: that of its parts too
 */
export function renderRegister(register: Register, rates: Drawing | undefined, name = "register"): PagesInParts {
  const parts = register.rows.length <= mostInOnePage ? undefined : registerParts(register, name);
  const page = searchedDocument({
    title: `Register of calibrations, ${register.on}`,
    style: footOf(register.on),
    body: renderToString(<RegisterPage register={register} rates={rates} parts={parts} />),
    ...(parts && { data: packedRows({ columns: registerColumns, rows: register.rows, stateOf }) }),
  });
  return { page, parts: parts === undefined ? [] : Object.values(parts).flat() };
}

const stateOf = ({ due }: RegisterRow) => due.state;

type RegisterPageProps = { register: Register; rates: Drawing | undefined; parts: RegisterParts | undefined };

function RegisterPage({ register, rates, parts }: RegisterPageProps) {
  const { rows, openFindings, late } = register;
  return (
    <main>
      <header class="heading">
        <div>
          <p class="kind">Register of calibrations</p>
          <h1>On {register.on}</h1>
          <p class="subject">every loop by its last filed record</p>
          {register.disposedSince > 0 && (
            <p class="subject">without {counted(register.disposedSince, "record")} disposed of since</p>
          )}
        </div>
      </header>
      <RegisterAnswer register={register} />
      <OpenFindings openFindings={parts ? openFindings.slice(0, shownOfLists) : openFindings} />
      {parts && <Further links={parts.open} shown={shownOfLists} count={openFindings.length} />}
      {parts && parts.due.length > 0 && <DueFirst links={parts.due} />}
      <FoundTable
        title="Loops"
        label="Loops, a row each"
        columns={registerColumns}
        rows={parts ? rows.slice(0, shownAtOnce) : rows}
        states={dueStates}
        stateOf={stateOf}
        {...(parts && { parts: { count: rows.length, links: parts.loops } })}
      />
      <LateCalibrations late={parts ? late.slice(0, shownOfLists) : late} />
      {parts && <Further links={parts.late} shown={shownOfLists} count={late.length} />}
      <RegisterStandards standards={register.standards} />
      {rates && (
        <section class="rates" aria-labelledby="rates-title">
          <h2 id="rates-title">Found in tolerance, year by year</h2>
          <Picture drawing={rates} kind="half" />
        </section>
      )}
      <section aria-labelledby="reading-title">
        <h2 id="reading-title">How to read it</h2>
        <p class="small">
          As found and as left: the statement, and the worst reading in percent of span; where nothing was adjusted, a
          loop was left as it was found. Drift: how far the fitted line of the error moved since the record before, at
          the end of the range that moved more, a year. A date is given only where a record left the loop in tolerance
          and somebody agreed to its interval. The page is made from the folder's index; whether the records may be
          believed is checked by spanwright verify.
        </p>
      </section>
    </main>
  );
}

/** What a reader without scripts cannot choose from the table. */
function DueFirst({ links }: { links: readonly PartLink[] }) {
  return (
    <details class="in-parts">
      <summary>Loops that are overdue or due soon, the earliest first, {partsWords(links)}</summary>
      <PartLinks links={links} />
    </details>
  );
}

/** Where the rest of a list is that is longer than what a page shows of it. */
function Further({ links, shown, count }: { links: readonly PartLink[]; shown: number; count: number }) {
  if (count <= shown) return null;
  return (
    <div class="in-parts">
      <p>
        {shown} of {count} stand above; all of them, {partsWords(links)}:
      </p>
      <PartLinks links={links} />
    </div>
  );
}
