package org.brakewright.model.mount;

/** What endurance curves tell apart. */
public enum Family {
    /** Carbon, alloy and stainless steel. */
    STEEL,
    /** Wrought aluminium. */
    ALUMINIUM;

    private static final double STEEL_POISSON = 0.30;
    private static final double ALUMINIUM_POISSON = 0.33;

    /** Poisson's ratio. */
    public double poisson() {
        return switch (this) {
            case STEEL -> STEEL_POISSON;
            case ALUMINIUM -> ALUMINIUM_POISSON;
        };
    }
}
