package org.brakewright.model.clutch;

/** What is known of the diaphragm spring, as written. */
public sealed interface Diaphragm permits ReleasePoints, SpringDimensions {}
