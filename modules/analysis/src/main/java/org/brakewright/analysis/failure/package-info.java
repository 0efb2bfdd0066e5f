/** The car with something failed: a circuit, the booster. */
@NullMarked
package org.brakewright.analysis.failure;

import org.jspecify.annotations.NullMarked;
