package org.brakewright.kernel.structure;

/** A load case as forces on the freedoms, motions of the supports, and what lies on each beam. */
final class Loads {
    private final StructureModel model;
    private final Leaders leaders;
    private final Assembly assembly;
    private final double[] forces;
    private final double[] settlements;

    private Loads(StructureModel model, Leaders leaders, Assembly assembly) {
        this.model = model;
        this.leaders = leaders;
        this.assembly = assembly;
        this.forces = new double[assembly.freedoms()];
        this.settlements = new double[assembly.freedoms()];
    }

    static Loads of(LoadCase loadCase, StructureModel model, Leaders leaders, Assembly assembly) {
        Loads loads = new Loads(model, leaders, assembly);
        loadCase.loads().forEach(loads::add);
        return loads;
    }

    double[] forces() {
        return forces.clone();
    }

    double[] settlements() {
        return settlements.clone();
    }

    private void add(Load load) {
        switch (load) {
            case Load.OnNode onNode -> leaders.joint(onNode.node()).push(onNode.wrench(), forces);
            case Load.OnBeam onBeam -> addBeam(assembly.members().get(onBeam.element()), onBeam.perLength());
            case Load.OnShell onShell -> addShell(assembly.members().get(onShell.element()), onShell.perArea());
            case Load.Settlement give ->
                settlements[6 * give.node() + give.held().index()] += give.amount();
        }
    }

    private void addBeam(Member member, Vector3 perLength) {
        Beam beam = (Beam) member.element();
        double length = Geometry.span(beam, model).length();
        double[] own = BeamStiffness.of(beam, length, member.along(perLength)).nodeForces();
        for (int slot = 0; slot < 2; slot++) {
            Wrench atEnd = Wrench.at(own, 6 * slot);
            member.joints().get(slot).push(new Wrench(member.back(atEnd.force()), member.back(atEnd.moment())), forces);
        }
    }

    private void addShell(Member member, Vector3 perArea) {
        Vector3 third = perArea.times(Geometry.area((Shell) member.element(), model) / 3);
        member.joints().forEach(joint -> joint.push(Wrench.ofForce(third), forces));
    }
}
