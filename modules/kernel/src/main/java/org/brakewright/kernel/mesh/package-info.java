/** Cuts a flat panel with holes into triangles: nodes where they must be, finer where asked, no slivers. */
@NullMarked
package org.brakewright.kernel.mesh;

import org.jspecify.annotations.NullMarked;
