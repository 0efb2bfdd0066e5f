import type { ForceChart, XY } from '../contract.ts';
import { pathOf } from '../logic/curve.ts';
import { linear } from '../logic/scale.ts';
import { Axes, type Plot } from './Axes.tsx';
import { ChartFigure } from './ChartFigure.tsx';
import { forceTableOf } from './chartTable.ts';
import { CurveNames } from './CurveNames.tsx';
import { Legend } from './Legend.tsx';
import { useWidth } from './useWidth.ts';

const HEIGHT = 380;

/** Below this width the names of the lines stand in the legend only. */
const ROOM_FOR_NAMES = 480;

/** Rear against front brake force: what the car could use, what it gets, and where each axle locks. */
export function ForceDiagram({ chart, marked }: { chart: ForceChart; marked: number | null }) {
  const { box, width } = useWidth(560);
  const edges = { left: 52, right: width - 16, top: 34, bottom: HEIGHT - 48 };
  const plot: Plot = {
    ...edges,
    x: linear([0, chart.x_max], [edges.left, edges.right]),
    y: linear([0, chart.y_max], [edges.bottom, edges.top]),
  };
  return (
    <ChartFigure title={chart.title} description={chart.description} table={forceTableOf(chart)}>
      <div ref={box} class="chart-box">
        <svg width={width} height={HEIGHT} viewBox={`0 0 ${width} ${HEIGHT}`} role="img" aria-label={chart.title}>
          <defs>
            <clipPath id="force-plot">
              <rect x={plot.left} y={plot.top} width={plot.right - plot.left} height={plot.bottom - plot.top} />
            </clipPath>
          </defs>
          <Axes plot={plot} xLabel={chart.x_label} yLabel={chart.y_label} />
          <DecelerationLines chart={chart} plot={plot} />
          <g clip-path="url(#force-plot)">
            {chart.grip_lines.map((line, i) => (
              <path key={i} class={`curve curve-grip-${line.axle}`} d={lineThrough(plot, [line.from, line.to])} />
            ))}
            <path class="curve curve-ideal" d={lineThrough(plot, chart.ideal)} />
            <path class="curve curve-installed" d={lineThrough(plot, chart.installed)} />
            {marked !== null && <ChosenDot points={chart.installed} plot={plot} at={marked} />}
          </g>
          {width >= ROOM_FOR_NAMES && <CurveNames chart={chart} plot={plot} />}
        </svg>
      </div>
      <Legend
        items={[
          { label: 'installed', style: 'installed' },
          { label: 'ideal', style: 'ideal' },
          ...gripLegend(chart, width >= ROOM_FOR_NAMES),
          { label: 'constant deceleration', style: 'deceleration' },
        ]}
      />
    </ChartFigure>
  );
}

/** One entry an axle where the lines carry their names, else one a line. */
function gripLegend(chart: ForceChart, named: boolean) {
  return named
    ? [
        { label: 'front locks', style: 'grip-front' },
        { label: 'rear locks', style: 'grip-rear' },
      ]
    : chart.grip_lines.map((line) => ({ label: line.label, style: `grip-${line.axle}` }));
}

function lineThrough(plot: Plot, points: XY[]): string {
  return pathOf(points.map((point) => ({ x: plot.x(point.front), y: plot.y(point.rear) })));
}

/** Lines x + y = g, each named where it leaves the plot at the foot or, past the corner, at the right. */
function DecelerationLines({ chart, plot }: { chart: ForceChart; plot: Plot }) {
  return (
    <g>
      {chart.deceleration_lines.map(({ label, g }) => {
        const from = { front: Math.max(0, g - chart.y_max), rear: Math.min(g, chart.y_max) };
        const to = { front: Math.min(g, chart.x_max), rear: Math.max(0, g - chart.x_max) };
        return from.front > chart.x_max ? null : (
          <g key={g}>
            <path class="curve curve-deceleration" d={lineThrough(plot, [from, to])} />
            <text class="deceleration-name" x={plot.x(from.front) + 5} y={plot.y(from.rear) + 14}>
              {label}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** Where the installed curve crosses the chosen deceleration. */
function ChosenDot({ points, plot, at }: { points: XY[]; plot: Plot; at: number }) {
  const after = points.findIndex((point) => point.front + point.rear >= at);
  const b = points[after];
  if (b === undefined) {
    return null;
  }
  const a = points[after - 1] ?? b;
  const span = b.front + b.rear - a.front - a.rear;
  const part = span === 0 ? 0 : (at - a.front - a.rear) / span;
  return (
    <circle
      class="dot dot-installed"
      cx={plot.x(a.front + part * (b.front - a.front))}
      cy={plot.y(a.rear + part * (b.rear - a.rear))}
      r={5}
    />
  );
}
