import type { BarRange } from '../mechanismContract.ts';

const WIDTH = 300;

/** Where the adjuster stands between its ends. */
export function TurnsLeft({ range }: { range: BarRange }) {
  const whole = range.turns_left_to_rear + range.turns_left_to_front;
  const x = 10 + (WIDTH - 20) * (whole > 0 ? range.turns_left_to_rear / whole : 0.5);
  return (
    <div class="turns">
      <svg viewBox={`0 0 ${WIDTH} 26`} role="img" aria-label={`${range.now}; ${range.to_rear}; ${range.to_front}.`}>
        <path class="turns-way" d={`M10 13H${WIDTH - 10}`} />
        <path class="turns-end" d={`M10 5V21M${WIDTH - 10} 5V21`} />
        <circle class="turns-at" cx={x} cy={13} r={7} />
      </svg>
      <ul class="plain turns-words">
        <li>{range.to_rear}</li>
        <li>{range.now}</li>
        <li>{range.to_front}</li>
      </ul>
    </div>
  );
}
