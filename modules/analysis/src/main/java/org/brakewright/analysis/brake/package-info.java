/** From line pressure to force at the tyre. */
@NullMarked
package org.brakewright.analysis.brake;

import org.jspecify.annotations.NullMarked;
