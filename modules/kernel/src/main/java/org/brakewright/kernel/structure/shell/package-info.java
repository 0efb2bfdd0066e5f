/** The flat triangle of a thin shell in its own plane: membrane with drilling freedoms, and bending. */
@NullMarked
package org.brakewright.kernel.structure.shell;

import org.jspecify.annotations.NullMarked;
