/** Writers: PDF for paper, SVG for the screen, DXF for the cutting table; the same drawing gives the same bytes. */
@NullMarked
package org.brakewright.drawing.write;

import org.jspecify.annotations.NullMarked;
