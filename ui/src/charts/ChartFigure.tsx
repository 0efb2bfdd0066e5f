import type { ComponentChildren } from 'preact';
import type { Table } from '../contract.ts';
import { DataTable } from '../parts/DataTable.tsx';

interface Props {
  title: string;
  description: string;
  /** The same numbers as a table. */
  table: Table;
  children: ComponentChildren;
}

/** A drawing with its title, its sentence and its numbers. */
export function ChartFigure({ title, description, table, children }: Props) {
  return (
    <figure class="chart">
      <figcaption>
        <h3>{title}</h3>
        <p>{description}</p>
      </figcaption>
      {children}
      <details class="fold small">
        <summary>
          Numbers<span class="unseen"> of {title}</span>
        </summary>
        <DataTable table={table} />
      </details>
    </figure>
  );
}
