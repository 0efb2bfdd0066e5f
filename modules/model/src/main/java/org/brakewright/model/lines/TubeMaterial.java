package org.brakewright.model.lines;

/** What a tube is made of, soft as tube is sold to be bent. */
public enum TubeMaterial {
    STEEL,
    STAINLESS_STEEL,
    COPPER_NICKEL,
    COPPER,
    ALUMINIUM
}
