package org.brakewright.kernel.structure;

import org.brakewright.kernel.structure.shell.ShellTriangle;

/** What one load case does to a structure; forces and stresses of an element are worked out when asked for. */
public final class CaseResult {
    private final LoadCase loadCase;
    private final Equilibrium equilibrium;
    private final StructureModel model;
    private final Leaders leaders;
    private final Assembly assembly;
    private final double[] motion;

    CaseResult(LoadCase loadCase, Equilibrium equilibrium, StructureModel model, Leaders leaders, Assembly assembly) {
        this.loadCase = loadCase;
        this.equilibrium = equilibrium;
        this.model = model;
        this.leaders = leaders;
        this.assembly = assembly;
        this.motion = equilibrium.motion();
    }

    public String name() {
        return loadCase.name();
    }

    /** Forces left unbalanced over the forces applied, both as root of the sum of squares; -. */
    public double residual() {
        return equilibrium.residual();
    }

    /** How a node moves. */
    public Motion motion(int node) {
        return leaders.joint(node).motion(motion);
    }

    /** What the ground does to a supported node, in the structure's axes; zero where nothing holds it. */
    public Wrench reaction(int node) {
        double[] held = new double[6];
        model.supports().stream()
                .filter(support -> support.node() == node)
                .flatMap(support -> support.held().stream())
                .forEach(freedom -> held[freedom.index()] = equilibrium.added(6 * node + freedom.index()));
        return Wrench.at(held, 0);
    }

    /**
     * Forces and stresses of a beam.
     *
     * @param element its number; another kind of element there is the programmer's fault
     */
    public BeamResult beam(int element) {
        Member member = assembly.members().get(element);
        if (!(member.element() instanceof Beam beam)) {
            throw new IllegalArgumentException("element must be a beam, but is " + element);
        }
        Vector3 load = loadOnBeam(element, member);
        double length = Geometry.span(beam, model).length();
        BeamStiffness stiffness = BeamStiffness.of(beam, length, load);
        double[] forces = ownForces(member, stiffness.matrix());
        double[] carried = stiffness.nodeForces();
        for (int i = 0; i < forces.length; i++) {
            forces[i] -= carried[i];
        }
        return new BeamResult(beam.property(), length, Wrench.at(forces, 0), Wrench.at(forces, 6), load);
    }

    private Vector3 loadOnBeam(int element, Member member) {
        Vector3 sum = Vector3.ZERO;
        for (Load load : loadCase.loads()) {
            if (load instanceof Load.OnBeam onBeam && onBeam.element() == element) {
                sum = sum.plus(onBeam.perLength());
            }
        }
        return member.along(sum);
    }

    /**
     * Stresses of a shell triangle.
     *
     * @param element its number; another kind of element there is the programmer's fault
     */
    public ShellResult shell(int element) {
        Member member = assembly.members().get(element);
        if (!(member.element() instanceof Shell shell)) {
            throw new IllegalArgumentException("element must be a shell, but is " + element);
        }
        ShellTriangle triangle = new ShellTriangle(member.triangle(shell, model), shell.sheet());
        double[] own = member.ownFreedoms(motion);
        return new ShellResult(
                triangle.atCenter(own),
                triangle.atCorner(0, own),
                triangle.atCorner(1, own),
                triangle.atCorner(2, own));
    }

    /**
     * What a spring does to its second node or the ground, in the spring's axes; N, N m.
     *
     * @param element its number; another kind of element there is the programmer's fault
     */
    public Wrench spring(int element) {
        Member member = assembly.members().get(element);
        if (!(member.element() instanceof Spring)) {
            throw new IllegalArgumentException("element must be a spring, but is " + element);
        }
        return Wrench.at(ownForces(member, member.ownStiffness(model)), 0);
    }

    private double[] ownForces(Member member, double[] matrix) {
        double[] own = member.ownFreedoms(motion);
        double[] forces = new double[own.length];
        for (int i = 0; i < own.length; i++) {
            for (int j = 0; j < own.length; j++) {
                forces[i] += matrix[own.length * i + j] * own[j];
            }
        }
        return forces;
    }
}
