package org.brakewright.sheets;

/**
 * Whose sheets they are; what is empty stays open for ink.
 *
 * @param owner of the car or the workshop
 * @param creator who made the sheets
 * @param issued date, as it shall be printed
 */
public record Issue(String owner, String creator, String issued) {}
