import { useSignal } from '@preact/signals';
import type { ChainPart, Page } from '../contract.ts';
import { fieldUnder, point } from '../state/here.ts';
import { jumpTo } from '../state/jump.ts';
import { ChainDrawing } from './ChainDrawing.tsx';
import { ChainLabel } from './ChainLabel.tsx';
import { labelsOf } from './places.ts';
import { CasePicker, StopPicker } from './PointPicker.tsx';
import { QuickControls } from './QuickControls.tsx';

/** The chain from foot to tyre at the chosen deceleration, with the things one turns most. */
export function ChainView({ page }: { page: Page }) {
  const pointed = useSignal<ChainPart | null>(null);
  const { chain } = page;
  const labels = labelsOf(chain);
  const chosen = point.value;
  const inputOf = (part: ChainPart) => {
    const path = chain.inputs[part] ?? null;
    return path !== null && fieldUnder(path) !== null ? path : null;
  };

  return (
    <section class="chain" aria-labelledby="chain-title">
      <div class="chain-head">
        <h2 id="chain-title">From foot to tyre</h2>
        <CasePicker page={page} />
      </div>
      <StopPicker />
      {chosen && !chosen.within_travel && (
        <p class="out-of-travel">
          <strong>Out of travel:</strong> the pedal or a master reaches its end before {chosen.label}.
        </p>
      )}
      <div class="chain-stage">
        <ChainDrawing
          chain={chain}
          labels={labels}
          tilt={chosen?.bar_tilt_deg ?? 0}
          pointed={pointed.value}
          choose={(part) => {
            const path = inputOf(part);
            if (path !== null) {
              jumpTo(path);
            }
          }}
        />
        <ul class="chain-labels plain">
          {labels.map((label) => (
            <ChainLabel
              key={label.part}
              label={label}
              lines={chosen?.texts[label.part] ?? []}
              input={inputOf(label.part)}
              point={(on) => (pointed.value = on ? label.part : null)}
            />
          ))}
        </ul>
      </div>
      <QuickControls />
    </section>
  );
}
