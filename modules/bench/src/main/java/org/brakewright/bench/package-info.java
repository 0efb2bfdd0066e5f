/** Measures how long the parts of an assessment take; nothing in the product depends on it. */
@NullMarked
package org.brakewright.bench;

import org.jspecify.annotations.NullMarked;
