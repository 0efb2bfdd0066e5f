import type { FeelChart as Feel } from '../contract.ts';
import { linear, niceDomain } from '../logic/scale.ts';
import { Axes, type Plot } from './Axes.tsx';
import { ChartFigure } from './ChartFigure.tsx';
import { pathIn } from './CurveChart.tsx';
import { Legend } from './Legend.tsx';
import { useWidth } from './useWidth.ts';

const HEIGHT = 320;

/** Pedal force over travel, firm to soft; crosses where something ends a curve, diamonds where a booster runs out. */
export function FeelChart({ feel }: { feel: Feel }) {
  const { box, width } = useWidth(560);
  const { chart } = feel;
  const edges = { left: 52, right: width - 16, top: 34, bottom: HEIGHT - 48 };
  const plot: Plot = {
    ...edges,
    x: linear(niceDomain(chart.series.flatMap(({ x }) => x)), [edges.left, edges.right]),
    y: linear(niceDomain(chart.series.flatMap(({ y }) => y.filter((one) => one !== null))), [edges.bottom, edges.top]),
  };
  const kinds = [...new Set(feel.marks.map(({ kind }) => kind))];
  return (
    <ChartFigure title={chart.title} description={chart.description} table={feel.table}>
      <div ref={box} class="chart-box">
        <svg width={width} height={HEIGHT} viewBox={`0 0 ${width} ${HEIGHT}`} role="img" aria-label={chart.title}>
          <Axes plot={plot} xLabel={chart.x_label} yLabel={chart.y_label} />
          {chart.series.map((series, i) => (
            <path key={i} class={`curve curve-${series.style}`} d={pathIn(plot, series)} />
          ))}
          {feel.marks.map((mark, i) => (
            <path key={i} class="feel-mark" d={shapeOf(mark.kind, plot.x(mark.x), plot.y(mark.y))}>
              <title>{mark.label}</title>
            </path>
          ))}
        </svg>
      </div>
      <Legend items={chart.series} />
      {kinds.length > 0 && (
        <p class="feel-key" aria-hidden="true">
          {kinds.map((kind) => (
            <span key={kind}>
              <svg width="14" height="14" viewBox="0 0 14 14">
                <path class="feel-mark" d={shapeOf(kind, 7, 7)} />
              </svg>
              {kind === 'end' ? 'the pedal goes no further' : 'booster has run out'}
            </span>
          ))}
        </p>
      )}
    </ChartFigure>
  );
}

function shapeOf(kind: Feel['marks'][number]['kind'], x: number, y: number): string {
  return kind === 'end' ? `M${x - 5} ${y - 5}l10 10M${x - 5} ${y + 5}l10 -10` : `M${x - 5} ${y}l5 -5 5 5 -5 5z`;
}
