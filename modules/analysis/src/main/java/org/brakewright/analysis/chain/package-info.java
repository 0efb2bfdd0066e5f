/** The whole way from the force at the pad to brake forces at the ground. */
@NullMarked
package org.brakewright.analysis.chain;

import org.jspecify.annotations.NullMarked;
