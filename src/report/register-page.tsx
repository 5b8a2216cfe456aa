import { renderToString } from "preact-render-to-string";
import type { Drawing } from "../charts/drawing/draw.ts";
import type { Register } from "../record/register-form.ts";
import { counted } from "../units/counted.ts";
import { registerColumns } from "./columns/register-columns.tsx";
import { FoundTable } from "./parts/found-table.tsx";
import { Picture } from "./parts/pictures.tsx";
import { LateCalibrations, OpenFindings, RegisterAnswer, RegisterStandards } from "./parts/register-lists.tsx";
import { searchedDocument } from "./searched-document.ts";
import { dueStates } from "./texts/register-texts.ts";

/** What a folder of records says, as one page that reads without its script and is searched and sorted with it. */
export function renderRegister(register: Register, rates: Drawing | undefined): string {
  return searchedDocument({
    title: `Register of calibrations, ${register.on}`,
    style: footOf(register.on),
    body: renderToString(<RegisterPage register={register} rates={rates} />),
  });
}

/** The foot of every printed page; a day has no sign that style would read. */
function footOf(day: string): string {
  return `@page{@bottom-left{content:"Register of calibrations on ${day}"}}`;
}

function RegisterPage({ register, rates }: { register: Register; rates: Drawing | undefined }) {
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
      <OpenFindings openFindings={register.openFindings} />
      <FoundTable
        title="Loops"
        label="Loops, a row each"
        columns={registerColumns}
        rows={register.rows}
        states={dueStates}
        stateOf={({ due }) => due.state}
      />
      <LateCalibrations late={register.late} />
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
