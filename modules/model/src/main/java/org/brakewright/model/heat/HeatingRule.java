package org.brakewright.model.heat;

/** Published heating series; both ask for the same snubs. */
public enum HeatingRule {
    /** UN Regulation 13-H, type-I test: read in the text. */
    UN_R13H,
    /** 49 CFR 571.135 S7.13: from memory. */
    FMVSS_135
}
