import type { Page } from '../contract.ts';
import { caseIndex, loadCase, point, pointIndex, wantedDeceleration } from '../state/here.ts';

/** Which load case, and how hard the stop. */
export function PointPicker({ page }: { page: Page }) {
  const points = loadCase.value?.points ?? [];
  const chosen = pointIndex.value;
  const go = (index: number) => {
    wantedDeceleration.value = points[index]?.deceleration_g ?? null;
  };
  return (
    <div class="picker">
      <label class="picker-case">
        <span>Load</span>
        <select
          value={String(caseIndex.value)}
          onChange={(event) => (caseIndex.value = Number(event.currentTarget.value))}
        >
          {page.load_cases.map((one, i) => (
            <option key={one.name} value={String(i)}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
      <div class="picker-stop">
        <label for="deceleration">How hard the stop</label>
        <div class="picker-row">
          <button type="button" aria-label="Softer stop" aria-disabled={chosen <= 0} onClick={() => go(chosen - 1)}>
            −
          </button>
          <input
            id="deceleration"
            type="range"
            min={0}
            max={Math.max(0, points.length - 1)}
            step={1}
            value={chosen}
            aria-valuetext={point.value?.label ?? ''}
            onInput={(event) => go(Number(event.currentTarget.value))}
          />
          <button
            type="button"
            aria-label="Harder stop"
            aria-disabled={chosen >= points.length - 1}
            onClick={() => go(chosen + 1)}
          >
            +
          </button>
          <output for="deceleration">{point.value?.label}</output>
        </div>
      </div>
    </div>
  );
}
