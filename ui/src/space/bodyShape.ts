/** Bodies of the contract as triangles for the graphics card. */
import {
  BoxGeometry,
  BufferGeometry,
  CylinderGeometry,
  Float32BufferAttribute,
  Matrix4,
  Quaternion,
  SphereGeometry,
  Vector3,
} from 'three';
import { mergeGeometries } from 'three/examples/jsm/utils/BufferGeometryUtils.js';
import type { SceneBody, SceneMoved } from '../sceneContract.ts';
import { stressColour } from './stressColour.ts';

/** Sides of what is round; by fours, so that it reaches its full size along every axis. */
const ROUND = 16;
const UPRIGHT = new Vector3(0, 1, 0);

/** How a body is shown: where its points are, and its stress where there is one. */
export interface Pose {
  points: Vector3[];
  /** Share of the highest stress, of each triangle or piece; empty when it has none. */
  shares: number[];
}

/** A body at rest, or moved by a push, its movement so many times as large. */
export function poseOf(body: SceneBody, moved: SceneMoved | null, times: number, highest: number): Pose {
  const points: Vector3[] = [];
  for (let i = 0; i + 2 < body.points.length; i += 3) {
    const by = (axis: number) => (body.points[i + axis] ?? 0) + times * (moved?.shifts[i + axis] ?? 0);
    points.push(new Vector3(by(0), by(1), by(2)));
  }
  return { points, shares: moved === null || highest <= 0 ? [] : moved.stresses.map((stress) => stress / highest) };
}

export function shapeOf(body: SceneBody, pose: Pose): BufferGeometry {
  switch (body.shape) {
    case 'mesh':
      return mesh(body.triangles, pose);
    case 'rod':
      return rod(body.radius, pose);
    case 'ball':
      return ball(body.radius, pose.points[0] ?? new Vector3());
    case 'box':
      return box(pose.points[0] ?? new Vector3(), pose.points[1] ?? new Vector3());
  }
}

function mesh(triangles: number[], { points, shares }: Pose): BufferGeometry {
  const corners: number[] = [];
  const colours: number[] = [];
  triangles.forEach((point, i) => {
    corners.push(...(points[point] ?? new Vector3()).toArray());
    const share = shares[Math.floor(i / 3)];
    if (share !== undefined) {
      colours.push(...stressColour(share));
    }
  });
  const shape = new BufferGeometry();
  shape.setAttribute('position', new Float32BufferAttribute(corners, 3));
  if (colours.length > 0) {
    shape.setAttribute('color', new Float32BufferAttribute(colours, 3));
  }
  shape.computeVertexNormals();
  return shape;
}

function rod(radius: number, { points, shares }: Pose): BufferGeometry {
  const pieces: BufferGeometry[] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    const from = points[i]!;
    const to = points[i + 1]!;
    if (from.distanceTo(to) > 0) {
      pieces.push(coloured(cylinder(radius, from, to), shares[i]));
    }
    if (i > 0) {
      pieces.push(coloured(ball(radius, from), shares[i]));
    }
  }
  return pieces.length === 0 ? new BufferGeometry() : mergeGeometries(pieces);
}

function cylinder(radius: number, from: Vector3, to: Vector3): BufferGeometry {
  const along = to.clone().sub(from);
  const turned = new Quaternion().setFromUnitVectors(UPRIGHT, along.clone().normalize());
  const middle = from.clone().add(to).multiplyScalar(0.5);
  return new CylinderGeometry(radius, radius, along.length(), ROUND).applyMatrix4(
    new Matrix4().compose(middle, turned, new Vector3(1, 1, 1)),
  );
}

function ball(radius: number, middle: Vector3): BufferGeometry {
  return new SphereGeometry(radius, ROUND, ROUND / 2).translate(middle.x, middle.y, middle.z);
}

function box(from: Vector3, to: Vector3): BufferGeometry {
  const size = to.clone().sub(from);
  const middle = from.clone().add(to).multiplyScalar(0.5);
  return new BoxGeometry(Math.abs(size.x), Math.abs(size.y), Math.abs(size.z)).translate(middle.x, middle.y, middle.z);
}

function coloured(shape: BufferGeometry, share: number | undefined): BufferGeometry {
  if (share !== undefined) {
    const colour = stressColour(share);
    const count = shape.getAttribute('position').count;
    shape.setAttribute('color', new Float32BufferAttribute(Array.from({ length: count }, () => colour).flat(), 3));
  }
  return shape;
}
