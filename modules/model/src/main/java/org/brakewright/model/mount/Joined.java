package org.brakewright.model.mount;

/** How a doubler is joined to the panel. */
public enum Joined {
    /** Bonded or plug-welded over its whole face, so that both bend as one sheet. */
    ALL_OVER,
    /** Held by its bolts or its rim, so that both bend side by side. */
    AT_BOLTS
}
