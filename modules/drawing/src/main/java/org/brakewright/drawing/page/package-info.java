/** Drawings on paper at true scale: tiles, register marks, check bars, title block. Start at {@link org.brakewright.drawing.page.Pages}. */
@NullMarked
package org.brakewright.drawing.page;

import org.jspecify.annotations.NullMarked;
