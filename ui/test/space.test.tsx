import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { sampleScene } from '../dev/sampleScene.ts';
import { App } from '../src/App.tsx';
import { poseOf, shapeOf } from '../src/space/bodyShape.ts';
import { chosen, ends, fittingTimes, pick } from '../src/space/look.ts';
import { apart } from '../src/space/measure.ts';
import { stressColour } from '../src/space/stressColour.ts';
import { session } from '../src/state/here.ts';
import { standInServer } from './server.ts';

const [panel, tube, tee, gearbox] = sampleScene.bodies;
const push = sampleScene.pushes[0]!;

describe('the view in space', () => {
  it('measures straight and along the axes of the car', () => {
    // 190 forward, 80 down: the hypotenuse by Pythagoras is 206.155.
    expect(apart(sampleScene.scale, [10, 20, 100], [200, 20, 20])).toBe(
      '206.2 mm apart: 190.0 mm forward, 0.0 mm left, 80.0 mm down.',
    );
    expect(apart({ symbol: 'in', per_mm: 1 / 25.4, decimals: 2 }, [25.4, 0, 0], [0, -50.8, 0])).toBe(
      '2.24 in apart: 1.00 in rearward, 2.00 in right, 0.00 in up.',
    );
  });

  it('draws every body as large as it is', () => {
    // Half a bar's thickness and a ball's radius go beyond its points; a box and a sheet end at theirs.
    expect(reach(panel!)).toEqual([0, 300, 200]);
    expect(reach(gearbox!)).toEqual([250, 150, 130]);
    expect(reach(tee!)).toEqual([24, 24, 24]);
    const [forward, across, up] = reach(tube!);
    expect(forward).toBeCloseTo(190 + 2.4, 1);
    expect(across).toBeCloseTo(2 * 2.4, 1);
    expect(up).toBeCloseTo(80 + 2.4, 1);
  });

  it('moves a body by as much as it is told, and colours it by its stress', () => {
    const pose = poseOf(panel!, push.moved[0]!, 100, push.highest);
    expect(pose.points[2]!.toArray()).toEqual([120, 300, 200]);
    expect(pose.shares).toEqual([1, 40 / 120]);
    const colours = shapeOf(panel!, pose).getAttribute('color');
    expect(colours.getX(0)).toBeCloseTo(stressColour(1)[0], 6);
    expect(colours.getZ(3)).toBeCloseTo(stressColour(1 / 3)[2], 6);
  });

  it('draws a movement so large that it is well seen', () => {
    // 6 % of 300 mm is 18 mm, 15 times 1.2 mm; one leading digit makes it 10.
    expect(fittingTimes(sampleScene, push)).toBe(10);
    expect(fittingTimes(sampleScene, { ...push, moved: [] })).toBe(1);
  });

  it('grows lighter with stress, for every kind of colour vision', () => {
    // Relative luminance by ITU-R BT.709, whose weights are from memory.
    const light = [0, 0.2, 0.4, 0.6, 0.8, 1].map((share) => {
      const [red, green, blue] = stressColour(share);
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    });
    expect(light).toEqual([...light].sort((a, b) => a - b));
    expect(light.at(-1)! - light[0]!).toBeGreaterThan(0.7);
  });

  it('takes two picked places, then begins anew', () => {
    pick({ name: 'one', at: [0, 0, 0] });
    pick({ name: 'two', at: [1, 0, 0] });
    expect(ends.value.to?.name).toBe('two');
    pick({ name: 'three', at: [2, 0, 0] });
    expect(ends.value).toEqual({ from: { name: 'three', at: [2, 0, 0] }, to: null });
    ends.value = { from: null, to: null };
  });
});

describe('the panel of the view', () => {
  const root = document.createElement('div');

  afterEach(() => {
    render(null, root);
    root.remove();
    chosen.value = null;
    vi.unstubAllGlobals();
  });

  it('lists all bodies, and where nothing can be drawn says so and still measures', async () => {
    vi.stubGlobal('fetch', standInServer().send);
    document.body.append(root);
    await act(async () => {
      render(<App />, root);
      await session.load();
      await settled();
    });
    const space = root.querySelector('#space')!;
    expect(space.querySelectorAll('details li')).toHaveLength(sampleScene.bodies.length);
    expect(space.querySelector('canvas')).toBeNull();

    await act(() => space.querySelector<HTMLButtonElement>('button')!.click());
    await vi.waitFor(() => expect(space.textContent).toContain('no WebGL'), { timeout: 4000 });
    const [from, to] = [...space.querySelectorAll('.space-measure select')] as [HTMLSelectElement, HTMLSelectElement];
    await act(() => choose(from, '0'));
    await act(() => choose(to, '1'));
    expect(space.querySelector('output')!.textContent).toBe(apart(sampleScene.scale, [10, 20, 100], [200, 20, 20]));
    const push = space.querySelector<HTMLSelectElement>('.space-push select')!;
    await act(() => choose(push, 'function'));
    expect(space.textContent).toContain('The pad moves by 1.2 mm.');
    expect([...space.querySelectorAll('.space-scale li')].map((one) => one.textContent)).toEqual(
      ['0 MPa', '24 MPa', '48 MPa', '72 MPa', '96 MPa', '120 MPa'],
    );
  });
});

function reach(body: (typeof sampleScene.bodies)[number]): number[] {
  const shape = shapeOf(body, poseOf(body, null, 0, 0));
  shape.computeBoundingBox();
  const { min, max } = shape.boundingBox!;
  return [max.x - min.x, max.y - min.y, max.z - min.z].map((one) => Math.round(one * 1e4) / 1e4);
}

function choose(control: HTMLSelectElement, value: string) {
  control.value = value;
  control.dispatchEvent(new Event('change', { bubbles: true }));
}

function settled() {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
