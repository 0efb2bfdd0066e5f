package org.brakewright.model.hydraulics;

/** What turns the pedal's push into pressure, as written. */
public sealed interface ApplySystem permits TwinMasters, TandemMaster {}
