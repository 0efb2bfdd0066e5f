/** The numbers of a chart as a table, for people who cannot see it. */
import type { Chart, ForceChart, Table, XY } from '../contract.ts';

/** One row an x that any curve has; an empty place where a curve has no value. */
export function tableOf(chart: Chart): Table {
  const xs = [...new Set(chart.series.flatMap((series) => series.x))].sort((a, b) => a - b);
  return {
    caption: `${chart.title}: ${chart.y_label}`,
    columns: [chart.x_label, ...chart.series.map((series) => series.label)],
    rows: xs.map((x) => [short(x), ...chart.series.map(({ x: own, y }) => short(y[own.indexOf(x)] ?? null))]),
  };
}

/** Both curves of the force diagram, some twenty points each. */
export function forceTableOf(chart: ForceChart): Table {
  const rows = (name: string, points: XY[]) =>
    thinned(points).map((point) => [name, short(point.front), short(point.rear)]);
  return {
    caption: chart.title,
    columns: ['Curve', chart.x_label, chart.y_label],
    rows: [...rows('ideal', chart.ideal), ...rows('installed', chart.installed)],
  };
}

/** Enough points to read a curve from, first and last among them. */
function thinned(points: XY[]): XY[] {
  const every = Math.ceil(points.length / 20);
  return points.filter((_, i) => i % every === 0 || i === points.length - 1);
}

function short(value: number | null): string {
  return value === null ? '' : String(Number(value.toPrecision(3))).replace('-', '\u2212');
}
