import type { BandMarks } from '../spreadContract.ts';
import { bandPlaces } from '../logic/band.ts';
import { useWidth } from './useWidth.ts';

const HEIGHT = 56;
const MIDDLE = 24;

/** Nine cars of ten on the light bar, the middle half on the dark one, the median across; the file's value and the limit. */
export function BandMark({ marks, name }: { marks: BandMarks; name: string }) {
  const { box, width } = useWidth(480);
  const at = bandPlaces(marks, width);
  const { texts } = marks;
  return (
    <div class="chart-box band-box" ref={box}>
      <svg width={width} height={HEIGHT} role="img" aria-label={spoken(marks, name)}>
        <line class="tick" x1={8} x2={width - 8} y1={MIDDLE} y2={MIDDLE} />
        <rect class="band-most" x={at.p05} y={MIDDLE - 9} width={Math.max(2, at.p95 - at.p05)} height={18} rx={3} />
        <rect class="band-half" x={at.p25} y={MIDDLE - 9} width={Math.max(2, at.p75 - at.p25)} height={18} />
        <line class="band-middle" x1={at.p50} x2={at.p50} y1={MIDDLE - 9} y2={MIDDLE + 9} />
        {at.limit !== null && <line class="band-limit" x1={at.limit} x2={at.limit} y1={2} y2={MIDDLE + 15} />}
        {at.nominal !== null && (
          <path class="band-nominal" d={`M${at.nominal} ${MIDDLE - 6}l6 6-6 6-6-6z`} />
        )}
        <text x={at.p05 - 5} y={HEIGHT - 6} text-anchor="end">
          {texts.p05}
        </text>
        <text x={at.p95 + 5} y={HEIGHT - 6}>
          {texts.p95}
        </text>
      </svg>
    </div>
  );
}

function spoken({ texts }: BandMarks, name: string): string {
  const parts = [`${name}: nine cars of ten from ${texts.p05} to ${texts.p95}, half of them below ${texts.p50}`];
  if (texts.nominal !== null) {
    parts.push(`${texts.nominal} as the file stands`);
  }
  if (texts.limit !== null) {
    parts.push(`mark at ${texts.limit}`);
  }
  return parts.join('; ');
}
