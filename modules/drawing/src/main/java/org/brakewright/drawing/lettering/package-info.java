/** The one font of all drawings, and how long words are in it. */
@NullMarked
package org.brakewright.drawing.lettering;

import org.jspecify.annotations.NullMarked;
