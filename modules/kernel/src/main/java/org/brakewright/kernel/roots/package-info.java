/** Roots of functions of one variable, with how the search ended. */
@NullMarked
package org.brakewright.kernel.roots;

import org.jspecify.annotations.NullMarked;
