import type { Page } from '../contract.ts';
import { caseIndex, loadCase, point, pointIndex, wantedDeceleration } from '../state/here.ts';

/** Which load case the chain and the balance charts show. */
export function CasePicker({ page }: { page: Page }) {
  return (
    <div class="picker">
      <label for="load-case">Load</label>
      <select
        id="load-case"
        value={String(caseIndex.value)}
        onChange={(event) => (caseIndex.value = Number(event.currentTarget.value))}
      >
        {page.load_cases.map((one, i) => (
          <option key={i} value={String(i)}>
            {one.name}
          </option>
        ))}
      </select>
      <span class="soft">{loadCase.value?.summary}</span>
    </div>
  );
}

/** How hard the stop is. */
export function StopPicker() {
  const points = loadCase.value?.points ?? [];
  const chosen = pointIndex.value;
  const last = Math.max(0, points.length - 1);
  const go = (index: number) => {
    wantedDeceleration.value = points[Math.min(Math.max(index, 0), last)]?.deceleration_g ?? null;
  };
  return (
    <div class="picker picker-stop">
      <label for="deceleration">How hard the stop</label>
      <div class="picker-row">
        <button type="button" aria-label="Softer stop" aria-disabled={chosen <= 0} onClick={() => go(chosen - 1)}>
          −
        </button>
        <input
          id="deceleration"
          type="range"
          min={0}
          max={last}
          step={1}
          value={chosen}
          aria-valuetext={point.value?.label ?? ''}
          onInput={(event) => go(Number(event.currentTarget.value))}
        />
        <button type="button" aria-label="Harder stop" aria-disabled={chosen >= last} onClick={() => go(chosen + 1)}>
          +
        </button>
        <output for="deceleration">{point.value?.label}</output>
      </div>
    </div>
  );
}
