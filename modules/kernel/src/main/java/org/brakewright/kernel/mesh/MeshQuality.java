package org.brakewright.kernel.mesh;

import java.util.Arrays;

/**
 * How well shaped the triangles of a mesh are.
 *
 * @param smallestAngle of all triangles, rad
 * @param worstAspect the greatest ratio of longest side to the height on it, over that of an even triangle; 1 is best
 */
public record MeshQuality(int nodes, int triangles, double smallestAngle, double worstAspect) {
    static MeshQuality of(PanelMesh mesh) {
        double angle = Math.PI / 3;
        double aspect = 1;
        for (Triangle triangle : mesh.triangles()) {
            double[] sides = sides(mesh, triangle);
            double area = mesh.area(triangle);
            angle = Math.min(angle, Math.asin(Math.min(1, 2 * area / (sides[1] * sides[2]))));
            aspect = Math.max(aspect, sides[2] * sides[2] / (2 * area) * Math.sqrt(0.75));
        }
        return new MeshQuality(mesh.nodes().size(), mesh.triangles().size(), angle, aspect);
    }

    /** Shortest first; the smallest angle lies between the two longer ones. */
    private static double[] sides(PanelMesh mesh, Triangle triangle) {
        Spot a = mesh.nodes().get(triangle.a());
        Spot b = mesh.nodes().get(triangle.b());
        Spot c = mesh.nodes().get(triangle.c());
        double[] sides = {a.to(b), b.to(c), c.to(a)};
        Arrays.sort(sides);
        return sides;
    }
}
