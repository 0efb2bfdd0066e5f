package org.brakewright.model.clutch;

/** What a spring does between its ends. */
public enum Action {
    PULLS,
    PUSHES
}
