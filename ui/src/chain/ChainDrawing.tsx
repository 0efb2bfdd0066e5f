import type { ComponentChildren } from 'preact';
import type { Chain, ChainPart } from '../contract.ts';
import { Bar, Booster, TandemBody, TwinBody } from './ApplyShapes.tsx';
import { FrontLine, RearLine, Valve } from './LineShapes.tsx';
import { Foot, PedalArm } from './PedalShapes.tsx';
import { FRONT_ROW, HEIGHT, REAR_ROW, TOP, WIDTH, type Label } from './places.ts';
import { Disc, Drum, Tyre } from './WheelShapes.tsx';

interface Props {
  chain: Chain;
  labels: Label[];
  tilt: number;
  pointed: ChainPart | null;
  choose: (part: ChainPart) => void;
}

/** The picture. Everything in it is said in the words beside it, so it is one image to a screen reader. */
export function ChainDrawing({ chain, labels, tilt, pointed, choose }: Props) {
  const twin = chain.apply === 'twin_masters';
  const part = (name: ChainPart, shape: ComponentChildren) => (
    <g class={`part${pointed === name ? ' is-pointed' : ''}`} onClick={() => choose(name)}>
      {shape}
    </g>
  );
  return (
    <svg class="chain-drawing" viewBox={`0 ${TOP} ${WIDTH} ${HEIGHT}`} role="img" aria-label={sentenceOf(chain)}>
      <Firewall x={twin ? 312 : 186} />
      {part('front_line', <FrontLine twin={twin} />)}
      {part('rear_line', <RearLine twin={twin} />)}
      {part('foot', <Foot />)}
      {part('pedal', <PedalArm rodTo={twin ? 245 : chain.booster ? 205 : 318} offset={chain.bar_offset ?? 0} />)}
      {chain.valve && part('valve', <Valve />)}
      {twin && part('bar', <Bar offset={chain.bar_offset ?? 0} tilt={tilt} />)}
      {part('front_master', twin ? <TwinBody row={-1} /> : <TandemBody />)}
      {twin && part('rear_master', <TwinBody row={1} />)}
      {!twin && chain.booster && part('booster', <Booster />)}
      {part('front_brake', chain.front === 'disc' ? <Disc y={FRONT_ROW} /> : <Drum y={FRONT_ROW} />)}
      {part('rear_brake', chain.rear === 'disc' ? <Disc y={REAR_ROW} /> : <Drum y={REAR_ROW} />)}
      {part('front_tyre', <Tyre y={FRONT_ROW} />)}
      {part('rear_tyre', <Tyre y={REAR_ROW} />)}
      <Numbers labels={labels} />
    </svg>
  );
}

function Firewall({ x }: { x: number }) {
  const marks = Array.from({ length: 15 }, (_, i) => 104 + i * 22);
  return (
    <g class="firewall">
      <path d={`M${x} 100V420`} />
      {marks.map((y) => (
        <path key={y} class="thin" d={`M${x} ${y}l-8 9`} />
      ))}
      <text x={x} y={88} text-anchor="middle">
        firewall
      </text>
    </g>
  );
}

/** Centres of the numbers that tie the picture to the list on a narrow screen. */
const SPOTS: Record<ChainPart, [number, number]> = {
  foot: [40, 420],
  pedal: [180, 240],
  bar: [245, 195],
  booster: [255, 225],
  front_master: [395, 210],
  front_line: [560, 112],
  front_brake: [672, 72],
  front_tyre: [826, 72],
  rear_master: [395, 440],
  rear_line: [490, 508],
  valve: [560, 425],
  rear_brake: [672, 382],
  rear_tyre: [826, 382],
};

function Numbers({ labels }: { labels: Label[] }) {
  return (
    <g class="spot-numbers">
      {labels.map(({ part, number }) => {
        const [x, y] = SPOTS[part];
        return (
          <g key={part}>
            <circle cx={x} cy={y} r={25} />
            <text x={x} y={y + 11} text-anchor="middle">
              {number}
            </text>
          </g>
        );
      })}
    </g>
  );
}

function sentenceOf(chain: Chain): string {
  const middle =
    chain.apply === 'twin_masters'
      ? 'a balance bar and two master cylinders'
      : `${chain.booster ? 'a booster and ' : ''}a tandem master cylinder`;
  const valve = chain.valve ? ', with a valve in the rear line' : '';
  return `Drawing: a foot pushes the pedal, which works ${middle}; lines lead to a ${chain.front} in front and a ${chain.rear} at the rear${valve}.`;
}
