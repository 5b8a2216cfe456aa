/** A name and what was stated; what the workbook leaves empty says so. */
export function Fact({ name, value }: { name: string; value: string | undefined }) {
  return (
    <div class="fact">
      <dt>{name}</dt>
      <dd>{value === undefined ? <span class="not-stated">not stated</span> : <bdi>{value}</bdi>}</dd>
    </div>
  );
}
