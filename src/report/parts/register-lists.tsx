import type { OpenFinding, Register, RegisterStandard } from "../../record/register-form.ts";

/** How the folder stands, in numbers; what calls for somebody first. */
export function RegisterAnswer({ register }: { register: Register }) {
  const { rows, standards, openFindings, records, soonDays } = register;
  const inState = (state: string) => rows.filter(({ due }) => due.state === state).length;
  const past = standards.filter(({ isOverdue }) => isOverdue).length;
  const counts = [
    { count: inState("overdue"), what: "overdue", isGrave: true },
    { count: inState("not in tolerance"), what: "not left in tolerance", isGrave: true },
    { count: openFindings.length, what: "found out of tolerance, not decided yet", isGrave: true },
    { count: past, what: past === 1 ? "standard past its day" : "standards past their day", isGrave: true },
    { count: inState("due soon"), what: `due within ${soonDays} days`, isGrave: false },
    {
      count: rows.length,
      what: `${rows.length === 1 ? "loop" : "loops"}, ${records} ${records === 1 ? "record" : "records"}`,
      isGrave: false,
    },
  ];
  return (
    <section class="answer" aria-labelledby="answer-title">
      <h2 id="answer-title">How it stands</h2>
      <ul class="counts">
        {counts.map(({ count, what, isGrave }) => (
          <li key={what} class={isGrave && count > 0 ? "is-fail" : ""}>
            <strong>{count}</strong> {what}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Found out of tolerance, and nobody wrote what was decided about it. */
export function OpenFindings({ openFindings }: { openFindings: readonly OpenFinding[] }) {
  if (openFindings.length === 0) return null;
  return (
    <section aria-labelledby="open-title">
      <h2 id="open-title">Found out of tolerance, not decided yet</h2>
      <table class="plain">
        <thead>
          <tr>
            <th scope="col">Tag</th>
            <th scope="col">Record</th>
            <th scope="col">Calibrated</th>
            <th scope="col">As found</th>
          </tr>
        </thead>
        <tbody>
          {openFindings.map(({ tag, calibration, revision, path, performedOn, asFound }) => (
            <tr key={path}>
              <th scope="row" class="day">
                {tag}
              </th>
              <td>
                <a href={path}>
                  {calibration}, revision {revision}
                </a>
              </td>
              <td>{performedOn === null ? "day not stated" : <span class="day">{performedOn}</span>}</td>
              <td>{asFound}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** The standards that the last records rest on. */
export function RegisterStandards({ standards }: { standards: readonly RegisterStandard[] }) {
  if (standards.length === 0) return null;
  return (
    <section aria-labelledby="standards-title">
      <h2 id="standards-title">Standards in use</h2>
      <table class="plain">
        <thead>
          <tr>
            <th scope="col">Standard</th>
            <th scope="col">Certificate</th>
            <th scope="col">Due on</th>
            <th scope="col">Last records that rest on it</th>
          </tr>
        </thead>
        <tbody>
          {standards.map(({ standard, certificate, dueOn, isOverdue, tags }) => (
            <tr key={standard}>
              <th scope="row">{standard}</th>
              <td>{certificate}</td>
              <td>
                <span class="day">{dueOn}</span> {isOverdue && <strong>past its day</strong>}
              </td>
              <td class="number">{tags}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
