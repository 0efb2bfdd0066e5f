package org.brakewright.kernel.structure;

import java.util.List;
import org.brakewright.kernel.structure.shell.LocalTriangle;
import org.brakewright.kernel.structure.shell.ShellTriangle;

/** An element in its place: its joints, its axes, its size. */
final class Member {
    private final Element element;
    private final List<Joint> joints;
    private final Axes axes;

    private Member(Element element, List<Joint> joints, Axes axes) {
        this.element = element;
        this.joints = joints;
        this.axes = axes;
    }

    static Member of(Element element, StructureModel model, Leaders leaders) {
        return switch (element) {
            case Beam beam -> beam(beam, model, leaders);
            case Shell shell -> shell(shell, model, leaders);
            case Spring spring -> spring(spring, model, leaders);
        };
    }

    private static Member beam(Beam beam, StructureModel model, Leaders leaders) {
        List<Joint> joints = List.of(
                leaders.joint(beam.start().node()).further(beam.start().offset()),
                leaders.joint(beam.end().node()).further(beam.end().offset()));
        return new Member(beam, joints, Axes.along(Geometry.span(beam, model), beam.up()));
    }

    private static Member shell(Shell shell, StructureModel model, Leaders leaders) {
        List<Joint> joints = List.of(leaders.joint(shell.a()), leaders.joint(shell.b()), leaders.joint(shell.c()));
        return new Member(shell, joints, Geometry.axes(shell, model));
    }

    private static Member spring(Spring spring, StructureModel model, Leaders leaders) {
        Joint from = leaders.joint(spring.from());
        if (spring.to() == Spring.GROUND) {
            return new Member(spring, List.of(from), spring.axes());
        }
        Vector3 reach = model.nodes().get(spring.from()).minus(model.nodes().get(spring.to()));
        return new Member(spring, List.of(from, leaders.joint(spring.to()).further(reach)), spring.axes());
    }

    Element element() {
        return element;
    }

    List<Joint> joints() {
        return joints;
    }

    int freedoms() {
        return 6 * joints.size();
    }

    /** The leading nodes it touches, one for each joint. */
    int[] nodes() {
        return joints.stream().mapToInt(Joint::node).toArray();
    }

    /** Square by rows, for the freedoms of the leading nodes in the structure's axes. */
    double[] stiffness(StructureModel model) {
        double[] matrix = Blocks.turned(ownStiffness(model), axes.rows());
        for (int slot = 0; slot < joints.size(); slot++) {
            Blocks.moveToRoot(matrix, 6 * slot, joints.get(slot).arm());
        }
        return matrix;
    }

    /** Square by rows, in the element's axes. */
    double[] ownStiffness(StructureModel model) {
        return switch (element) {
            case Beam beam ->
                BeamStiffness.of(beam, Geometry.span(beam, model).length(), Vector3.ZERO)
                        .matrix();
            case Shell shell -> new ShellTriangle(triangle(shell, model), shell.sheet()).stiffness();
            case Spring spring -> springStiffness(spring.rate().values());
        };
    }

    private double[] springStiffness(double[] rates) {
        int n = freedoms();
        double[] matrix = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = i % 6; j < n; j += 6) {
                matrix[n * i + j] = i == j ? rates[i % 6] : -rates[i % 6];
            }
        }
        return matrix;
    }

    LocalTriangle triangle(Shell shell, StructureModel model) {
        Vector3 a = model.nodes().get(shell.a());
        Vector3 ac = model.nodes().get(shell.c()).minus(a);
        double x2 = model.nodes().get(shell.b()).minus(a).length();
        return new LocalTriangle(x2, ac.dot(axes.x()), ac.dot(axes.y()));
    }

    /** How its joints move, in its own axes, when the nodes move as given. */
    double[] ownFreedoms(double[] freedoms) {
        double[] own = new double[freedoms()];
        for (int slot = 0; slot < joints.size(); slot++) {
            Motion motion = joints.get(slot).motion(freedoms);
            new Wrench(along(motion.shift()), along(motion.turn())).addTo(own, 6 * slot);
        }
        return own;
    }

    /** Components along the element's axes. */
    Vector3 along(Vector3 inStructure) {
        return new Vector3(inStructure.dot(axes.x()), inStructure.dot(axes.y()), inStructure.dot(axes.z()));
    }

    /** Components along the structure's axes. */
    Vector3 back(Vector3 inElement) {
        return axes.x()
                .times(inElement.x())
                .plus(axes.y().times(inElement.y()))
                .plus(axes.z().times(inElement.z()));
    }
}
