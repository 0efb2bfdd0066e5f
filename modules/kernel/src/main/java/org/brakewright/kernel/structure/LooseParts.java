package org.brakewright.kernel.structure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.brakewright.kernel.structure.sparse.CholeskyFactor;

/**
 * Finds what can move without resistance.
 *
 * <p>Maintainer's notes. The structure is stiffened by a trifle of its own diagonal and pushed a few times, each time by
 * what it did before (inverse iteration): what is left is its softest motion. Its energy over that of the same motion
 * against the diagonal tells a loose part, where only rounding remains, from a soft one.
 */
final class LooseParts {
    private static final double STIFFENING = 1e-10;
    private static final int PUSHES = 8;

    /** Energy left to a free motion by rounding; a chain of a thousand beams, the softest sound case, has 1e-11. */
    private static final double FREE = 1e-13;

    /** A node moves along when it moves this share of what the first does. */
    private static final double ALONG = 1e-3;

    private final StructureModel model;
    private final Assembly assembly;
    private final Equations equations;
    private final Leaders leaders;

    LooseParts(StructureModel model, Assembly assembly, Equations equations, Leaders leaders) {
        this.model = model;
        this.assembly = assembly;
        this.equations = equations;
        this.leaders = leaders;
    }

    /** A freedom that no element resists: a shift of a node in use, or anything that is loaded. */
    Optional<StructureOutcome.Loose> withoutResistance(List<Loads> cases) {
        boolean[] used = used();
        boolean[] loaded = new boolean[assembly.freedoms()];
        for (Loads each : cases) {
            double[] forces = each.forces();
            for (int freedom = 0; freedom < forces.length; freedom++) {
                loaded[freedom] |= forces[freedom] != 0;
            }
        }
        for (int freedom = 0; freedom < loaded.length; freedom++) {
            boolean shift = freedom % 6 < 3 && used[freedom / 6];
            if (equations.of(freedom) == Equations.ASLEEP && (shift || loaded[freedom])) {
                double[] motion = new double[loaded.length];
                motion[freedom] = 1;
                return Optional.of(loose(motion));
            }
        }
        return Optional.empty();
    }

    private boolean[] used() {
        boolean[] used = new boolean[assembly.freedoms() / 6];
        for (int[] nodes : assembly.nodes()) {
            for (int node : nodes) {
                used[node] = true;
            }
        }
        return used;
    }

    /**
     * The softest motion, if nothing but rounding resists it.
     *
     * @param certain that there is one, because the matrix could not be factored
     */
    Optional<StructureOutcome.Loose> byFreeMotion(boolean certain) {
        double[] diagonal = equations.gather(assembly.diagonal());
        double[] softest = softest(diagonal);
        double[] motion = new double[assembly.freedoms()];
        equations.scatter(softest, motion);
        double energy = dot(equations.gather(assembly.times(motion)), softest);
        double against = dot(product(diagonal, softest), softest);
        return certain || energy < FREE * against ? Optional.of(loose(motion)) : Optional.empty();
    }

    private double[] softest(double[] diagonal) {
        CholeskyFactor factor = CholeskyFactor.of(assembly.matrix(equations, STIFFENING))
                .orElseThrow(() -> new ArithmeticException("a stiffened structure could not be factored"));
        double[] x = new double[equations.count()];
        Arrays.setAll(x, i -> (1 + (i * 0.6180339887498949) % 1) / Math.sqrt(diagonal[i]));
        for (int push = 0; push < PUSHES; push++) {
            double[] next = factor.solve(product(diagonal, x));
            double size = Math.sqrt(dot(product(diagonal, next), next));
            Arrays.setAll(x, i -> next[i] / size);
        }
        return x;
    }

    private static double[] product(double[] one, double[] other) {
        double[] product = new double[one.length];
        Arrays.setAll(product, i -> one[i] * other[i]);
        return product;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    private StructureOutcome.Loose loose(double[] motion) {
        double reach = reach();
        double[] amounts = new double[leaders.nodes()];
        Arrays.setAll(amounts, node -> amount(leaders.joint(node).motion(motion), reach));
        int first = 0;
        for (int node = 1; node < amounts.length; node++) {
            if (amounts[node] > amounts[first] * (1 + 1e-9)) {
                first = node;
            }
        }
        double most = amounts[first];
        TreeSet<String> along = new TreeSet<>();
        for (Element element : model.elements()) {
            if (Arrays.stream(element.nodes()).anyMatch(node -> amounts[node] > ALONG * most)) {
                along.add(element.part());
            }
        }
        Motion moves = leaders.joint(first).motion(motion);
        return new StructureOutcome.Loose(partAt(first), List.copyOf(along), first, greatest(moves, reach), moves);
    }

    /** A length that makes turns comparable with shifts: the greatest distance from the first node. */
    private double reach() {
        Vector3 origin = model.nodes().getFirst();
        return model.nodes().stream()
                .mapToDouble(node -> node.minus(origin).length())
                .max()
                .orElse(0);
    }

    private static double amount(Motion motion, double reach) {
        return motion.shift().length() + 1e-3 * reach * motion.turn().length();
    }

    private static Freedom greatest(Motion motion, double reach) {
        Freedom greatest = Freedom.SHIFT_X;
        double most = -1;
        for (Freedom freedom : Freedom.values()) {
            double scale = freedom.index() < 3 ? 1 : 1e-3 * reach;
            double amount = scale * Math.abs(motion.along(freedom));
            if (amount > most * (1 + 1e-9)) {
                greatest = freedom;
                most = amount;
            }
        }
        return greatest;
    }

    /** Elements of a follower count as the leader's own. */
    private String partAt(int node) {
        int leader = leaders.joint(node).node();
        return assembly.members().stream()
                .filter(member -> Arrays.stream(member.nodes()).anyMatch(each -> each == leader))
                .map(member -> member.element().part())
                .findFirst()
                .orElse("");
    }
}
