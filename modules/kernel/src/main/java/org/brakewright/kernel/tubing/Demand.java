package org.brakewright.kernel.tubing;

/** What a law asks of its inputs. */
final class Demand {
    private Demand() {}

    /** A finite number above zero. */
    static void positive(String name, double value) {
        holds(value > 0 && Double.isFinite(value), name + " must be above 0, is " + value);
    }

    /** A finite number of zero or more. */
    static void notNegative(String name, double value) {
        holds(value >= 0 && Double.isFinite(value), name + " must be 0 or more, is " + value);
    }

    /** An angle (rad) above zero and below half a turn. */
    static void belowHalfTurn(String name, double angle) {
        holds(angle > 0 && angle < Math.PI, name + " must lie above 0 and below pi, is " + angle);
    }

    static void holds(boolean condition, String otherwise) {
        if (!condition) {
            throw new IllegalArgumentException(otherwise);
        }
    }
}
