import { CurveChart } from '../charts/CurveChart.tsx';
import type { PedalView } from '../mechanismContract.ts';

/** Ratio and rod angle through the stroke, marked at the hard stop; a sentence alone when only a ratio is given. */
export function PedalPanel({ pedal }: { pedal: PedalView }) {
  return (
    <section aria-labelledby="pedal-title">
      <h2 id="pedal-title">Pedal through its stroke</h2>
      <p>{pedal.sentence}</p>
      {pedal.ratio && pedal.rod_angle && (
        <div class="pair">
          <CurveChart chart={pedal.ratio} marked={pedal.hard_stop} />
          <CurveChart chart={pedal.rod_angle} marked={pedal.hard_stop} />
        </div>
      )}
    </section>
  );
}
