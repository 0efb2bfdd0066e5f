package org.brakewright.model.clutch;

/** How the release bearing stands at rest, as written. */
public sealed interface Bearing permits Clearance, ConstantContact {}
