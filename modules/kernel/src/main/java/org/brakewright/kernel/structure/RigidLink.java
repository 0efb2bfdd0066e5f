package org.brakewright.kernel.structure;

/** The follower moves as if welded to the leader by a stiff arm. A leader may itself follow another. */
public record RigidLink(int leader, int follower) {}
