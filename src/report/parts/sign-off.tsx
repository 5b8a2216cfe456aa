import type { CalibrationRecord } from "../../record/record-schema.ts";

/** Lines for ink; the record stays a draft until they are filled in. */
export function SignOff({ record }: { record: CalibrationRecord }) {
  const { calibration } = record;
  const lines = [
    { meaning: "Performed by", name: calibration.performedBy, date: calibration.performedOn },
    { meaning: "Reviewed by", name: calibration.reviewedBy, date: calibration.reviewedOn },
    { meaning: "Approved by", name: calibration.approvedBy, date: calibration.approvedOn },
  ];
  return (
    <section class="sign-off" aria-labelledby="sign-off-title">
      <h2 id="sign-off-title">Sign-off</h2>
      <table class="plain">
        <thead>
          <tr>
            <th scope="col">Meaning</th>
            <th scope="col">Name</th>
            <th scope="col">Date</th>
            <th scope="col">Signature</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ meaning, name, date }) => (
            <tr key={meaning}>
              <th scope="row">{meaning}</th>
              <td>{name}</td>
              <td>{date}</td>
              <td class="ink" />
            </tr>
          ))}
        </tbody>
      </table>
      <p class="end">End of record {calibration.calibration}</p>
    </section>
  );
}
