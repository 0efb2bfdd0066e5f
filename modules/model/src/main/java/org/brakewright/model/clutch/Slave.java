package org.brakewright.model.clutch;

/** What moves the release bearing, as written. */
public sealed interface Slave permits ForkSlave, Concentric {}
