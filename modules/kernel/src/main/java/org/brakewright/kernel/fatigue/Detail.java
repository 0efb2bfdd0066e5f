package org.brakewright.kernel.fatigue;

/**
 * Details of a sheet-metal mount, and the nominal stress range each stands 2 million times.
 *
 * <p>Maintainer's notes. Steel by EN 1993-1-9, tables 8.1 to 8.5, aluminium by the recommendations of the International
 * Institute of Welding (IIW-1823, table 3.1); all from memory, the class taken low where a home-made part may fall in
 * either of two. Both were found on sheet thicker than most firewalls, and ask for sound welds and edges without nicks.
 */
public enum Detail {
    /** Sheet with sawn, sheared or drilled edges, nicks dressed out; table 8.1, gas cut with shallow drag lines. */
    STEEL_SHEET(125, Form.BENT),
    /** Sheet at a bolt hole, nominal stress of the net section; table 8.1, holes under bending and axial force. */
    STEEL_AT_HOLE(90, Form.BENT),
    /** Sheet or tube at the toe of a fillet weld across the stress; table 8.4, attachment up to 80 mm long. */
    STEEL_WELD_TOE(71, Form.BENT),
    /** Throat of a fillet weld, all stress in it taken together; table 8.5, root of a cruciform joint. */
    STEEL_WELD_THROAT(36, Form.BENT),
    /** Bolt in tension, stress on its stress area with prying; table 8.1. */
    BOLT_TENSION(50, Form.BENT),
    /** Bolt in shear; table 8.1. */
    BOLT_SHEAR(100, Form.STRAIGHT),
    /** Aluminium sheet with cut edges or holes, net section. */
    ALUMINIUM_SHEET(40, Form.BENT),
    /** Aluminium at the toe of a fillet weld across the stress. */
    ALUMINIUM_WELD_TOE(25, Form.BENT),
    /** Throat of a fillet weld in aluminium, all stress in it taken together. */
    ALUMINIUM_WELD_THROAT(12, Form.BENT);

    private final double megapascals;

    private final Form form;

    Detail(double megapascals, Form form) {
        this.megapascals = megapascals;
        this.form = form;
    }

    /** Its characteristic curve and spread. */
    public EnduranceCurve curve() {
        return new EnduranceCurve(
                megapascals * 1e6, form.slope, form.kneeCycles, form.slopeBeyond, EnduranceCurve.USUAL_SPREAD);
    }

    /** How curves run: EN 1993-1-9, figures 7.1 and 7.2. */
    private enum Form {
        BENT(3, 5e6, 5),
        STRAIGHT(5, 1e8, 5);

        private final double slope;

        private final double kneeCycles;

        private final double slopeBeyond;

        Form(double slope, double kneeCycles, double slopeBeyond) {
            this.slope = slope;
            this.kneeCycles = kneeCycles;
            this.slopeBeyond = slopeBeyond;
        }
    }
}
