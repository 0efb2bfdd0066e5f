import type { Working } from '../contract.ts';
import { numbered } from '../logic/numbered.ts';
import { openWorking } from '../state/here.ts';

/** Every number that can be opened. */
export function Workings({ workings }: { workings: Working[] }) {
  return (
    <section aria-labelledby="workings-title">
      <h2 id="workings-title">Workings</h2>
      <p>Every number opens to its formula, its inputs and its source.</p>
      <ul class="workings">
        {numbered(workings, ({ key }) => key).map(({ name, item: working }) => (
          <li key={name}>
            <button type="button" class="row-button" onClick={() => (openWorking.value = working.key)}>
              <span>{working.title}</span> <strong>{working.result}</strong>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
