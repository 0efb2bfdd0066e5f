import type { ForceChart, XY } from '../contract.ts';
import type { Plot } from './Axes.tsx';

/** Names written along the lines of the force diagram. */
export function CurveNames({ chart, plot }: { chart: ForceChart; plot: Plot }) {
  return (
    <g class="curve-names">
      {ofAxle(chart, 'front').map(({ label, from }, i) => (
        <text key={i} class="ink-front" x={plot.x(from.front) + 7} y={plot.bottom - 8}>
          {shortName(label)}
        </text>
      ))}
      {ofAxle(chart, 'rear').map(({ label, from, to }, i) => (
        <RearName key={i} label={label} from={from} to={to} chart={chart} plot={plot} />
      ))}
      <CurveName name="installed" points={chart.installed} chart={chart} plot={plot} />
      <CurveName name="ideal" points={chart.ideal} chart={chart} plot={plot} />
    </g>
  );
}

/** "front locks, grip 0.6" without its first half, which the legend says. */
function shortName(label: string): string {
  return label.split(', ').at(-1) ?? label;
}

function ofAxle(chart: ForceChart, axle: 'front' | 'rear') {
  return chart.grip_lines.filter((line) => line.axle === axle);
}

/** Above a rear line, where it leaves the plot at the right. */
function RearName({ label, from, to, chart, plot }: { label: string; from: XY; to: XY; chart: ForceChart; plot: Plot }) {
  const front = Math.min(to.front, chart.x_max);
  const rear = from.rear + ((to.rear - from.rear) * (front - from.front)) / (to.front - from.front || 1);
  return (
    <text class="ink-rear" x={plot.x(front) - 4} y={Math.min(plot.y(rear), plot.bottom - 26) - 7} text-anchor="end">
      {shortName(label)}
    </text>
  );
}

/** Beside the last point of a curve that lies inside the plot. */
function CurveName({ name, points, chart, plot }: { name: string; points: XY[]; chart: ForceChart; plot: Plot }) {
  const last = points.findLast(({ front, rear }) => front <= chart.x_max * 0.85 && rear <= chart.y_max * 0.94);
  return last === undefined ? null : (
    <text class="curve-name" x={plot.x(last.front)} y={plot.y(last.rear) - 12} text-anchor="middle">
      {name}
    </text>
  );
}
