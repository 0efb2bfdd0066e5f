package org.brakewright.model.lines;

/** What lines are joined to. */
public enum PartKind {
    MASTER(false),
    TEE(false),
    BLOCK(false),
    /** A hose and a tube meet here, held by the body. */
    HOSE_BRACKET(false),
    BULKHEAD(false),
    PROPORTIONING_VALVE(false),
    METERING_VALVE(false),
    RESIDUAL_VALVE(false),
    SWITCH(false),
    GAUGE(false),
    CALIPER(true),
    WHEEL_CYLINDER(true),
    CLUTCH_SLAVE(true);

    private final boolean works;

    PartKind(boolean works) {
        this.works = works;
    }

    /** Whether pressure does its work here. */
    public boolean works() {
        return works;
    }
}
