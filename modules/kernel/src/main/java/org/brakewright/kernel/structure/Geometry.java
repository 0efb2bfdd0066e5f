package org.brakewright.kernel.structure;

/** Sizes and directions of elements. */
final class Geometry {
    private Geometry() {}

    /** From the start of a beam to its end, m. */
    static Vector3 span(Beam beam, StructureModel model) {
        Vector3 start = model.nodes().get(beam.start().node()).plus(beam.start().offset());
        Vector3 end = model.nodes().get(beam.end().node()).plus(beam.end().offset());
        return end.minus(start);
    }

    /** Along the normal, twice the area long, m2. */
    static Vector3 normal(Shell shell, StructureModel model) {
        Vector3 a = model.nodes().get(shell.a());
        Vector3 ab = model.nodes().get(shell.b()).minus(a);
        return ab.cross(model.nodes().get(shell.c()).minus(a));
    }

    static double area(Shell shell, StructureModel model) {
        return normal(shell, model).length() / 2;
    }

    static Axes axes(Shell shell, StructureModel model) {
        Vector3 ab = model.nodes().get(shell.b()).minus(model.nodes().get(shell.a()));
        return Axes.along(ab, normal(shell, model));
    }
}
