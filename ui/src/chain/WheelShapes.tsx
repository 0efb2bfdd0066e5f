const BRAKE_X = 672;
const TYRE_X = 826;

/** Disc with bolt circle and a caliper over its leading edge. */
export function Disc({ y }: { y: number }) {
  const bolts = Array.from({ length: 5 }, (_, i) => ((i * 72 - 90) * Math.PI) / 180);
  return (
    <g>
      <circle class="body" cx={BRAKE_X} cy={y} r={56} />
      <circle class="thin" cx={BRAKE_X} cy={y} r={30} />
      <circle class="thin" cx={BRAKE_X} cy={y} r={12} />
      {bolts.map((angle, i) => (
        <circle key={i} class="pin" cx={BRAKE_X + 21 * Math.cos(angle)} cy={y + 21 * Math.sin(angle)} r={2.5} />
      ))}
      <path class="caliper" d={`M${BRAKE_X - 48} ${y + 26}A54 54 0 0 1 ${BRAKE_X - 34} ${y - 42}`} />
    </g>
  );
}

/** Drum with two shoes and the wheel cylinder between their upper ends. */
export function Drum({ y }: { y: number }) {
  return (
    <g>
      <circle class="body" cx={BRAKE_X} cy={y} r={56} />
      <circle class="thin" cx={BRAKE_X} cy={y} r={49} />
      <path class="caliper" d={`M${BRAKE_X - 14} ${y - 37}A40 40 0 0 0 ${BRAKE_X - 10} ${y + 38}`} />
      <path class="caliper" d={`M${BRAKE_X + 14} ${y - 37}A40 40 0 0 1 ${BRAKE_X + 10} ${y + 38}`} />
      <rect class="piston" x={BRAKE_X - 16} y={y - 40} width={32} height={14} rx={4} />
      <circle class="pin" cx={BRAKE_X} cy={y + 36} r={4} />
      <circle class="thin" cx={BRAKE_X} cy={y} r={10} />
    </g>
  );
}

/** Tyre on the road, with the brake force at its foot. */
export function Tyre({ y }: { y: number }) {
  const road = y + 64;
  const marks = Array.from({ length: 8 }, (_, i) => TYRE_X - 58 + i * 17);
  return (
    <g>
      <circle class="tyre" cx={TYRE_X} cy={y} r={55} />
      <circle class="thin" cx={TYRE_X} cy={y} r={36} />
      <circle class="pin" cx={TYRE_X} cy={y} r={5} />
      <path class="road" d={`M${TYRE_X - 66} ${road}h134`} />
      {marks.map((x) => (
        <path key={x} class="thin" d={`M${x} ${road + 1}l-7 8`} />
      ))}
    </g>
  );
}
