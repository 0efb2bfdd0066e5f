package org.brakewright.model;

/**
 * A fault of the builder's input. Faults are values: all of them are collected, none is thrown.
 *
 * @param path key path in the build file, empty for the file as a whole
 * @param value what was written, as written; empty when something is missing
 * @param message what is wrong, one sentence
 * @param allowed what would be accepted
 */
public record Problem(String path, String value, String message, String allowed) {}
