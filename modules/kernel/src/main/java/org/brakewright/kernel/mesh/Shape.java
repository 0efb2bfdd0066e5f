package org.brakewright.kernel.mesh;

/**
 * Measures of a triangle.
 *
 * @param middle its centroid
 * @param center of the circle through its corners
 * @param radius of that circle, m
 * @param shortest side, m
 * @param shortestFrom which corner, 0 to 2, the shortest side starts from
 */
record Shape(Spot middle, Spot center, double radius, double shortest, int shortestFrom) {
    static Shape of(Spot a, Spot b, Spot c) {
        Spot middle = new Spot((a.x() + b.x() + c.x()) / 3, (a.y() + b.y() + c.y()) / 3);
        Spot center = center(a, b, c);
        double[] sides = {a.to(b), b.to(c), c.to(a)};
        int from = sides[0] <= sides[1] ? 0 : 1;
        from = sides[from] <= sides[2] ? from : 2;
        return new Shape(middle, center, center.to(a), sides[from], from);
    }

    private static Spot center(Spot a, Spot b, Spot c) {
        double bx = b.x() - a.x();
        double by = b.y() - a.y();
        double cx = c.x() - a.x();
        double cy = c.y() - a.y();
        double doubled = 2 * Math.max(bx * cy - by * cx, Double.MIN_NORMAL);
        double bb = bx * bx + by * by;
        double cc = cx * cx + cy * cy;
        double x = (cy * bb - by * cc) / doubled;
        double y = (bx * cc - cx * bb) / doubled;
        return new Spot(Math.clamp(a.x() + x, -1e9, 1e9), Math.clamp(a.y() + y, -1e9, 1e9));
    }
}
