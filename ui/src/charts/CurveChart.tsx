import type { Chart, Series } from '../contract.ts';
import { heightAt, pathOf, spread } from '../logic/curve.ts';
import { linear, niceDomain } from '../logic/scale.ts';
import { Axes, type Plot } from './Axes.tsx';
import { ChartFigure } from './ChartFigure.tsx';
import { tableOf } from './chartTable.ts';
import { Legend } from './Legend.tsx';
import { useWidth } from './useWidth.ts';

const HEIGHT = 300;

/** Below this width the names of the curves stand in the legend only. */
const ROOM_FOR_NAMES = 480;

/** Curves over deceleration, with the chosen deceleration marked. */
export function CurveChart({ chart, marked }: { chart: Chart; marked: number | null }) {
  const { box, width } = useWidth(560);
  const plot = plotOf(chart, width);
  return (
    <ChartFigure title={chart.title} description={chart.description} table={tableOf(chart)}>
      <div ref={box} class="chart-box">
        <svg width={width} height={HEIGHT} viewBox={`0 0 ${width} ${HEIGHT}`} role="img" aria-label={chart.title}>
          <Axes plot={plot} xLabel={chart.x_label} yLabel={chart.y_label} />
          {chart.series.map((series, i) => (
            <path key={i} class={`curve curve-${series.style}`} d={pathIn(plot, series)} />
          ))}
          {marked !== null && <Mark plot={plot} chart={chart} at={marked} />}
          {width >= ROOM_FOR_NAMES && <EndLabels plot={plot} chart={chart} />}
        </svg>
      </div>
      <Legend items={chart.series} />
    </ChartFigure>
  );
}

function plotOf(chart: Chart, width: number): Plot {
  const edges = { left: 52, right: width - (width < ROOM_FOR_NAMES ? 14 : roomFor(chart)), top: 34, bottom: HEIGHT - 48 };
  const xs = chart.series.flatMap((series) => series.x);
  const ys = chart.series.flatMap((series) => series.y.filter((y) => y !== null));
  return {
    ...edges,
    x: linear([Math.min(0, ...xs), Math.max(...xs)], [edges.left, edges.right]),
    y: linear(niceDomain(ys), [edges.bottom, edges.top]),
  };
}

/** Width of the longest name, in letters of about 7 px. */
function roomFor(chart: Chart): number {
  return Math.min(210, 20 + 7 * Math.max(...chart.series.map(({ label }) => label.length)));
}

/** Path of a series in a plot. */
export function pathIn(plot: Plot, series: Series): string {
  return pathOf(
    series.x.map((x, i) => {
      const y = series.y[i] ?? null;
      return y === null ? null : { x: plot.x(x), y: plot.y(y) };
    }),
  );
}

function Mark({ plot, chart, at }: { plot: Plot; chart: Chart; at: number }) {
  return (
    <g class="chosen">
      <line x1={plot.x(at)} x2={plot.x(at)} y1={plot.top} y2={plot.bottom} />
      {chart.series.map((series, i) => {
        const y = heightAt(series.x, series.y, at);
        return y === null ? null : (
          <circle key={i} class={`dot dot-${series.style}`} cx={plot.x(at)} cy={plot.y(y)} r={4.5} />
        );
      })}
    </g>
  );
}

/** Each curve's name where it ends, when there is room beside the plot; the legend says it too. */
function EndLabels({ plot, chart }: { plot: Plot; chart: Chart }) {
  const ends = chart.series.map((series) => series.y.findLast((y) => y !== null) ?? 0);
  const places = spread(ends.map((y) => plot.y(y) + 4), 17, plot.top, plot.bottom);
  return (
    <g class="end-labels">
      {chart.series.map((series, i) => (
        <text key={i} class={`ink-${series.style}`} x={plot.right + 8} y={places[i]}>
          {series.label}
        </text>
      ))}
    </g>
  );
}
