/** Sparse symmetric systems: an order that keeps them sparse, assembly, factorisation; knows no structure. */
@NullMarked
package org.brakewright.kernel.structure.sparse;

import org.jspecify.annotations.NullMarked;
