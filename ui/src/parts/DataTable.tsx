import type { Table } from '../contract.ts';

/** Up to this many letters a number and its unit stay on one line. */
const SHORT = 16;

/** From here on a text wants room beside the numbers, or its row grows tall. */
const LONG = 40;

/** A table that scrolls inside its own region when the screen is narrow. */
export function DataTable({ table }: { table: Table }) {
  return (
    <div class="scroll" role="region" aria-label={table.caption} tabIndex={0}>
      <table>
        <caption>{table.caption}</caption>
        <thead>
          <tr>
            {table.columns.map((column, i) => (
              <th key={i} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, r) => (
            <tr key={r}>
              {row.map((text, c) =>
                c === 0 ? (
                  <th key={c} scope="row">
                    {text}
                  </th>
                ) : (
                  <td key={c} class={text.length <= SHORT ? 'short' : text.length >= LONG ? 'long' : undefined}>
                    {text}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
