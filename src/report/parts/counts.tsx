type CountsProps = {
  title: string;
  counts: readonly { count: number; what: string /** Calls for somebody where there is any. */; isGrave: boolean }[];
};

/** How a folder stands, in numbers; what calls for somebody first. */
export function Counts({ title, counts }: CountsProps) {
  return (
    <section class="answer" aria-labelledby="answer-title">
      <h2 id="answer-title">{title}</h2>
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
