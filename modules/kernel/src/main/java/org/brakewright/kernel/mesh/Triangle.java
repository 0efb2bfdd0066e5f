package org.brakewright.kernel.mesh;

import java.util.List;

/**
 * Three nodes that turn left.
 *
 * @param regions names of the regions it lies in, in the plan's order
 */
public record Triangle(int a, int b, int c, List<String> regions) {
    public Triangle {
        regions = List.copyOf(regions);
    }
}
