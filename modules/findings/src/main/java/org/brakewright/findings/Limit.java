package org.brakewright.findings;

import org.brakewright.model.Tag;

/**
 * A limit and whose it is.
 *
 * @param figure the limit
 * @param whose standard and clause, practice, or the builder
 * @param tag how well the figure is known
 */
public record Limit(Figure figure, String whose, Tag tag) {}
