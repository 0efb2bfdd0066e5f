package org.brakewright.model.mount;

/**
 * Materials that a build file may call by name, with the least values of their standards; all from memory. Poisson's
 * ratio is 0.3 for steel and 0.33 for aluminium.
 */
public enum StockMaterial {
    /** Cold-rolled sheet: body panels. Its yield is no guaranteed least but the low end of what is delivered. */
    MILD_STEEL(Family.STEEL, 210e9, 7850, 140, 270, "EN 10130, DC01: yield 140 to 280 MPa"),
    /** Hot-rolled plate and bar. */
    S235(Family.STEEL, 210e9, 7850, 235, 360, "EN 10025-2, up to 16 mm"),
    /** Hot-rolled plate, and most square and rectangular tube. */
    S355(Family.STEEL, 210e9, 7850, 355, 470, "EN 10025-2, up to 16 mm"),
    /** Cold-drawn seamless tube, as for roll cages. */
    CDS_TUBE(Family.STEEL, 210e9, 7850, 350, 450, "EN 10305-1, E235+C, and the competition rules' 350 MPa"),
    /** Chromium-molybdenum tube and sheet, normalised; beside a weld without filler care it holds less. */
    CHROMOLY_4130(Family.STEEL, 205e9, 7850, 435, 655, "AMS 6350, normalised"),
    /** Austenitic stainless sheet. */
    STAINLESS_304(Family.STEEL, 195e9, 7900, 205, 515, "ASTM A240, 304"),
    /** Sheet that folds and welds. */
    ALUMINIUM_5052_H32(Family.ALUMINIUM, 70e9, 2680, 159, 214, "ASTM B209, 5052-H32"),
    /** Sheet that folds and welds. */
    ALUMINIUM_5754_H22(Family.ALUMINIUM, 70e9, 2670, 130, 220, "EN 485-2, 5754-H22"),
    /** Plate and extrusion; welded it falls to about half. */
    ALUMINIUM_6061_T6(Family.ALUMINIUM, 69e9, 2700, 240, 290, "ASTM B209, 6061-T6"),
    /** Plate and extrusion; welded it falls to about half. */
    ALUMINIUM_6082_T6(Family.ALUMINIUM, 70e9, 2700, 260, 310, "EN 485-2, 6082-T6");

    private static final double MEGA = 1e6;

    private final Family family;
    private final double young;
    private final double density;
    private final double yieldMegapascals;
    private final double tensileMegapascals;
    private final String source;

    StockMaterial(
            Family family,
            double young,
            double density,
            double yieldMegapascals,
            double tensileMegapascals,
            String source) {
        this.family = family;
        this.young = young;
        this.density = density;
        this.yieldMegapascals = yieldMegapascals;
        this.tensileMegapascals = tensileMegapascals;
        this.source = source;
    }

    /** What endurance curves tell apart. */
    public Family family() {
        return family;
    }

    /** Modulus of elasticity, Pa. */
    public double young() {
        return young;
    }

    /** kg/m3. */
    public double density() {
        return density;
    }

    /** Yield or 0.2 % proof stress, Pa. */
    public double yieldStress() {
        return yieldMegapascals * MEGA;
    }

    /** Pa. */
    public double tensileStrength() {
        return tensileMegapascals * MEGA;
    }

    /** The standard whose least values these are. */
    public String source() {
        return source;
    }
}
