/**
 * A neutral drawing in millimeters, y up: lines, arcs, text, dimensions, tables, figures. Start at {@link
 * org.brakewright.drawing.Drawing}.
 */
@NullMarked
package org.brakewright.drawing;

import org.jspecify.annotations.NullMarked;
