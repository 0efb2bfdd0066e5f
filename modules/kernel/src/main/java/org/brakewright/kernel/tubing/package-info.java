/** Laws of bent tube and sheet: from points in space to a bend table and back, springback, stock and mitred ends. */
@NullMarked
package org.brakewright.kernel.tubing;

import org.jspecify.annotations.NullMarked;
