package org.brakewright.model.intent;

/** Rules that a builder may choose to be judged by; they bind makers of new vehicles and are design targets here. */
public enum RuleSet {
    /** UN Regulation 13-H, passenger cars. */
    UN_R13H("UN R13-H"),
    /** 49 CFR 571.135, light vehicle brake systems. */
    FMVSS_135("FMVSS 135"),
    /** A state's assessment manual for individually built and modified cars. */
    STATE_ASSESSMENT("state assessment (NSW brake assessment manual 2013)"),
    /** Rules of a student racing competition. */
    STUDENT_COMPETITION("student competition (Formula SAE 2019)");

    private final String words;

    RuleSet(String words) {
        this.words = words;
    }

    /** Name for people. */
    public String words() {
        return words;
    }
}
