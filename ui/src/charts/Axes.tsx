import { tickText, ticks, type Scale } from '../logic/scale.ts';

export interface Plot {
  x: Scale;
  y: Scale;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Grid, ticks and axis names. */
export function Axes({ plot, xLabel, yLabel }: { plot: Plot; xLabel: string; yLabel: string }) {
  const { x, y, left, right, top, bottom } = plot;
  return (
    <g class="axes">
      {ticks(y.domain, 5).map((value) => (
        <g key={`y${value}`}>
          <line class="grid" x1={left} x2={right} y1={y(value)} y2={y(value)} />
          <text x={left - 6} y={y(value) + 4} text-anchor="end">
            {tickText(value)}
          </text>
        </g>
      ))}
      {ticks(x.domain, (right - left) / 70).map((value) => (
        <g key={`x${value}`}>
          <line class="tick" x1={x(value)} x2={x(value)} y1={bottom} y2={bottom + 5} />
          <text x={x(value)} y={bottom + 19} text-anchor="middle">
            {tickText(value)}
          </text>
        </g>
      ))}
      <path class="frame" d={`M${left} ${top}V${bottom}H${right}`} />
      <text class="axis-name" x={right} y={bottom + 37} text-anchor="end">
        {xLabel}
      </text>
      <text class="axis-name" x={8} y={top - 10}>
        {yLabel}
      </text>
    </g>
  );
}
