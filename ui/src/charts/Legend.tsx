export interface LegendItem {
  label: string;
  style: string;
}

/** Line samples with their names; the samples carry the same dash as the curves. */
export function Legend({ items }: { items: LegendItem[] }) {
  return (
    <ul class="legend plain" aria-hidden="true">
      {items.map((item, i) => (
        <li key={i}>
          <svg width="34" height="12" viewBox="0 0 34 12">
            <line class={`curve curve-${item.style}`} x1="1" x2="33" y1="6" y2="6" />
          </svg>
          {item.label}
        </li>
      ))}
    </ul>
  );
}
